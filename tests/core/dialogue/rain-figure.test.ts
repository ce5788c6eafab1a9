import { describe, expect, test } from 'vitest';
import { rainFigure } from '../../../src/core/dialogue/outlook-view/rain-figure.ts';
import { compileRules } from '../../../src/core/rules/compile.ts';
import { catalogueOf } from '../../../src/core/words/catalogue.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { factDefinition } from '../../fixtures/core-facts.ts';
import { buildForecast, type ForecastPlan } from '../../generators/forecast.ts';
import { hoursOn, lookedAt, outlookWith } from '../../generators/outlook.ts';

const zone = 'Europe/London';
const words = catalogueOf('en');
const wording = { words, zone, definitionOf: factDefinition, titleOf: (rule: string) => rule };
const { pack } = shipped;
/** Rain of the hour that ends at a stamp, by hours after the moment looked ahead from. */
const raining = (at: Readonly<Record<number, number>>): NonNullable<ForecastPlan['columns']> => ({
  precipitationMm: (time) => at[(time - lookedAt) / 3600] ?? 0,
});

function figureOf(
  columns: ForecastPlan['columns'],
  { reachesTo = hoursOn(60), at = lookedAt, fetchedAt = lookedAt, rules = pack.rules } = {},
) {
  const forecast = buildForecast({ from: hoursOn(-24), fetchedAt, hours: 200, columns: columns ?? {} });
  const compiled = compileRules({ ...pack, rules }, '2026-11-12');
  return rainFigure(outlookWith({ at, reachesTo }), forecast, compiled, wording);
}

describe('the figure of the rain', () => {
  test('has a bar for each six hours with rain, the last one cut at the end of the forecast', () => {
    const figure = figureOf(raining({ 0: 9, 1: 1, 6: 0.5, 7: 2.04, 56: 1, 60: 0.26, 61: 5 }));
    expect(figure?.bars).toEqual([
      { hour: 0, hours: 6, mm: 1.5 },
      { hour: 6, hours: 6, mm: 2 },
      { hour: 54, hours: 6, mm: 1.3 },
    ]);
    const shorter = figureOf(raining({ 56: 1 }), { reachesTo: hoursOn(57) });
    expect(shorter?.bars).toEqual([{ hour: 54, hours: 3, mm: 1 }]);
    expect(shorter?.hours).toBe(57);
  });

  test('begins at the full hour, and counts whole hours', () => {
    const late = figureOf(raining({ 1: 1 }), { at: (lookedAt + 1799) as typeof lookedAt });
    expect(late?.bars).toEqual([{ hour: 0, hours: 6, mm: 1 }]);
    expect(late?.hours).toBe(60);
    expect(figureOf({}, { reachesTo: (hoursOn(60) + 1800) as typeof lookedAt })?.hours).toBe(60);
  });

  test('has a line of the sum of 48 hours, every three hours for as far as that is told, at the wetter end', () => {
    const { sums = [], limitMm, limitText } = figureOf(raining({ 1: 1, 5: 2, 100: 3 })) ?? {};
    expect(sums.map(({ hour }) => hour)).toEqual([
      0, 3, 6, 9, 12, 15, 18, 21, 24, 27, 30, 33, 36, 39, 42, 45, 48, 51, 54, 57,
    ]);
    expect(sums[0]!.mm).toBeGreaterThan(3);
    expect(sums[1]!.mm).toBeGreaterThan(2);
    expect(sums[1]!.mm).toBeLessThan(sums[0]!.mm);
    expect(sums[2]).toEqual({ hour: 6, mm: 0 });
    expect([limitMm, limitText]).toEqual([10, 'limit 10 mm']);
  });

  test('says in a sentence how much falls in all, and when the line stands highest, the first time where it does twice', () => {
    const figure = figureOf(raining({ 20: 0.3 }));
    expect(figure?.title).toBe('Rain, and the sum of the 48 hours to come');
    const most = Math.max(...(figure?.sums ?? []).map(({ mm }) => mm));
    const highest = (figure?.sums ?? []).filter(({ mm }) => mm === most).map(({ hour }) => hour);
    expect([highest.at(0)! < 14, highest.at(-1)! > 14]).toEqual([true, true]);
    expect(figure?.description).toBe(
      `0.3 mm in all. The line is the sum of the next 48 hours at the wetter end of the forecast, as the rules count it: at most ${most.toFixed(1)} mm, on Thursday 12 November. The limit is 10 mm.`,
    );
  });

  test('tells day by day at the field what falls and the highest sum begun that day', () => {
    const { table, days } = figureOf(raining({ 3: 2, 20: 4, 40: 0.5 })) ?? {};
    expect(table?.columns).toEqual(['Day', 'Rain, mm', 'Highest 48 h sum begun that day, mm']);
    expect(table?.rows.map(([day, fallen]) => [day, fallen])).toEqual([
      ['Thu 12', '2.0'],
      ['Fri 13', '4.0'],
      ['Sat 14', '0.5'],
    ]);
    expect(days?.map(({ hour, label }) => [hour, label])).toEqual([
      [14, 'Fri 13'],
      [38, 'Sat 14'],
    ]);
    const highest = table?.rows.map(([, , sum]) => Number(sum)) ?? [];
    expect(highest[0]).toBeGreaterThan(highest[1]!);
    expect(highest[1]).toBeGreaterThan(highest[2]!);
  });

  test('says of a day on which no sum can be told that the forecast has ended', () => {
    const forecast = buildForecast({ from: hoursOn(-24), fetchedAt: lookedAt, hours: 85 });
    const figure = rainFigure(
      outlookWith({ reachesTo: hoursOn(60) }),
      forecast,
      compileRules(pack, '2026-11-12'),
      wording,
    );
    expect(figure?.sums.map(({ hour }) => hour)).toEqual([0, 3, 6, 9, 12]);
    expect(figure?.table.rows.map(([, , sum]) => sum)).toEqual([
      '0.0',
      words.outlook.states['beyond-forecast'],
      words.outlook.states['beyond-forecast'],
    ]);
  });

  test('has no line, and says nothing of one, where no sum can be told', () => {
    const forecast = buildForecast({ from: hoursOn(-24), fetchedAt: lookedAt, hours: 40 });
    const figure = rainFigure(
      outlookWith({ reachesTo: hoursOn(14) }),
      forecast,
      compileRules(pack, '2026-11-12'),
      wording,
    );
    expect(figure?.sums).toEqual([]);
    expect(figure?.description).toBe('0.0 mm in all.');
  });

  test.each<[string, Parameters<typeof figureOf>[1]]>([
    ['is less than an hour of forecast', { reachesTo: hoursOn(0.9) }],
    ['is a forecast too old to be used', { fetchedAt: hoursOn(-100) }],
    [
      'is no rule with such a limit',
      { rules: pack.rules.filter(({ when }) => !JSON.stringify(when).match(/rain\.next48hMm|heavy-rain-coming/)) },
    ],
  ])('is none where there %s', (_, more) => {
    expect(figureOf(raining({ 1: 1 }), more)).toBeNull();
  });

  test('is there for an hour of forecast, and not where none reaches on', () => {
    expect(figureOf({}, { reachesTo: hoursOn(1) })).not.toBeNull();
    const forecast = buildForecast({ from: hoursOn(-24), fetchedAt: lookedAt });
    const outlook = { ...outlookWith({}), reachesTo: null };
    expect(rainFigure(outlook, forecast, compileRules(pack, '2026-11-12'), wording)).toBeNull();
  });
});
