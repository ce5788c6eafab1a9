import type { Dose } from '../verdict/types.ts';
import type { Catalogue } from './catalogue.ts';
import { labelOf } from './facts.ts';
import { marked, showWhole } from './numbers.ts';
import type { DefinitionOf } from './phrases.ts';
import { joinWords } from './units.ts';

/**
 * The dose in words: "750 g/ha of active: 1.50 L/ha of a 500 g/L product (rounded down); the label in hand allows 840 g/ha at
 * most.", or what is needed. `strengthGPerL` is the concentration it was worked out with.
 */
export function describeDose(
  dose: Dose,
  strengthGPerL: number | null,
  definitionOf: DefinitionOf,
  words: Catalogue,
): string {
  if ('needs' in dose) {
    if (dose.needs.length === 0) return '';
    return words.dose.needs(
      joinWords(
        dose.needs.map((id) => labelOf(id, definitionOf, words)),
        words.values.and,
      ),
    );
  }
  const { activeGPerHa, productLPerHa, activeInProductGPerHa, labelMaxGPerHa } = dose;
  const strength = strengthGPerL ?? activeInProductGPerHa / productLPerHa;
  const main = words.dose.dose(
    showWhole(words, activeGPerHa),
    marked(words, productLPerHa.toFixed(2)),
    showWhole(words, strength),
    showWhole(words, labelMaxGPerHa),
  );
  const given =
    activeInProductGPerHa === activeGPerHa ? [] : [words.dose.given(showWhole(words, activeInProductGPerHa))];
  return [main, ...given, ...basisOf(dose, words), words.dose.solid].join(' ');
}

function basisOf({ basis, cutToLabel }: Exclude<Dose, { needs: unknown }>, { dose }: Catalogue): string[] {
  if (basis === 'severe') return [cutToLabel ? dose.severeCut : dose.severe];
  return cutToLabel ? [dose.cut] : [];
}
