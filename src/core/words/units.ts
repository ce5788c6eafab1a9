import type { PageCatalogue } from './catalogue.ts';

/** A unit as it follows a number, space included; empty where there is none. `number` is the number as written, for what is counted. */
export function unitSuffix(unit: string | null, words: PageCatalogue, number = ''): string {
  if (unit === null) return '';
  const shown = (number === '1' ? words.values.unitsOfOne[unit] : undefined) ?? words.values.units[unit] ?? unit;
  return shown === '' ? '' : ` ${shown}`;
}

/** Things in a row: "a, b and c" with the joining word given. */
export function joinWords(items: readonly string[], joiner: string): string {
  if (items.length < 2) return items[0] ?? '';
  return `${items.slice(0, -1).join(', ')} ${joiner} ${items.at(-1)}`;
}

/** So many of the names and the number of the others; all of them where one alone would be left out: its name is as short as its number. */
export function shortList(names: readonly string[], most: number, more: (count: number) => string): string[] {
  return names.length <= most + 1 ? [...names] : [...names.slice(0, most), more(names.length - most)];
}

/** A sentence's first letter as a capital. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
