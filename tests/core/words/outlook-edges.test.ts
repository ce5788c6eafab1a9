import { DateTime } from 'luxon';
import { describe, expect, test } from 'vitest';
import { catalogueOf } from '../../../src/core/words/catalogue.ts';
import { describeFurther, describeOutlook } from '../../../src/core/words/outlook.ts';
import { describeSoilBelow, describeSureness, showShare } from '../../../src/core/words/outlook-chance.ts';
import { describeFallThrough } from '../../../src/core/words/outlook-soil.ts';
import {
  showClocks,
  showDayAndTime,
  showEnd,
  showShortDay,
  showSpanFrom,
} from '../../../src/core/words/outlook-times.ts';
import { describeConditions, describeWindow, namesOf } from '../../../src/core/words/outlook-windows.ts';
import { factDefinition } from '../../fixtures/core-facts.ts';
import { block, hourAt, hoursOn, lookedAt, outlookWith, windowWith } from '../../generators/outlook.ts';

const words = catalogueOf('en');
const zone = 'Europe/London';
const wording = { words, zone, definitionOf: factDefinition, titleOf: (rule: string) => `Title ${rule}` };
const fall = { limitC: 10, day10: '2026-11-11', day50: '2026-11-11', day90: '2026-11-12', chanceOfWarmingBack: 0 };
const stays = 'The soil at 30 cm is likely to stay below 10 C.';

describe('the share of courses', () => {
  test.each([
    [0, 'less than 1 in 10'],
    [0.09, 'less than 1 in 10'],
    [0.1, 'about 1 in 10'],
    // Three tenths as a computer adds them up.
    [0.7 - 0.4, 'about 3 in 10'],
    [0.95, 'about 9 in 10'],
    [0.951, 'more than 9 in 10'],
    [1, 'more than 9 in 10'],
  ])('%d is "%s"', (chance, text) => {
    expect(showShare(chance, words)).toBe(text);
  });
});

describe('how sure a window is', () => {
  const stretch = (from: number, until: number, sureness: number) => {
    return { from: hoursOn(from), until: hoursOn(until), sureness };
  };
  const lit = (from: number, until: number) => [{ from: hoursOn(from), until: hoursOn(until) }];
  test.each([
    // From 0.66 on the weather is likely to hold: then the first hours need no word of their own.
    [
      { firstSureness: 0.66, surest: stretch(24, 28, 0.9) },
      'Surest: 10:00 to 14:00; hour by hour the weather is very likely to hold (about 9 in 10).',
    ],
    [
      { firstSureness: 0.65, surest: stretch(24, 28, 0.899) },
      'Surest: 10:00 to 14:00; hour by hour the weather is likely to hold (about 8 in 10). For the first hours: about 6 in 10.',
    ],
    [
      { firstSureness: null, surest: stretch(24, 28, 0.9) },
      'Surest: 10:00 to 14:00; hour by hour the weather is very likely to hold (about 9 in 10).',
    ],
    [
      { firstSureness: 0.2, surest: stretch(23, 27, 0.66) },
      'Surest: 09:00 to 13:00; hour by hour the weather is likely to hold (about 6 in 10).',
    ],
    [
      { surest: stretch(23, 27, 0.33) },
      'In no useful part is the weather likely to hold; the best is 09:00 to 13:00, about as likely to hold as not (about 3 in 10).',
    ],
    [
      { surest: stretch(23, 27, 0.329), daylight: lit(23, 27) },
      'In no useful part by daylight is the weather likely to hold; the best is 09:00 to 13:00, unlikely to hold (about 3 in 10).',
    ],
    [{ surest: stretch(23, 28, 0.2) }, 'Hour by hour the weather is unlikely to hold (about 2 in 10).'],
    // By daylight only where all of it is.
    [
      { surest: stretch(24, 27, 0.7), daylight: lit(24, 26) },
      'Surest: 10:00 to 13:00; hour by hour the weather is likely to hold (about 7 in 10).',
    ],
    [
      { surest: stretch(24, 27, 0.7), daylight: lit(25, 27) },
      'Surest: 10:00 to 13:00; hour by hour the weather is likely to hold (about 7 in 10).',
    ],
    [
      { surest: stretch(24, 27, 0.7), daylight: [...lit(20, 21), ...lit(24, 27)] },
      'Surest in daylight: 10:00 to 13:00; hour by hour the weather is likely to hold (about 7 in 10).',
    ],
  ])('%j', (more, text) => {
    expect(describeSureness(windowWith(more), zone, words)).toBe(text);
  });

  test('and how cold the soil under it: told only where it rests on that', () => {
    expect(describeSoilBelow(windowWith(), words)).toBe('');
    const soilBelow = { limitC: 9.5, first: 0.5, last: 0.5 };
    expect(describeSoilBelow(windowWith({ soilBelow }), catalogueOf('de'))).toContain('9,5 °C');
  });
});

