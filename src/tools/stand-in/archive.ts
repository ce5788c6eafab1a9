import { Unit } from '@openmeteo/sdk/unit.js';
import { buildReply, type ReplyDescription } from './build-forecast.ts';
import type { Failure, Reply } from './failures.ts';

const daySeconds = 86_400;

/** Invented mean air temperature of a day, C: a yearly wave about 10.5 C, coldest in mid January, with a ripple of weather. */
export function inventedDayC(at: number): number {
  const day = at / daySeconds;
  const wave = -6.5 * Math.cos((2 * Math.PI * (day - 15)) / 365.2425);
  return Math.round((10.5 + wave + 2.5 * Math.sin(day * 1.7) + 1.5 * Math.sin(day * 0.31)) * 10) / 10;
}

/** The days asked of the archive; null where the question is not of the right form. */
export function describeArchive(query: URLSearchParams): ReplyDescription | null {
  const [start, end] = ['start_date', 'end_date'].map((name) => Date.parse(`${query.get(name)}T00:00:00Z`) / 1000);
  const [latitude, longitude] = ['latitude', 'longitude'].map((name) => Number(query.get(name) ?? 'none'));
  const numbers = [start, end, latitude, longitude].every(Number.isFinite);
  if (!numbers || query.get('daily') !== 'temperature_2m_mean' || end! < start!) return null;
  const days = (end! - start!) / daySeconds + 1;
  const column = Array.from({ length: days }, (_, day) => inventedDayC(start! + day * daySeconds));
  return {
    latitude: latitude!,
    longitude: longitude!,
    elevation: 80,
    start: start!,
    hours: days,
    daily: true,
    variables: { temperature_2m_mean: column },
  };
}

type Change = (description: ReplyDescription) => ReplyDescription;
type Rebuild = (description: ReplyDescription) => Reply;
const reply =
  (change: Change): Rebuild =>
  (description) => ({ status: 200, headers: {}, body: buildReply(change(description)) });
const column = (change: (value: number | null, day: number) => number | null): Rebuild =>
  reply((description) => ({
    ...description,
    variables: { temperature_2m_mean: (description.variables['temperature_2m_mean'] ?? []).map(change) },
  }));

/** How the archive may fail; the forecast then stands without it. */
export const archiveFailures = {
  'page-404': () => ({ status: 404, headers: {}, body: new TextEncoder().encode('<p>Not here.</p>') }),
  'page-503': () => ({ status: 503, headers: {}, body: new TextEncoder().encode('<p>Later.</p>') }),
  truncated: (description) => ({ status: 200, headers: {}, body: buildReply(description).slice(0, -400) }),
  reset: 'reset',
  silence: 'silence',
  'half-a-year': column((value, day) => (day < 183 ? value : null)),
  'two-years': column((value, day) => (day < 731 ? value : null)),
  'nan-days': column((value, day) => (day % 9 === 0 ? null : value)),
  'wrong-place': reply((description) => ({ ...description, latitude: description.latitude + 3 })),
  hourly: reply((description) => ({ ...description, daily: false })),
  'something-else': reply(({ variables, ...description }) => ({
    ...description,
    variables: { relative_humidity_2m: variables['temperature_2m_mean'] ?? [] },
  })),
  'wrong-unit': reply((description) => ({ ...description, units: { temperature_2m_mean: Unit.fahrenheit } })),
  'no-winter': column((value, day) => (day % 365 < 90 ? null : value)),
  'all-nan': column(() => null),
  'impossible-value': column((value, day) => (day === 7 ? 400 : value)),
} as const satisfies Record<string, Failure>;

/** Name of a way in which the archive may fail. */
export type ArchiveFailureName = keyof typeof archiveFailures;
