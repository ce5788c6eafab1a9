import { describe, expect, test } from 'vitest';
import type { ResolvedFacts } from '../../../src/core/facts/resolved.ts';
import type { KnownChoice, KnownNumber, Source } from '../../../src/core/facts/types.ts';
import { hourSureness } from '../../../src/core/outlook/hour-sureness.ts';
import type { JudgedRule } from '../../../src/core/outlook/judge-rules.ts';
import { chanceMet, type WholeBands } from '../../../src/core/outlook/sureness.ts';
import { knownChoice, knownNumber, knownSigns } from '../../../src/core/rules/analyse/known-values.ts';
import type { CompiledCondition, CompiledRule, Operator } from '../../../src/core/rules/types.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { buildForecast } from '../../generators/forecast.ts';
import { testParameters } from '../../generators/parameters.ts';
import { morning } from './field.ts';
import { compare, group, ruleOf } from './small-rules.ts';

/** A value with a band of so much to either side. */
const banded = (value: number, half: number, source: Source = 'forecast'): KnownNumber => ({
  ...knownNumber(value),
  low: value - half,
  high: value + half,
  source,
});

const chance = (condition: CompiledCondition, facts: ResolvedFacts, bands: WholeBands = {}, reach = 2) =>
  chanceMet({ condition }, facts, bands, reach);
const windAbove = (limit: number, op: Operator = 'above') => compare('wind.boomKmh', op, limit);

describe('the chance that a comparison holds', () => {
  // Values of the standard normal distribution: P(z < 1) = 0.8413, P(z < 2) = 0.9772 (Abramowitz & Stegun 1964, table 26.1).
  test.each<[Operator, limit: number, reach: number, expected: number]>([
    ['above', 10, 2, 0.5],
    ['above', 11, 2, 1 - 0.8413],
    ['above', 9, 2, 0.8413],
    ['above', 12, 2, 1 - 0.9772],
    ['above', 12, 1, 1 - 0.8413],
    ['atLeast', 11, 2, 1 - 0.8413],
    ['below', 11, 2, 0.8413],
    ['atMost', 9, 2, 1 - 0.8413],
  ])('10 km/h, 2 to either side: %s %d with a band of %d standard errors: %d', (op, limit, reach, expected) => {
    expect(chance(windAbove(limit, op), { 'wind.boomKmh': banded(10, 2) }, {}, reach)).toBeCloseTo(expected, 4);
  });

  test('takes the wider side of a band that is not even, and another band where one is given', () => {
    const uneven = { ...banded(10, 2), low: 9.5 };
    expect(chance(windAbove(11), { 'wind.boomKmh': uneven })).toBeCloseTo(1 - 0.8413, 4);
    const given = { 'wind.boomKmh': { value: 9, low: 7, high: 9.5 } };
    expect(chance(windAbove(10), { 'wind.boomKmh': knownNumber(20) }, given)).toBeCloseTo(1 - 0.8413, 4);
  });

  test.each<[Operator, number, number]>([
    ['above', 10, 0],
    ['above', 9.9, 1],
    ['above', 10.1, 0],
    ['atLeast', 10, 1],
    ['atLeast', 10.1, 0],
    ['below', 10, 0],
    ['below', 10.1, 1],
    ['atMost', 10, 1],
    ['atMost', 9.9, 0],
  ])('without a band 10 km/h is %s %d with a chance of %d', (op, limit, expected) => {
    expect(chance(windAbove(limit, op), { 'wind.boomKmh': knownNumber(10) })).toBe(expected);
  });

  test.each<[Operator, string | readonly string[], number]>([
    ['is', 'dry', 1],
    ['is', 'wet', 0],
    ['isNot', 'dry', 0],
    ['isNot', 'wet', 1],
    ['oneOf', ['wet', 'dry'], 1],
    ['oneOf', ['wet', 'moist'], 0],
    ['noneOf', ['wet', 'dry'], 0],
    ['noneOf', ['wet', 'moist'], 1],
  ])('of a choice is certain: dry %s %j: %d', (op, value, expected) => {
    expect(chance(compare('soil.feel', op, value), { 'soil.feel': knownChoice('dry') })).toBe(expected);
  });

  test('is not told of what is not known, of one of several choices, of signs', () => {
    const several: KnownChoice = { ...knownChoice('dry'), possible: ['dry', 'wet'] };
    expect(chance(windAbove(9), {})).toBeNull();
    expect(chance(compare('soil.feel', 'is', 'dry'), { 'soil.feel': several })).toBeNull();
    expect(chance(compare('soil.surface', 'has', 'snow'), { 'soil.surface': knownSigns(['snow']) })).toBeNull();
    expect(chance(windAbove(9), { 'wind.boomKmh': knownChoice('calm') })).toBeNull();
    expect(chance(compare('soil.feel', 'is', 'dry'), { 'soil.feel': knownNumber(1) })).toBeNull();
  });
});

