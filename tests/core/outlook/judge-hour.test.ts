import { describe, expect, test } from 'vitest';
import type { FactId } from '../../../src/core/facts/registry/index.ts';
import type { ResolvedFacts } from '../../../src/core/facts/resolved.ts';
import type { Known, KnownSigns, Resolved, UnknownReason } from '../../../src/core/facts/types.ts';
import type { HourFacts } from '../../../src/core/outlook/hour-facts.ts';
import { judgeHour } from '../../../src/core/outlook/judge-hour.ts';
import { type JudgedRule, rulesJudge } from '../../../src/core/outlook/judge-rules.ts';
import { steadyFacts } from '../../../src/core/outlook/steady-facts.ts';
import { knownChoice, knownDate, knownNumber, knownSigns } from '../../../src/core/rules/analyse/known-values.ts';
import type { Outcome } from '../../../src/core/rules/trace-types.ts';
import type { Effect, Lifts } from '../../../src/core/rules/types.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { buildForecast } from '../../generators/forecast.ts';
import { morning } from './field.ts';
import { compare, group, ruleOf } from './small-rules.ts';

const unknown = (reason: UnknownReason): Resolved => ({ known: false, reason });

function hourFacts(held: ResolvedFacts, aged: readonly FactId[] = [], strict = held): HourFacts {
  const trusted = { forecast: buildForecast({ from: morning, hours: 1 }), growth: 1, oldestAt: epochSeconds(0) };
  return { held, strict, aged, trusted };
}

describe('an hour', () => {
  const wind: FactId = 'wind.boomKmh';
  const judged = (
    effect: Effect,
    lifts: Lifts | null,
    strict: Outcome,
    held: Outcome,
    open: readonly FactId[] = strict === 'unknown' ? [wind] : [],
  ): JudgedRule => ({
    compiled: ruleOf(`${effect} ${lifts}`, compare(wind, 'above', 9), { effect, lifts }),
    strict: { outcome: strict, open },
    held: { outcome: held, open: held === 'unknown' ? open : [] },
  });
  const hour = (rules: readonly JudgedRule[], facts = hourFacts({}), sureness: number | null = 0.7) => {
    const { at, ...rest } = judgeHour(morning, rules, facts, sureness);
    expect(at).toBe(morning);
    const ids = (blocks: typeof rest.ifLifted) => blocks.map(({ rule }) => rule);
    const { hourBlocks, dayBlocks, ifLifted } = rest;
    return { ...rest, hourBlocks: ids(hourBlocks), dayBlocks: ids(dayBlocks), ifLifted: ids(ifLifted) };
  };
  const clear = {
    state: 'clear',
    hourBlocks: [],
    dayBlocks: [],
    lookAgain: [],
    ifLifted: [],
    unknown: [],
    advice: [],
    sureness: 0.7,
  };

  test('in which nothing is met is clear; advice is told and blocks nothing', () => {
    expect(hour([judged('hold', 'hours', 'not-met', 'not-met')])).toEqual(clear);
    expect(hour([judged('advise', null, 'met', 'met'), judged('advise', 'hours', 'unknown', 'unknown')])).toEqual({
      ...clear,
      advice: ['advise null'],
    });
    expect(hour([])).toEqual(clear);
  });

  test('in which a stop or hold is surely met is blocked, by hours or by what takes longer', () => {
    expect(
      hour([
        judged('hold', 'hours', 'met', 'met'),
        judged('stop', 'season', 'met', 'met'),
        judged('hold', 'days', 'met', 'met'),
        judged('hold', 'person', 'met', 'met'),
      ]),
    ).toEqual({
      ...clear,
      state: 'blocked',
      hourBlocks: ['hold hours'],
      dayBlocks: ['stop season', 'hold days', 'hold person'],
    });
  });

  test('tells of each block its effect, who stands behind it and what lifts it, days where nothing is said', () => {
    const rules = [judged('stop', 'hours', 'met', 'met'), judged('hold', null, 'met', 'met')];
    const { hourBlocks, dayBlocks } = judgeHour(morning, rules, hourFacts({}), null);
    expect([hourBlocks, dayBlocks]).toEqual([
      [{ rule: 'stop hours', effect: 'stop', authority: 'practice', lifts: 'hours' }],
      [{ rule: 'hold null', effect: 'hold', authority: 'practice', lifts: 'days' }],
    ]);
  });

  test('met only by what will have aged is clear if that has gone, but one for the season blocks', () => {
    const aged = hourFacts({}, [wind, 'soil.feel']);
    expect(hour([judged('hold', 'days', 'unknown', 'met')], aged)).toEqual({
      ...clear,
      state: 'clear-if',
      ifLifted: ['hold days'],
      lookAgain: [wind],
    });
    expect(hour([judged('hold', 'season', 'unknown', 'met')], aged)).toEqual({
      ...clear,
      state: 'blocked',
      dayBlocks: ['hold season'],
    });
    expect(hour([judged('hold', 'season', 'unknown', 'unknown')], aged)).toMatchObject({ state: 'clear-if' });
    expect(hour([judged('hold', 'days', 'unknown', 'not-met')], aged)).toEqual({
      ...clear,
      state: 'clear-if',
      lookAgain: [wind],
    });
  });

  test.each<[Lifts, UnknownReason, string]>([
    ['hours', 'forecast-gap', 'beyond-forecast'],
    ['days', 'forecast-gap', 'clear-if'],
    ['hours', 'too-old', 'clear-if'],
  ])('left open by a rule that %s lift and a fact unknown for %s is %s', (lifts, reason, state) => {
    expect(hour([judged('hold', lifts, 'unknown', 'unknown')], hourFacts({ [wind]: unknown(reason) }))).toEqual({
      ...clear,
      state,
      unknown: [wind],
      sureness: state === 'beyond-forecast' ? null : 0.7,
    });
  });

  test('is beyond the forecast where one open rule is, whatever comes after it, and blocked before that', () => {
    const facts = hourFacts({ [wind]: unknown('forecast-gap') });
    const beyond = judged('hold', 'hours', 'unknown', 'unknown', ['soil.feel', wind]);
    const open = judged('hold', 'days', 'unknown', 'unknown', ['soil.feel']);
    expect(hour([beyond, open], facts)).toMatchObject({ state: 'beyond-forecast', unknown: ['soil.feel', wind] });
    expect(hour([beyond, judged('hold', 'days', 'met', 'met')], facts)).toMatchObject({ state: 'blocked' });
    expect(hour([judged('hold', 'hours', 'unknown', 'unknown')], hourFacts({ [wind]: knownNumber(1) }))).toMatchObject({
      state: 'clear-if',
    });
  });
});

