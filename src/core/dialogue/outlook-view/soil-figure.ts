import type { DateTime } from 'luxon';
import type { Outlook, SoilTemperaturePoint } from '../../outlook/types.ts';
import { atField } from '../../units/field-clock.ts';
import type { Catalogue } from '../../words/catalogue.ts';
import { showHigh, showLow, showNumber } from '../../words/numbers.ts';
import { showShare } from '../../words/outlook-chance.ts';
import { showShortDay, showWeekday } from '../../words/outlook-times.ts';
import type { OutlookWording } from '../../words/outlook-windows.ts';
import { unitSuffix } from '../../words/units.ts';
import { dayTicks, hoursBetween, tenth } from './day-ticks.ts';
import type { SoilFigure } from './types.ts';

/** Most points along the line: finer than a phone shows. */
const mostPoints = 80;

/** The 30 cm line with its bands and the limit, C; null where no line is told, as where no rule has such a limit. */
export function soilFigure(
  { soilTemperature: points, usualAirYears, zone, fallThrough }: Outlook,
  { words }: OutlookWording,
): SoilFigure | null {
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined || first === last || fallThrough === null) return null;
  const { limitC } = fallThrough;
  const said = words.outlook.figures.soil;
  const limit = degrees(words, limitC, []);
  const beyond = points.find(({ beyondForecast }) => beyondForecast);
  const hours = hoursBetween(first.at, last.at);
  const day = showWeekday(atField(last.at, zone), words);
  const description = said.description(
    degrees(words, first.valueC, [limitC]),
    degrees(words, last.valueC, [limitC]),
    day,
    limit,
  );
  return {
    title: said.title,
    description:
      beyond === undefined
        ? description
        : `${description} ${usualAirYears === null ? said.beyond.ofLatitude : said.beyond.ofPlace(usualAirYears)}`,
    hours,
    days: dayTicks(first.at, hours, zone, words),
    limitC,
    limitText: said.limit(limit),
    beyondFrom: beyond === undefined ? null : hoursBetween(first.at, beyond.at),
    points: thinned(points).map((point) => ({
      hour: hoursBetween(first.at, point.at),
      value: hundredth(point.valueC),
      low80: hundredth(point.low80C),
      high80: hundredth(point.high80C),
      low95: hundredth(point.low95C),
      high95: hundredth(point.high95C),
    })),
    table: {
      columns: [words.outlook.figures.day, said.middle, said.band, said.chanceBelow(limit)],
      rows: middleOfDays(points, zone).map(({ day: local, point }) => [
        showShortDay(local, words),
        showNumber(words, point.valueC, 1, [limitC]),
        `${showLow(words, point.low80C, 1)} ${words.outlook.figures.to} ${showHigh(words, point.high80C, 1)}`,
        showShare(point.chanceBelow, words),
      ]),
    },
  };
}

function degrees(words: Catalogue, value: number, limits: readonly number[]): string {
  return `${showNumber(words, value, 1, limits)}${unitSuffix('C', words)}`;
}

function hundredth(value: number): number {
  return Math.round(value * 100) / 100;
}

/** Every so many points, first and last among them. */
function thinned(points: readonly SoilTemperaturePoint[]): SoilTemperaturePoint[] {
  const step = Math.max(1, Math.ceil((points.length - 1) / (mostPoints - 1)));
  return points.filter((_, index) => index % step === 0 || index === points.length - 1);
}

/** Of each day at the field the point nearest to noon. */
function middleOfDays(
  points: readonly SoilTemperaturePoint[],
  zone: string,
): { readonly day: DateTime; readonly point: SoilTemperaturePoint }[] {
  const days = new Map<
    number,
    { readonly day: DateTime; readonly point: SoilTemperaturePoint; readonly off: number }
  >();
  for (const point of points) {
    const day = atField(point.at, zone);
    const off = Math.abs(tenth(day.hour + day.minute / 60) - 12);
    const key = day.startOf('day').toSeconds();
    if (off < (days.get(key)?.off ?? 25)) days.set(key, { day, point, off });
  }
  return [...days.values()];
}
