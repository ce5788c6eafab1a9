import type {
  SoilAirDay,
  SoilReading,
  SoilTemperatureDay,
  SoilTemperatureInput,
} from '../../../../../src/core/science/soil/temperature/index.ts';
import { epochSeconds } from '../../../../../src/core/units/brands.ts';

// Seasons of our own invention.

const noonOf = (iso: string) => Date.parse(`${iso}T12:00Z`) / 1000;
/** Epoch seconds of an ISO text. */
export const seconds = (iso: string) => epochSeconds(Date.parse(iso) / 1000);

/** Days from one on: air falls by 0.15 C a day from a start, with a week of weather of 3 C to either side, but for gaps. */
function fallingDays(from: string, count: number, startC: number, isGap: (day: number) => boolean): SoilAirDay[] {
  return Array.from({ length: count }, (_, day) => {
    const at = epochSeconds(noonOf(from) + day * 86_400);
    const airC = startC - 0.15 * day + 3 * Math.sin((2 * Math.PI * day) / 7);
    return { at, iso: new Date(at * 1000).toISOString().slice(0, 10), airC: isGap(day) ? null : airC };
  });
}

/** A reading on a day (and a part of one) of days that begin at a noon. */
function read(from: string, day: number, valueC: number, more: Partial<SoilReading> = {}): SoilReading {
  return { at: epochSeconds(noonOf(from) + day * 86_400), valueC, sdC: 0.3, ...more };
}

/** Autumn in the north: a gap in the past, weekly readings of two depths, one visit of two that differ, the last week without forecast. */
export function autumn(): SoilTemperatureInput {
  const from = '2026-09-12';
  const weekly = [0, 7, 14, 21, 28, 35, 42].map((day) => read(from, day, 15 - 0.12 * day));
  const between = [9, 17, 24, 31].map((day) => read(from, day, 14.4 - 0.12 * day, { depthM: 0.1 }));
  return {
    days: fallingDays(from, 70, 16, (day) => (day >= 18 && day < 21) || day >= 63),
    readings: [...weekly, ...between, read(from, 45, 9.6), read(from, 45.03, 9.1)],
    at: seconds('2026-10-29T09:00Z'),
    airKnownUntil: seconds('2026-10-28T21:00Z'),
    latitudeDeg: 53.5,
    airErrorFactor: 1.2,
  };
}

/** New Year of a leap year: the memories of the air begin in the year before; frost, layers of the forecast, an archive. */
export function winter(): SoilTemperatureInput {
  const from = '2028-01-03';
  const days = fallingDays(from, 75, 4, () => false).map((day, index) => ({
    ...day,
    layerC: index % 9 === 8 ? null : 5 - 0.03 * index,
  }));
  return {
    days,
    readings: [read(from, 20, 3.1), read(from, 34, 2.2, { depthM: 0.5 })],
    at: seconds('2028-02-20T06:00Z'),
    latitudeDeg: 53.5,
    climatology: {
      meanAirCByDayOfYear: Array.from({ length: 366 }, (_, day) => 9 - 7 * Math.cos((2 * Math.PI * (day - 19)) / 366)),
      spreadC: 3.1,
      years: 9,
      source: 'invented',
    },
  };
}

/** Autumn in the south, without a reading. */
export function southern(): SoilTemperatureInput {
  const days = fallingDays('2027-04-01', 40, 14, (day) => day > 30);
  return { days, readings: [], at: seconds('2027-04-21T12:00Z'), latitudeDeg: -43 };
}

/** Days of a path as lines: the day, middle, standard error, ends of both bands, chance below the limit, and whether no forecast reaches it. */
export function lines(path: readonly SoilTemperatureDay[]): string[] {
  return path.map((day) => {
    const ends = [day.low95C, day.low80C, day.high80C, day.high95C].map((end) => end.toFixed(3)).join(' ');
    const end = day.beyondForecast ? ', no forecast' : '';
    return `${day.iso}: ${day.valueC.toFixed(3)}, ${day.sdC.toFixed(4)}; ${ends}; ${day.chanceBelow.toFixed(4)}${end}`;
  });
}
