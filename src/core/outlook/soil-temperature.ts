import type { ResolveInput } from '../facts/context.ts';
import { soilInputOf } from '../facts/derive/soil-days.ts';
import type { FactId } from '../facts/registry/index.ts';
import { contextOf } from '../facts/resolve.ts';
import type { CompiledRules } from '../rules/types.ts';
import { upperLimitOf } from '../rules/upper-limit.ts';
import { fallThroughOf, soilTemperaturePath } from '../science/soil/temperature/index.ts';
import type { Outlook, SoilTemperaturePoint } from './types.ts';

const temperature: FactId = 'soil.temperature30cmC';
/** Days shown past the end of the forecast, on the usual air of the season. */
const daysAfterForecast = 14;

/**
 * The line at 30 cm from the day asked about to two weeks past the forecast, and when it falls through the limit for good.
 * Nothing without a person's reading, without a forecast that may be used, or where no rule has an upper limit.
 */
export function soilTemperatureAhead(
  input: ResolveInput,
  compiled: CompiledRules,
): Pick<Outlook, 'soilTemperature' | 'usualAirYears' | 'fallThrough'> {
  const context = contextOf(input);
  const limitC = upperLimitOf(compiled, temperature);
  const soil =
    context.trusted === null || limitC === null ? null : soilInputOf(context, context.trusted, daysAfterForecast);
  if (soil === null || limitC === null) return { soilTemperature: [], usualAirYears: null, fallThrough: null };
  const soilTemperature = soilTemperaturePath(soil, limitC).map(
    ({ iso: _, sdC: __, ...point }): SoilTemperaturePoint => point,
  );
  return {
    soilTemperature,
    usualAirYears: soil.climatology?.years ?? null,
    fallThrough: fallThroughOf(soil, limitC),
  };
}
