import { describe, expect, test } from 'vitest';
import { goodUntilOf } from '../../../src/core/facts/ageing.ts';
import { coreFacts, type FactId } from '../../../src/core/facts/registry/index.ts';
import { resolveFacts } from '../../../src/core/facts/resolve.ts';
import type { FactObservation } from '../../../src/core/facts/resolved.ts';
import type { Reading } from '../../../src/core/facts/types.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { factDefinition, factIds } from '../../fixtures/core-facts.ts';
import { buildForecast } from '../../generators/forecast.ts';
import { testParameters } from '../../generators/parameters.ts';
import { utc } from './moments.ts';

const parameters = testParameters();
const zone = 'Europe/London';

function resolvedAt(id: FactId, reading: Reading, seen: string, at: string, where = zone) {
  const observations: FactObservation[] = [{ fact: id, reading, at: utc(seen), source: 'said' }];
  return resolveFacts({ observations, forecast: null, at: utc(at), zone: where, parameters, registry: coreFacts })[id];
}

const cracked: Reading = { type: 'signs', present: ['cracked'], absent: [], complete: true };
const moist: Reading = { type: 'choice', possible: ['moist'] };
const yes: Reading = { type: 'choice', possible: ['yes'] };
const number = (value: number): Reading => ({ type: 'number', value });

describe('an observation is good until its time and too old from then on', () => {
  test.each<[FactId, Reading, seen: string, lastGood: string, tooOld: string, where?: string]>([
    ['soil.feel', moist, '2026-11-06T09:00Z', '2026-11-07T08:59Z', '2026-11-07T09:00Z'],
    ['soil.surface', cracked, '2026-11-06T09:00Z', '2026-11-07T08:59Z', '2026-11-07T09:00Z'],
    ['soil.drainsRunning', yes, '2026-11-06T09:00Z', '2026-11-07T08:59Z', '2026-11-07T09:00Z'],
    ['soil.fieldCapacityPercent', number(90), '2026-11-06T09:00Z', '2026-11-07T08:59Z', '2026-11-07T09:00Z'],
    ['soil.temperature30cmC', number(9), '2026-11-06T09:00Z', '2026-11-07T08:59Z', '2026-11-07T09:00Z'],
    ['crop.trueLeaves', number(4), '2026-11-06T09:00Z', '2026-11-16T08:59Z', '2026-11-16T09:00Z'],
    ['weed.tillers', number(1), '2026-10-20T09:00Z', '2026-10-30T08:59Z', '2026-10-30T09:00Z'],
    ['wind.boomKmh', number(5), '2026-11-06T09:00Z', '2026-11-06T09:59Z', '2026-11-06T10:00Z'],
    ['rain.nowMmPerH', number(0), '2026-11-06T09:00Z', '2026-11-06T09:59Z', '2026-11-06T10:00Z'],
    ['crop.frostOnLeaves', yes, '2026-11-06T09:00Z', '2026-11-06T09:59Z', '2026-11-06T10:00Z'],
    ['rain.next48hMm', number(2), '2026-11-06T09:00Z', '2026-11-06T20:59Z', '2026-11-06T21:00Z'],
    ['treatment.partnerInTank', yes, '2026-11-06T09:00Z', '2026-11-06T23:59Z', '2026-11-07T00:00Z'],
    ['treatment.partnerInTank', yes, '2026-07-06T09:00Z', '2026-07-06T22:59Z', '2026-07-06T23:00Z'],
    ['product.activeGPerL', number(400), '2026-11-06T03:00Z', '2026-11-06T18:29Z', '2026-11-06T18:30Z', 'Asia/Kolkata'],
    ['field.drained', yes, '2026-11-06T09:00Z', '2027-06-30T22:59Z', '2027-06-30T23:00Z'],
    ['field.drained', yes, '2026-06-30T22:59Z', '2026-06-30T22:59Z', '2026-06-30T23:00Z'],
    ['field.drained', yes, '2026-06-30T23:00Z', '2027-06-30T22:59Z', '2027-06-30T23:00Z'],
    ['field.drained', yes, '2026-11-06T09:00Z', '2027-06-30T18:29Z', '2027-06-30T18:30Z', 'Asia/Kolkata'],
  ])('%s %j seen %s is good at %s and too old at %s', (id, reading, seen, lastGood, tooOld, where) => {
    expect(resolvedAt(id, reading, seen, lastGood, where)).toMatchObject({ known: true, goodUntil: utc(tooOld) });
    expect(resolvedAt(id, reading, seen, tooOld, where)).toMatchObject({ known: false, reason: 'too-old' });
  });

  test('what was too old is told with its time at the field', () => {
    expect(resolvedAt('soil.temperature30cmC', number(9.6), '2026-07-05T09:00Z', '2026-07-09T09:00Z')).toEqual({
      known: false,
      reason: 'too-old',
      note: '9.6 C at 2026-07-05 10:00',
    });
  });

  test.each(['2026-03-29', '2026-10-25'])('the day of a clock change (%s) still gives 24 hours to soil seen', (day) => {
    const seen = utc(`${day}T00:30Z`);
    const goodFor = factDefinition('soil.feel').goodFor;
    expect(goodUntilOf(goodFor, seen, { zone, parameters, forecast: null })).toBe(seen + 24 * 3600);
  });

  test('every fact says how long it stays good, and the moment lies ahead', () => {
    const seen = utc('2026-11-06T09:00Z');
    for (const id of factIds) {
      expect(goodUntilOf(factDefinition(id).goodFor, seen, { zone, parameters, forecast: null })).toBeGreaterThan(seen);
    }
  });
});

