import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { catalogueOf } from '../../../src/core/words/catalogue.ts';
import { describeFurther, describeOutlook } from '../../../src/core/words/outlook.ts';
import { describeSureness, showShare } from '../../../src/core/words/outlook-chance.ts';
import { showSpan } from '../../../src/core/words/outlook-times.ts';
import { describeHours, describeWindow } from '../../../src/core/words/outlook-windows.ts';
import { factDefinition } from '../../fixtures/core-facts.ts';
import { block, hoursOn, outlookWith, windowWith } from '../../generators/outlook.ts';

const words = catalogueOf('en');
const titles: Record<string, string> = {
  'too-windy': 'Too windy',
  'heavy-rain-coming': 'Heavy rain coming',
  'soil-cracked': 'Cracks in the soil',
  'near-water': 'Near water, no-spray distance not marked',
};
const wording = {
  words,
  zone: 'Europe/London',
  definitionOf: factDefinition,
  titleOf: (rule: string) => titles[rule] ?? rule,
};
/** The whole of an invented window, so sure in its least sure hour. */
function sure(sureness: number) {
  const { from, until } = windowWith();
  return { firstSureness: sureness, surest: { from, until, sureness } };
}

const cracked = windowWith({
  state: 'clear-if',
  ifLifted: [block('soil-cracked', 'days')],
  lookAgain: ['soil.feel', 'crop.trueLeaves'],
  unknown: ['wind.towardsSensitive'],
  ...sure(0.72),
});

describe('the paragraph', () => {
  test('of a wait says when, for how long, how sure, where the forecast ends, and that the day itself decides', () => {
    const outlook = outlookWith({ windows: [windowWith(sure(0.93)), windowWith(), windowWith()] });
    expect(describeOutlook(outlook, 'wait', wording)).toMatchInlineSnapshot(
      `"It may come right on Friday 13 November, 09:00 to 14:00 (5 h): nothing that can be told now stands in the way then. Hour by hour the weather is very likely to hold (about 9 in 10). Ask again on the day itself."`,
    );
  });

  test('of a wait that rests on what was seen says what must be looked at again', () => {
    const fallThrough = {
      limitC: 10,
      day10: '2026-11-13',
      day50: '2026-11-15',
      day90: '2026-11-18',
      chanceOfWarmingBack: 0.34,
    };
    const outlook = outlookWith({ windows: [cracked, windowWith()], fallThrough });
    expect(describeFurther(outlook, 'wait', wording)).toMatchInlineSnapshot(
      `"One more such stretch follows. The soil at 30 cm is likely to fall below 10 C for good between 13 and 18 November (about 8 in 10). Once below, it may warm back above for a while (about 3 in 10). What comes after Monday 16 November, 10:00 is not known: the forecast ends or tells too little."`,
    );
    expect(describeFurther(outlookWith(), 'spray-today', wording)).toBe('');
    expect(describeOutlook(outlook, 'wait', wording)).toMatchInlineSnapshot(
      `"It may come right on Friday 13 November, 09:00 to 14:00 (5 h), but only if what is in the way now has gone (cracks in the soil); a fresh look finds the feel of the soil, the crop and the way the wind blows fit. Hour by hour the weather is likely to hold (about 7 in 10). Ask again on the day itself."`,
    );
  });

  test('names three of many things to be found out, and counts the rest', () => {
    const unknown = ['soil.surface', 'soil.feel', 'crop.trueLeaves', 'weed.present', 'wind.boomKmh'] as const;
    const said = describeOutlook(
      outlookWith({ windows: [windowWith({ state: 'clear-if', unknown })] }),
      'wait',
      wording,
    );
    expect(said).toContain('only if you find the soil surface, the feel of the soil, the crop and 2 more fit.');
  });

  test('without a window names what is in the way throughout, and claims nothing beyond the forecast', () => {
    const hours = outlookWith().hours.map((hour, index) => ({
      ...hour,
      dayBlocks: [block('near-water', 'person')],
      hourBlocks: index < 50 ? [block('too-windy')] : [],
    }));
    expect(describeOutlook(outlookWith({ hours }), 'wait', wording)).toMatchInlineSnapshot(
      `"Up to Monday 16 November, 10:00, as far as the forecast tells enough, there is no stretch long enough in which nothing stands in the way. In the way throughout: near water, no-spray distance not marked."`,
    );
  });

  test('of a spray-today says what could still spoil it', () => {
    const spoiled = { at: hoursOn(30), by: [block('heavy-rain-coming'), block('too-windy')] };
    expect(describeOutlook(outlookWith({ spoiled }), 'spray-today', wording)).toMatchInlineSnapshot(
      `"What could still spoil it: heavy rain coming and too windy, from Friday 13 November, 16:00."`,
    );
    const later = { ...spoiled, at: hoursOn(49) };
    expect(describeOutlook(outlookWith({ spoiled: later }), 'spray-today', wording)).toMatchInlineSnapshot(
      `"As the forecast stands, nothing spoils it before Saturday 14 November, 11:00; then: heavy rain coming and too windy. Look at the sky before you fill the tank all the same."`,
    );
    expect(describeOutlook(outlookWith(), 'spray-today', wording)).toMatchInlineSnapshot(
      `"The forecast, up to Monday 16 November, 10:00, shows nothing that would spoil it. Look at the sky before you fill the tank all the same."`,
    );
  });

  test('without a forecast that can be used says why nothing is told', () => {
    const untold = { known: false, reason: 'too-old' } as const;
    const said = [
      describeOutlook(outlookWith({ hours: [], reachesTo: null, untold }), 'wait', wording),
      describeOutlook(outlookWith({ hours: [], reachesTo: null }), 'wait', wording),
    ];
    expect(said).toMatchInlineSnapshot(`
      [
        "Of the coming days nothing can be told: the forecast is too old, look again for a new one.",
        "Without a forecast nothing can be told of the coming days.",
      ]
    `);
  });
});

