import { codedError } from '../../core/errors/coded-error.ts';
import type { Forecast, WeatherVariable } from '../../core/weather/forecast.ts';
import { requiredVariables, variableMeanings } from '../../core/weather/variables.ts';
import { withoutFalseZeros } from '../../core/weather/zero-runs.ts';

/** Below this a value that is not 0 comes from text or noise laid over the numbers; rounding would make a false zero of it. */
const leastReal = 1e-8;

/** Variables that a service computes on the way, so that tiny values are real. */
const computed: ReadonlySet<WeatherVariable> = new Set(['et0Mm', 'shortwaveRadiationWPerM2']);

/**
 * A column without the noise of the wire: NaN and null become null (missing), never zero; the rest is rounded to the decimals
 * kept. Throws FORECAST_GARBLED for a value that cannot be.
 */
export function cleanColumn(raw: ArrayLike<number | null>, column: WeatherVariable, name: string): (number | null)[] {
  const { decimals, range, unit } = variableMeanings[column];
  const scale = 10 ** decimals;
  return Array.from(raw, (value, index) => {
    if (value === null || Number.isNaN(value)) return null;
    const rounded = Math.round(value * scale) / scale + 0;
    const tiny = value !== 0 && Math.abs(value) < leastReal && !computed.has(column);
    if (!tiny && rounded >= range[0] && rounded <= range[1]) return rounded;
    throw codedError('FORECAST_GARBLED', {
      expected: `${name} from ${range[0]} to ${range[1]} ${unit}`,
      came: `${value} at hour ${index}`,
    });
  });
}

/** Columns with the rain's unbelievable zeros taken out (core/weather/zero-runs.ts), judged by the other needed columns. */
export function cleanRain(values: Forecast['values']): Forecast['values'] {
  const rain = values.precipitationMm;
  if (!rain) return values;
  const alongside = requiredVariables.flatMap((variable) => {
    const column = variable === 'precipitationMm' ? undefined : values[variable];
    return column ? [column] : [];
  });
  return { ...values, precipitationMm: withoutFalseZeros(rain, alongside) };
}
