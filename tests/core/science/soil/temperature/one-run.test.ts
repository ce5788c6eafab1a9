import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dayOfYear } from '../../../../../src/core/science/soil/temperature/air.ts';
import {
  soilTemperaturePath,
  soilTodayAndAhead,
  soilTrendAhead,
} from '../../../../../src/core/science/soil/temperature/index.ts';
import { epochSeconds } from '../../../../../src/core/units/brands.ts';

const first = Date.UTC(2026, 8, 1, 12) / 1000;

describe('one run of the model for a day', () => {
  test('gives the temperature of the path up to that day, and the change ahead, as two runs do', () => {
    const air = fc.array(fc.option(fc.double({ min: -10, max: 20, noNaN: true }), { nil: null }), {
      minLength: 5,
      maxLength: 70,
    });
    fc.assert(
      fc.property(air, fc.nat(4), fc.double({ min: 0, max: 15, noNaN: true }), (airs, aheadDays, valueC) => {
        const days = airs.map((airC, index) => {
          const at = epochSeconds(first + index * 86_400);
          return { at, iso: new Date(at * 1000).toISOString().slice(0, 10), airC };
        });
        const today = days.length - 1 - aheadDays;
        const at = days[today]!.at;
        const readings = [{ at: days[Math.floor(today / 2)]!.at, valueC, sdC: 0.1 }];
        const input = { days, readings, at, latitudeDeg: 52 };
        const both = soilTodayAndAhead(input, aheadDays);
        expect(both.today).toEqual(soilTemperaturePath({ ...input, days: days.slice(0, today + 1) }, 0)[0]);
        expect(both.ahead).toEqual(soilTrendAhead(input, aheadDays));
      }),
      { numRuns: 40 },
    );
  });
});

describe('the day of the year', () => {
  test('counts as the calendar does, leap years too', () => {
    fc.assert(
      fc.property(fc.integer({ min: -25_567, max: 73_049 }), (day) => {
        const moment = new Date(day * 86_400_000);
        const ofYear = day - Date.UTC(moment.getUTCFullYear(), 0, 1) / 86_400_000 + 1;
        expect(dayOfYear(moment.toISOString().slice(0, 10))).toBe(ofYear);
      }),
    );
  });
});
