import { describe, expect, test } from 'vitest';
import { decideFacts } from '../../../src/core/dialogue/decide.ts';
import { standingOf } from '../../../src/core/dialogue/standing.ts';
import { understand } from '../../../src/core/dialogue/understand/index.ts';
import { viewOf } from '../../../src/core/dialogue/view.ts';
import { parseFacts } from '../../../src/core/facts/parse/index.ts';
import { coreFacts } from '../../../src/core/facts/registry/index.ts';
import { outlookOf } from '../../../src/core/outlook/index.ts';
import { checkThoroughly } from '../../../src/core/rules/analyse/check-thoroughly.ts';
import { checkPack, loadPack } from '../../../src/core/rules/pack/load-pack.ts';
import { reachedFacts } from '../../../src/core/rules/reach.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { filesOf } from '../../fixtures/mini-pack.ts';
import { springFacts } from '../../fixtures/spring-facts.ts';
import { springDay, springPack } from '../../fixtures/spring-pack.ts';
import { buildForecast, type ForecastPlan } from '../../generators/forecast.ts';
import { doesNotKnow, fieldOf, filled, morning, pressed, said, started, talk } from '../dialogue/talk.ts';

const { pack } = loadPack(filesOf(springPack()));
const place = { 'field.latitude': 53, 'field.longitude': -1 };
const told = { ...springDay, ...place, 'air.nightLowestC': null };

const weather = (columns: ForecastPlan['columns'] = {}) =>
  buildForecast({
    from: epochSeconds(morning - 24 * 3600),
    fetchedAt: morning,
    hours: 24 * 5,
    columns: { windSpeed10mKmh: 8, ...columns },
  });

const decide = (facts: object, columns?: ForecastPlan['columns']) =>
  decideFacts({ pack, facts, forecast: weather(columns), at: morning, now: morning, language: 'en' });

describe('a pack of another kind', () => {
  test('loads without a finding, and needs no parameter of soil, water or dose', () => {
    expect(checkPack(filesOf(springPack()))).toMatchObject({ ok: true, findings: [] });
    const ids = pack.parameters.map(({ id }) => id);
    expect(ids.filter((id) => /soil|drain|dose|deficit|inversion|frost/i.test(id))).toEqual([]);
    expect(Object.keys(reachedFacts(pack)).sort()).toEqual(
      [...springFacts.map(({ id }) => id), 'date', ...Object.keys(place), 'wind.boomKmh'].sort(),
    );
    expect(Object.keys(pack.facts)).toEqual([...Object.keys(coreFacts), ...springFacts.map(({ id }) => id)]);
  });

  test('goes through the thorough check with findings of its cases alone', () => {
    const checked = checkThoroughly(filesOf(springPack()), '2026-04-10');
    expect(new Set(checked.findings.map(({ code }) => code))).toEqual(new Set(['RULE_LIMIT_WITHOUT_CASE']));
  });

  test('a fact that nothing reads is looked at, and the pack loads', () => {
    const parsed = springPack() as { 'facts.json': { facts: object[] } } & Record<string, unknown>;
    parsed['facts.json'].facts.push({ ...springFacts[1], id: 'crop.lodged' });
    expect(checkPack(filesOf(parsed))).toMatchObject({
      ok: true,
      findings: [{ code: 'PACK_FACT_UNUSED', severity: 'warning', pointer: '/facts/6/id' }],
    });
  });

  test('is plain data: as JSON it says the same', () => {
    expect(JSON.parse(JSON.stringify(pack))).toEqual(pack);
  });
});

describe('its own facts from the forecast', () => {
  test('a mild, dry night gives spray today, without a dose', async () => {
    const decision = await decide(told);
    expect(decision).toMatchObject({ verdict: 'spray-today', dose: { needs: [] }, doseText: '', missing: [] });
    expect(decision.facts['soil.feel']).toBeUndefined();
  });

  // 2.5 C less a band of 1 C that grows by a fifth with each of 19 h ahead: 2.5 - (1 + 0.2 * 19 / 24) = 1.342.
  test('the coldest hour of the coming night counts, at the low end of its band', async () => {
    const night = epochSeconds(Date.UTC(2026, 10, 7, 4) / 1000);
    const decision = await decide(told, { temperature2mC: (time) => (time === night ? 2.5 : 9) });
    const lowest = decision.facts['air.nightLowestC'];
    expect(decision).toMatchObject({ verdict: 'wait', reasons: [{ rule: 'cold-night', outcome: 'met' }] });
    expect(lowest).toMatchObject({ known: true, source: 'forecast', value: 1.34, low: 1.34, high: 1.34 });
  });

  test('a cold hour of the day is no night', async () => {
    const noon = epochSeconds(Date.UTC(2026, 10, 6, 12) / 1000);
    expect(await decide(told, { temperature2mC: (time) => (time === noon ? 0 : 9) })).toMatchObject({
      verdict: 'spray-today',
    });
  });

  test('rain within the hours that a parameter counts is met, an hour later it is not', async () => {
    const rainAt = (hours: number) => ({
      precipitationMm: (time: number) => (time === morning + hours * 3600 ? 2 : 0),
    });
    expect(await decide(told, rainAt(4))).toMatchObject({ reasons: [{ rule: 'rain-soon', outcome: 'met' }] });
    expect(await decide(told, rainAt(5))).toMatchObject({ verdict: 'spray-today' });
  });

  test('a missing hour leaves it unknown', async () => {
    const gap = await decide(told, { precipitationMm: (time) => (time === morning + 2 * 3600 ? null : 0) });
    expect(gap).toMatchObject({ verdict: 'wait', reasons: [{ rule: 'rain-soon', outcome: 'unknown' }] });
  });

  test('every coming hour is judged by them, with no block of soil', () => {
    const observations = parseFacts(told, morning, pack.zone, pack.facts);
    const night = (time: number) => (time % 86_400 < 6 * 3600 && time > morning + 30 * 3600 ? -2 : 9);
    const outlook = outlookOf({ pack, observations, forecast: weather({ temperature2mC: night }), at: morning });
    expect(outlook).toMatchObject({ soilTemperature: [], soilWater: [], fallThrough: null });
    const stateAt = (hours: number) => outlook.hours.find(({ at }) => at === morning + hours * 3600);
    expect(stateAt(2)?.hourBlocks).toEqual([]);
    expect(stateAt(26)?.hourBlocks.map(({ rule }) => rule)).toEqual(['cold-night']);
  });
});

