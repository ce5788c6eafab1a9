import { describe, expect, test } from 'vitest';
import { runCommandLine } from '../../src/cli/main.ts';
import type { Decision } from '../../src/core/dialogue/decision-types.ts';
import { fakeIo } from './fake-io.ts';

/** An invented field on an invented fit day: every limit from common practice, no source, as the pack states it. */
const fitDay = {
  'field.country': 'GB-ENG',
  'field.latitude': 54,
  'field.longitude': -2,
  'field.slopePercent': 1,
  'field.waterDistanceM': 300,
  'field.bufferMarked': true,
  'field.drained': false,
  'field.loosenedThisSeason': 'no',
  'field.protectedWaterArea': 'outside',
  'treatment.alreadyApplied': 'no',
  'crop.trueLeaves': 5,
  'crop.frostOnLeaves': 'no',
  'weed.present': 'yes',
  'weed.plantsPerM2': 60,
  'product.activeGPerL': 500,
  'product.labelMaxGPerHa': 840,
  'soil.temperature30cmC': 8.2,
  'soil.feel': 'moist',
  'soil.surface': ['friable'],
  'rain.next48hMm': 2,
  'rain.next48hMaxMmPerH': 0.6,
  'rain.nowMmPerH': 0,
  'wind.boomKmh': 5,
  'wind.gustKmh': 8,
  'air.temperatureC': 7,
  'air.inversionRisk': 'no',
};

async function decided(facts: object, ...options: string[]): Promise<Decision> {
  const io = fakeIo({ 'facts.json': JSON.stringify(facts) });
  const status = await runCommandLine(['decide', '--facts', 'facts.json', '--json', ...options], io);
  expect(io.err()).toBe('');
  expect(status).toBe(0);
  return JSON.parse(io.out());
}

describe('loamward decide', () => {
  test('prints one JSON object with all that an answer holds', async () => {
    const answer = await decided(fitDay, '--at', '2026-11-06T09:00Z');
    expect(answer).toMatchObject({
      verdict: 'spray-today',
      reasons: [],
      missing: [],
      dose: { activeGPerHa: 750, productLPerHa: 1.5 },
      forecast: null,
      at: '2026-11-06T09:00:00Z',
    });
    expect(answer.pack.hash).toMatch(/^[0-9a-f]{64}$/);
    expect(answer.trace).toHaveLength(35);
    expect(answer.cautions.length).toBeGreaterThan(9);
  });

  test('an empty facts file is wait, never spray, and says what is missing', async () => {
    const answer = await decided({}, '--at', '2026-11-06T09:00Z');
    expect(answer.verdict).toBe('wait');
    expect(answer.missing).toContain('soil.temperature30cmC');
    expect(answer.reasons.every(({ outcome }) => outcome === 'unknown')).toBe(true);
  });

  test.each([
    'field.country',
    'field.drained',
    'treatment.alreadyApplied',
    'crop.trueLeaves',
    'weed.present',
    'soil.temperature30cmC',
    'soil.feel',
    'soil.surface',
    'rain.next48hMm',
    'rain.next48hMaxMmPerH',
    'rain.nowMmPerH',
    'wind.boomKmh',
    'wind.gustKmh',
    'air.temperatureC',
    'air.inversionRisk',
  ])('leaving out %s makes it wait, never spray', async (fact) => {
    const near = { 'field.bufferMarked': null, 'field.waterDistanceM': 40, 'field.loosenedThisSeason': 'yes' };
    const plan = { 'field.waterPlanAgreed': 'yes', 'field.bufferMarked': 'yes' };
    const whole = { ...fitDay, ...near, ...plan };
    expect((await decided(whole, '--at', '2026-11-06T09:00Z')).verdict).toBe('spray-today');
    const { verdict, missing } = await decided({ ...whole, [fact]: null }, '--at', '2026-11-06T09:00Z');
    expect(verdict).toBe('wait');
    expect(missing).toContain(fact);
  });

  test('margins are in the unit of the fact: positive is room left, negative is past the limit', async () => {
    const warm = await decided({ ...fitDay, 'soil.temperature30cmC': 11 }, '--at', '2026-11-06T09:00Z');
    expect(warm.verdict).toBe('wait');
    expect(warm.reasons[0]).toMatchObject({
      rule: 'soil-too-warm',
      effect: 'hold',
      authority: 'practice',
      lifts: 'days',
      outcome: 'met',
      margin: -1,
    });
    const cold = await decided(fitDay, '--at', '2026-11-06T09:00Z');
    const rule = cold.trace.find((each) => each.rule === 'soil-too-warm');
    expect(rule?.margins[0]).toMatchObject({ fact: 'soil.temperature30cmC', limit: 10, margin: 1.8 });
  });

  test('without --at a date means noon of that day in the zone of the pack', async () => {
    expect((await decided({ ...fitDay, date: '2026-10-20' })).at).toBe('2026-10-20T11:00:00Z');
    expect((await decided({ ...fitDay, date: '2026-11-20' })).at).toBe('2026-11-20T12:00:00Z');
  });

  test('without --at and date it is now', async () => {
    expect((await decided(fitDay)).at).toBe('2026-11-06T09:00:00Z');
  });

  test('as text the verdict comes first, then the reasons, dose and cautions', async () => {
    const io = fakeIo({ 'facts.json': JSON.stringify({ ...fitDay, 'soil.temperature30cmC': 10.4 }) });
    await runCommandLine(['decide', '--facts', 'facts.json', '--at', '2026-11-06T09:00Z'], io);
    const text = io.out();
    expect(text).toMatch(/^Wait/);
    expect(text).toContain('0.4 C too warm');
    expect(text).toContain('750 g/ha of active: 1.50 L/ha of a 500 g/L product');
    expect(text).toContain('The label in hand and its conditions come first');
  });
});
