import { describe, expect, test } from 'vitest';
import { decideObservations } from '../../../src/core/dialogue/decide.ts';
import type { State, StateObservation } from '../../../src/core/dialogue/state.ts';
import { standingOutlook } from '../../../src/core/dialogue/view-outlook.ts';
import type { FactId } from '../../../src/core/facts/registry/index.ts';
import type { Reading } from '../../../src/core/facts/types.ts';
import { parseServerMessage } from '../../../src/core/protocol/parse-message.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { catalogueOf } from '../../../src/core/words/catalogue.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { buildForecast } from '../../generators/forecast.ts';
import { hourAt, outlookWith } from '../../generators/outlook.ts';
import { fullOutlook, fullView } from '../../web/outlook-views.ts';
import { emptyView } from '../../web/views.ts';

const view = () => fullView(shipped.pack);

describe('the coming days as shown', () => {
  test('come over the socket as they are, in less than 60 kB', () => {
    const message = { type: 'view', view: { ...emptyView, outlook: view() }, kept: 0 };
    const text = JSON.stringify(message);
    expect(text.length).toBeLessThan(60_000);
    expect(parseServerMessage(text)).toEqual({ ok: true, message });
  });

  test('never say of an hour ahead that it is one to spray in', () => {
    expect(JSON.stringify(view())).not.toMatch(/spray today|never|certain|safe/i);
  });

  test('have a row for every day behind every figure, each as wide as its columns', () => {
    const { hours, soil, rain, water } = view();
    for (const figure of [hours, soil, rain, water]) {
      expect(figure?.table.rows.length).toBeGreaterThan(3);
      expect(figure?.table.rows.every((row) => row.length === figure.table.columns.length)).toBe(true);
      expect(new Set(figure?.table.rows.map(([day]) => day)).size).toBe(figure?.table.rows.length);
    }
  });

  test('leave out the figures for which there is nothing to draw', () => {
    const bare = fullView(shipped.pack, 'wait', outlookWith({ hours: [], reachesTo: null }));
    expect([bare.hours, bare.soil, bare.rain, bare.water]).toEqual([null, null, null, null]);
    expect(bare.paragraph).toBe('Without a forecast nothing can be told of the coming days.');
  });

  test('of a spray-today ask for no change', () => {
    expect(fullView(shipped.pack, 'spray-today')).toMatchObject({
      heading: 'The coming days',
      changes: [],
      least: null,
    });
  });
});

describe('the outlook beside a verdict', () => {
  const noon = epochSeconds(Date.UTC(2026, 10, 12, 12) / 1000);
  const forecast = buildForecast({ from: epochSeconds(noon - 3600), fetchedAt: noon, hours: 120 });
  const seen = (fact: FactId, reading: Reading, after = 0): StateObservation => ({
    fact,
    reading,
    at: epochSeconds(noon + after),
    source: 'said',
    event: fact,
    device: 'phone',
    doubtful: false,
    quote: null,
  });
  const cold = seen('soil.temperature30cmC', { type: 'number', value: 8 });
  const cracked = seen('soil.surface', { type: 'signs', present: ['cracked'], absent: [], complete: true }, 0.7);
  const looked = async (observations: readonly StateObservation[]) => {
    const { pack } = shipped;
    const decision = await decideObservations({ pack, observations, forecast, at: noon, language: 'en' });
    const words = catalogueOf('en');
    return (seconds = 0, state: Pick<State, 'forecast' | 'observations'> = { forecast, observations }) =>
      standingOutlook(decision, state, { pack, now: epochSeconds(noon + seconds), words });
  };

  test('counts what was said within the second of the verdict', async () => {
    const look = await looked([cold, cracked]);
    expect(look()?.changes.join()).toContain('no longer cracked');
  });

  test('is made once an hour, anew where something is taken back, and not at all without its forecast', async () => {
    const look = await looked([cold, cracked]);
    const first = look();
    expect(look(3599)).toBe(first);
    expect(
      look(60, {
        forecast,
        observations: [cold, cracked, seen('soil.feel', { type: 'choice', possible: ['dry'] }, 60)],
      }),
    ).toBe(first);
    expect(look(3600)?.hours?.rows[0]?.runs[0]?.from).toBe(13);
    expect(look(3600, { forecast, observations: [cold] })?.changes.join()).not.toContain('cracked');
    expect(look(0, { forecast: { ...forecast, fetchedAt: epochSeconds(noon + 5) }, observations: [cold] })).toBeNull();
  });

  test('begins at the verdict for a reader whose clock is behind', async () => {
    const look = await looked([cold]);
    expect(look(-7200)?.hours?.rows[0]?.runs[0]?.from).toBe(12);
    expect(look(7200 + 1800)?.hours?.rows[0]?.runs[0]?.from).toBe(14);
  });

  test('is null without a forecast, beside the conversation or beside the answer', async () => {
    const look = await looked([cold]);
    expect(look(0, { forecast: null, observations: [cold] })).toBeNull();
    const { pack } = shipped;
    const blind = await decideObservations({ pack, observations: [cold], forecast: null, at: noon, language: 'en' });
    const context = { pack, now: noon, words: catalogueOf('en') };
    expect(standingOutlook(blind, { forecast, observations: [cold] }, context)).toBeNull();
  });

  test('is made anew in another language', async () => {
    const { pack } = shipped;
    const decision = await decideObservations({ pack, observations: [cold], forecast, at: noon, language: 'en' });
    const inLanguage = (language: string) =>
      standingOutlook(decision, { forecast, observations: [cold] }, { pack, now: noon, words: catalogueOf(language) });
    expect([inLanguage('en')?.heading, inLanguage('de')?.heading]).toEqual([
      'When will it come right?',
      'Wann passt es?',
    ]);
  });

  test('is null where a stop holds for the season', async () => {
    const look = await looked([seen('treatment.alreadyApplied', { type: 'choice', possible: ['yes'] })]);
    expect(look()).toBeNull();
  });
});

