/// <reference types="vite/types/importMeta.d.ts" />
import type { Memory } from '../chat/memory.ts';

const key = 'loamward.language';

/** ISO 639-1 codes of the languages that the page is there in: a folder each beside this file. */
export const languages: readonly string[] = Object.keys(import.meta.glob('./*/index.ts')).map(
  (path) => path.split('/')[1] ?? '',
);

/** The language of the page: the one chosen on this device, else the first of the device's languages that there is, else English. */
export function pageLanguage(chosen: string | null, wished: readonly string[], known = languages): string {
  const codes = [chosen ?? '', ...wished].map((tag) => tag.toLowerCase().split('-')[0] ?? '');
  return codes.find((code) => known.includes(code)) ?? 'en';
}

/** What was chosen on this device; null where nothing was, or the browser keeps nothing. */
export function chosenLanguage(): string | null {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
}

/** Remembers the language and shows the page in it: it is loaded anew, the conversation goes on where it was. */
export function chooseLanguage(language: string, memory: Memory): void {
  memory.write(key, language);
  location.reload();
}

/** A language's name in itself: "Deutsch". */
export function nameOfLanguage(language: string): string {
  return new Intl.DisplayNames([language], { type: 'language' }).of(language) ?? language;
}