describe('times', () => {
  test('of a window are told with the day of the field', () => {
    expect(showDayAndTime(lookedAt, 'Europe/Berlin', words)).toBe('Thursday 12 November, 11:00');
    expect(showEnd(hoursOn(14), zone, words)).toBe('Thursday 12 November, 24:00');
    expect(showEnd(hoursOn(13), zone, words)).toBe('Thursday 12 November, 23:00');
    expect(showShortDay(DateTime.fromSeconds(lookedAt, { zone }), words)).toBe('Thu 12');
    expect(showClocks(hoursOn(0), hoursOn(2.5), zone, words)).toBe('10:00 to 12:30');
  });

  test('leave the day out where it is that of the start', () => {
    expect(showSpanFrom(lookedAt, hoursOn(1), hoursOn(3), zone, words)).toBe('11:00 to 13:00');
    expect(showSpanFrom(lookedAt, hoursOn(24), hoursOn(26), zone, words)).toBe('Friday 13 November, 10:00 to 12:00');
    expect(showSpanFrom(lookedAt, hoursOn(1), hoursOn(26), zone, words)).toBe('11:00, until Friday 13 November, 12:00');
  });

  test('of every day of a week have its name', () => {
    const days = Array.from({ length: 7 }, (_, day) => showEnd(hoursOn(24 * day), 'UTC', words).split(' ')[0]);
    expect(days).toEqual(['Thursday', 'Friday', 'Saturday', 'Sunday', 'Monday', 'Tuesday', 'Wednesday']);
  });
});

describe('the conditions of a window', () => {
  const looks = windowWith({
    lookAgain: ['soil.feel', 'wind.boomKmh'],
    unknown: ['wind.gustKmh', 'crop.trueLeaves', 'weed.present'],
  });
  test.each([
    [null, 'a fresh look finds the feel of the soil and the wind still fit; you find the crop and the weed fit'],
    [1, 'a fresh look finds the feel of the soil and 3 more fit'],
    [2, 'a fresh look finds the feel of the soil, the wind and 2 more fit'],
    // One more is named rather than counted.
    [3, 'a fresh look finds the feel of the soil, the wind, the crop and the weed fit'],
    [4, 'a fresh look finds the feel of the soil, the wind, the crop and the weed fit'],
  ])('with %s of them named', (most, text) => {
    expect(describeConditions(looks, wording, most)).toBe(text);
  });

  test('that are only to be found out, only to be gone, or none', () => {
    expect(describeConditions(windowWith({ unknown: ['soil.feel'] }), wording)).toBe(
      'you find the feel of the soil fit',
    );
    expect(describeConditions(windowWith({ unknown: ['soil.feel'] }), wording, 3)).toBe(
      'you find the feel of the soil fit',
    );
    const lifted = windowWith({ ifLifted: [block('a'), block('b'), block('a')] });
    for (const most of [null, 3]) {
      expect(describeConditions(lifted, wording, most)).toBe('what is in the way now has gone (title a and title b)');
      expect(describeConditions(windowWith(), wording, most)).toBe('');
    }
    const both = windowWith({ ifLifted: [block('a')], lookAgain: ['soil.feel'] });
    expect(describeConditions(both, wording, 3)).toBe(
      'what is in the way now has gone (title a); a fresh look finds the feel of the soil fit',
    );
  });

  test('that nobody is asked for are named where there is nothing else, by their labels', () => {
    const unasked = (fact: string) => ({
      ...factDefinition('soil.feel'),
      label: `label of ${fact}`,
      noQuestion: { en: 'because' },
    });
    const definitionOf = (fact: string) => (fact === 'soil.feel' ? factDefinition('soil.feel') : unasked(fact));
    const own = { ...wording, definitionOf } as typeof wording;
    expect(describeConditions(windowWith({ lookAgain: ['soil.feel', 'x.hidden'] }), own)).toBe(
      'a fresh look finds the feel of the soil still fit',
    );
    expect(describeConditions(windowWith({ lookAgain: ['x.hidden'] }), own)).toBe(
      'a fresh look finds label of x.hidden still fit',
    );
  });

  test('are told once where the window before has the same, and anew where it has others', () => {
    const told = (before?: typeof looks) => describeWindow(looks, wording, before);
    expect(told(looks)).toContain('on the same conditions');
    expect(told(windowWith())).toBe(told());
    expect(describeWindow(windowWith({ endedBy: [] }), wording, windowWith())).toBe(
      'Friday 13 November, 09:00 to 14:00 (5 h): nothing that can be told now stands in the way.',
    );
  });

  test('name each rule once', () => {
    expect(namesOf([block('a'), block('a')], wording)).toBe('title a');
  });
});

