import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { understand } from '../../../../src/core/dialogue/understand/index.ts';
import type { Reading } from '../../../../src/core/facts/types.ts';
import type { Pack } from '../../../../src/core/rules/pack-types.ts';
import { packTable, shipped } from '../../../cases/shipped-pack.ts';

const wheat = packTable.find(([id]) => id === 'fluroxypyr-winter-wheat')![1].pack;

/** What one text says of a fact: its readings without the words and the doubt. */
function saidOf(fact: string, text: string, pack: Pack, language = 'en'): readonly Reading[] {
  const { readings } = understand(text, { asked: null, pack, recent: [], language });
  return readings.flatMap((one) => (one.fact === fact ? [one.reading] : []));
}

const number = fc.integer({ min: 2, max: 12 });

describe('a number put right in the same text', () => {
  test.each([
    ['en', 'wind', 'mph', 'wind.boomKmh', ['no', 'sorry', 'no wait', ', no,', ', I mean']],
    ['en', 'rape', 'leaves', 'crop.trueLeaves', ['no', 'no sorry', ', no,', 'I mean']],
    ['en', 'ditch', 'm off', 'field.waterDistanceM', ['no', ', no,', 'sorry']],
    ['de', 'Wind 3 m/s, Böen', 'm/s', 'wind.gustKmh', ['nein', ', nein,', 'sorry']],
    ['de', 'Wind', 'km/h', 'wind.boomKmh', ['nein', 'nee', ', nein,', 'Quatsch', ', ich meinte']],
    ['de', 'Raps', 'Blätter', 'crop.trueLeaves', ['nein', ', nein,', 'sorry']],
    ['de', 'Graben', 'm weg', 'field.waterDistanceM', ['nein', ', nein,', 'sorry']],
  ] as const)('counts as if it alone had been said, in %s of the %s in %s', (language, of, unit, fact, turns) => {
    fc.assert(
      fc.property(number, number, fc.constantFrom(...turns), (first, second, turn) => {
        const both = saidOf(fact, `${of} ${first} ${unit} ${turn} ${second}`, shipped.pack, language);
        expect(both).toEqual(saidOf(fact, `${of} ${second} ${unit}`, shipped.pack, language));
        expect(both).toHaveLength(1);
      }),
    );
  });
});

describe('a height beside its plant', () => {
  const says = [
    (height: string) => `cleavers ${height}`,
    (height: string) => `${height} cleavers`,
    (height: string) => `cleavers, ${height} tall`,
    (height: string) => `the cleavers are ${height} high`,
  ];
  const heights = fc.tuple(fc.integer({ min: 1, max: 40 }), fc.constantFrom('cm', 'inches'), fc.constantFrom(...says));

  test('is that of the plant, however it is put, and never a depth', () => {
    fc.assert(
      fc.property(heights, ([height, unit, say]) => {
        const told = saidOf('weed.cleaversLengthCm', say(`${height} ${unit}`), wheat);
        expect(told).toEqual(saidOf('weed.cleaversLengthCm', `cleavers length ${height} ${unit}`, wheat));
        expect(told).toHaveLength(1);
      }),
    );
  });

  test('is told as not understood where the rules know no such height, of whatever grows', () => {
    const plants = fc.constantFrom('blackgrass', 'rape', 'ryegrass');
    fc.assert(
      fc.property(heights, plants, ([height, unit, say], plant) => {
        const text = say(`${height} ${unit}`).replace('cleavers', plant);
        const { readings, notUnderstood } = understand(text, { asked: null, pack: shipped.pack, recent: [] });
        expect(readings.filter(({ reading }) => reading.type === 'number')).toEqual([]);
        expect(notUnderstood.join()).toContain(`${height} ${unit}`);
      }),
    );
  });
});
