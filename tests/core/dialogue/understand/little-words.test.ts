import { describe, expect, test } from 'vitest';
import type { Offered } from '../../../../src/core/dialogue/understand/merge.ts';
import { dateBack } from '../../../../src/core/dialogue/understand/said-after.ts';
import { shipped } from '../../../cases/shipped-pack.ts';
import { told } from './told.ts';

describe('a wish known by how it begins', () => {
  test.each([
    ['when will the ground be fit', '!when'],
    ['please, when will the ground be fit then', '!when'],
    ['how soon can we get going', '!when'],
    ['any chance of a window today', '!when'],
    ['can I spray today please', '!verdict'],
  ])('"%s" is %s', (text, wish) => {
    expect(told(null, text)).toBe(wish);
  });

  test.each([
    'when will the tractor be painted',
    'how soon did the vicar marry',
    'any chance of a window seat to Paris',
    'can I spray the kitchen walls',
  ])('"%s" begins like one, and is none', (text) => {
    expect(told(null, text)).not.toMatch(/!(?:when|verdict)/);
  });
});

describe('speeds beside gusts', () => {
  test.each([
    ['12 km/h gusting 18', 'wind.boomKmh=12; wind.gustKmh=18'],
    ['gusting 18 km/h', 'wind.gustKmh=18'],
    ['soil 9 gusting 18 km/h', 'soil.temperature30cmC=9?; wind.gustKmh=18'],
  ])('"%s": the first is the wind\'s only where nothing else was spoken of', (text, said) => {
    expect(told(null, text)).toBe(said);
  });
});

describe('choices of one fact joined by "or"', () => {
  test('are one reading: one of them is so', () => {
    expect(told('soil-feel', 'dry or moist')).toBe('soil.feel=dry|moist');
    expect(told('soil-feel', 'moist or moist')).toBe('soil.feel=moist');
  });

  test('are doubtful where either is', () => {
    expect(told('soil-feel', 'maybe dry or moist')).toMatch(/soil\.feel=.*\?/);
  });
});

test('a day named after what was said holds for what has no time of its own', () => {
  const one = {
    fact: 'soil.temperature30cmC',
    reading: { type: 'number', value: 9 },
    quote: '9',
    doubtful: false,
  } as const;
  const offered: Offered[] = [
    { ...one, replaces: false, agoHours: 2 },
    { ...one, replaces: false },
  ];
  dateBack({ offered, refused: [], intents: [], lost: [] }, 24, shipped.pack);
  expect(offered.map(({ agoHours }) => agoHours)).toEqual([2, 24]);
});