describe('soil seen is good until so much rain has fallen', () => {
  const seen = utc('2026-11-06T09:00Z');
  const goodFor = factDefinition('soil.feel').goodFor;
  const from = utc('2026-11-06T00:00Z');

  function goodUntil(rainAt: Readonly<Record<string, number | null>>, plan = {}) {
    const forecast = buildForecast({
      from,
      ...plan,
      columns: {
        precipitationMm: (time) => {
          const iso = new Date(time * 1000).toISOString().slice(0, 16);
          return iso in rainAt ? rainAt[iso]! : 0;
        },
      },
    });
    return goodUntilOf(goodFor, seen, { zone, parameters, forecast });
  }

  test.each<[string, Record<string, number | null>, string]>([
    ['4.9 mm is not yet 5 mm', { '2026-11-06T12:00': 4.9 }, '2026-11-07T09:00Z'],
    ['5 mm in one hour ends it with that hour', { '2026-11-06T12:00': 5 }, '2026-11-06T12:00Z'],
    ['amounts add up', { '2026-11-06T12:00': 2.5, '2026-11-06T15:00': 2.5 }, '2026-11-06T15:00Z'],
    ['rain before it was seen does not count', { '2026-11-06T09:00': 9 }, '2026-11-07T09:00Z'],
    ['rain after the hours does not matter', { '2026-11-07T12:00': 9 }, '2026-11-07T09:00Z'],
    ['hours that are missing add nothing', { '2026-11-06T10:00': null, '2026-11-06T12:00': 5 }, '2026-11-06T12:00Z'],
  ])('%s', (_, rainAt, until) => {
    expect(goodUntil(rainAt)).toBe(utc(until));
  });

  test('0.01, 4.02 and 0.97 mm are 5 mm in spite of binary sums', () => {
    const rainAt = { '2026-11-06T10:00': 0.01, '2026-11-06T11:00': 4.02, '2026-11-06T12:00': 0.97 };
    expect(goodUntil(rainAt)).toBe(utc('2026-11-06T12:00Z'));
  });

  test('without a forecast, or with one for another place, only the hours count', () => {
    const observations: FactObservation[] = [{ fact: 'soil.feel', reading: moist, at: seen, source: 'said' }];
    const wet = buildForecast({ from, columns: { precipitationMm: 4 }, place: { distanceKm: 15.1 } });
    const at = epochSeconds(seen + 3 * 3600);
    const near = { ...wet, place: { ...wet.place, distanceKm: 15 } };
    const feel = (forecast: typeof wet | null) =>
      resolveFacts({ observations, forecast, at, zone, parameters, registry: coreFacts })['soil.feel'];
    expect(feel(null)).toMatchObject({ known: true, goodUntil: seen + 24 * 3600 });
    expect(feel(wet)).toMatchObject({ known: true, goodUntil: seen + 24 * 3600 });
    expect(feel(near)).toMatchObject({ known: false, reason: 'too-old' });
  });
});
