import { expect, test } from 'vitest';
import { coreFacts, definitionsOf } from '../../../../src/core/facts/registry/index.ts';
import type { FactDefinition, ForecastTaking, ForecastVariable } from '../../../../src/core/facts/types.ts';
import { indirectReach } from '../../../../src/core/rules/overlay/protect/parameter-kinds.ts';

const night: FactDefinition = {
  label: 'coldest of the night',
  type: 'number',
  unit: 'C',
  obtained: ['asked', 'forecast'],
  goodFor: { kind: 'hours', parameter: 'goodForNightHours' },
  forecast: { variable: 'air-temperature', over: { hoursAhead: 'nightHours' }, take: 'min' },
};
const taken = (variable: ForecastVariable, hoursAhead: string, take: ForecastTaking['take']): FactDefinition => ({
  ...night,
  goodFor: { kind: 'season' },
  forecast: { variable, over: { hoursAhead }, take },
});
const definitionOf = definitionsOf({
  ...coreFacts,
  'air.nightC': night,
  'rain.beforeDryMm': taken('rain', 'dryHours', 'sum'),
  'rain.overNightMm': taken('rain', 'nightHours', 'max'),
  'air.meanHumidityPercent': taken('relative-humidity', 'meanHours', 'mean'),
  'crop.leavesSeen': {
    label: 'leaves',
    type: 'choice',
    unit: null,
    obtained: ['asked'],
    goodFor: { kind: 'hours', parameter: 'dryHours' },
  },
});
const reach = (parameter: string, ...facts: string[]) => indirectReach(parameter, new Set(facts), definitionOf);

test.each([
  ['goodForSoilSeenHours', 'soil.surface', 'ageing', null],
  ['goodForSoilSeenRainMm', 'soil.surface', 'ageing', null],
  ['fieldProfileSeasonStart', 'field.drained', 'ageing', null],
  ['forecastOldestHours', 'wind.boomKmh', 'ageing', null],
  ['forecastWindBandKmh', 'wind.gustKmh', 'band', null],
  ['forecastFreshHours', 'rain.next48hMm', 'band', null],
  ['drainsSurplusMm', 'soil.drainsExpected7d', 'derivation', { moved: 'lower', way: 'yes' }],
  ['goodForNightHours', 'air.nightC', 'ageing', null],
  ['forecastTemperatureBandC', 'air.nightC', 'band', null],
  ['nightHours', 'air.nightC', 'derivation', { moved: 'higher', way: 'lower' }],
  ['dryHours', 'rain.beforeDryMm', 'derivation', { moved: 'higher', way: 'higher' }],
  ['meanHours', 'air.meanHumidityPercent', 'derivation', null],
  ['inversionCloudAtMostPercent', 'air.inversionRisk', 'derivation', { moved: 'higher', way: 'yes' }],
  ['boomHeightAboveCropM', 'wind.boomKmh', 'derivation', null],
])('%s bears on %s by %s; moved %o', (parameter, fact, kind, rises) => {
  expect(reach(parameter, fact, 'treatment.partnerInTank')).toEqual({ kind, facts: [fact], rises });
});

test('hours that tell the least of one fact and the most of another let neither move', () => {
  expect(reach('nightHours', 'air.nightC', 'rain.overNightMm')).toEqual({
    kind: 'derivation',
    facts: ['air.nightC', 'rain.overNightMm'],
    rises: null,
  });
});

test('hours that also tell for how long a fact stays good do not move', () => {
  expect(reach('dryHours', 'rain.beforeDryMm', 'crop.leavesSeen')?.rises).toBeNull();
});

test.each([
  ['goodForSoilSeenHours', 'wind.boomKmh'],
  ['forecastWindBandKmh', 'soil.surface'],
  ['nightHours', 'soil.surface'],
  ['windowLikelyLeast', 'wind.boomKmh'],
  ['soilTemperatureMaxC', 'soil.temperature30cmC'],
  ['constructor', 'wind.boomKmh'],
])('%s does not bear on %s by the way', (parameter, fact) => {
  expect(reach(parameter, fact)).toBeNull();
});

test('what the dose is reckoned from always counts', () => {
  expect(reach('usualDoseGPerHa')).toEqual({ kind: 'dose', facts: [], rises: null });
});
