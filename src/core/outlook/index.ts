import { sunPlaceOf } from '../facts/derive/place.ts';
import { localDate } from '../facts/local-day.ts';
import { isFactOf } from '../facts/registry/index.ts';
import { contextOf, resolveFacts } from '../facts/resolve.ts';
import { soilWaterDays } from '../facts/soil-water-days.ts';
import { compileRules } from '../rules/compile.ts';
import { evaluateReference } from '../rules/reference.ts';
import { type EpochSeconds, epochSeconds } from '../units/brands.ts';
import { numberParameter } from '../units/parameter.ts';
import { verdictWord } from '../verdict/verdict-of.ts';
import { hourSeconds } from '../weather/series.ts';
import { type ChangesInput, changesByRule, smallestSetOf } from './changes/needed.ts';
import type { OutlookInput } from './input.ts';
import { scanHours } from './scan.ts';
import { withSoilBelow } from './soil-below.ts';
import { soilTemperatureAhead } from './soil-temperature.ts';
import type { HourOutlook, Outlook, Spoiled } from './types.ts';
import { windowsOf } from './windows.ts';

export type { OutlookInput } from './input.ts';

/**
 * All that can be said of the coming days: every hour to the end of the forecast, windows, what would have to change. Pure.
 * Throws PARAMETER_MISSING or ZONE_UNKNOWN.
 */
export function outlookOf(input: OutlookInput): Outlook {
  const { at, pack, observations, forecast } = input;
  const { zone } = pack;
  const today = localDate(at, zone);
  const compiled = compileRules(pack, today);
  const { parameters, registry } = compiled;
  const now = { observations, forecast, at, zone, parameters, registry };
  const facts = resolveFacts(now);
  const { hours, untold, liftedAt } = scanHours(input);
  const changes: ChangesInput = { compiled, facts, at, today, forecastAt: (rule) => liftedAt.get(rule) ?? null };
  const sprays = verdictWord(evaluateReference(compiled, facts)) === 'spray-today';
  const soil = soilTemperatureAhead(now, compiled);
  const windows = windowsOf(hours, {
    now: at,
    shortestHours: numberParameter(parameters, 'shortestWindowHours'),
    likelyLeast: numberParameter(parameters, 'windowLikelyLeast'),
    place: sunPlaceOf(contextOf(now)),
  });
  return {
    at,
    zone,
    hours,
    untold,
    windows: withSoilBelow(windows, soil),
    reachesTo: reachOf(hours),
    ...soil,
    soilWater: isFactOf(registry, 'soil.drainsExpected7d') ? soilWaterDays(now) : [],
    changes: changesByRule(changes),
    smallestSet: smallestSetOf(changes),
    spoiled: sprays ? spoiledBy(hours) : null,
  };
}

function reachOf(hours: readonly HourOutlook[]): EpochSeconds | null {
  const last = hours.findLast(({ state }) => state !== 'beyond-forecast');
  return last === undefined ? null : epochSeconds(last.at + hourSeconds);
}

function spoiledBy(hours: readonly HourOutlook[]): Spoiled | null {
  const hour = hours.find(({ state }) => state === 'blocked');
  return hour === undefined ? null : { at: hour.at, by: [...hour.hourBlocks, ...hour.dayBlocks] };
}
