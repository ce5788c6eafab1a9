import { describe, expect, test } from 'vitest';
import { outlookOf } from '../../../src/core/outlook/index.ts';
import type { HourBlock, HourOutlook } from '../../../src/core/outlook/types.ts';
import { windowsOf } from '../../../src/core/outlook/windows.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { hoursAfter } from '../facts/moments.ts';
import { input, morning } from './field.ts';

const wind: HourBlock = { rule: 'too-windy', effect: 'hold', authority: 'practice', lifts: 'hours' };
const cracks: HourBlock = { rule: 'soil-cracked', effect: 'hold', authority: 'water', lifts: 'days' };

/** Hours written as letters: c clear, a aged (clear-if), u open (clear-if), b blocked by wind, d by cracks, x beyond the forecast. */
function hoursOf(letters: string): HourOutlook[] {
  return [...letters].map((letter, index) => ({
    at: hoursAfter(morning, index),
    state:
      letter === 'c'
        ? 'clear'
        : 'au'.includes(letter)
          ? 'clear-if'
          : 'bd'.includes(letter)
            ? 'blocked'
            : 'beyond-forecast',
    hourBlocks: letter === 'b' ? [wind] : [],
    dayBlocks: letter === 'd' ? [cracks] : [],
    lookAgain: letter === 'a' ? ['soil.surface'] : [],
    ifLifted: letter === 'a' ? [cracks] : [],
    unknown: letter === 'u' ? ['wind.boomKmh'] : [],
    advice: [],
    sureness: letter === 'x' ? null : 0.9,
  }));
}

const plan = { now: morning, shortestHours: 2, likelyLeast: 0.66, place: null };

const spans = (letters: string, shortest = 2, now = morning) =>
  windowsOf(hoursOf(letters), { ...plan, now, shortestHours: shortest }).map(
    ({ from, until, hours, state, endedBy }) => [
      (from - morning) / 3600,
      (until - morning) / 3600,
      hours,
      state,
      typeof endedBy === 'string' ? endedBy : endedBy.map(({ rule }) => rule).join(),
    ],
  );

describe('windows', () => {
  test.each([
    ['ccccb', [[0, 4, 4, 'clear', 'too-windy']]],
    ['bcccd', [[1, 4, 3, 'clear', 'soil-cracked']]],
    ['cccxx', [[0, 3, 3, 'clear', 'forecast-ends']]],
    ['ccc', [[0, 3, 3, 'clear', 'forecast-ends']]],
    ['cbccbc', [[2, 4, 2, 'clear', 'too-windy']]],
    ['ccucc', [[0, 5, 5, 'clear-if', 'forecast-ends']]],
    [
      'ccaab',
      [
        [0, 2, 2, 'clear', 'look-again'],
        [2, 4, 2, 'clear-if', 'too-windy'],
      ],
    ],
    [
      'cab',
      [
        [0, 1, 1, 'clear', 'look-again'],
        [1, 2, 1, 'clear-if', 'too-windy'],
      ],
    ],
    ['bdxb', []],
    ['', []],
  ] as const)('of %s', (letters, expected) => {
    expect(spans(letters)).toEqual(expected);
  });

  test('shorter than is useful is none', () => {
    expect(spans('ccbccc', 3)).toEqual([[3, 6, 3, 'clear', 'forecast-ends']]);
  });

  test('the first begins now, and what is left of its hour is what counts', () => {
    const late = epochSeconds(morning + 1800);
    expect(spans('cccb', 2.5, late)).toEqual([[0.5, 3, 3, 'clear', 'too-windy']]);
    expect(spans('cccb', 2.6, late)).toEqual([]);
  });

  test('hours that do not follow on one another are never joined', () => {
    const hours = hoursOf('cccccc').filter((_, index) => index !== 3);
    expect(windowsOf(hours, plan).map((one) => one.hours)).toEqual([3, 2]);
    const beforeWind = hoursOf('cccb').filter((_, index) => index !== 2);
    expect(windowsOf(beforeWind, plan).map(({ endedBy }) => endedBy)).toEqual(['forecast-ends']);
  });

  test('they say what to look at again, what must have gone and what is open', () => {
    const [, second] = windowsOf(hoursOf('cauab'), plan);
    expect(second).toMatchObject({ lookAgain: ['soil.surface'], ifLifted: [cracks], unknown: ['wind.boomKmh'] });
  });

  test('each says what to look at, what must have gone and what is open once, however many hours say it', () => {
    const [only] = windowsOf(hoursOf('auau'), plan);
    expect(only).toMatchObject({ lookAgain: ['soil.surface'], ifLifted: [cracks], unknown: ['wind.boomKmh'] });
    const ended = hoursOf('ccb').map((hour) => (hour.state === 'blocked' ? { ...hour, dayBlocks: [cracks] } : hour));
    expect(windowsOf(ended, plan)[0]!.endedBy).toEqual([wind, cracks]);
  });

  test('the surest stretch lies by day where the place is known; without one no daylight is told', () => {
    const night = hoursOf('cccccccccccc').map((hour, index) => ({ ...hour, sureness: index < 6 ? 0.7 : 0.9 }));
    // 6 November, 53 N 1 W: the sun sets at about 16:20 UTC, seven hours after the first of these.
    const [dark] = windowsOf(night, plan);
    expect([dark!.daylight, dark!.surest?.until, dark!.firstSureness]).toEqual([null, hoursAfter(morning, 12), 0.7]);
    const [lit] = windowsOf(night, { ...plan, place: { latitude: 53, longitude: -1 } });
    expect(lit!.daylight).toHaveLength(1);
    expect(lit!.surest).toMatchObject({ from: morning, until: hoursAfter(morning, 7), sureness: 0.7 });
  });

  test('the shortest useful length comes from the pack', () => {
    const calmFor = (hours: number) => (_: number, hour: number) => (hour >= 5 && hour < 5 + hours ? 6 : 40);
    const found = (hours: number) =>
      outlookOf(input({ weather: { columns: { windSpeed10mKmh: calmFor(hours) } } })).windows.map((one) => one.hours);
    expect([found(1), found(2)]).toEqual([[], [2]]);
  });
});
