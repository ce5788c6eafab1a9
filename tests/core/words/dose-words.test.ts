import { expect, test } from 'vitest';
import type { Dose } from '../../../src/core/verdict/types.ts';
import { catalogueOf } from '../../../src/core/words/catalogue.ts';
import { describeDose } from '../../../src/core/words/dose.ts';
import { factDefinition } from '../../fixtures/core-facts.ts';

function say(basis: 'usual' | 'severe', cutToLabel: boolean, strength = 500): string {
  const amounts = { activeGPerHa: 700, productLPerHa: 1.4, activeInProductGPerHa: 700, labelMaxGPerHa: 700 };
  const dose: Dose = { ...amounts, basis, cutToLabel };
  return describeDose(dose, strength, factDefinition, catalogueOf('en'));
}

test('what the label cuts is named for what it is', () => {
  expect(say('usual', true)).toContain("The label's maximum cuts the usual dose.");
  expect(say('severe', true)).toContain(
    "The label's maximum cuts the higher dose, which is for severe infestations only.",
  );
  expect(say('severe', true)).not.toContain('This is the higher dose');
  expect(say('severe', false)).toContain('This is the higher dose, for severe infestations only.');
  expect(say('usual', false)).not.toMatch(/severe|cuts/);
});

test.each([
  [500, 'a 500 g/L'],
  [800, 'an 800 g/L'],
  [80.5, 'an 80.5 g/L'],
  [11, 'an 11 g/L'],
  [110, 'a 110 g/L'],
  [180, 'a 180 g/L'],
  [18.5, 'an 18.5 g/L'],
])('a product of %d g/L is "%s product"', (strength, words) => {
  expect(say('usual', false, strength)).toContain(` of ${words} product`);
});
