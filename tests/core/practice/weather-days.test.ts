import { describe, expect, test } from 'vitest';
import type { ReplayDay } from '../../../src/core/outlook/replay/index.ts';
import { daysOfWeather } from '../../../src/core/practice/weather-days.ts';
import { choice, number, signsSeen } from '../../generators/small.ts';
import { smallWorld } from './small-world.ts';

/** A day on which only the wind, the soil's water and its warmth are near anything, or far from it. */
function day(of: number, wind: number, more: Partial<ReplayDay> & { water?: number; soil?: number } = {}): ReplayDay {
  const { water = 95, soil = 3, ...rest } = more;
  return {
    season: 2026,
    iso: `2026-11-${String(of).padStart(2, '0')}`,
    facts: {
      'field.country': choice('GB-ENG'),
      'wind.boomKmh': number(wind),
      'soil.feel': choice('moist'),
      'soil.fieldCapacityPercent': number(water),
      'soil.temperature30cmC': number(soil),
      'soil.surface': signsSeen(['friable']),
    },
    verdict: wind > 9.6 ? 'wait' : 'spray-today',
    outcomes: [],
    assumed: [],
    ...rest,
  };
}
const taken = (days: readonly ReplayDay[], most: number) =>
  daysOfWeather(days, smallWorld(), most).map(({ facts, rule }) => `${String(facts['date']).slice(8)} ${rule}`);

describe('a day of a season teaches', () => {
  test.each<[string, ReplayDay, string]>([
    ['the limit that it is nearest to', day(1, 9.5, { water: 82 }), 'too-windy'],
    ['another, where it is nearer to that', day(1, 9.2, { water: 81 }), 'too-dry'],
    ['a limit ten steps off', day(1, 2, { water: 90 }), 'too-dry'],
    ['none eleven steps off: then the first rule stands for it', day(1, 2, { water: 91 }), 'elsewhere'],
    ['no limit of what was only held', day(1, 9.5, { water: 82, assumed: ['wind.boomKmh'] }), 'too-dry'],
    ['a limit of a stop too', day(1, 2, { soil: 9.9 }), 'warm-and-dry'],
    ['what decides it, whatever it is near', day(1, 30, { water: 81 }), 'too-windy'],
  ])('%s', (_, one, rule) => {
    expect(taken([one], 1)).toEqual([`01 ${rule}`]);
  });

  test('the more, the nearer it is to its limit', () => {
    expect(taken([day(1, 9), day(2, 9.5), day(3, 9.3)], 1)).toEqual(['02 too-windy']);
    expect(taken([day(1, 9), day(2, 9.5), day(3, 9.3)], 2)).toEqual(['02 too-windy', '03 too-windy']);
  });

  test('most where the verdict changes on it; the first day of all changes nothing', () => {
    expect(taken([day(1, 9.5), day(2, 30), day(3, 40)], 1)).toEqual(['02 too-windy']);
    expect(taken([day(1, 40), day(2, 9.5)], 1)).toEqual(['02 too-windy']);
    expect(taken([day(1, 9.8), day(2, 30)], 1)).toEqual(['01 too-windy']);
  });

  test('beside days of other rules: each rule has its turn, its best day first', () => {
    const days = [day(1, 9.5), day(2, 9.4), day(3, 2, { water: 85 }), day(4, 2, { water: 81 })];
    expect(taken(days, 2)).toEqual(['01 too-windy', '04 too-dry']);
    expect(taken(days, 3)).toEqual(['01 too-windy', '02 too-windy', '04 too-dry']);
    expect(taken(days, 9)).toEqual(['01 too-windy', '02 too-windy', '03 too-dry', '04 too-dry']);
  });
});

test('a number of a day is kept to its precision, with its band where it has one', () => {
  const [found] = daysOfWeather(
    [day(1, 5, { facts: { ...day(1, 5).facts, 'wind.boomKmh': number(5.123456, 5.123456, 6.123456) } })],
    smallWorld(),
    1,
  );
  expect(found?.facts['wind.boomKmh']).toEqual({ value: 5.12, low: 5.12, high: 6.12 });
});
