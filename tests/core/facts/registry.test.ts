import { describe, expect, test } from 'vitest';
import { derivations } from '../../../src/core/facts/derive/index.ts';
import { forecastSourceOf } from '../../../src/core/facts/forecast-facts.ts';
import { coreFacts } from '../../../src/core/facts/registry/index.ts';
import { comparisonsOf, parameterOf } from '../../../src/core/rules/reads.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { factDefinition, factIds } from '../../fixtures/core-facts.ts';

const { parameters, questions, rules } = shipped.pack;
const entries = factIds.map((id) => [id, factDefinition(id)] as const);
const parameterOfId = new Map(parameters.map((parameter) => [parameter.id, parameter]));

describe.each(entries)('the entry of %s', (id, definition) => {
  const { type, range, plausible, precision, goodFor, obtained } = definition;

  test('says what it is in lower-case words, and its unit where it is a number', () => {
    expect(definition.label).toMatch(/^[a-z0-9]|^Delta T|^Peaty/);
    expect(typeof definition.unit).toBe(type === 'number' ? 'string' : 'object');
  });

  test('says what it can take: a range with precision and decimals shown, or choices', () => {
    const isNumber = type === 'number';
    expect([range, precision, definition.shownDecimals].every((part) => (part !== undefined) === isNumber)).toBe(true);
    expect(definition.choices !== undefined).toBe(type === 'choice' || type === 'signs');
    if (range === undefined) return;
    const [least, most] = plausible ?? range;
    expect([range[0] <= least, least < most, most <= range[1]]).toEqual([true, true, true]);
  });

  test('says how it is come by, and each way is there', () => {
    expect(obtained.length).toBeGreaterThan(0);
    expect(obtained.includes('derived')).toBe(derivations[id] !== undefined);
    expect(obtained.includes('forecast')).toBe(forecastSourceOf(id, coreFacts) !== undefined);
    expect(definition.forecastAt !== undefined).toBe(obtained.includes('forecast'));
  });

  test('is asked for by a question of the pack, or says why none asks', () => {
    const isAsked = questions.some(({ facts }) => facts.includes(id));
    expect(isAsked).toBe(definition.noQuestion === undefined);
    if (isAsked) expect(obtained).toContain('asked');
  });

  test('says how long it stays good, by parameters of the pack in hours, days or mm', () => {
    const unitOf = (name: string) => parameterOfId.get(name)?.unit;
    if (goodFor.kind === 'hours') expect(unitOf(goodFor.parameter)).toBe('h');
    if (goodFor.kind === 'days') expect(unitOf(goodFor.parameter)).toBe('days');
    if (goodFor.kind === 'hours' && goodFor.untilRainMm) expect(unitOf(goodFor.untilRainMm)).toBe('mm');
    expect(definition.profile === true).toBe(goodFor.kind === 'season');
  });
});

const numberLimits = rules.flatMap((rule) =>
  comparisonsOf(rule.when, new Map()).flatMap((comparison) => {
    const value = parameterOfId.get(parameterOf(comparison) ?? '')?.value;
    return typeof value === 'number' ? [[comparison.fact, value, rule.id] as const] : [];
  }),
);

test.each(numberLimits)('%s is kept at least ten times finer than the limit %d of %s', (fact, value) => {
  const steps = value / ((factDefinition(fact).precision ?? Number.NaN) * 10);
  expect(Math.abs(steps - Math.round(steps))).toBeLessThan(1e-9);
});

test('what nobody can see now, and only that, resolves to the cautious end of its band', () => {
  const ahead = entries.filter(([, { forecastAt }]) => forecastAt === 'ahead').map(([id]) => id);
  expect(entries.filter(([, { cautiousEnd }]) => cautiousEnd !== undefined).map(([id]) => id)).toEqual(ahead);
});

test('no fact is both derived and forecast, so that what is derived never hides a forecast', () => {
  expect(factIds.filter((id) => derivations[id] && forecastSourceOf(id, coreFacts))).toEqual([]);
});