describe('a conversation', () => {
  const world = { pack, forecast: weather(), understand };
  const field = fieldOf(place);

  test('asks for what only eyes can tell, and ends in the verdict', () => {
    const told = [
      started(pack, field),
      filled('stage', { 'crop.growthStage': 21 }),
      pressed('dew', 'no'),
      pressed('vigour', 'growing'),
      pressed('damage'),
    ];
    const asked = told.map((_, index) => {
      const { question } = viewOf(talk(told.slice(0, index + 1), world), { pack, now: morning });
      return question?.id ?? null;
    });
    expect(asked).toEqual(['stage', 'dew', 'vigour', 'damage', null]);
    const view = viewOf(talk(told, world), { pack, now: morning });
    expect(view.verdict).toMatchObject({ verdict: 'spray-today', doseText: '', doseNeeds: false });
    expect(view.said.map(({ label, value }) => `${label}: ${value}`)).toContain('growth stage of the crop: 21 BBCH');
    expect(view.said.map(({ value }) => value)).toContain('growing well');
  });

  test('takes what cannot be said as unknown: wait', () => {
    const told = [started(pack, field), doesNotKnow('stage'), pressed('dew', 'no'), pressed('vigour', 'growing')];
    const { verdict } = viewOf(talk([...told, pressed('damage')], world), { pack, now: morning });
    expect(verdict?.verdict).toBe('wait');
  });

  test('understands its words when typed', () => {
    const typed = talk([started(pack, field), said('growth stage 21, no dew'), said('hail damage')], world);
    const facts = standingOf(typed.state, pack)?.facts;
    expect(facts?.['crop.growthStage']).toMatchObject({ known: true, value: 21 });
    expect(facts?.['crop.dewOnLeaves']).toMatchObject({ known: true, possible: ['no'] });
    expect(facts?.['crop.damage']).toMatchObject({ known: true, present: ['hail'] });
  });
});

describe('its words', () => {
  test.each([
    ['en', 'growth stage 31', 'crop.growthStage', { type: 'number', value: 31 }],
    ['en', 'BBCH 31', 'crop.growthStage', { type: 'number', value: 31 }],
    ['en', '31 BBCH', 'crop.growthStage', { type: 'number', value: 31 }],
    ['de', '31 BBCH', 'crop.growthStage', { type: 'number', value: 31 }],
    ['de', 'Entwicklungsstadium 31', 'crop.growthStage', { type: 'number', value: 31 }],
    ['en', 'dew', 'crop.dewOnLeaves', { type: 'choice', possible: ['yes'] }],
    ['de', 'kein Tau', 'crop.dewOnLeaves', { type: 'choice', possible: ['no'] }],
    ['en', 'vigour checked', 'crop.vigour', { type: 'choice', possible: ['checked'] }],
    ['en', 'night low 3 C', 'air.nightLowestC', { type: 'number', value: 3 }],
    ['en', 'night low 41 F', 'air.nightLowestC', { type: 'number', value: 5 }],
    ['en', 'wind 6 km/h', 'wind.boomKmh', { type: 'number', value: 6 }],
  ])('in %s, "%s" is %s', (language, text, fact, reading) => {
    const { readings } = understand(text, { asked: null, pack, recent: [], language });
    expect(readings.map((one) => [one.fact, one.reading])).toEqual([[fact, reading]]);
  });

  test.each(['soil moist', 'drains running', 'soil at 30 cm 9 C', '500 g/L'])(
    '"%s" is of no fact that it reaches',
    (text) => {
      const understood = understand(text, { asked: null, pack, recent: [], language: 'en' });
      expect(understood).toMatchObject({ readings: [], notUnderstood: [text] });
    },
  );
});
