import type { Catalogue } from '../../core/words/catalogue.ts';
import { compareWordsOf } from '../../core/words/compare-words.ts';
import type { ComparisonReport } from './report-schema.ts';

type Season = ComparisonReport['seasons']['seasons'][number];

/** Days that a sign of the text picture stands for. */
const daysPerSign = 2;

/**
 * The seasons of each station as a table with a picture in signs at its side; seasons in which nothing changes only counted, unless
 * `whole`.
 */
export function seasonLines(report: ComparisonReport['seasons'], words: Catalogue, whole = false): string[] {
  const told = compareWordsOf(words.language);
  const { season, sprayA, sprayB, stricter, looser } = told.table;
  const columns = [season, sprayA, sprayB, stricter, looser];
  const widths = columns.map((name) => name.length + 2);
  const row = (cells: readonly (string | number)[], picture: string) =>
    `  ${cells.map((cell, at) => String(cell).padStart(widths[at] ?? 0)).join('')}  ${picture}`.trimEnd();
  return report.stations.flatMap((station) => {
    const seasons = report.seasons.filter((one) => one.station === station);
    if (seasons.length === 0) return [];
    const shown = seasons.filter(({ changed }) => whole || changed.length > 0);
    const sum = (count: (one: Season) => number) => seasons.reduce((all, one) => all + count(one), 0);
    const heading = told.station(
      station,
      seasons.length,
      sum(({ a }) => sprays(a)),
      sum(({ b }) => sprays(b)),
    );
    const rows = shown.map((one) => {
      const ways = (way: string) => one.changed.filter((day) => day.way === way).length;
      return row([one.season, sprays(one.a), sprays(one.b), ways('stricter'), ways('looser')], signsOf(one));
    });
    const rest = seasons.length - shown.length;
    return [
      '',
      heading,
      ...(rows.length === 0 ? [] : [row(columns, '')]),
      ...rows,
      ...(rest === 0 ? [] : [`  ${told.unchanged(rest)}`]),
    ];
  });
}

function sprays(letters: string): number {
  return [...letters].filter((one) => one === 's').length;
}

const strictness = 'swn';

function signsOf({ a, b }: Season): string {
  const days = [...a].map((one, at): string => {
    const other = b[at] ?? one;
    if (one === other) return one === 's' ? '=' : '.';
    return strictness.indexOf(other) > strictness.indexOf(one) ? 'x' : 'o';
  });
  const signs: string[] = [];
  for (let at = 0; at < days.length; at += daysPerSign) {
    const both = days.slice(at, at + daysPerSign);
    if (both.includes('x')) signs.push(both.includes('o') ? '*' : 'x');
    else signs.push(['o', '='].find((sign) => both.includes(sign)) ?? '.');
  }
  return signs.join('');
}
