import { expect, test } from 'vitest';
import { coreFacts, definitionsOf } from '../../../../src/core/facts/registry/index.ts';
import type { FactDefinition } from '../../../../src/core/facts/types.ts';
import { indirectReach } from '../../../../src/core/rules/overlay/protect/parameter-kinds.ts';

const night: FactDefinition = {
  label: 'coldest of the night',
  type: 'number',
  unit: 'C',
  obtained: ['asked', 'forecast'],
  goodFor: { kind: 'hours', parameter: 'goodForNightHours' },
  forecast: { variable: 'air-temperature', over: { hoursAhead: 'nightHours' }, take: 'min' },
};
const definitionOf = definitionsOf({ ...coreFacts, 'air.nightC': night });
const reach = (parameter: string, ...facts: string[]) => indirectReach(parameter, new Set(facts), definitionOf);

test.each([
  ['goodForSoilSeenHours', 'soil.surface', 'ageing'],
  ['goodForSoilSeenRainMm', 'soil.surface', 'ageing'],
  ['fieldProfileSeasonStart', 'field.drained', 'ageing'],
  ['forecastOldestHours', 'wind.boomKmh', 'ageing'],
  ['forecastWindBandKmh', 'wind.gustKmh', 'band'],
  ['forecastFreshHours', 'rain.next48hMm', 'band'],
  ['drainsSurplusMm', 'soil.drainsExpected7d', 'derivation'],
  ['goodForNightHours', 'air.nightC', 'ageing'],
  ['forecastTemperatureBandC', 'air.nightC', 'band'],
  ['nightHours', 'air.nightC', 'derivation'],
])('%s bears on %s by %s', (parameter, fact, kind) => {
  expect(reach(parameter, fact, 'treatment.partnerInTank')).toEqual({ kind, facts: [fact] });
});

test.each([
  ['goodForSoilSeenHours', 'wind.boomKmh'],
  ['forecastWindBandKmh', 'soil.surface'],
  ['nightHours', 'soil.surface'],
  ['windowLikelyLeast', 'wind.boomKmh'],
  ['soilTemperatureMaxC', 'soil.temperature30cmC'],
])('%s does not bear on %s by the way', (parameter, fact) => {
  expect(reach(parameter, fact)).toBeNull();
});

test('what the dose is reckoned from always counts', () => {
  expect(reach('usualDoseGPerHa')).toEqual({ kind: 'dose', facts: [] });
});
