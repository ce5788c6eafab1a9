import { type InversionLimits, type InversionRisk, judgeInversion } from '../../science/air/inversion.ts';
import { epochSeconds } from '../../units/brands.ts';
import { numberParameter, type Parameters } from '../../units/parameter.ts';
import { hourSeconds } from '../../weather/series.ts';
import { cloudNow } from '../../weather/weather-now.ts';
import type { FactSource } from '../context.ts';
import { asNumber, derivedChoice, earliest } from './derived.ts';
import { nextSunMark, sunPlaceOf } from './place.ts';

const answers: Readonly<Record<InversionRisk['risk'], readonly string[]>> = {
  yes: ['yes'],
  possible: ['yes', 'no'],
  no: ['no'],
};

/**
 * Inversion risk from its signs: wind at boom height over its whole band, cloud of the forecast, and the time between
 * evening and morning at the place. Yes or no where the signs settle it, else one of both. Not told where the time allows
 * one and neither wind nor cloud is known.
 */
export const deriveInversionRisk: FactSource = (context) => {
  const { at, trusted, parameters } = context;
  const place = sunPlaceOf(context);
  if (place === null) return null;
  const wind = asNumber(context.fact('wind.boomKmh'));
  const cloudPercent = trusted === null ? null : cloudNow(trusted.forecast, at);
  const limits = limitsOf(parameters);
  const winds = wind === null ? [null] : [wind.low, wind.high];
  const judged = winds.map((windKmh) => judgeInversion({ place, at, windKmh, cloudPercent }, limits));
  const risks = judged.flatMap(({ risk }) => answers[risk]);
  const possible = ['yes', 'no'].filter((answer) => risks.includes(answer));
  if (wind === null && cloudPercent === null && possible.length > 1) return null;
  const seenNow = epochSeconds(at + numberParameter(parameters, 'goodForSeenNowHours') * hourSeconds);
  const mark = nextSunMark(place, at, limits.hoursBeforeSunset, limits.hoursAfterSunrise);
  const goodUntil = earliest(seenNow, mark, place.goodUntil, wind?.goodUntil ?? null, trusted?.oldestAt ?? null);
  return derivedChoice(context, possible, goodUntil, 'from wind, cloud and the height of the sun');
};

function limitsOf(parameters: Parameters): InversionLimits {
  return {
    calmBelowKmh: numberParameter(parameters, 'inversionWindBelowKmh'),
    clearAtMostPercent: numberParameter(parameters, 'inversionCloudAtMostPercent'),
    hoursBeforeSunset: numberParameter(parameters, 'inversionBeforeSunsetHours'),
    hoursAfterSunrise: numberParameter(parameters, 'inversionAfterSunriseHours'),
  };
}