describe('the figures', () => {
  test('hours of a row are those of the day at the field, 25 where the clocks go back', () => {
    // 25 October 2026 begins at 24 October 23:00 UTC in the United Kingdom and lasts 25 hours (IANA zone Europe/London).
    const from = Date.UTC(2026, 9, 24, 20) / 1000;
    const hours = Array.from({ length: 40 }, (_, index) => hourAt(epochSeconds(from + index * 3600)));
    const rows = fullView(shipped.pack, 'wait', outlookWith({ hours })).hours?.rows;
    expect(rows).toEqual([
      { label: 'Sat 24', hours: 24, runs: [{ from: 21, until: 24, state: 'clear' }] },
      { label: 'Sun 25', hours: 25, runs: [{ from: 0, until: 25, state: 'clear' }] },
      { label: 'Mon 26', hours: 24, runs: [{ from: 0, until: 12, state: 'clear' }] },
    ]);
  });

  test('hours add up to those of the outlook, state by state', () => {
    for (const state of ['clear', 'clear-if', 'blocked', 'beyond-forecast'] as const) {
      const runs = view()
        .hours!.rows.flatMap((row) => row.runs)
        .filter((run) => run.state === state);
      const sum = runs.reduce((all, { from, until }) => all + until - from, 0);
      expect(sum).toBe(fullOutlook.hours.filter((hour) => hour.state === state).length);
    }
  });

  test('soil keeps its first and last point and says from when the forecast has ended', () => {
    const { points, hours, beyondFrom } = view().soil!;
    expect([points[0]?.hour, points.at(-1)?.hour, hours, beyondFrom]).toEqual([0, 240, 240, 198]);
    expect(points.every((one) => one.low95 <= one.low80 && one.low80 <= one.value && one.high80 <= one.high95)).toBe(
      true,
    );
  });

  test('rain of the bars adds up to that of the days, and the line ends 48 hours before the forecast', () => {
    const { bars, sums, table, hours } = view().rain!;
    const inBars = bars.reduce((all, { mm }) => all + mm, 0);
    const inDays = table.rows.reduce((all, [, mm]) => all + Number(mm), 0);
    expect(inBars).toBeCloseTo(inDays, 5);
    // Nine hours of 1.6 mm and one of 2.4 mm lie ahead in the invented forecast.
    expect(inBars).toBeCloseTo(9 * 1.6 + 2.4, 5);
    expect(sums.at(-1)!.hour).toBeLessThanOrEqual(hours - 48);
    expect(Math.max(...sums.map(({ mm }) => mm))).toBeGreaterThan(9 * 1.6);
  });

  test('water stands below zero while there is room and above it where it is too much', () => {
    expect(view().water?.days.map(({ level, low, high }) => [low, level, high])).toEqual([
      [-11, -8, -6],
      [-9, -6, -4],
      [-3, 0, 0],
      [-3, 4, 4],
    ]);
  });

  test('a day whose hours are blocked names what stands in the way for hours and for days, each rule once', () => {
    expect(view().hours?.table.rows[3]?.slice(0, 4)).toEqual([
      'Sun 15',
      'none',
      'none',
      'too windy and heavy rain coming',
    ]);
    expect(view().hours?.table.rows[3]?.[4]).toBe('none');
  });
});
