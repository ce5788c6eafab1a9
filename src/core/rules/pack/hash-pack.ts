import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import canonicalize from 'canonicalize';

/**
 * SHA-256 (FIPS 180-4), lower-case hex, over the canonical JSON (RFC 8785) of an object that maps the name of each file that
 * counts to its parsed content: pack.json, parameters.json, *.rules.json, questions.json and cautions.json.
 * Cases, overlays that only lie in the folder, and CHANGELOG.md do not count: they decide nothing.
 */
export function hashPackFiles(files: ReadonlyMap<string, unknown>): string {
  return bytesToHex(sha256(utf8ToBytes(canonicalize(Object.fromEntries(files)) ?? '')));
}
