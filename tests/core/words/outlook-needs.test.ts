import { describe, expect, test } from 'vitest';
import type { FallThrough, NeededChange } from '../../../src/core/outlook/types.ts';
import { catalogueOf } from '../../../src/core/words/catalogue.ts';
import { describeLeast, describeNeed } from '../../../src/core/words/outlook-changes.ts';
import { describeFallThrough } from '../../../src/core/words/outlook-soil.ts';
import { factDefinition } from '../../fixtures/core-facts.ts';
import { hoursOn, lookedAt, soilTooWarm } from '../../generators/outlook.ts';
import { choice, number } from '../../generators/small.ts';

const words = catalogueOf('en');
const wording = { words, zone: 'Europe/London', definitionOf: factDefinition, titleOf: (rule: string) => rule };

describe('what has to change', () => {
  const told = (more: Partial<NeededChange>) =>
    describeNeed(soilTooWarm(more), wording, { at: lookedAt, fallThrough: null });
  const wind = { fact: 'wind.boomKmh', unit: 'km/h', now: number(12), to: 9.6, by: -2.4, lifts: 'hours' } as const;
  test.each<[string, Partial<NeededChange>, string]>([
    [
      'must rise',
      { to: 12, by: 1.2 },
      'Soil temperature at 30 cm: 10.8 C; it has to rise by 1.2 C, to 12.0 C. That takes days. Not within the forecast.',
    ],
    [
      'is seen finely beside its limit',
      { now: number(10.04), by: -0.04 },
      'Soil temperature at 30 cm: 10.04 C; it has to fall by 0.04 C, to 10.0 C. That takes days. Not within the forecast.',
    ],
    [
      'comes within hours',
      wind,
      'Wind at boom height: 12.0 km/h; it has to fall by 2.4 km/h, to 9.6 km/h. Weather can bring that within hours. Not within the forecast.',
    ],
    [
      'is in the forecast',
      { ...wind, forecastAt: hoursOn(2) },
      'Wind at boom height: 12.0 km/h; it has to fall by 2.4 km/h, to 9.6 km/h. Weather can bring that within hours. In the forecast from Thursday 12 November, 12:00.',
    ],
    [
      'is seen to by a person',
      { ...wind, lifts: 'person' },
      'Wind at boom height: 12.0 km/h; it has to fall by 2.4 km/h, to 9.6 km/h. You can see to that.',
    ],
    [
      'only a person can tell',
      { fact: 'soil.feel', unit: null, now: choice('dry', 'wet'), to: 'moist', by: null },
      'Feel of the soil in the hand: dry or wet; it has to be moist. That takes days.',
    ],
    [
      'counts in ones',
      { fact: 'crop.trueLeaves', unit: 'leaves', now: number(2), to: 3, by: 1 },
      'True leaves of the crop: 2 leaves; it has to rise by 1 leaf, to 3 leaves. That takes days.',
    ],
  ])('%s', (_, more, text) => {
    expect(told(more)).toBe(text);
  });
});

describe('a fall of the soil later than the forecast', () => {
  const fallThrough: FallThrough = { limitC: 10, day10: null, day50: null, day90: null, chanceOfWarmingBack: 0 };
  const told = (more: Partial<NeededChange>) => describeNeed(soilTooWarm(more), wording, { at: lookedAt, fallThrough });
  test.each<[string, Partial<NeededChange>, boolean]>([
    ['the soil falls to that limit', {}, true],
    ['the soil falls to another limit', { to: 9 }, false],
    ['the soil has to rise', { by: 0.8 }, false],
    ['the soil is at its limit', { by: 0 }, false],
    ['nothing is known of it', { by: null }, false],
    ['it is another fact', { fact: 'air.temperatureC' }, false],
    ['a person sees to it', { lifts: 'person' }, false],
  ])('is told where %s', (_, more, isTold) => {
    expect(told(more).includes('Not for sure within the forecast. Within the days')).toBe(isTold);
  });
});

test('the least that would turn the answer is named once each', () => {
  expect(describeLeast([], wording)).toBeNull();
  expect(describeLeast([soilTooWarm(), soilTooWarm({ rule: 'other' })], wording)).toBe(
    "The least that would turn today's answer, as far as it is known: soil temperature at 30 cm.",
  );
  expect(describeLeast([soilTooWarm(), soilTooWarm({ fact: 'soil.feel' })], wording)).toContain(
    ' and feel of the soil',
  );
});

describe('the soil through its limit', () => {
  const today = '2026-11-12';
  const told = (day10: string | null, day50: string | null, day90: string | null, back = 0) =>
    describeFallThrough({ limitC: 9.5, day10, day50, day90, chanceOfWarmingBack: back }, today, words);
  const below = 'The soil at 30 cm';
  test.each([
    ['2026-11-12', '2026-11-12', '2026-11-12', `${below} is likely to stay below 9.5 C.`],
    [
      '2026-11-12',
      '2026-11-12',
      '2026-11-13',
      `${below} may be below 9.5 C for good already; by 13 November that is likely (about 9 in 10).`,
    ],
    [
      '2026-11-12',
      '2026-11-12',
      null,
      `${below} is more likely than not to stay below 9.5 C from now on, but that is not sure.`,
    ],
    [
      '2026-11-12',
      '2026-11-13',
      '2026-11-14',
      `${below} may be below 9.5 C for good already; by 14 November that is likely (about 9 in 10).`,
    ],
    [
      '2026-11-13',
      '2026-11-13',
      '2026-11-13',
      `${below} may be below 9.5 C for good already; by 13 November that is likely (about 9 in 10).`,
    ],
    [
      '2026-11-13',
      '2026-11-14',
      '2026-11-20',
      `${below} is likely to fall below 9.5 C for good between 13 and 20 November (about 8 in 10).`,
    ],
    [
      '2026-11-03',
      '2026-11-14',
      '2026-12-20',
      `${below} may be below 9.5 C for good already; by 20 December that is likely (about 9 in 10).`,
    ],
    [
      '2026-11-29',
      '2026-11-30',
      '2026-12-20',
      `${below} is likely to fall below 9.5 C for good between 29 November and 20 December (about 8 in 10).`,
    ],
  ])('from %s by %s to %s', (day10, day50, day90, text) => {
    expect(told(day10, day50, day90)).toBe(text);
  });

  test.each([
    [0.1, true],
    [0.099, false],
  ])('that it may warm back is said from a chance of %d on: %s', (back, isSaid) => {
    expect(told('2026-11-13', '2026-11-14', '2026-11-20', back).includes('Once below, it may warm back')).toBe(isSaid);
  });
});
