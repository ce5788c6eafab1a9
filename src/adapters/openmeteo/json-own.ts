import * as z from 'zod';
import { codedError } from '../../core/errors/coded-error.ts';
import { climatologySchema } from '../../core/protocol/events/climatology-schema.ts';
import { type EpochSeconds, epochSeconds } from '../../core/units/brands.ts';
import type { Forecast, WeatherVariable } from '../../core/weather/forecast.ts';
import { hourSeconds } from '../../core/weather/series.ts';
import { weatherVariables } from '../../core/weather/variables.ts';
import { checkPlace, placeOf } from './check-reply.ts';
import { cleanColumn } from './clean.ts';
import { problemIn } from './json-problem.ts';
import type { Point } from './question.ts';

const formName = 'loamward-forecast/1';

const seconds = z.number().int().transform(epochSeconds);
const latitude = z.number().min(-90).max(90);
const longitude = z.number().min(-180).max(180);

const ownForm = z.strictObject({
  form: z.literal(formName),
  place: z.strictObject({
    askedLatitude: latitude,
    askedLongitude: longitude,
    latitude,
    longitude,
    elevationM: z.number().nullable(),
    distanceKm: z.number().min(0),
  }),
  fetchedAt: seconds,
  attribution: z.string().min(1),
  invented: z.literal(true).exactOptional(),
  note: z.string().exactOptional(),
  times: z.array(seconds).min(1),
  values: z.partialRecord(
    z.enum(weatherVariables as [WeatherVariable, ...WeatherVariable[]]),
    z.array(z.number().nullable()),
  ),
  climatology: climatologySchema.exactOptional(),
  precipitationMembersMm: z.array(z.array(z.number().nullable())).exactOptional(),
});

/** A forecast as JSON text that `parseForecastJson` reads back unchanged. */
export function forecastToJson(forecast: Forecast): string {
  return JSON.stringify({ form: formName, ...forecast });
}

/** True for parsed JSON that calls itself a saved forecast. */
export function isOwnForm(parsed: unknown): boolean {
  return parsed !== null && typeof parsed === 'object' && 'form' in parsed && parsed.form === formName;
}

/** Reads a saved forecast. Throws FORECAST_FILE_UNREADABLE, FORECAST_GARBLED or FORECAST_WRONG_PLACE. */
export function readOwnForm(
  parsed: unknown,
  options: { readonly asked?: Point; readonly fetchedAt?: EpochSeconds },
): Forecast {
  const result = ownForm.safeParse(parsed);
  if (!result.success) throw codedError('FORECAST_FILE_UNREADABLE', problemIn(result.error, parsed));
  const { form: _, ...saved } = result.data;
  checkTimes(saved.times);
  const values: Record<string, (number | null)[]> = {};
  for (const [name, column] of Object.entries(saved.values)) {
    if (column.length !== saved.times.length) {
      throw codedError('FORECAST_GARBLED', {
        expected: `${saved.times.length} values`,
        came: String(column.length),
        pointer: `/values/${name}`,
      });
    }
    values[name] = cleanColumn(column, name as WeatherVariable, name);
  }
  const { precipitationMembersMm: members } = saved;
  const cleaned = members?.map((column, index) => {
    if (column.length === saved.times.length) return cleanColumn(column, 'precipitationMm', `member ${index}`);
    throw codedError('FORECAST_GARBLED', {
      expected: `${saved.times.length} values`,
      came: String(column.length),
      pointer: `/precipitationMembersMm/${index}`,
    });
  });
  const place = options.asked ? placeOf(options.asked, saved.place) : saved.place;
  checkPlace(place);
  return {
    ...saved,
    fetchedAt: options.fetchedAt ?? saved.fetchedAt,
    place,
    values,
    ...(cleaned && { precipitationMembersMm: cleaned }),
  };
}

function checkTimes(times: readonly number[]): void {
  const index = times.findIndex((time, at) => at > 0 && time - times[at - 1]! !== hourSeconds);
  if (index < 0) return;
  throw codedError('FORECAST_GARBLED', {
    expected: 'stamps an hour apart',
    came: `${times[index - 1]} then ${times[index]}`,
    pointer: `/times/${index}`,
  });
}