describe('the chance that several hold together', () => {
  const half = windAbove(10);
  const gusts = compare('wind.gustKmh', 'above', 21);
  const open = compare('soil.feel', 'is', 'dry');
  const facts = { 'wind.boomKmh': banded(10, 2), 'wind.gustKmh': banded(20, 2) };
  const one = 1 - 0.8413;

  test.each<[string, CompiledCondition, number | null]>([
    ['all: the product', group('all', half, gusts), 0.5 * one],
    ['any: one less that of none', group('any', half, gusts), 1 - 0.5 * (1 - one)],
    ['either of two ways: the same', group('eitherOf', half, gusts), 1 - 0.5 * (1 - one)],
    ['not: what is left', { kind: 'not', member: gusts }, 1 - one],
    ['another rule: its own', { kind: 'rule', rule: 'x', member: gusts }, one],
    ['what is not known is not counted in all', group('all', open, gusts), one],
    ['nor in any', group('any', open, gusts), one],
    ['of what is not known none is told', group('all', open, { kind: 'not', member: open }), null],
    ['nor within a group', group('any', group('all', open), { kind: 'rule', rule: 'x', member: open }), null],
  ])('%s', (_, condition, expected) => {
    const found = chance(condition, facts);
    if (expected === null) expect(found).toBeNull();
    else expect(found).toBeCloseTo(expected, 4);
  });
});

describe('how sure an hour is', () => {
  const parameters = testParameters({
    forecastBandStandardErrors: 2,
    forecastRainBandShare: 0.5,
    heavyRainMissedSharePerDay: 0.1,
  });
  const [total, heaviest] = ['rain.next48hMm', 'rain.next48hMaxMmPerH'] as const;
  const windy = ruleOf('windy', windAbove(11));
  const gusty = ruleOf('gusty', compare('wind.gustKmh', 'above', 20));
  const wet = ruleOf('wet', group('any', compare(total, 'above', 10), compare(heaviest, 'above', 4)));
  const winds = { 'wind.boomKmh': banded(10, 2), 'wind.gustKmh': banded(20, 2) };
  const rained = (mm: number) => ({ ...knownNumber(mm), source: 'forecast' as const });

  /** Of an hour in which rain falls as given in the first hour to come, and by members of an ensemble likewise. */
  function sure(
    rules: readonly CompiledRule[],
    facts: ResolvedFacts,
    { leadDays = 0, rainMm = 0, members = [] as readonly number[] } = {},
  ) {
    const judged = rules.map((compiled): JudgedRule => {
      const open = { outcome: 'unknown', open: [] } as const;
      return { compiled, strict: open, held: open };
    });
    const columns = { precipitationMm: (_: number, index: number) => (index === 1 ? rainMm : 0) };
    const forecast = buildForecast({ from: morning, hours: 72, columns });
    const courses = members.map((mm) => forecast.times.map((_, index) => (index === 1 ? mm : 0)));
    const trusted = {
      forecast: courses.length > 0 ? { ...forecast, precipitationMembersMm: courses } : forecast,
      growth: 1,
      oldestAt: epochSeconds(morning + 86_400),
    };
    return hourSureness(judged, { held: facts, strict: facts, aged: [], trusted }, morning, leadDays, parameters);
  }

  test('is the chance that no rule that hours lift is met, to a thousandth; other rules and advice do not count', () => {
    const others = [
      ruleOf('days', windAbove(0), { lifts: 'days' }),
      ruleOf('advice', windAbove(0), { effect: 'advise', lifts: 'hours' }),
      ruleOf('advice without', windAbove(0), { effect: 'advise', lifts: null }),
    ];
    expect(sure([windy, gusty, ...others], winds)).toEqual({ all: 0.421, rainMembers: null });
    expect(sure([windy], winds).all).toBe(0.841);
    expect(sure([ruleOf('stop', windAbove(11), { effect: 'stop' })], winds).all).toBe(0.841);
    expect(sure(others, winds)).toEqual({ all: null, rainMembers: null });
    expect(sure([windy], {}).all).toBeNull();
  });

  test('falls with the days ahead by the heavy rain that a forecast misses, where rain is of the forecast', () => {
    const facts = { ...winds, [total]: rained(1), [heaviest]: rained(1) };
    expect(sure([wet], facts).all).toBe(1);
    expect(sure([wet], facts, { leadDays: 2 }).all).toBe(0.81);
    expect(sure([wet, windy], facts, { leadDays: 2 }).all).toBe(0.681);
    const said = { ...winds, [total]: knownNumber(1), [heaviest]: knownNumber(1) };
    expect(sure([wet], said, { leadDays: 2 }).all).toBe(1);
  });

  test('counts rain by the whole band of the forecast, not by its cautious end', () => {
    // 4 mm in one hour with a band of half to either side: the hour is as likely above 4 mm/h as below.
    const facts = { [total]: rained(6), [heaviest]: rained(6) };
    expect(sure([wet], facts, { rainMm: 4 }).all).toBe(0.5);
    const saidTotal = { [total]: knownNumber(99), [heaviest]: rained(6) };
    expect(sure([wet], saidTotal, { rainMm: 1 }).all).toBe(0);
    const saidHeaviest = { [total]: rained(6), [heaviest]: knownNumber(99) };
    expect(sure([wet], saidHeaviest, { rainMm: 1 }).all).toBe(0);
  });

  test('counts rain by the share of members of an ensemble where there is one', () => {
    const facts = { ...winds, [total]: rained(6), [heaviest]: rained(6) };
    const members = [0, 1, 3, 5];
    expect(sure([wet], facts, { members, leadDays: 2 })).toEqual({ all: 0.75, rainMembers: 0.75 });
    expect(sure([wet, windy], facts, { members })).toEqual({ all: 0.631, rainMembers: 0.75 });
    expect(sure([windy], facts, { members })).toEqual({ all: 0.841, rainMembers: null });
    expect(sure([wet], { [total]: knownNumber(6), [heaviest]: knownNumber(6) }, { members }).rainMembers).toBeNull();
  });
});