describe('the coming days', () => {
  const windows = [windowWith(), windowWith()];
  test('say no more than the soil where no forecast tells, where it is a spray-today, and where no window comes', () => {
    const untold = { known: false, reason: 'too-old' } as const;
    const soil = outlookWith({ fallThrough: { ...fall, day90: '2026-11-13' }, windows });
    const alone = describeFallThrough(soil.fallThrough!, '2026-11-12', words);
    expect(describeFurther({ ...soil, untold }, 'wait', wording)).toBe(alone);
    expect(describeFurther({ ...soil, reachesTo: null }, 'wait', wording)).toBe(alone);
    expect(describeFurther(soil, 'spray-today', wording)).toBe(alone);
    expect(describeFurther({ ...soil, windows: [] }, 'wait', wording)).toBe(alone);
    expect(describeFurther(soil, 'wait', wording)).toBe(
      `One more such stretch follows. ${alone} What comes after Monday 16 November, 10:00 is not known: the forecast ends or tells too little.`,
    );
    expect(describeFurther({ ...soil, windows: [windowWith()], fallThrough: null }, 'wait', wording)).toBe(
      'What comes after Monday 16 November, 10:00 is not known: the forecast ends or tells too little.',
    );
    expect(describeFurther({ ...soil, windows: [...windows, windowWith()] }, 'wait', wording)).toContain('2 more such');
  });

  test('do not speak of a soil that is past its limit for good, on a day to spray', () => {
    const past = outlookWith({ fallThrough: fall });
    expect(describeFurther(past, 'spray-today', wording)).toBe('');
    expect(describeFurther(past, 'wait', wording)).toBe(stays);
    const open = outlookWith({ fallThrough: { ...fall, day90: null } });
    expect(describeFurther(open, 'spray-today', wording)).not.toBe('');
  });

  test('where the forecast is not of this place, say so; another cause is told by its usual words', () => {
    const said = (reason: 'forecast-gap' | 'not-asked') =>
      describeOutlook(outlookWith({ untold: { known: false, reason } }), 'wait', wording);
    expect(said('forecast-gap')).toBe('Of the coming days nothing can be told: the forecast is not of this place.');
    expect(said('not-asked')).toBe('Of the coming days nothing can be told: not asked.');
  });

  test.each([
    [47.9, /^What could still spoil it/],
    [48, /^As the forecast stands, nothing spoils it before/],
  ])('what spoils it in %d hours is told as near or as far', (hours, text) => {
    const spoiled = { at: hoursOn(hours), by: [block('a')] };
    expect(describeOutlook(outlookWith({ spoiled }), 'spray-today', wording)).toMatch(text);
  });

  test('without a window name nothing as lasting that goes, nor what lies beyond the forecast', () => {
    const hour = (hours: number, ...rules: string[]) =>
      hourAt(hoursOn(hours), { state: 'blocked', hourBlocks: rules.map((one) => block(one)) });
    const said = (hours: ReturnType<typeof hour>[]) => describeOutlook(outlookWith({ hours }), 'wait', wording);
    expect(said([hour(0, 'a', 'b'), hour(1, 'b', 'c')])).toMatch(/In the way throughout: title b\.$/);
    expect(said([hour(0, 'a'), hour(1, 'b')])).not.toContain('throughout');
    expect(said([hour(0, 'a'), { ...hour(1), state: 'beyond-forecast' }])).toMatch(/throughout: title a\.$/);
    expect(said([{ ...hour(1, 'a'), state: 'beyond-forecast' }])).not.toContain('throughout');
    expect(said([])).not.toContain('throughout');
  });
});
