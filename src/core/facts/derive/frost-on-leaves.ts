import { numberParameter } from '../../units/parameter.ts';
import type { FactSource } from '../context.ts';
import { asNumber, derivedChoice } from './derived.ts';

/** No frost on the leaves where the air is surely warmer than `noFrostAboveC`; otherwise nobody can tell from afar. */
export const deriveFrostOnLeaves: FactSource = (context) => {
  const air = asNumber(context.fact('air.temperatureC'));
  const limit = numberParameter(context.parameters, 'noFrostAboveC');
  if (air === null || !(air.low > limit)) return null;
  return derivedChoice(context, ['no'], air.goodUntil, `the air is above ${limit} C`);
};
