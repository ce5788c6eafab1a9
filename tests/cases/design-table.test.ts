import { expect, test } from 'vitest';
import { parameterOf } from '../../src/core/rules/reads.ts';
import type { Comparison, Condition, Rule } from '../../src/core/rules/types.ts';
import { shipped } from './shipped-pack.ts';

/**
 * What each rule is to be, beside the files: id, effect, authority, what lifts it, and its condition with the limits filled in.
 * Common practice, no source, but for: wind 6.5 and 9.6 km/h, UK Code of practice for using plant protection products (9.6 and
 * 14.5 from memory); 4 mm/h, Met Office rain classes; season, leaves and doses, product labels as the farming press reports them.
 */
const table = `
outside-region          | stop   | label    | season | field.country noneOf GB-ENG,GB-SCT,GB-WLS
season-not-open         | hold   | label    | days   | all(date atLeast 08-01; date below 10-01)
season-closed           | stop   | label    | season | all(date above 01-31; date below 08-01)
season-best             | advise | practice | -      | any(date below 10-20; date above 12-10)
one-application         | stop   | label    | season | treatment.alreadyApplied is yes
crop-too-small          | hold   | label    | days   | crop.trueLeaves below 3
nothing-to-control      | hold   | practice | days   | weed.present is no
weed-too-big            | advise | practice | -      | weed.tillers above 3
partner-in-tank         | advise | label    | -      | treatment.partnerInTank is yes
peaty-soil              | advise | label    | -      | field.organicSoil is yes
soil-too-warm           | hold   | practice | days   | soil.temperature30cmC above 10
soil-warming            | hold   | practice | days   | all(soil.temperature30cmC above 9; soil.temperatureTrendCPerDay above 0.1)
soil-too-dry            | hold   | practice | days   | eitherOf(soil.feel oneOf dry,slightly-moist; soil.fieldCapacityPercent below 80)
soil-saturated          | hold   | water    | days   | eitherOf(soil.feel is saturated; soil.fieldCapacityPercent above 105)
soil-cracked            | hold   | water    | days   | soil.surface has cracked
water-standing          | hold   | water    | days   | any(soil.surface has ponded; soil.drainsRunning is yes)
drains-about-to-run     | hold   | water    | days   | all(field.drained is yes; soil.drainsExpected7d is yes)
soil-sticky             | hold   | practice | days   | soil.surface has sticky
soil-frozen             | hold   | water    | days   | any(soil.surface has frozen; soil.surface has snow)
frost-on-leaves         | hold   | practice | hours  | any(crop.frostOnLeaves is yes; air.temperatureC atMost 0)
heavy-rain-coming       | hold   | water    | hours  | any(rain.next48hMm atLeast 10; rain.next48hMaxMmPerH atLeast 4)
rain-on-unfit-soil      | stop   | water    | days   | all(heavy-rain-coming; any(soil-cracked; water-standing; soil-saturated; soil-too-dry))
water-risk-field        | stop   | water    | season | all(field.protectedWaterArea is inside; field.waterDistanceM atMost 50; any(field.slopePercent atLeast 5; field.drained is yes))
water-risk-drained      | hold   | water    | person | all(field.protectedWaterArea is inside; field.drained is yes; field.waterPlanAgreed is no)
slope-to-water          | advise | water    | -      | all(field.slopePercent atLeast 2; field.waterDistanceM atMost 50)
loosened-soil           | hold   | water    | person | all(field.loosenedThisSeason is yes; field.waterPlanAgreed is no)
near-water              | hold   | label    | person | all(field.waterDistanceM atMost 20; field.bufferMarked is no)
too-windy               | hold   | practice | hours  | wind.boomKmh above 9.6
gusty                   | hold   | practice | hours  | wind.gustKmh above 14.5
breezy                  | advise | practice | -      | all(wind.boomKmh atLeast 6.5; wind.boomKmh atMost 9.6)
wind-towards-sensitive  | hold   | practice | hours  | all(wind.boomKmh above 6.5; wind.towardsSensitive is yes)
inversion               | hold   | practice | hours  | air.inversionRisk is yes
raining-now             | hold   | practice | hours  | rain.nowMmPerH above 0.2
dark                    | advise | practice | -      | sun.daylight is no
delta-t                 | advise | practice | -      | any(air.deltaTC below 2; air.deltaTC above 8)
`;

const expected = table
  .trim()
  .split('\n')
  .map((line) => line.split('|').map((cell) => cell.trim()));

const values = new Map(shipped.pack.parameters.map(({ id, value }) => [id, [value].flat().join(',')]));

function comparisonText(comparison: Comparison): string {
  const [[op, operand] = ['', '']] = Object.entries(comparison).filter(([key]) => key !== 'fact');
  const parameter = parameterOf(comparison);
  const limit = parameter === null ? [operand].flat().join(',') : values.get(parameter);
  return `${comparison.fact} ${op} ${limit}`;
}

function conditionText(condition: Condition): string {
  if ('fact' in condition) return comparisonText(condition);
  if ('rule' in condition) return condition.rule;
  const [[group, members] = ['', []]] = Object.entries(condition);
  return `${group}(${[members].flat().map(conditionText).join('; ')})`;
}

function rowOf({ id, effect, authority, lifts, when }: Rule): string[] {
  return [id, effect, authority, lifts ?? '-', conditionText(when)];
}

test.each(expected.map((row) => [row[0]!, row] as const))('%s is as agreed', (id, row) => {
  const rule = shipped.pack.rules.find((each) => each.id === id);
  expect(rule && rowOf(rule)).toEqual(row);
});

test('there is no rule beyond the table', () => {
  expect(shipped.pack.rules.map(({ id }) => id).sort()).toEqual(expected.map(([id]) => id!).sort());
});

test('of the rules of practice, those that keep drift off others are protected', () => {
  const ids = shipped.pack.rules.filter(({ protectedByPractice }) => protectedByPractice).map(({ id }) => id);
  expect(ids.sort()).toEqual(['gusty', 'inversion', 'too-windy', 'wind-towards-sensitive']);
});

test.each([
  ['goodForSoilSeenHours', 24],
  ['goodForSoilSeenRainMm', 5],
  ['goodForStageDays', 10],
  ['goodForSeenNowHours', 1],
  ['goodForToldForecastHours', 12],
  ['goodForSoilTemperatureHours', 24],
  ['forecastFreshHours', 6],
  ['forecastOldestHours', 48],
  ['noFrostAboveC', 4],
  ['drainsSurplusMm', 5],
  ['usualDoseGPerHa', 750],
  ['severeDoseGPerHa', 840],
  ['severeDensityPlantsPerM2', 100],
  ['productStepLPerHa', 0.01],
  /** FAO Irrigation and Drainage Paper 56, Table 12: rapeseed, initial stage. */
  ['youngCropCoefficient', 0.35],
])('%s is %d', (id, value) => {
  expect(values.get(id)).toBe(String(value));
});
