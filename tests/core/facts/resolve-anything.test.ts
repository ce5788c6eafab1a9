import fc from 'fast-check';
import { expect, test } from 'vitest';
import { coreFacts } from '../../../src/core/facts/registry/index.ts';
import { resolveFacts } from '../../../src/core/facts/resolve.ts';
import type { FactObservation } from '../../../src/core/facts/resolved.ts';
import type { Reading } from '../../../src/core/facts/types.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { factDefinition, factIds } from '../../fixtures/core-facts.ts';
import { buildForecast } from '../../generators/forecast.ts';
import { testParameters } from '../../generators/parameters.ts';
import { utc } from './moments.ts';

const at = utc('2026-10-25T00:40Z');
const parameters = testParameters();

const reading: fc.Arbitrary<Reading> = fc.oneof(
  fc.record({ type: fc.constant('number'), value: fc.double({ min: -300, max: 300 }) }),
  fc.record({
    type: fc.constant('choice'),
    possible: fc.subarray(['yes', 'no', 'moist', 'saturated', 'clay', 'sand', 'GB', 'GB-ENG', 'inside']),
  }),
  fc.record({
    type: fc.constant('signs'),
    present: fc.subarray(['cracked', 'snow', 'moss']),
    absent: fc.subarray(['friable', 'ponded']),
    complete: fc.boolean(),
  }),
  fc.record({ type: fc.constant('does-not-know') }),
) as fc.Arbitrary<Reading>;

const observation: fc.Arbitrary<FactObservation> = fc.record({
  fact: fc.constantFrom(...factIds),
  reading,
  at: fc.integer({ min: -300 * 3600, max: 120 }).map((seconds) => epochSeconds(at + seconds)),
  source: fc.constantFrom('said', 'measured', 'told', 'profile'),
});

const column = fc.array(fc.option(fc.double({ min: -100, max: 1000, noNaN: true })), { minLength: 1, maxLength: 9 });
const forecast = fc
  .record({
    start: fc.integer({ min: -60, max: 3 }),
    hours: fc.integer({ min: 0, max: 240 }),
    age: fc.integer({ min: -2, max: 60 }),
    columns: fc.record(
      {
        temperature2mC: column,
        relativeHumidity2mPercent: column,
        precipitationMm: column,
        windSpeed10mKmh: column,
        cloudCoverPercent: column,
        et0Mm: column,
      },
      { requiredKeys: [] },
    ),
  })
  .map(({ start, hours, age, columns }) =>
    buildForecast({
      from: epochSeconds(utc('2026-10-25T00:00Z') + start * 3600),
      hours,
      fetchedAt: epochSeconds(at - age * 3600),
      columns: Object.fromEntries(
        Object.entries(columns).map(([name, values]) => [
          name,
          (_: number, i: number) => values[i % values.length] ?? null,
        ]),
      ),
    }),
  );

test('whatever was said and forecast, each fact is known within its kind and range, or unknown', () => {
  fc.assert(
    fc.property(fc.array(observation, { maxLength: 25 }), fc.option(forecast), (observations, weather) => {
      const facts = resolveFacts({
        observations,
        forecast: weather,
        at,
        zone: 'Europe/London',
        parameters,
        registry: coreFacts,
      });
      for (const id of factIds) {
        const fact = facts[id]!;
        const { type, range, choices } = factDefinition(id);
        if (!fact.known) continue;
        expect(fact.type, id).toBe(type === 'country' ? 'choice' : type);
        expect(fact.goodUntil, id).toBeGreaterThan(at);
        if (fact.type === 'number') {
          expect(fact.low, id).toBeGreaterThanOrEqual(range![0]);
          expect(fact.low, id).toBeLessThanOrEqual(fact.value);
          expect(fact.value, id).toBeLessThanOrEqual(fact.high);
          expect(fact.high, id).toBeLessThanOrEqual(range![1]);
        }
        if (fact.type === 'choice') expect(fact.possible.length, id).toBeGreaterThan(0);
        if (fact.type === 'choice' && choices) expect(choices, id).toEqual(expect.arrayContaining([...fact.possible]));
        if (fact.type === 'signs') expect(fact.possible).toEqual(expect.arrayContaining([...fact.present]));
      }
    }),
    { numRuns: 400 },
  );
});
