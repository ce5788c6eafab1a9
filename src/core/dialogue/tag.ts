import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import canonicalize from 'canonicalize';
import type { ResolvedFacts } from '../facts/resolved.ts';

/** Names the resolved facts and the pack that an evaluation is for: SHA-256 over canonical JSON (RFC 8785), lower-case hex. */
export function tagOf(packHash: string, facts: ResolvedFacts): string {
  return hashOf({ pack: packHash, facts });
}

/** The id of the verdict for a tag: the same on every device, in the form of a UUID (version 8, RFC 9562). */
export function verdictIdOf(tag: string): string {
  const hex = hashOf({ verdict: tag });
  const variant = ((Number.parseInt(hex.slice(16, 17), 16) & 0x3) | 0x8).toString(16);
  return [
    hex.slice(0, 8),
    hex.slice(8, 12),
    `8${hex.slice(13, 16)}`,
    `${variant}${hex.slice(17, 20)}`,
    hex.slice(20, 32),
  ].join('-');
}

function hashOf(value: unknown): string {
  return bytesToHex(sha256(utf8ToBytes(canonicalize(value) ?? '')));
}
