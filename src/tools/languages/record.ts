import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import type { Sentences } from './sentences.ts';

/**
 * What each sentence of a language was translated from: by its place, the fingerprint of the English and that of the translation,
 * parted by a blank.
 */
export type TranslationRecord = Readonly<Record<string, string>>;

/** Fingerprint of a sentence: the first eight hex digits of its SHA-256. */
function fingerprint(text: string): string {
  return bytesToHex(sha256(utf8ToBytes(text))).slice(0, 8);
}

/** True where the English changed since the sentence was translated, and the translation did not. */
export function isStale(recorded: string | undefined, english: string, translated: string): boolean {
  const [from, to] = recorded?.split(' ') ?? [];
  return to === fingerprint(translated) && from !== fingerprint(english);
}

/**
 * The record after a look at the sentences: what is new or was translated anew counts as translated from the English there is now,
 * and so does what `isRight` names; what is stale stays so; what is gone is left out, and what is as in English, where it is not
 * named as right or was once.
 */
export function recordAfter(
  record: TranslationRecord,
  english: Sentences,
  translated: Sentences,
  isRight: (place: string) => boolean = () => false,
): TranslationRecord {
  const rows = [...translated].flatMap(([place, text]) => {
    const from = english.get(place);
    const before = record[place];
    if (from === undefined || (from === text && before === undefined && !isRight(place))) return [];
    const keeps = before !== undefined && isStale(before, from, text) && !isRight(place);
    return [[place, keeps ? before : `${fingerprint(from)} ${fingerprint(text)}`] as const];
  });
  return Object.fromEntries(rows.sort(([a], [b]) => (a < b ? -1 : 1)));
}
