import { expect, test } from 'vitest';
import type { FactContext } from '../../../src/core/facts/context.ts';
import { derivations } from '../../../src/core/facts/derive/index.ts';
import { derivationReads, factsBehind } from '../../../src/core/facts/derive/reads.ts';
import { parseFacts } from '../../../src/core/facts/parse/index.ts';
import { coreFacts, type FactId } from '../../../src/core/facts/registry/index.ts';
import { contextOf } from '../../../src/core/facts/resolve.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { buildForecast } from '../../generators/forecast.ts';
import { testParameters } from '../../generators/parameters.ts';

const at = epochSeconds(Date.UTC(2026, 10, 6, 9) / 1000);
const daysBefore = (days: number) => new Date((at - days * 86_400) * 1000).toISOString();
const field = {
  'field.latitude': 53,
  'field.longitude': -1,
  'field.texture': 'clay-loam',
  'field.drained': 'yes',
  'soil.feel': 'moist',
  'wind.boomKmh': 3,
  'air.temperatureC': 7,
  'air.relativeHumidityPercent': 80,
  'soil.temperature30cmC': [
    { value: 9, readAt: daysBefore(4) },
    { value: 8, readAt: daysBefore(1) },
  ],
};

/** What the derivations read of other facts, with much known, with a measurement in place of a feel, and with nothing. */
function readsOfDerivations(): ReadonlyMap<FactId, ReadonlySet<FactId>> {
  const reads = new Map<FactId, Set<FactId>>();
  const forecast = buildForecast({ from: epochSeconds(at - 20 * 86_400), fetchedAt: at, hours: 24 * 28 });
  for (const facts of [field, { ...field, 'soil.feel': null, 'soil.fieldCapacityPercent': 90 }, {}]) {
    const observations = parseFacts(facts, at, 'Europe/London', coreFacts);
    for (const given of [forecast, null]) {
      const input = {
        observations,
        forecast: given,
        at,
        zone: 'Europe/London',
        parameters: testParameters(),
        registry: coreFacts,
      };
      const context = contextOf(input);
      for (const [id, derive] of Object.entries(derivations) as [FactId, (context: FactContext) => unknown][]) {
        const seen = reads.get(id) ?? new Set<FactId>();
        reads.set(id, seen);
        derive({
          ...context,
          fact: (read) => {
            seen.add(read);
            return context.fact(read);
          },
          observations: (read) => {
            if (read !== id) seen.add(read);
            return context.observations(read);
          },
        });
      }
    }
  }
  return reads;
}

test('the table names just what the derivations read', () => {
  for (const [id, seen] of readsOfDerivations()) {
    expect([id, ...[...seen].sort()]).toEqual([id, ...[...(derivationReads[id] ?? [])].sort()]);
  }
});

test('a fact has behind it what it is derived from, and what that is derived from', () => {
  expect(factsBehind(['air.deltaTC'])).toEqual(
    new Set(['air.deltaTC', 'air.temperatureC', 'air.relativeHumidityPercent']),
  );
  expect(factsBehind([])).toEqual(new Set());
});
