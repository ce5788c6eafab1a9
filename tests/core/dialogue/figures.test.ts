import { describe, expect, test } from 'vitest';
import { dayTicks, hoursBetween, tenth } from '../../../src/core/dialogue/outlook-view/day-ticks.ts';
import { hoursFigure } from '../../../src/core/dialogue/outlook-view/hours-figure.ts';
import { soilFigure } from '../../../src/core/dialogue/outlook-view/soil-figure.ts';
import { waterFigure } from '../../../src/core/dialogue/outlook-view/water-figure.ts';
import type { Outlook } from '../../../src/core/outlook/types.ts';
import { catalogueOf } from '../../../src/core/words/catalogue.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { factDefinition } from '../../fixtures/core-facts.ts';
import { block, coolingSoil, hourAt, hoursOn, lookedAt, outlookWith, wettingSoil } from '../../generators/outlook.ts';

const zone = 'Europe/London';
const words = catalogueOf('en');
const titleOf = (rule: string) => shipped.pack.rules.find(({ id }) => id === rule)?.text['en']?.title ?? rule;
const wording = { words, zone, definitionOf: factDefinition, titleOf };
const fallThrough: Outlook['fallThrough'] = {
  limitC: 10,
  day10: null,
  day50: null,
  day90: null,
  chanceOfWarmingBack: 0,
};

describe('the days along a figure', () => {
  test('begin at midnight by the clock of the zone, and only within the hours', () => {
    // 12 November 2026, 10:00 in London: midnight is 14 hours on.
    expect(dayTicks(lookedAt, 38, zone, words)).toEqual([{ hour: 14, label: 'Fri 13' }]);
    expect(dayTicks(lookedAt, 38.01, zone, words)).toEqual([
      { hour: 14, label: 'Fri 13' },
      { hour: 38, label: 'Sat 14' },
    ]);
    expect(dayTicks(lookedAt, 14, zone, words)).toEqual([]);
    expect(dayTicks(lookedAt, 15, 'Europe/Berlin', words)).toEqual([{ hour: 13, label: 'Fri 13' }]);
  });

  test('hours between moments are told to a hundredth, and numbers to a tenth, never as minus nought', () => {
    expect([hoursBetween(0, 5400), hoursBetween(5400, 0), hoursBetween(100, 160)]).toEqual([1.5, -1.5, 0.02]);
    expect([tenth(1.25), tenth(-1.26), tenth(3)]).toEqual([1.3, -1.3, 3]);
    expect(Object.is(tenth(-0.01), 0)).toBe(true);
  });
});