describe('a window', () => {
  test('says when, on what conditions, how sure its weather is and what ends it', () => {
    const said = [
      windowWith(),
      cracked,
      windowWith({ endedBy: 'forecast-ends', ...sure(0.4) }),
      windowWith({ endedBy: 'look-again', ...sure(0.1) }),
    ].map((one) => describeWindow(one, wording));
    said.push(describeWindow(cracked, wording, cracked));
    expect(said).toMatchInlineSnapshot(`
      [
        "Friday 13 November, 09:00 to 14:00 (5 h): nothing that can be told now stands in the way. Ended by: too windy.",
        "Friday 13 November, 09:00 to 14:00 (5 h): only if what is in the way now has gone (cracks in the soil); a fresh look finds the feel of the soil and the crop still fit; you find the way the wind blows fit. Hour by hour the weather is likely to hold (about 7 in 10). Ended by: too windy.",
        "Friday 13 November, 09:00 to 14:00 (5 h): nothing that can be told now stands in the way. Hour by hour the weather is about as likely to hold as not (about 4 in 10). From there the forecast tells too little; it may last longer.",
        "Friday 13 November, 09:00 to 14:00 (5 h): nothing that can be told now stands in the way. Hour by hour the weather is unlikely to hold (about 1 in 10). After that, what you saw is too old: look again.",
        "Friday 13 November, 09:00 to 14:00 (5 h): on the same conditions. Hour by hour the weather is likely to hold (about 7 in 10). Ended by: too windy.",
      ]
    `);
  });

  const utc = (...parts: [number, number, number, number]) => epochSeconds(Date.UTC(...parts) / 1000);

  // Clocks in the United Kingdom go back on 25 October 2026 at 01:00 UTC (Summer Time Order 2002; IANA zone Europe/London).
  test.each([
    ['within a day', utc(2026, 10, 12, 9), utc(2026, 10, 12, 14), 'Thursday 12 November, 09:00 to 14:00'],
    ['to midnight', utc(2026, 10, 12, 22), utc(2026, 10, 13, 0), 'Thursday 12 November, 22:00 to 24:00'],
    [
      'over midnight',
      utc(2026, 10, 12, 22),
      utc(2026, 10, 13, 3),
      'Thursday 12 November, 22:00, until Friday 13 November, 03:00',
    ],
    ['in summer time', utc(2026, 9, 24, 9), utc(2026, 9, 24, 11), 'Saturday 24 October, 10:00 to 12:00'],
    [
      'over an hour that comes twice',
      utc(2026, 9, 25, 0),
      utc(2026, 9, 25, 1),
      'Sunday 25 October, 01:00 to 01:00 (the second time, clocks went back)',
    ],
  ])('%s is told by the clock of the field', (_, from, until, text) => {
    expect(showSpan(from, until, 'Europe/London', words)).toBe(text);
  });
});

