import { expect } from 'vitest';
import { forecastToJson } from '../../src/adapters/openmeteo/json-own.ts';
import { runCommandLine } from '../../src/cli/main.ts';
import type { Decision } from '../../src/core/dialogue/decision-types.ts';
import type { KnownNumber } from '../../src/core/facts/types.ts';
import type { Outlook } from '../../src/core/outlook/types.ts';
import type { Forecast } from '../../src/core/weather/forecast.ts';
import { hoursAfter, utc } from '../core/facts/moments.ts';
import { fitField } from '../generators/fit-field.ts';
import { buildForecast, type ForecastPlan } from '../generators/forecast.ts';
import { fakeIo } from './fake-io.ts';

/** The moment asked about. */
export const at = utc('2026-11-06T09:00Z');
/** ISO instant so many hours from a moment. */
export const iso = (hours: number, from = at) => new Date(hoursAfter(from, hours) * 1000).toISOString();
/** Readings of a soil that cools, the newest two days old. */
export const readings = [9.4, 9, 8.7, 8.5, 8.2, 8].map((value, index) => ({ value, readAt: iso(-168 + index * 24) }));

/** An invented field on which nothing blocks, the soil read up to two days ago. */
export const fit = {
  ...fitField,
  'crop.frostOnLeaves': 'no',
  'soil.temperature30cmC': readings,
  'air.inversionRisk': 'no',
};

type Columns = NonNullable<ForecastPlan['columns']>;
/** Columns of fair weather. */
export const fair: Columns = {
  temperature2mC: (time) => 7 + 3 * Math.cos(((time % 86_400) / 86_400 - 0.58) * 2 * Math.PI),
  windSpeed10mKmh: 10,
  windGusts10mKmh: 14,
  soilTemperature18cmC: 7.6,
  soilTemperature54cmC: 8.6,
};
/** Fair weather over ten days past and ten to come, changed by a plan. */
export const build = (plan: Partial<ForecastPlan> = {}, from = at): Forecast =>
  buildForecast({
    from: hoursAfter(from, -240),
    hours: 480,
    fetchedAt: from,
    ...plan,
    columns: { ...fair, ...plan.columns },
  });

/** Runs the command: its answer, or the code that it ended in. */
export async function decide(facts: object, forecast: Forecast | string, moment = at) {
  const text = typeof forecast === 'string' ? forecast : forecastToJson(forecast);
  const io = fakeIo({ 'facts.json': JSON.stringify({ ...fit, ...facts }), 'forecast.json': text });
  const options = [
    '--forecast',
    'forecast.json',
    '--fetched',
    iso(0, moment),
    '--at',
    iso(0, moment),
    '--outlook',
    '--json',
  ];
  const status = await runCommandLine(['decide', '--facts', 'facts.json', ...options], io);
  if (status !== 0) return { code: JSON.parse(io.err()).code as string };
  return { code: null, ...(JSON.parse(io.out()) as Decision & { outlook: Outlook }) };
}

/** An answer of the command. Throws where it ended in a code. */
export async function decided(facts: object, forecast: Forecast | string = build(), moment = at) {
  const answer = await decide(facts, forecast, moment);
  if (answer.code !== null) throw new Error(answer.code);
  return answer;
}

/** An answer with its outlook. */
export type Answer = Awaited<ReturnType<typeof decided>>;
/** The soil temperature of an answer. */
export const soil = ({ facts }: Answer) => facts['soil.temperature30cmC'] as KnownNumber;
const width = (answer: Answer) =>
  soil(answer).known ? soil(answer).high - soil(answer).low : Number.POSITIVE_INFINITY;
/** Stamps of the hours that are clear. */
export const clearAt = ({ outlook }: Answer) =>
  new Set(outlook.hours.filter(({ state }) => state === 'clear').map((hour) => hour.at));

/** What bad input may do: the same or wider bands, no approval and no clear hour that the clean input does not have. */
export function expectNoSurer(bad: Answer, clean: Answer) {
  expect(width(bad)).toBeGreaterThanOrEqual(width(clean));
  if (clean.verdict !== 'spray-today') expect(bad.verdict).not.toBe('spray-today');
  expect([...clearAt(bad)].filter((hour) => !clearAt(clean).has(hour))).toEqual([]);
}
