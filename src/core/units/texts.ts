/** One text in several languages, by ISO 639-1 code. */
export type Texts = Readonly<Record<string, string>>;

/** Where something comes from: a title, the same in every language, or a text in each. */
export type Source = string | Texts;

/** A text in a language, English where it lacks that one. */
export function inLanguage(text: Texts, language: string): string {
  return text[language] ?? text['en'] ?? '';
}

/** A source in a language; a title as it is. */
export function sourceIn(source: Source, language: string): string {
  return typeof source === 'string' ? source : inLanguage(source, language);
}
