import { createHash } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { instantText } from '../../../src/core/dialogue/moment.ts';
import { tagOf, verdictIdOf } from '../../../src/core/dialogue/tag.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { number } from '../../generators/small.ts';

const sha256 = (text: string) => createHash('sha256').update(text).digest('hex');

describe('the tag of an evaluation', () => {
  test('is SHA-256 over the canonical JSON (RFC 8785: names sorted, no blanks) of facts and pack', () => {
    const wind = number(5);
    const canonical =
      '{"facts":{"wind.boomKmh":{"at":0,"goodUntil":null,"high":5,"known":true,"low":5,"source":"said","type":"number","value":5}},"pack":"abc"}';
    expect(tagOf('abc', { 'wind.boomKmh': wind })).toBe(sha256(canonical));
  });

  test('differs for other rules and for other facts', () => {
    const tags = [tagOf('a', {}), tagOf('b', {}), tagOf('a', { 'wind.boomKmh': number(5) })];
    expect(new Set(tags).size).toBe(3);
  });
});

test.each(['', 'a', 'b', 'c', 'd', 'e', 'f', '0123'])(
  'the id of the verdict for tag "%s" is its hash in the form of a UUID of version 8 (RFC 9562)',
  (tag) => {
    const hex = sha256(`{"verdict":"${tag}"}`);
    const id = verdictIdOf(tag);
    expect(id).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
    const plain = id.replaceAll('-', '');
    expect(plain).toHaveLength(32);
    // All bits are those of the hash, but four of the version and two of the variant.
    const differing = [...plain].flatMap((letter, index) => (letter === hex[index] ? [] : [index]));
    expect(differing.filter((index) => index !== 12 && index !== 16)).toEqual([]);
    expect(Number.parseInt(plain[16] ?? '', 16) & 0x3).toBe(Number.parseInt(hex[16] ?? '', 16) & 0x3);
  },
);

test.each([
  [0, '1970-01-01T00:00:00Z'],
  [1_793_955_600, '2026-11-06T09:00:00Z'],
  [1_793_955_600.999, '2026-11-06T09:00:00Z'],
])('the moment %f is told in UTC, whole seconds: %s', (at, text) => {
  expect(instantText(epochSeconds(at))).toBe(text);
});
