import { describe, expect, test } from 'vitest';
import { conflictsOf } from '../../../src/core/dialogue/conflicts.ts';
import { fieldDevice, type StateObservation } from '../../../src/core/dialogue/state.ts';
import { goodUntilOf } from '../../../src/core/facts/ageing.ts';
import { coreFacts, type FactId } from '../../../src/core/facts/registry/index.ts';
import type { Reading } from '../../../src/core/facts/types.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { testParameters } from '../../generators/parameters.ts';

const noon = epochSeconds(Date.UTC(2026, 10, 6, 12) / 1000);
const saw = (device: string, fact: FactId, reading: Reading, minutes = 0): StateObservation => ({
  fact,
  reading,
  at: epochSeconds(noon + minutes * 60),
  source: 'said',
  event: `${device}-${minutes}`,
  device,
  doubtful: false,
  quote: null,
});
const wind = (device: string, value: number, minutes = 0) =>
  saw(device, 'wind.boomKmh', { type: 'number', value }, minutes);
const feel = (device: string, ...possible: string[]) => saw(device, 'soil.feel', { type: 'choice', possible });
const drained = (device: string, one: string) => saw(device, 'field.drained', { type: 'choice', possible: [one] });
const surface = (device: string, present: string[], absent: string[] = [], complete = false) =>
  saw(device, 'soil.surface', { type: 'signs', present, absent, complete });

function conflicting(
  observations: readonly StateObservation[],
  at = noon,
  matters = observations.map(({ fact }) => fact),
) {
  const input = { observations, at, zone: 'UTC', parameters: testParameters(), registry: coreFacts };
  return [...conflictsOf({ ...input, matters: new Set(matters) }).keys()];
}

describe('two phones that say different things', () => {
  test.each([
    ['two winds', [wind('a', 5), wind('b', 9)], true],
    ['the same wind', [wind('a', 5), wind('b', 5)], false],
    ['one phone that changed its mind', [wind('a', 5), wind('a', 9, 1)], false],
    ['the field profile and a phone', [wind(fieldDevice, 5), wind('a', 9)], false],
    ['one that does not know', [wind('a', 5), saw('b', 'wind.boomKmh', { type: 'does-not-know' })], false],
    ['two feels', [feel('a', 'dry'), feel('b', 'moist')], true],
    ['the same two feels in another order', [feel('a', 'dry', 'moist'), feel('b', 'moist', 'dry')], false],
    ['one feel, and that or another', [feel('a', 'dry'), feel('b', 'dry', 'moist')], true],
    ['a sign seen and denied', [surface('a', ['cracked']), surface('b', [], ['cracked'])], true],
    ['a sign denied and seen', [surface('a', [], ['cracked']), surface('b', ['cracked'])], true],
    ['two signs of which neither is denied', [surface('a', ['cracked']), surface('b', ['sticky'])], false],
  ])('%s: %s', (_, observations, isConflict) => {
    expect(conflicting(observations).length > 0).toBe(isConflict);
  });

  test('an answer given while they contradict settles it', () => {
    expect(conflicting([wind('a', 5), wind('b', 9), wind('a', 7, 1)])).toEqual([]);
  });

  test('what no stop or hold reads is no matter', () => {
    expect(conflicting([wind('a', 5), wind('b', 9)], noon, [])).toEqual([]);
  });

  test.each([
    ['wind.boomKmh', wind('a', 5), wind('b', 9)],
    ['soil.feel', feel('a', 'dry'), feel('b', 'moist')],
    ['field.drained', drained('a', 'yes'), drained('b', 'no')],
  ] as const)(
    '%s: contradict each other until the very moment at which what they said is too old',
    (fact, one, other) => {
      const ageing = { zone: 'UTC', parameters: testParameters(), forecast: null };
      const tooOld = goodUntilOf(coreFacts[fact].goodFor, noon, ageing);
      expect(tooOld).toBeGreaterThan(noon);
      expect(conflicting([one, other], epochSeconds(tooOld - 1))).toEqual([fact]);
      expect(conflicting([one, other], tooOld)).toEqual([]);
    },
  );
});
