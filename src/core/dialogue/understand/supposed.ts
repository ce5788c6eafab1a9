import { languageOf } from './languages.ts';

/**
 * What a person supposes, as a text to be understood on its own: "what if the soil were 9 at 30 cm?" gives "the soil is 9 at
 * 30 cm". Null where nothing is supposed. "I suppose so" supposes nothing. `code` is the language of the text.
 */
export function supposedText(text: string, code?: string): string | null {
  const { openings, tells, itWere, forms, correction } = languageOf(code).supposing;
  const plain = text
    .trim()
    .replaceAll('\u2019', "'")
    .replace(/[?!.\s]+$/, '');
  if (!text.includes('?') && tells?.test(plain.toLowerCase())) return null;
  const rest = after(plain, openings);
  if (rest === null || /^(so|not|so\s.*|not\s.*)?$/i.test(rest)) return null;
  const value = after(rest, itWere);
  return value === null ? asTold(rest, forms) : `${correction}${asTold(value, forms)}`;
}

/** The first form of what is only supposed, as it is told. */
function asTold(text: string, forms: readonly (readonly [string, string])[]): string {
  const form = /\p{L}+/gu;
  for (let word = form.exec(text); word !== null; word = form.exec(text)) {
    const read = forms.find(([said]) => said === word[0].toLowerCase())?.[1];
    if (read !== undefined) return text.slice(0, word.index) + read + text.slice(word.index + word[0].length);
  }
  return text;
}

function after(text: string, openings: readonly string[]): string | null {
  const lower = text.toLowerCase();
  const opening = openings.find((one) => lower.startsWith(`${one} `));
  return opening === undefined ? null : text.slice(opening.length).trim();
}