describe('the figure of the hours', () => {
  const wind = [block('too-windy')];
  const cracks = [block('soil-cracked', 'days')];
  const clearIf = { state: 'clear-if', ifLifted: cracks } as const;
  const beyond = { state: 'beyond-forecast' } as const;
  const of = (...hours: Outlook['hours']) => hoursFigure(outlookWith({ hours }), wording);
  const row = (...hours: Outlook['hours']) => of(...hours)?.table.rows[0];

  test('says how many hours and days it shows', () => {
    const figure = of(
      hourAt(hoursOn(0)),
      hourAt(hoursOn(1)),
      hourAt(hoursOn(14), clearIf),
      hourAt(hoursOn(15), beyond),
    );
    expect(figure).toMatchObject({
      title: 'The coming days, hour by hour',
      description:
        '2 days, a row each from midnight to midnight: 2 h with nothing in the way that can be told, 1 h only if looked at again.',
      rows: [
        { label: 'Thu 12', hours: 24, runs: [{ from: 10, until: 12, state: 'clear' }] },
        {
          label: 'Fri 13',
          hours: 24,
          runs: [
            { from: 0, until: 1, state: 'clear-if' },
            { from: 1, until: 2, state: 'beyond-forecast' },
          ],
        },
      ],
      table: {
        columns: [
          'Day',
          'Nothing in the way',
          'Only if looked at again',
          'In the way, for hours',
          'In the way, for days or longer',
        ],
      },
    });
  });

  test('joins hours in a row, and keeps apart those with a gap between them', () => {
    const figure = of(hourAt(hoursOn(0)), hourAt(hoursOn(2)), hourAt(hoursOn(3)), hourAt(hoursOn(4), clearIf));
    expect(figure?.rows[0]?.runs).toEqual([
      { from: 10, until: 11, state: 'clear' },
      { from: 12, until: 14, state: 'clear' },
      { from: 14, until: 15, state: 'clear-if' },
    ]);
    expect(figure?.table.rows[0]?.slice(0, 3)).toEqual(['Thu 12', '10:00 to 11:00; 12:00 to 14:00', '14:00 to 15:00']);
  });

  test('names what is in the way of the blocked hours alone, for hours and for days', () => {
    const blocked = { state: 'blocked', hourBlocks: wind, dayBlocks: cracks } as const;
    expect(row(hourAt(hoursOn(0), blocked))).toEqual(['Thu 12', 'none', 'none', 'too windy', 'cracks in the soil']);
    expect(row(hourAt(hoursOn(0), { ...blocked, state: 'clear-if' }))?.slice(3)).toEqual(['none', 'none']);
    expect(row(hourAt(hoursOn(0)))?.slice(3)).toEqual(['none', 'none']);
  });

  test('says where the forecast has ended, unless something is known to be in the way that day', () => {
    const ended = row(hourAt(hoursOn(0)), hourAt(hoursOn(1), beyond));
    expect(ended?.slice(3)).toEqual([words.outlook.states['beyond-forecast'], words.outlook.states['beyond-forecast']]);
    const both = row(hourAt(hoursOn(0), { state: 'blocked', hourBlocks: wind }), hourAt(hoursOn(1), beyond));
    expect(both?.slice(3)).toEqual(['too windy', 'none']);
  });

  test('is none without hours', () => {
    expect(of()).toBeNull();
  });
});

describe('the figure of the soil', () => {
  const of = (more: Partial<Outlook>) =>
    soilFigure(outlookWith({ soilTemperature: coolingSoil, fallThrough, ...more }), wording);

  test.each<[string, Partial<Outlook>]>([
    ['no point', { soilTemperature: [] }],
    ['one point', { soilTemperature: coolingSoil.slice(0, 1) }],
    ['no limit in the rules', { fallThrough: null }],
  ])('is none with %s', (_, more) => {
    expect(of(more)).toBeNull();
  });

  test('tells the line from now to its end, the limit, and what stands in where the forecast has ended', () => {
    const figure = of({ usualAirYears: null });
    expect(figure).toMatchObject({
      title: 'Soil temperature at 30 cm',
      description:
        '10.8 C now, 9.3 C on Sunday 22 November. The darker band holds 8 in 10, the lighter one 19 in 20. The line across is the limit, 10.0 C. Beyond the hatched edge the forecast has ended: the usual air of the latitude stands in for it, which is far less sure.',
      limitText: 'limit 10.0 C',
      limitC: 10,
      hours: 240,
      beyondFrom: 198,
      table: { columns: ['Day', 'Middle, C', '8 in 10 lie between, C', 'Chance below 10.0 C'] },
    });
    expect(of({ usualAirYears: 20 })?.description).toContain('the usual air of the place, by 20 past years, stands in');
  });

  test('rounds no temperature onto the limit, neither in the sentence nor in the table', () => {
    const near = [10.04, 9.96].map((valueC, index) => ({ ...coolingSoil[0]!, at: hoursOn(index * 24), valueC }));
    const figure = of({ soilTemperature: near });
    expect(figure?.description).toMatch(/^10\.04 C now, 9\.96 C on Friday 13 November\. .* the limit, 10\.0 C\.$/);
    expect(figure?.table.rows.map(([, middle]) => middle)).toEqual(['10.04', '9.96']);
  });

  test('says nothing of an end of the forecast that lies beyond the line', () => {
    const figure = of({ soilTemperature: coolingSoil.slice(0, 5) });
    expect(figure?.beyondFrom).toBeNull();
    expect(figure?.description).toMatch(/limit, 10\.0 C\.$/);
  });

  test('has for each day the point nearest to noon at the field', () => {
    const noonish = [-3, 1, 2.5, 14.2].map((hour) => ({ ...coolingSoil[0]!, at: hoursOn(hour), valueC: 12 + hour }));
    const figure = of({ soilTemperature: noonish });
    expect(figure?.table.rows.map(([day, middle]) => [day, middle])).toEqual([
      ['Thu 12', '14.5'],
      ['Fri 13', '26.2'],
    ]);
    const [first] = of({})?.table.rows ?? [];
    expect(first).toEqual(['Thu 12', '10.8', '10.6 to 11.0', 'less than 1 in 10']);
  });

  test('keeps values to a hundredth, and at most some 80 points, the last among them', () => {
    const many = Array.from({ length: 400 }, (_, index) => ({
      ...coolingSoil[0]!,
      at: hoursOn(index),
      valueC: 10.123456,
      low80C: 10.056789,
      high80C: 10.201234,
      low95C: 9.999,
      high95C: 10.305001,
    }));
    const { points = [] } = of({ soilTemperature: many }) ?? {};
    expect(points[0]).toEqual({ hour: 0, value: 10.12, low80: 10.06, high80: 10.2, low95: 10, high95: 10.31 });
    expect(points.slice(0, 3).map(({ hour }) => hour)).toEqual([0, 6, 12]);
    expect(points.at(-1)?.hour).toBe(399);
    expect(points.length).toBe(68);
    expect(of({ soilTemperature: many.slice(0, 80) })?.points).toHaveLength(80);
    expect(of({ soilTemperature: many.slice(0, 81) })?.points).toHaveLength(41);
  });
});

