import type { Catalogue } from './catalogue.ts';

/** A note that came with a field or a forecast, in the language of the words where it is one of the invented farm; else as it came. */
export function noteIn(text: string, words: Catalogue): string {
  return words.notes[text] ?? text;
}
