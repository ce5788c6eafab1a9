import * as z from 'zod';
import { codedError, isLoamwardError } from '../../core/errors/coded-error.ts';
import type { EpochSeconds } from '../../core/units/brands.ts';
import type { Forecast, WeatherVariable } from '../../core/weather/forecast.ts';
import { withoutFalseZeros } from '../../core/weather/zero-runs.ts';
import { attribution } from './attribution.ts';
import { checkPlace, placeOf } from './check-reply.ts';
import { cleanColumn, cleanRain } from './clean.ts';
import { membersIn } from './json-members.ts';
import { isOwnForm, readOwnForm } from './json-own.ts';
import { problemIn } from './json-problem.ts';
import { isoInstant, timesFromJson } from './json-times.ts';
import { conversionTo } from './json-units.ts';
import type { Point } from './question.ts';
import { askedVariables } from './variables.ts';

/** Said in the forecast's note where nothing tells when it was fetched. */
export const noFetchTimeNote =
  'Nothing says when this forecast was fetched, so its first hour is taken: the oldest that it can be.';

/** What is known beside the text: the point that it should be for, and when it was fetched. */
export interface JsonReplyOptions {
  readonly asked?: Point;
  readonly fetchedAt?: EpochSeconds;
}

const cell = z.union([z.number(), z.null()]);

const replyForm = z.object({
  latitude: z.number().min(-90).max(90),
  longitude: z.number().min(-360).max(360),
  elevation: z.number().nullish(),
  utc_offset_seconds: z.number().int().min(-86_400).max(86_400).optional(),
  fetchedAt: z.string().optional(),
  hourly_units: z.record(z.string(), z.string()),
  hourly: z.intersection(
    z.object({ time: z.array(z.union([z.string(), z.number()])).max(24 * 130) }),
    z.record(z.string(), z.array(z.union([z.string(), cell]))),
  ),
});

type Reply = z.infer<typeof replyForm>;

/**
 * Reads a forecast from JSON text: the service's own reply with an hourly block (stamps, units and offset as it documents
 * them, each unit turned into ours), or a forecast saved by `forecastToJson`. Age counts from `fetchedAt` of the options, else
 * from the top-level key "fetchedAt" (ISO 8601 with Z) that we add, else from the first stamp, the oldest that it can be: a
 * cautious assumption, which `note` then tells. Throws FORECAST_FILE_UNREADABLE, _REJECTED, _GARBLED, _INCOMPLETE,
 * _WRONG_UNIT or _WRONG_PLACE.
 */
export function parseForecastJson(text: string, options: JsonReplyOptions = {}): Forecast {
  const parsed = parseText(text);
  if (isOwnForm(parsed)) return readOwnForm(parsed, options);
  refuseErrorReply(parsed);
  const form = replyForm.safeParse(parsed);
  if (!form.success) throw codedError('FORECAST_FILE_UNREADABLE', problemIn(form.error, parsed));
  const reply = form.data;
  const times = timesFromJson(reply.hourly.time, reply.utc_offset_seconds);
  const point = { latitude: reply.latitude, longitude: reply.longitude };
  const place = placeOf(options.asked ?? point, { ...point, elevationM: reply.elevation ?? null });
  checkPlace(place);
  const said = options.fetchedAt ?? fetchedIn(reply);
  const members = membersIn(reply.hourly, 'precipitation', (name) => {
    return columnNamed(reply, name, 'precipitationMm', times.length);
  });
  return {
    place,
    fetchedAt: said ?? times[0]!,
    attribution,
    ...(said === null ? { note: noFetchTimeNote } : {}),
    times,
    values: columnsFromJson(reply, times.length),
    ...(members.length === 0 ? {} : { precipitationMembersMm: members.map((member) => withoutFalseZeros(member)) }),
  };
}

function parseText(text: string): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch (error) {
    if (isLoamwardError(error)) throw error;
    throw codedError('FORECAST_FILE_UNREADABLE', { expected: 'JSON', came: text.slice(0, 40) || 'an empty text' });
  }
}

function refuseErrorReply(parsed: unknown): void {
  if (!parsed || typeof parsed !== 'object' || !('error' in parsed) || parsed.error !== true) return;
  const reason = 'reason' in parsed ? String(parsed.reason).slice(0, 200) : 'an error without a reason';
  throw codedError('FORECAST_REJECTED', { expected: 'a forecast', came: reason });
}

function fetchedIn(reply: Reply): EpochSeconds | null {
  if (reply.fetchedAt === undefined) return null;
  const moment = isoInstant(reply.fetchedAt);
  if (moment !== null) return moment;
  throw codedError('FORECAST_FILE_UNREADABLE', {
    expected: 'a moment such as 2026-11-06T07:40Z',
    came: reply.fetchedAt.slice(0, 40),
    pointer: '/fetchedAt',
  });
}

function columnsFromJson(reply: Reply, hours: number): Forecast['values'] {
  const values: Record<string, (number | null)[]> = {};
  for (const asked of askedVariables) {
    const name = [asked.service, ...asked.formerly].find((candidate) => Object.hasOwn(reply.hourly, candidate));
    if (name === undefined) continue;
    const column = columnNamed(reply, name, asked.column, hours);
    if (column) values[asked.column] = column;
  }
  if (Object.keys(values).length > 0) return cleanRain(values);
  throw codedError('FORECAST_INCOMPLETE', { expected: 'an hourly variable of ours', came: 'none', pointer: '/hourly' });
}

/** A column of the reply in our unit; null where it has no value at all. */
function columnNamed(reply: Reply, name: string, column: WeatherVariable, hours: number): (number | null)[] | null {
  const raw = numbersOf(reply.hourly[name] ?? [], name, hours);
  if (raw.every((value) => value === null)) return null;
  const convert = conversionTo(column, reply.hourly_units[name], name);
  if (!convert) throw contradiction(name);
  const ours = raw.map((value) => (value === null ? null : convert(value)));
  return cleanColumn(ours, column, name);
}

function numbersOf(column: readonly (string | number | null)[], name: string, hours: number): (number | null)[] {
  const pointer = `/hourly/${name}`;
  if (column.length !== hours) {
    throw codedError('FORECAST_GARBLED', { expected: `${hours} values`, came: String(column.length), pointer });
  }
  return column.map((value, index) => {
    if (typeof value !== 'string') return value;
    throw codedError('FORECAST_GARBLED', {
      expected: 'a number',
      came: value.slice(0, 40),
      pointer: `${pointer}/${index}`,
    });
  });
}

function contradiction(name: string) {
  return codedError('FORECAST_WRONG_UNIT', {
    expected: `a unit for ${name}, or no values`,
    came: 'values of unit "undefined"',
    pointer: `/hourly_units/${name}`,
  });
}
