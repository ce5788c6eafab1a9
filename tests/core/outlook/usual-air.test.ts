import { expect, test } from 'vitest';
import { outlookOf } from '../../../src/core/outlook/index.ts';
import type { SiteClimatology } from '../../../src/core/science/soil/temperature/index.ts';
import { input } from './field.ts';

/** A usual air that swings by 6 C about its mean, coldest in mid January. */
function usualAir(meanC: number): SiteClimatology {
  const wave = (day: number) => meanC - 6 * Math.cos((2 * Math.PI * (day - 14)) / 366);
  return {
    meanAirCByDayOfYear: Array.from({ length: 366 }, (_, day) => wave(day)),
    spreadC: 3,
    years: 10,
    source: 'x',
  };
}

function ahead(climatology?: SiteClimatology) {
  const asked = input({ facts: { 'soil.temperature30cmC': 11 }, weather: { columns: { temperature2mC: 10.5 } } });
  const forecast = asked.forecast && { ...asked.forecast, ...(climatology && { climatology }) };
  const outlook = outlookOf({ ...asked, forecast });
  const last = outlook.soilTemperature.at(-1)!;
  return { outlook, last, width: last.high95C - last.low95C };
}

test('beyond the forecast the usual air of the place moves the soil, and narrows its band', () => {
  const [byLatitude, mild, cold] = [ahead(), ahead(usualAir(11)), ahead(usualAir(5))];
  expect([byLatitude, mild, cold].map(({ outlook }) => outlook.usualAirYears)).toEqual([null, 10, 10]);
  expect(byLatitude.last.beyondForecast).toBe(true);
  expect(mild.last.valueC).toBeGreaterThan(cold.last.valueC + 0.5);
  expect(mild.width).toBeLessThan(byLatitude.width);
  const dates = [mild, cold].map(({ outlook }) => outlook.fallThrough?.day50 ?? '9999');
  expect(dates[1]! < dates[0]!).toBe(true);
});
