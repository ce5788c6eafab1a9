import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import canonicalize from 'canonicalize';
import { instantText } from '../dialogue/moment.ts';
import type { Pack } from '../rules/pack-types.ts';
import type { JudgedDay, PracticeDay } from './types.ts';

/** Length of an id, hex digits. */
const idLength = 16;

/** A day with its moment and its id: SHA-256 over the canonical JSON (RFC 8785) of the rules' hash and all that it is made of, cut. */
export function dayOf(
  made: Omit<PracticeDay, 'id' | 'at'>,
  { at }: Pick<JudgedDay, 'at'>,
  { hash }: Pick<Pack, 'hash'>,
) {
  const day = { ...made, at: instantText(at) };
  const text = canonicalize({ hash, ...day }) ?? '';
  return { id: bytesToHex(sha256(utf8ToBytes(text))).slice(0, idLength), ...day } satisfies PracticeDay;
}
