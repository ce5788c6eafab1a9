import { words as plainWords } from '../phrases.ts';

const letters: Readonly<Record<string, string>> = { ä: 'ae', ö: 'oe', ü: 'ue', ß: 'ss' };

/** A lower-case word as it is looked up: umlauts and the sharp s written out, as many people type them. */
export function spell(word: string): string {
  return word.replace(/[äöüß]/g, (letter) => letters[letter] ?? letter);
}

const endings = ['', 'e', 'er', 'es', 'em', 'en'];

/** Patterns parted by commas, looked up as `spell` writes them; `feucht*` stands for the word with every ending of an adjective. */
export function words(parts: TemplateStringsArray, ...inserted: readonly string[]): readonly string[] {
  return plainWords(parts, ...inserted).map((pattern) => spell(pattern.replace(/([^\s|?]+)\*/g, inflected)));
}

function inflected(_: string, stem: string): string {
  return endings.map((ending) => stem + ending).join('|');
}
