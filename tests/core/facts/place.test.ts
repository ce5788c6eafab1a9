import { describe, expect, test } from 'vitest';
import type { FactId } from '../../../src/core/facts/registry/index.ts';
import { groupObservations, placeOf } from '../../../src/core/facts/resolve.ts';
import type { FactObservation } from '../../../src/core/facts/resolved.ts';
import { testParameters } from '../../generators/parameters.ts';
import { hoursAfter, utc } from './moments.ts';

const at = utc('2026-11-06T09:00Z');

function place(given: Partial<Record<FactId, number | null>>) {
  const observations = Object.entries(given).map(
    ([fact, value]): FactObservation => ({
      fact,
      reading: value === null || value === undefined ? { type: 'does-not-know' } : { type: 'number', value },
      at: hoursAfter(at, -1),
      source: 'profile',
    }),
  );
  const byFact = groupObservations({ observations, at });
  return placeOf({ at, zone: 'UTC', parameters: testParameters() }, (id) => byFact.get(id) ?? []);
}

describe('the place of a field', () => {
  test('is its two coordinates, the equator and the first meridian too', () => {
    expect(place({ 'field.latitude': 53.4, 'field.longitude': -1.2 })).toEqual({ latitude: 53.4, longitude: -1.2 });
    expect(place({ 'field.latitude': 0, 'field.longitude': 0 })).toEqual({ latitude: 0, longitude: 0 });
  });

  test.each([
    [{ 'field.latitude': 53.4 }],
    [{ 'field.longitude': -1.2 }],
    [{ 'field.latitude': 53.4, 'field.longitude': null }],
    [{}],
  ])('is not known from %j', (given) => {
    expect(place(given)).toBeNull();
  });
});
