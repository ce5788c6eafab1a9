import { expect, test } from 'vitest';
import { localDate } from '../../../src/core/facts/local-day.ts';
import { definitionsOf, type FactId } from '../../../src/core/facts/registry/index.ts';
import { compileRules } from '../../../src/core/rules/compile.ts';
import { answersOf } from '../../../src/core/tour/answers.ts';
import { tourMoment } from '../../../src/core/tour/make-tour.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { shipped } from '../../cases/shipped-pack.ts';

const { pack } = shipped;
const definitionOf = definitionsOf(pack.facts);

test('a number without a range is cut at its limits as well, and tried on both sides of them', () => {
  const compiled = compileRules(pack, localDate(tourMoment(pack, epochSeconds(0)), pack.zone));
  const withoutRange = (fact: FactId) => {
    const { range: _, ...rest } = definitionOf(fact);
    return rest;
  };
  const question = pack.questions.find(({ id }) => id === 'soil-temperature')!;
  const answers = answersOf(question, compiled, withoutRange);
  expect(answers.map(({ shape }) => shape)).toMatchObject([
    { from: null, to: 9, withFrom: false, withTo: true },
    { from: 9, to: 10, withFrom: false, withTo: true },
    { from: 10, to: null, withFrom: false, withTo: false },
  ]);
  const values = answers.map(({ gives }) => gives['soil.temperature30cmC']);
  expect(values).toMatchObject([{ value: 8 }, { value: expect.any(Number) }, { value: 11 }]);
});
