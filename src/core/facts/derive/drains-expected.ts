import { greatestSurplus } from '../../science/water/surplus.ts';
import { epochSeconds } from '../../units/brands.ts';
import { numberParameter } from '../../units/parameter.ts';
import { withoutBinaryNoise } from '../../weather/banded.ts';
import { hourSeconds } from '../../weather/series.ts';
import { waterHours } from '../../weather/water-hours.ts';
import type { FactContext, FactSource, TrustedForecast } from '../context.ts';
import type { Resolved } from '../types.ts';
import { type Deficit, deficitOf } from './deficit.ts';
import { asChoice, derivedChoice, earliest, isSurely } from './derived.ts';

/** Seconds ahead over which drains are judged: those of the fact `soil.drainsExpected7d`. */
const aheadSeconds = 7 * 24 * hourSeconds;

/**
 * Whether drains will run within 7 days: no where the field has none; else whether the soil water balance since the soil
 * was seen lets through more than `drainsSurplusMm`: rain less evapotranspiration passes its deficit by so much. Yes or no
 * where that holds throughout all bands, one of both where it straddles. Past the end of the forecast or a gap only a yes
 * can be told.
 */
export const deriveDrainsExpected: FactSource = (context) => {
  const drained = asChoice(context.fact('field.drained'));
  if (drained !== null && isSurely(drained, 'no')) {
    return derivedChoice(context, ['no'], drained.goodUntil, 'the field is not drained');
  }
  const deficit = deficitOf(context);
  if (deficit === null) return null;
  return context.trusted === null ? context.untrusted : fromBalance(context, context.trusted, deficit);
};

function fromBalance(context: FactContext, trusted: TrustedForecast, deficit: Deficit): Resolved {
  const { at, parameters } = context;
  const known = waterHours(trusted.forecast, { since: deficit.at, at, until: epochSeconds(at + aheadSeconds) });
  const surplus = greatestSurplus({
    soils: deficit.soils,
    depthM: numberParameter(parameters, 'deficitDepthM'),
    cover: { kind: 'crop', coefficient: numberParameter(parameters, 'youngCropCoefficient') },
    flows: known.hours,
    rainBandShare: numberParameter(parameters, 'forecastRainBandShare') * trusted.growth,
  });
  const limit = numberParameter(parameters, 'drainsSurplusMm');
  const isSure = withoutBinaryNoise(surplus.lowMm) > limit;
  const isPossible = withoutBinaryNoise(surplus.highMm) > limit;
  if (!isSure && !known.complete) {
    return { known: false, reason: 'forecast-gap', note: 'rain and evapotranspiration are not known for 7 days' };
  }
  const fresh = epochSeconds(at + numberParameter(parameters, 'forecastFreshHours') * hourSeconds);
  const note =
    `deficit ${millimetres(deficit.lowMm)} to ${millimetres(deficit.highMm)} mm, ` +
    `surplus in 7 days ${millimetres(surplus.lowMm)} to ${millimetres(surplus.highMm)} mm`;
  const possible = isSure ? ['yes'] : isPossible ? ['yes', 'no'] : ['no'];
  return derivedChoice(context, possible, earliest(deficit.goodUntil, fresh, trusted.oldestAt), note);
}

function millimetres(amount: number): string {
  return String(Math.round(amount * 10) / 10);
}
