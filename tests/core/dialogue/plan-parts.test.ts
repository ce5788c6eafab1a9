import { describe, expect, test } from 'vitest';
import { type PlanState, planOf } from '../../../src/core/dialogue/plan.ts';
import { compiledFor } from '../../../src/core/dialogue/standing.ts';
import type { FactId } from '../../../src/core/facts/registry/index.ts';
import { resolveFacts } from '../../../src/core/facts/resolve.ts';
import type { Pack, Question } from '../../../src/core/rules/pack-types.ts';
import { evaluateReference } from '../../../src/core/rules/reference.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { dryland, fieldLess, fitMorning } from './ready-field.ts';
import { morning } from './talk.ts';

const { pack } = shipped;
const fresh: PlanState = { spent: new Set(), checkRest: false, wantsDose: false, forecast: 'failed' };
type Values = Parameters<typeof fieldLess>[0];

function planned(values: Values, without: FactId[], state: Partial<PlanState> = {}, rules: Pack = pack) {
  const compiled = compiledFor(rules, morning);
  const { observations } = fieldLess(values, ...without);
  const { parameters, registry } = compiled;
  const facts = resolveFacts({ observations, forecast: null, at: morning, zone: rules.zone, parameters, registry });
  const plan = planOf(rules, evaluateReference(compiled, facts), facts, { ...fresh, ...state });
  return { ...plan, question: plan.question?.id ?? null, together: plan.together.map(({ id }) => id) };
}
const changed = (id: string, more: Partial<Question>): Pack => ({
  ...pack,
  questions: pack.questions.map((one) => (one.id === id ? { ...one, ...more } : one)),
});

describe('what is asked with a question', () => {
  test('is the first that it names and that is open too, one at most', () => {
    const two: FactId[] = ['soil.feel', 'soil.surface'];
    expect(planned(fitMorning, two)).toMatchObject({ question: 'surface', together: ['soil-feel'] });
    const more = changed('surface', { with: ['no-such', 'soil-temperature', 'soil-feel'] });
    expect(planned(fitMorning, [...two, 'soil.temperature30cmC'], {}, more).together).toHaveLength(1);
    expect(planned(fitMorning, ['soil.surface']).together).toEqual([]);
    expect(planned(fitMorning, two, {}, changed('surface', { with: [] })).together).toEqual([]);
  });

  test('is for the dose another of the dose, one after the other', () => {
    const dose = (spent: string[], values: Values = fitMorning) =>
      planned(values, [], { wantsDose: true, spent: new Set(spent) });
    expect(dose([]).question).toBe('product-content');
    expect(dose(['product-content']).question).toBe('label-maximum');
    expect(dose([], { ...fitMorning, 'product.activeGPerL': 500 }).question).toBe('label-maximum');
    expect(dose([], { 'field.country': 'FR' }).question).toBeNull();
    expect(dose(['product-content', 'label-maximum', 'weed-count'])).toMatchObject({
      question: null,
      waitsForForecast: false,
    });
  });
});

describe('the place', () => {
  const near = { ...fitMorning, 'field.longitude': -2 };

  test.each<[string, Values, FactId[], Partial<PlanState>, string | null]>([
    [
      'is asked for the weather that a forecast would tell',
      fitMorning,
      ['wind.boomKmh'],
      { forecast: 'no-place' },
      'place',
    ],
    ['is asked for where half of it is not known', near, ['wind.boomKmh'], { forecast: 'no-place' }, 'place'],
    ['is not asked twice', fitMorning, ['wind.boomKmh'], { forecast: 'no-place', spent: new Set(['place']) }, 'wind'],
    [
      'is not asked for where it is known',
      { ...near, 'field.latitude': 54 },
      ['wind.boomKmh'],
      { forecast: 'no-place' },
      'wind',
    ],
    ['is not asked for what no forecast tells', fitMorning, ['soil.feel'], { forecast: 'no-place' }, 'soil-feel'],
    ['is not asked for where the forecast failed', fitMorning, ['wind.boomKmh'], { forecast: 'failed' }, 'wind'],
    ['is not asked for where nothing is open', fitMorning, [], { forecast: 'no-place' }, null],
    [
      'holds the weather back but not the soil',
      fitMorning,
      ['wind.boomKmh', 'soil.feel'],
      { forecast: 'no-place', current: 'soil-feel' },
      'soil-feel',
    ],
  ])('%s', (_, values, without, state, question) => {
    expect(planned(values, without, state).question).toBe(question);
  });
});

describe('waiting for the forecast', () => {
  test.each<[string, FactId[], Partial<PlanState>, boolean, string | null]>([
    ['with only weather open', ['wind.boomKmh'], { forecast: 'coming' }, true, null],
    [
      'with frost on the leaves open, which it tells',
      ['crop.frostOnLeaves', 'air.temperatureC'],
      { forecast: 'coming' },
      true,
      null,
    ],
    ['with an inversion open, which it tells', ['air.inversionRisk'], { forecast: 'coming' }, true, null],
    ['not once it came', ['wind.boomKmh'], { forecast: 'there' }, false, 'wind'],
    ['not with the soil open', ['soil.feel', 'wind.boomKmh'], { forecast: 'coming' }, false, 'soil-feel'],
    [
      'not with what is open spent',
      ['rain.nowMmPerH'],
      { forecast: 'coming', spent: new Set(['rain-now']) },
      false,
      null,
    ],
  ])('%s: %s %s %s', (_, without, state, waits, question) => {
    expect(planned(fitMorning, without, state)).toMatchObject({ waitsForForecast: waits, question });
  });

  test('nor for the dose', () => {
    expect(planned(fitMorning, ['wind.boomKmh'], { forecast: 'coming', wantsDose: true })).toMatchObject({
      question: null,
      waitsForForecast: true,
    });
  });
});

describe('the rest', () => {
  const warm = { ...dryland, 'soil.temperature30cmC': 12 };

  test.each<[string, Values, FactId[], Partial<PlanState>, boolean]>([
    ['is left past a hold', warm, [], {}, true],
    ['is not left where it is being checked', warm, [], { checkRest: true }, false],
    [
      'is left past a stop that is not of the season',
      { ...fitMorning, 'crop.frostOnLeaves': 'yes' },
      ['soil.feel'],
      {},
      true,
    ],
    ['is not left past a stop of the season', { 'field.country': 'FR' }, [], {}, false],
    ['is not left while a question is open', { 'soil.temperature30cmC': 12 }, [], {}, false],
    ['is not left where all is known', { ...fitMorning, 'soil.feel': 'dry' }, [], {}, false],
  ])('%s', (_, values, without, state, left) => {
    expect(planned(values, without, state).restLeft).toBe(left);
  });
});