describe('rules judged hour after hour', () => {
  const windy = ruleOf('windy', compare('wind.boomKmh', 'above', 9));
  const both = ruleOf('both', group('all', compare('soil.feel', 'is', 'dry'), compare('wind.boomKmh', 'above', 9)));
  const felt = knownChoice('dry');
  const strong = knownNumber(12);

  test('are told as they surely stand, and with what was observed held where that alone leaves them open', () => {
    const judge = rulesJudge();
    const held = { 'soil.feel': felt, 'wind.boomKmh': strong };
    const strict = { ...held, 'soil.feel': unknown('too-old') };
    const open = { outcome: 'unknown', open: ['soil.feel'] };
    const met = { outcome: 'met', open: [] };
    const told = judge([windy, both], hourFacts(held, ['soil.feel'], strict)).map(({ strict: sure, held: then }) => [
      sure,
      then,
    ]);
    expect(told).toEqual([
      [met, met],
      [open, met],
    ]);
    const [again] = rulesJudge()([both], hourFacts(held, ['wind.gustKmh'], strict));
    expect([again!.strict, again!.held]).toEqual([open, open]);
  });

  test('keep what they came to while none of their facts has moved, and are judged anew when one has', () => {
    const judge = rulesJudge();
    const facts = { 'soil.feel': felt, 'wind.boomKmh': strong };
    const first = judge([windy, both], hourFacts(facts));
    const moved = judge([windy, both], hourFacts({ ...facts, 'soil.feel': knownChoice('moist') }));
    expect(moved[0]!.strict).toBe(first[0]!.strict);
    expect(moved[1]!.strict).toEqual({ outcome: 'not-met', open: [] });
    expect(judge([windy, both], hourFacts({ ...facts, 'wind.boomKmh': knownNumber(1) }))[0]!.strict.outcome).toBe(
      'not-met',
    );
  });
});

describe('a fact hour after hour', () => {
  const signs: KnownSigns = knownSigns(['snow']);
  const later = (one: Known): Known => ({
    ...one,
    at: epochSeconds(3600),
    goodUntil: epochSeconds(7200),
    note: 'later',
  });

  test.each<[string, Resolved, Resolved]>([
    ['number', knownNumber(9), later(knownNumber(9))],
    ['choice', knownChoice('dry'), later(knownChoice('dry'))],
    ['what is not known', unknown('too-old'), { known: false, reason: 'too-old', note: 'x' }],
  ])('keeps its earlier object where nothing that a rule reads has changed: a %s', (_, early, late) => {
    const steady = steadyFacts();
    expect(steady('wind.boomKmh', early)).toBe(early);
    expect(steady('wind.boomKmh', late)).toBe(early);
    expect(steady('wind.gustKmh', late)).toBe(late);
  });

  const number = knownNumber(9);
  test.each<[string, Resolved, Resolved]>([
    ['another value', number, { ...number, value: 8.9 }],
    ['another low end', number, { ...number, low: 8 }],
    ['another high end', number, { ...number, high: 10 }],
    ['another source', number, { ...number, source: 'forecast' }],
    ['no longer known', number, unknown('too-old')],
    ['known now', unknown('too-old'), number],
    ['another reason', unknown('too-old'), unknown('forecast-gap')],
    ['another choice', knownChoice('dry'), knownChoice('wet')],
    ['one choice more', knownChoice('dry'), { ...knownChoice('dry'), possible: ['dry', 'wet'] }],
    ['another kind', number, knownChoice('dry')],
    ['a choice that becomes a number', knownChoice('dry'), number],
    ['a day', knownDate('2026-11-06'), knownDate('2026-11-07')],
    ['signs', signs, { ...signs }],
  ])('is a new one: %s', (_, early, late) => {
    const steady = steadyFacts();
    steady('wind.boomKmh', early);
    expect(steady('wind.boomKmh', late)).toBe(late);
    expect(steady('wind.boomKmh', late)).toBe(late);
  });
});
