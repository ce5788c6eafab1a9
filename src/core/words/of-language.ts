/** What there is in a language; the English of it where there is none. */
export function ofLanguage<T>(languages: Readonly<Record<string, T>>, language: string, english: T): T {
  return Object.entries(languages).find(([code]) => code === language)?.[1] ?? english;
}
