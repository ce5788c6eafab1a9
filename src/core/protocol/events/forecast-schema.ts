import * as z from 'zod';
import type { Forecast, WeatherVariable } from '../../weather/forecast.ts';
import { climatologySchema } from './climatology-schema.ts';
import { momentSchema, textSchema } from './fact-schema.ts';

/** Most hours that a forecast may hold: past days and days ahead. */
const mostHours = 24 * 120;

const column = z.array(z.number().nullable()).max(mostHours);

const columns: { readonly [Name in WeatherVariable]: z.ZodType<readonly (number | null)[]> } = {
  temperature2mC: column,
  relativeHumidity2mPercent: column,
  dewPoint2mC: column,
  precipitationMm: column,
  windSpeed10mKmh: column,
  windGusts10mKmh: column,
  windDirection10mDeg: column,
  cloudCoverPercent: column,
  shortwaveRadiationWPerM2: column,
  et0Mm: column,
  soilTemperature6cmC: column,
  soilTemperature18cmC: column,
  soilTemperature54cmC: column,
  soilMoisture3to9cmM3PerM3: column,
  soilMoisture9to27cmM3PerM3: column,
};

/** A forecast as an event keeps it: every column as long as its stamps. */
export const forecastSchema: z.ZodType<Forecast> = z
  .strictObject({
    place: z.strictObject({
      askedLatitude: z.number().min(-90).max(90),
      askedLongitude: z.number().min(-180).max(180),
      latitude: z.number().min(-90).max(90),
      longitude: z.number().min(-180).max(180),
      elevationM: z.number().nullable(),
      distanceKm: z.number().min(0),
    }),
    fetchedAt: momentSchema,
    attribution: textSchema,
    invented: z.exactOptional(z.literal(true)),
    note: z.exactOptional(textSchema),
    climatology: z.exactOptional(climatologySchema),
    times: z.array(momentSchema).max(mostHours),
    values: z.strictObject(columns).partial(),
    precipitationMembersMm: z.exactOptional(z.array(column).max(100)),
  })
  .refine(
    ({ times, values, precipitationMembersMm = [] }) =>
      [...Object.values(values), ...precipitationMembersMm].every((each) => each?.length === times.length),
    { error: 'columns as long as the stamps' },
  ) as unknown as z.ZodType<Forecast>;
