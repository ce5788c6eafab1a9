import { describe, expect, test } from 'vitest';
import { observedOf } from '../../../src/core/facts/observed.ts';
import { joinVisits, spanOfVisit } from '../../../src/core/facts/parse/join-visits.ts';
import { coreFacts, type FactId } from '../../../src/core/facts/registry/index.ts';
import type { FactObservation } from '../../../src/core/facts/resolved.ts';
import type { Reading } from '../../../src/core/facts/types.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { testParameters } from '../../generators/parameters.ts';
import { hoursAfter, utc } from './moments.ts';

const at = utc('2026-11-06T09:00Z');
const soil: FactId = 'soil.temperature30cmC';
const ageing = { zone: 'Europe/London', parameters: testParameters(), registry: coreFacts, forecast: null };

const number = (value: number, more: object = {}): Reading => ({ type: 'number', value, ...more });
const choice = (...possible: string[]): Reading => ({ type: 'choice', possible });
const seen = (fact: FactId, reading: Reading, hoursAgo = 0, source: FactObservation['source'] = 'said') =>
  ({ fact, reading, at: hoursAfter(at, -hoursAgo), source }) satisfies FactObservation;

describe('readings of one visit', () => {
  const read = (value: number, minutes: number, more: object = {}): FactObservation => ({
    ...seen(soil, number(value, more)),
    at: epochSeconds(at + minutes * 60),
  });

  test('an hour apart at most are one that spans both, with the moment of the later', () => {
    expect(joinVisits([read(9, 0), read(10, 60), read(12, 121)])).toEqual([
      read(9.5, 60, { low: 9, high: 10 }),
      read(12, 121),
    ]);
    expect(spanOfVisit(read(9, 60), read(10, 0))).toEqual(read(9.5, 0, { low: 9, high: 10 }));
    expect(spanOfVisit(read(9, 0), read(10, 61))).toBeNull();
    expect(joinVisits([])).toEqual([]);
  });

  test('that agree are the later alone; their own bands count', () => {
    expect(spanOfVisit(read(9, 0), read(9, 5))).toEqual(read(9, 5));
    expect(spanOfVisit(read(9, 0, { low: 8 }), read(10, 5, { high: 11 }))).toEqual(read(9.5, 5, { low: 8, high: 11 }));
    expect(spanOfVisit(read(0.1, 0), read(0.2, 5))).toEqual(read(0.15, 5, { low: 0.1, high: 0.2 }));
  });

  test('stay apart where one was worked out from another depth, or is no number', () => {
    const from = { from: { depthCm: 10, valueC: 7, hour: '09:00' } };
    expect(spanOfVisit(read(9, 0, from), read(10, 5))).toBeNull();
    expect(spanOfVisit(read(9, 0), read(10, 5, from))).toBeNull();
    expect(spanOfVisit(read(9, 0), { ...read(9, 5), reading: choice('9') })).toBeNull();
    expect(spanOfVisit({ ...read(9, 0), reading: choice('9') }, read(9, 5))).toBeNull();
  });
});

describe('what was observed of a fact', () => {
  const observed = (id: FactId, ...observations: FactObservation[]) => observedOf(id, observations, at, ageing);

  test('a reading at 30 cm stands before a later one that was worked out, which serves alone', () => {
    const worked = seen(soil, number(8, { from: { depthCm: 10, valueC: 7, hour: '08:00' } }), 1);
    expect(observed(soil, seen(soil, number(9), 2), worked).given).toMatchObject({ value: 9 });
    expect(observed(soil, worked).given).toMatchObject({ value: 8, note: 'worked out from 7 C at 10 cm at 08:00' });
  });

  test('what a person was told of the forecast stands apart from what was seen', () => {
    const { given, told, unknown } = observed('rain.next48hMm', seen('rain.next48hMm', number(3), 1, 'told'));
    expect([given, unknown]).toEqual([null, null]);
    expect(told).toMatchObject({ value: 3, source: 'told' });
  });

  test('nothing at all is no reason', () => {
    expect(observed(soil)).toEqual({ given: null, told: null, unknown: null });
  });

  test('several reasons: a country that settles nothing, then not knowing, then what cannot be, then age', () => {
    const land: FactId = 'field.country';
    const unsure: Reading = { type: 'does-not-know' };
    const reason = (...all: FactObservation[]) => observed(all[0]!.fact, ...all).unknown;
    expect(reason(seen(land, choice('GB', 'FR')), seen(land, unsure))).toEqual({
      known: false,
      reason: 'does-not-settle',
    });
    expect(reason(seen(soil, number(99)), seen(soil, unsure))).toEqual({
      known: false,
      reason: 'person-does-not-know',
    });
    expect(reason(seen(soil, number(9), 30), seen(soil, number(99), 1))).toEqual({
      known: false,
      reason: 'implausible',
      note: '9 C at 2026-11-05 03:00',
    });
    expect(reason(seen(soil, number(8), 50), seen(soil, number(9), 30), seen(soil, number(99), 26))).toEqual({
      known: false,
      reason: 'too-old',
      note: '9 C at 2026-11-05 03:00',
    });
    expect(reason(seen(soil, unsure, 30))).toBeNull();
  });

  test('a day observed is kept as it was said', () => {
    const { given } = observed('date', seen('date', { type: 'date', iso: '2026-11-06' }, 1));
    expect(given).toMatchObject({
      known: true,
      type: 'date',
      iso: '2026-11-06',
      source: 'said',
      at: hoursAfter(at, -1),
    });
  });
});
