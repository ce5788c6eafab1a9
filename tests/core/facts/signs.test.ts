import { describe, expect, test } from 'vitest';
import { coreFacts } from '../../../src/core/facts/registry/index.ts';
import { resolveFacts } from '../../../src/core/facts/resolve.ts';
import type { FactObservation } from '../../../src/core/facts/resolved.ts';
import { testParameters } from '../../generators/parameters.ts';
import { hoursAfter, utc } from './moments.ts';

const at = utc('2026-11-06T12:00Z');
const all = ['friable', 'cracked', 'sticky', 'ponded', 'frozen', 'snow'];

interface Seen {
  readonly hoursAgo: number;
  readonly present?: readonly string[];
  readonly absent?: readonly string[];
  readonly complete?: boolean;
}

function surface(seen: readonly (Seen | number)[]) {
  const observations = seen.map((one): FactObservation => {
    const hoursAgo = typeof one === 'number' ? one : one.hoursAgo;
    const reading: FactObservation['reading'] =
      typeof one === 'number'
        ? { type: 'does-not-know' }
        : { type: 'signs', present: one.present ?? [], absent: one.absent ?? [], complete: one.complete ?? false };
    return { fact: 'soil.surface', reading, at: hoursAfter(at, -hoursAgo), source: 'said' };
  });
  const input = {
    observations,
    forecast: null,
    at,
    zone: 'Europe/London',
    parameters: testParameters(),
    registry: coreFacts,
  };
  return resolveFacts(input)['soil.surface'];
}

const without = (...gone: string[]) => all.filter((sign) => !gone.includes(sign));

describe('signs of the soil surface', () => {
  test.each<[string, readonly (Seen | number)[], present: string[], possible: string[]]>([
    ['one named sign leaves the others possible', [{ hoursAgo: 1, present: ['cracked'] }], ['cracked'], all],
    [
      'naming one sign later does not erase another',
      [
        { hoursAgo: 2, present: ['cracked'] },
        { hoursAgo: 1, present: ['sticky'] },
      ],
      ['cracked', 'sticky'],
      all,
    ],
    [
      'a later absence wins over an earlier sign',
      [
        { hoursAgo: 2, present: ['cracked', 'sticky'] },
        { hoursAgo: 1, absent: ['cracked'] },
      ],
      ['sticky'],
      without('cracked'),
    ],
    [
      'a later sign wins over an earlier absence',
      [
        { hoursAgo: 2, absent: ['cracked', 'ponded'] },
        { hoursAgo: 1, present: ['cracked'] },
      ],
      ['cracked'],
      without('ponded'),
    ],
    [
      'a complete list sets every sign anew',
      [
        { hoursAgo: 2, present: ['cracked'] },
        { hoursAgo: 1, present: ['sticky'], complete: true },
      ],
      ['sticky'],
      ['sticky'],
    ],
    [
      'a sign named after a complete list adds to it',
      [
        { hoursAgo: 2, present: ['sticky'], complete: true },
        { hoursAgo: 1, present: ['ponded'] },
      ],
      ['sticky', 'ponded'],
      ['sticky', 'ponded'],
    ],
    ['an empty complete list is none of them', [{ hoursAgo: 1, complete: true }], [], []],
    [
      'the order is that of time, not of the list',
      [
        { hoursAgo: 1, absent: ['cracked'] },
        { hoursAgo: 2, present: ['cracked'] },
      ],
      [],
      without('cracked'),
    ],
    [
      'at the same time the later of the list is the newer',
      [
        { hoursAgo: 1, present: ['cracked'] },
        { hoursAgo: 1, absent: ['cracked'] },
      ],
      [],
      without('cracked'),
    ],
    [
      'what is too old no longer stands, be it a sign or an absence',
      [
        { hoursAgo: 25, present: ['ponded'], complete: true },
        { hoursAgo: 1, present: ['cracked'] },
      ],
      ['cracked'],
      all,
    ],
    ['not knowing takes nothing back', [{ hoursAgo: 2, present: ['cracked'] }, 1], ['cracked'], all],
  ])('%s', (_, seen, present, possible) => {
    expect(surface(seen)).toMatchObject({ known: true, type: 'signs', present, possible });
  });

  test('they are good until the first reading still relied on is too old', () => {
    const both = surface([
      { hoursAgo: 20, present: ['cracked'] },
      { hoursAgo: 1, present: ['sticky'] },
    ]);
    expect(both).toMatchObject({ at: hoursAfter(at, -1), goodUntil: hoursAfter(at, 4) });
    const renewed = surface([
      { hoursAgo: 20, present: ['cracked'] },
      { hoursAgo: 1, present: ['cracked', 'sticky'] },
    ]);
    expect(renewed).toMatchObject({ goodUntil: hoursAfter(at, 23) });
  });

  test('a later look that names nothing leaves them as they stood, from when they were named', () => {
    const earlier = { hoursAgo: 20, present: ['cracked'] };
    expect(surface([earlier, { hoursAgo: 1 }])).toMatchObject({
      present: ['cracked'],
      possible: all,
      at: hoursAfter(at, -20),
      goodUntil: hoursAfter(at, 4),
    });
    expect(surface([{ hoursAgo: 2 }, { hoursAgo: 1 }])).toMatchObject({
      present: [],
      possible: all,
      at: hoursAfter(at, -1),
      goodUntil: hoursAfter(at, 23),
    });
  });

  test('a person who cannot say leaves them unknown', () => {
    expect(surface([1])).toMatchObject({ known: false, reason: 'person-does-not-know' });
  });
});
