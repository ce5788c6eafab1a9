import type { ResolveInput } from '../facts/context.ts';
import { soilInputOf } from '../facts/derive/soil-days.ts';
import type { FactId } from '../facts/registry/index.ts';
import { contextOf } from '../facts/resolve.ts';
import type { CompiledCondition, CompiledRules } from '../rules/types.ts';
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
  const limitC = upperLimitOf(compiled);
  const soil =
    context.trusted === null || limitC === null ? null : soilInputOf(context, context.trusted, daysAfterForecast);
  if (soil === null || limitC === null) return { soilTemperature: [], usualAirYears: null, fallThrough: null };
  const soilTemperature = soilTemperaturePath(soil, limitC).map(
    ({ at, valueC, low80C, high80C, low95C, high95C, chanceBelow, beyondForecast }): SoilTemperaturePoint => ({
      at,
      valueC,
      low80C,
      high80C,
      low95C,
      high95C,
      chanceBelow,
      beyondForecast,
    }),
  );
  return {
    soilTemperature,
    usualAirYears: soil.climatology?.years ?? null,
    fallThrough: fallThroughOf(soil, limitC),
  };
}

/** The highest limit above which a stop or hold is met by the temperature alone, C; null where there is none. */
function upperLimitOf({ rules }: CompiledRules): number | null {
  const limits = rules.flatMap(({ rule, condition }) => (rule.effect === 'advise' ? [] : upperLimits(condition)));
  return limits.length === 0 ? null : Math.max(...limits);
}

function upperLimits(condition: CompiledCondition): number[] {
  if (condition.kind === 'rule') return upperLimits(condition.member);
  if (condition.kind === 'any') return condition.members.flatMap(upperLimits);
  if (condition.kind !== 'comparison' || condition.fact !== temperature || condition.limit.kind !== 'number') return [];
  return condition.op === 'above' || condition.op === 'atLeast' ? [condition.limit.value] : [];
}
