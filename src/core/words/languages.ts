// Written by `npm run languages` from the folders beside this file. Do not edit; run it again.
import type { Catalogue } from './catalogue.ts';
import { words as de } from './de/index.ts';
import { words as en } from './en/index.ts';

/** Catalogues by ISO 639-1 code, English first. */
export const catalogues: Readonly<Record<string, Catalogue>> = {
  en,
  de,
};