describe('a chance', () => {
  test('is never said surer than it is, and never as certain', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (chance) => {
        const share = showShare(chance, words);
        expect(share).not.toMatch(/10 in 10|^0|never|always|certain/);
        const tenths = /^about (\d)/.exec(share)?.[1];
        if (tenths !== undefined) expect(Number(tenths) / 10).toBeLessThanOrEqual(chance + 1e-6);
      }),
    );
  });

  test.each([
    [0.97, 'very likely to hold (more than 9 in 10)'],
    [0.9, 'very likely to hold (about 9 in 10)'],
    [0.66, 'likely to hold (about 6 in 10)'],
    [0.5, 'about as likely to hold as not (about 5 in 10)'],
    [0.05, 'unlikely to hold (less than 1 in 10)'],
  ])('%s has its word', (chance, text) => {
    expect(describeSureness(windowWith(sure(chance)), wording.zone, words)).toContain(text);
  });

  test('of a window whose hours differ is told of its surest stretch, and of its first hours where they are others', () => {
    const stretch = (from: number, until: number, sureness: number) => ({
      from: hoursOn(from),
      until: hoursOn(until),
      sureness,
    });
    const said = [
      windowWith({ firstSureness: 0.8, surest: stretch(23, 26, 0.8) }),
      windowWith({ firstSureness: 0.4, surest: stretch(25, 28, 0.8) }),
      windowWith({ firstSureness: 0.3, surest: stretch(24, 26, 0.5) }),
      windowWith({ until: hoursOn(60), firstSureness: 0.4, surest: stretch(45, 50, 0.93) }),
      windowWith({
        surest: stretch(25, 28, 0.8),
        daylight: [{ from: hoursOn(23), until: hoursOn(30) }],
      }),
      windowWith(),
    ].map((one) => describeSureness(one, wording.zone, words));
    expect(said).toMatchInlineSnapshot(`
      [
        "Surest: 09:00 to 12:00; hour by hour the weather is likely to hold (about 8 in 10).",
        "Surest: 11:00 to 14:00; hour by hour the weather is likely to hold (about 8 in 10). For the first hours: about 4 in 10.",
        "In no useful part is the weather likely to hold; the best is 10:00 to 12:00, about as likely to hold as not (about 5 in 10). For the first hours: about 3 in 10.",
        "Surest: Saturday 14 November, 07:00 to 12:00; hour by hour the weather is very likely to hold (about 9 in 10). For the first hours: about 4 in 10.",
        "Surest in daylight: 11:00 to 14:00; hour by hour the weather is likely to hold (about 8 in 10).",
        "How sure its weather is cannot be told from this forecast.",
      ]
    `);
  });
});

test('a window that rests on the soil says the chance that it is cold enough, as it begins and as it ends', () => {
  const soilBelow = { limitC: 10, first: 0.14, last: 0.43 };
  const said = 'Chance that the soil at 30 cm is below 10 C: about 1 in 10 as it begins, about 4 in 10 as it ends.';
  const one = windowWith({ soilBelow });
  expect(describeWindow(one, wording)).toContain(said);
  expect(describeOutlook(outlookWith({ windows: [one] }), 'wait', wording)).toContain(said);
  const steady = windowWith({ soilBelow: { ...soilBelow, last: 0.16 } });
  expect(describeWindow(steady, wording)).toContain('below 10 C then: about 1 in 10.');
});

describe('which hours of a window are dark', () => {
  const lit = (...spans: [number, number][]) => ({
    daylight: spans.map(([from, until]) => ({ from: hoursOn(from), until: hoursOn(until) })),
  });
  test.each([
    [lit([23, 28]), '5 h, all in daylight'],
    [lit([23, 26.5]), '5 h, of which 09:00 to 12:30 in daylight'],
    [lit(), '5 h, all in the dark'],
    [lit([23, 24], [47, 51]), '5 h, of which 5 h in daylight, first 09:00 to 10:00'],
    [{}, '5 h'],
  ])('%j is told', (daylight, text) => {
    expect(describeHours(windowWith(daylight), wording)).toBe(text);
  });
});