describe('the figure of the water', () => {
  const of = (soilWater: Outlook['soilWater']) => waterFigure(outlookWith({ soilWater }), wording);
  const [dry] = wettingSoil;
  const day = (more: Partial<Outlook['soilWater'][number]>) => ({ ...dry!, ...more });

  test('is none with fewer than two days', () => {
    expect(of([])).toBeNull();
    expect(of([dry!])).toBeNull();
  });

  test('tells in words and numbers what is lacking and what is too much', () => {
    expect(of(wettingSoil)).toMatchObject({
      title: 'Water held by the soil, against what it can hold',
      description:
        '8 mm below field capacity now, 4 mm above field capacity on Sunday 15 November. The line across is field capacity: all that the soil holds against gravity. Above it water runs off or to the drains.',
      capacityText: 'field capacity',
      days: [
        { label: 'Thu 12', low: -11, level: -8, high: -6 },
        { label: 'Fri 13', low: -9, level: -6, high: -4 },
        { label: 'Sat 14', low: -3, level: 0, high: 0 },
        { label: 'Sun 15', low: -3, level: 4, high: 4 },
      ],
      table: {
        columns: [
          'Day',
          'Against field capacity, mm',
          'Lies between, mm',
          'Share of water at field capacity, %',
          'Share of available water, %',
        ],
        rows: [
          ['Thu 12', '-8', '-11 to -6', '92', '80'],
          ['Fri 13', '-6', '-9 to -4', '95', '86'],
          ['Sat 14', '0', '-3 to 0', '98', '92'],
          ['Sun 15', '4', '-3 to 4', '101', '98'],
        ],
      },
    });
  });

  test('says of less than half a millimetre either way that it is at field capacity', () => {
    const said = (one: Partial<Outlook['soilWater'][number]>) =>
      of([day(one), day({ day: '2026-11-13' })])?.description.replace(/ now,.*/, '');
    expect(said({ deficitMm: 0.4 })).toBe('at field capacity');
    expect(said({ deficitMm: 0, surplusMm: 0.4 })).toBe('at field capacity');
    expect(said({ deficitMm: 0.6 })).toBe('1 mm below field capacity');
    expect(said({ deficitMm: 0, surplusMm: 0.6 })).toBe('1 mm above field capacity');
  });

  test('keeps numbers to a tenth', () => {
    const figure = of([day({ deficitMm: 1.26, deficitLowMm: 0.21, deficitHighMm: 2.34 }), day({ day: '2026-11-13' })]);
    expect(figure?.days[0]).toEqual({ label: 'Thu 12', low: -2.3, level: -1.3, high: -0.2 });
  });
});
