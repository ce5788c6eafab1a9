import { itWere, supposingWords } from './en/supposing.ts';

/** How a correction begins, which is what "it" is read by: the fact last spoken of. */
const correctionOfLast = 'no, it was ';

/**
 * What a person supposes, as a text to be understood on its own: "what if the soil were 9 at 30 cm?" gives "the soil were 9 at
 * 30 cm". Null where nothing is supposed. "I suppose so" supposes nothing.
 */
export function supposedText(text: string): string | null {
  const plain = text
    .trim()
    .replaceAll('\u2019', "'")
    .replace(/[?!.\s]+$/, '');
  const rest = after(plain, supposingWords);
  if (rest === null || /^(so|not|so\s.*|not\s.*)?$/i.test(rest)) return null;
  const value = after(rest, itWere);
  const said = value === null ? rest.replace(/\b(were|was)\b/i, 'is') : `${correctionOfLast}${value}`;
  return said;
}

function after(text: string, openings: readonly string[]): string | null {
  const lower = text.toLowerCase();
  const opening = openings.find((one) => lower.startsWith(`${one} `));
  return opening === undefined ? null : text.slice(opening.length).trim();
}
