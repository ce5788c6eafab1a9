import Big from 'big.js';
import type { FactId } from '../facts/registry/index.ts';
import { type ResolvedFacts, resolvedFact } from '../facts/resolved.ts';
import type { KnownNumber } from '../facts/types.ts';
import { numberParameter, type Parameters } from '../units/parameter.ts';
import type { Dose } from '../verdict/types.ts';

/** Facts without which no dose is told, in the order in which they are asked. */
const doseFacts = ['product.activeGPerL', 'product.labelMaxGPerHa'] as const satisfies readonly FactId[];

/**
 * Active and product per hectare: the usual dose, or the severe one where the weed surely stands at the severe density
 * or more; cut to the label's maximum; product rounded down to the pack's step. From bands the end is taken that gives
 * less (highest concentration, lowest maximum). Says what is needed where concentration or maximum is unknown; nothing is where
 * the pack gives no dose.
 */
export function doseFor(facts: ResolvedFacts, parameters: Parameters): Dose {
  if (!parameters.has('usualDoseGPerHa')) return { needs: [] };
  const concentration = numberFact(facts, 'product.activeGPerL');
  const labelMax = numberFact(facts, 'product.labelMaxGPerHa');
  if (concentration === null || labelMax === null) {
    return { needs: doseFacts.filter((id) => numberFact(facts, id) === null) };
  }
  const basis = isSurelySevere(facts, parameters) ? 'severe' : 'usual';
  const wanted = numberParameter(parameters, basis === 'severe' ? 'severeDoseGPerHa' : 'usualDoseGPerHa');
  const activeGPerHa = Math.min(wanted, labelMax.low);
  const product = floorToStep(new Big(activeGPerHa).div(concentration.high), productStep(parameters));
  return {
    activeGPerHa,
    productLPerHa: product.toNumber(),
    activeInProductGPerHa: product.times(concentration.high).toNumber(),
    labelMaxGPerHa: labelMax.low,
    basis,
    cutToLabel: labelMax.low < wanted,
  };
}

function numberFact(facts: ResolvedFacts, id: FactId): KnownNumber | null {
  const fact = resolvedFact(facts, id);
  return fact.known && fact.type === 'number' ? fact : null;
}

function isSurelySevere(facts: ResolvedFacts, parameters: Parameters): boolean {
  const density = numberFact(facts, 'weed.plantsPerM2');
  return density !== null && density.low >= numberParameter(parameters, 'severeDensityPlantsPerM2');
}

function productStep(parameters: Parameters): Big {
  return new Big(numberParameter(parameters, 'productStepLPerHa'));
}

function floorToStep(amount: Big, step: Big): Big {
  return amount.div(step).round(0, Big.roundDown).times(step);
}
