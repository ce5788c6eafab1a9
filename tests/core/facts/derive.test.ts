import { describe, expect, test } from 'vitest';
import type { FactId } from '../../../src/core/facts/registry/index.ts';
import { coreFacts } from '../../../src/core/facts/registry/index.ts';
import { resolveFacts } from '../../../src/core/facts/resolve.ts';
import type { FactObservation } from '../../../src/core/facts/resolved.ts';
import type { Reading } from '../../../src/core/facts/types.ts';
import { buildForecast } from '../../generators/forecast.ts';
import { testParameters } from '../../generators/parameters.ts';
import { hoursAfter, utc } from './moments.ts';

const at = utc('2026-11-06T09:00Z');
const base = { at, zone: 'Europe/London', parameters: testParameters(), registry: coreFacts };

function seen(fact: FactId, reading: Reading, hoursAgo = 0): FactObservation {
  return { fact, reading, at: hoursAfter(at, -hoursAgo), source: 'said' };
}

const number = (value: number, low = value, high = value): Reading => ({ type: 'number', value, low, high });
const choice = (...possible: string[]): Reading => ({ type: 'choice', possible });

describe('the date is that of the moment at the field', () => {
  test.each([
    ['2026-11-06T23:59Z', 'Europe/London', '2026-11-06', '2026-11-07T00:00Z'],
    ['2026-11-06T23:59Z', 'Asia/Kolkata', '2026-11-07', '2026-11-07T18:30Z'],
    ['2026-10-25T00:30Z', 'Europe/London', '2026-10-25', '2026-10-26T00:00Z'],
  ])('%s in %s is %s until %s', (moment, zone, iso, until) => {
    const facts = resolveFacts({ ...base, observations: [], forecast: null, at: utc(moment), zone });
    expect(facts['date']).toMatchObject({ known: true, type: 'date', iso, goodUntil: utc(until) });
  });
});

describe('frost on the leaves', () => {
  test.each([
    [number(4.01), ['no']],
    [number(4), null],
    [number(6, 4.5, 7), ['no']],
    [number(6, 4, 7), null],
    [number(-1), null],
  ])('air %j gives %j', (air, possible) => {
    const facts = resolveFacts({ ...base, observations: [seen('air.temperatureC', air)], forecast: null });
    expect(facts['crop.frostOnLeaves']).toMatchObject(
      possible === null ? { known: false, reason: 'not-asked' } : { known: true, possible, source: 'derived' },
    );
  });

  test('it comes from the forecast where its whole band is warm enough, and ages with it', () => {
    const forecast = (temperature2mC: number) => buildForecast({ from: at, columns: { temperature2mC } });
    const warm = resolveFacts({ ...base, observations: [], forecast: forecast(5.1) })['crop.frostOnLeaves'];
    expect(warm).toMatchObject({ known: true, possible: ['no'], goodUntil: hoursAfter(at, 1) });
    const cool = resolveFacts({ ...base, observations: [], forecast: forecast(5) })['crop.frostOnLeaves'];
    expect(cool).toMatchObject({ known: false });
  });
});

describe('drains running', () => {
  test.each([
    [choice('no'), true],
    [choice('yes'), false],
    [choice('yes', 'no'), false],
  ])('field drained %j makes it known: %s', (drained, known) => {
    const facts = resolveFacts({ ...base, observations: [seen('field.drained', drained, 100)], forecast: null });
    expect(facts['soil.drainsRunning']).toMatchObject(known ? { known, possible: ['no'] } : { known });
  });
});

describe('trend of the temperature at 30 cm', () => {
  function trend(readings: readonly (readonly [hoursAgo: number, value: number])[]) {
    const observations = readings.map(([hoursAgo, value]) => seen('soil.temperature30cmC', number(value), hoursAgo));
    return resolveFacts({ ...base, observations, forecast: null })['soil.temperatureTrendCPerDay'];
  }

  // Ordinary least squares over equally spaced days, worked by hand: -0.28 C/day.
  test('it is the least-squares slope, with the band that the readings leave', () => {
    const fact = trend([
      [96, 10.8],
      [72, 10.5],
      [48, 10.3],
      [24, 9.9],
      [0, 9.7],
    ]);
    // Each reading off by 0.05 C: the slope by 0.05 (2 + 1 + 0 + 1 + 2) / 10 = 0.03.
    expect(fact).toMatchObject({ known: true, value: -0.28, low: -0.31, high: -0.25, source: 'derived' });
    expect(fact).toMatchObject({ at, goodUntil: hoursAfter(at, 24), note: 'slope through 5 readings over 4 days' });
  });

  test.each<[string, (readonly [number, number])[], boolean]>([
    [
      'two readings two days apart are enough',
      [
        [48, 10],
        [0, 9],
      ],
      true,
    ],
    [
      'less than two days apart are not',
      [
        [47.9, 10],
        [0, 9],
      ],
      false,
    ],
    ['one reading is not', [[0, 9]], false],
    [
      'readings over ten days old do not count',
      [
        [240.1, 10],
        [0, 9],
      ],
      false,
    ],
    [
      'readings just ten days old count',
      [
        [240, 10],
        [0, 9],
      ],
      true,
    ],
    [
      'the newest must still be good',
      [
        [72, 10],
        [24, 9],
      ],
      false,
    ],
    [
      'and just before it is too old it is',
      [
        [72, 10],
        [23.9, 9],
      ],
      true,
    ],
  ])('%s', (_, readings, known) => {
    expect(trend(readings)).toMatchObject({ known });
  });

  test('a trend given in words stands before the derived one', () => {
    const observations = [
      seen('soil.temperature30cmC', number(10), 72),
      seen('soil.temperature30cmC', number(9), 0),
      seen('soil.temperatureTrendCPerDay', number(0.3), 0),
    ];
    const facts = resolveFacts({ ...base, observations, forecast: null });
    expect(facts['soil.temperatureTrendCPerDay']).toMatchObject({ value: 0.3, source: 'said' });
  });
});
