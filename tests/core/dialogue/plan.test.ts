import { describe, expect, test } from 'vitest';
import { nextQuestion, type PlanState, planOf } from '../../../src/core/dialogue/plan.ts';
import { compiledFor } from '../../../src/core/dialogue/standing.ts';
import type { FactId } from '../../../src/core/facts/registry/index.ts';
import { coreFacts } from '../../../src/core/facts/registry/index.ts';
import { resolveFacts } from '../../../src/core/facts/resolve.ts';
import { evaluateReference } from '../../../src/core/rules/reference.ts';
import { inventedForecast } from '../../../src/demo/invented-weather.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { dryland, fieldLess, fitMorning } from './ready-field.ts';
import { look, morning, requested, started, talk } from './talk.ts';

const { pack } = shipped;
const compiled = compiledFor(pack, morning);
const fresh: PlanState = { spent: new Set(), checkRest: false, wantsDose: false, forecast: 'failed' };

type Values = Parameters<typeof fieldLess>[0];

const factsOf = (values: Values, ...without: FactId[]) =>
  resolveFacts({
    observations: fieldLess(values, ...without).observations,
    forecast: null,
    at: morning,
    zone: pack.zone,
    parameters: compiled.parameters,
    registry: coreFacts,
  });

const next = (values: Values, state: Partial<PlanState> = {}, ...without: FactId[]) =>
  nextQuestion(pack, compiled, factsOf(values, ...without), { ...fresh, ...state })?.id ?? null;

describe('the next question', () => {
  test.each<[string, Values, Partial<PlanState>, FactId[], string | null]>([
    ['nothing, where all suits', fitMorning, {}, [], null],
    ['the one thing that is left', fitMorning, {}, ['soil.feel'], 'soil-feel'],
    ['the cheaper of two', fitMorning, {}, ['soil.feel', 'soil.temperature30cmC'], 'soil-feel'],
    ['the country first of all, where nothing is known', {}, {}, [], 'country'],
    ['not again what is spent', {}, { spent: new Set(['country']) }, [], 'loosened'],
    ['nothing past a stop', { 'field.country': 'FR' }, {}, [], null],
    ['all that matters past a stop, on request', { 'field.country': 'FR' }, { checkRest: true }, [], 'loosened'],
    ['past a hold still the stops of the season', { 'soil.temperature30cmC': 12 }, {}, [], 'country'],
    [
      'past a hold still the jobs for a person',
      { ...dryland, 'soil.temperature30cmC': 12 },
      {},
      ['field.loosenedThisSeason'],
      'loosened',
    ],
    ['past a hold nothing else', { ...dryland, 'soil.temperature30cmC': 12 }, {}, [], null],
    [
      'the rest past a hold, on request',
      { ...dryland, 'soil.temperature30cmC': 12 },
      { checkRest: true },
      [],
      'rain-now',
    ],
    [
      'the trend only where the temperature is near the limit',
      { ...fitMorning, 'soil.temperature30cmC': 9.4 },
      {},
      [],
      'soil-trend',
    ],
    ['whither the wind blows only where there is some', { ...fitMorning, 'wind.boomKmh': 8 }, {}, [], 'wind-towards'],
    ['the wind before whither it blows', fitMorning, {}, ['wind.boomKmh'], 'wind'],
    ['the no-spray distance only near water', { ...fitMorning, 'field.waterDistanceM': 12 }, {}, [], 'buffer'],
    ['nothing of the dose unasked', fitMorning, { wantsDose: false }, [], null],
    ['the dose on request, when the rest is known', fitMorning, { wantsDose: true }, [], 'product-content'],
    ['the rest before the dose', fitMorning, { wantsDose: true }, ['soil.feel'], 'soil-feel'],
    ['the place before the weather', fitMorning, { forecast: 'no-place' }, ['wind.boomKmh', 'rain.next48hMm'], 'place'],
    ['no weather while the forecast comes', fitMorning, { forecast: 'coming' }, ['wind.boomKmh'], null],
    [
      'something else while the forecast comes',
      fitMorning,
      { forecast: 'coming' },
      ['wind.boomKmh', 'soil.feel'],
      'soil-feel',
    ],
    ['what stands open, as long as it matters', {}, { current: 'soil-feel' }, [], 'soil-feel'],
    [
      'not what stands open when it has ceased to matter',
      { 'field.country': 'FR' },
      { current: 'soil-feel' },
      [],
      null,
    ],
  ])('is %s', (_, values, state, without, id) => {
    expect(next(values, state, ...without)).toBe(id);
  });

  test('is asked by nobody where the forecast tells it well enough', () => {
    const at = { ...dryland, 'field.latitude': 54, 'field.longitude': -2 };
    const conversation = talk([started(pack, fieldLess(at)), requested('check-the-rest')], {
      pack,
      forecast: inventedForecast(morning),
    });
    const told = conversation.state.notes.flatMap((note) =>
      note.kind === 'question' && note.text.kind === 'pack' ? [note.text.question] : [],
    );
    expect(told).not.toContain('rain-ahead');
    expect(told).not.toContain('rain-now');
  });
});

describe('what stands beside the next question', () => {
  const plan = (values: Values, state: Partial<PlanState> = {}, ...without: FactId[]) => {
    const facts = factsOf(values, ...without);
    return planOf(pack, evaluateReference(compiled, facts), facts, { ...fresh, ...state });
  };

  test('waits for the forecast only where nothing else is left to ask', () => {
    expect(plan(fitMorning, { forecast: 'coming' }, 'wind.boomKmh').waitsForForecast).toBe(true);
    expect(plan(fitMorning, { forecast: 'coming' }, 'wind.boomKmh', 'soil.feel').waitsForForecast).toBe(false);
    expect(plan(fitMorning, { forecast: 'coming' }).waitsForForecast).toBe(false);
  });

  test('offers to check the rest only where the answer is sure and something is left', () => {
    expect(plan({ ...dryland, 'soil.temperature30cmC': 12 }).restLeft).toBe(true);
    expect(plan({ 'field.country': 'FR' }).restLeft).toBe(false);
    expect(plan({ ...fitMorning, 'soil.feel': 'dry' }).restLeft).toBe(false);
    expect(plan(fitMorning).restLeft).toBe(false);
  });

  test('the verdict is given at once when asked for, and the question stays open', () => {
    const conversation = talk([started(pack, fieldLess(fitMorning, 'soil.feel')), requested('verdict-now')], {
      pack,
      forecast: null,
    });
    const view = look(conversation, pack);
    expect(view.verdict?.verdict).toBe('wait');
    expect(view.question?.id).toBe('soil-feel');
  });
});
