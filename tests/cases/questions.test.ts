import { describe, expect, test } from 'vitest';
import { fitsFact } from '../../src/core/facts/reading-fits.ts';
import type { FactId } from '../../src/core/facts/registry/index.ts';
import type { Reading } from '../../src/core/facts/types.ts';
import { reachedFacts } from '../../src/core/rules/reach.ts';
import { numberParameter, parametersOn } from '../../src/core/units/parameter.ts';
import { factIds } from '../fixtures/core-facts.ts';
import { packTable, shipped } from './shipped-pack.ts';

const { questions, parameters } = shipped.pack;

describe.each(packTable)('%s', (_, { pack }) => {
  const told = new Set(pack.questions.flatMap(({ facts }) => facts));
  const offers = pack.questions.flatMap(({ id, choices = [] }) =>
    choices.flatMap((choice) =>
      (Object.entries(choice.gives) as [FactId, Reading][]).map(([fact, reading]) => ({
        name: `${id}/${choice.id}`,
        fact,
        reading,
      })),
    ),
  );

  test('asks for every fact of its rules that a person can tell', () => {
    const asked = Object.entries(reachedFacts(pack)).filter(
      ([, { obtained, noQuestion }]) => obtained.includes('asked') && noQuestion === undefined,
    );
    expect(asked.map(([fact]) => fact).filter((fact) => !told.has(fact) && !isPlace(fact))).toEqual([]);
  });

  test.each(offers.filter(({ reading }) => reading.type !== 'does-not-know'))(
    '$name is a reading that the fact takes',
    ({ fact, reading }) => {
      expect(fitsFact(fact, pack.facts[fact]!, reading)).toBe(true);
    },
  );

  const choiceFacts = [...new Set(offers.map(({ fact }) => fact))].filter((fact) => pack.facts[fact]!.choices);
  test.each(choiceFacts)('%s leaves out none of its choices', (fact) => {
    const named = offers.flatMap(({ fact: of, reading }) => {
      if (of !== fact) return [];
      if (reading.type === 'signs') return reading.present;
      return reading.type === 'choice' ? reading.possible : [];
    });
    expect(named.toSorted()).toEqual([...(pack.facts[fact]!.choices ?? [])].sort());
  });
});

/** The place is needed for the sun alone; a field without it is judged too. */
function isPlace(fact: string): boolean {
  return fact === 'field.latitude' || fact === 'field.longitude';
}
const inForce = parametersOn(parameters, '2026-11-06');

/** Measured, derived or known without asking: no question may ask for them. */
const notAsked: readonly FactId[] = ['date', 'soil.fieldCapacityPercent', 'air.deltaTC', 'sun.daylight'];

const offered = questions.flatMap(({ id, choices = [] }) =>
  choices.flatMap((choice) =>
    (Object.entries(choice.gives) as [FactId, Reading][]).map(([fact, reading]) => ({
      name: `${id}/${choice.id}`,
      fact,
      reading,
    })),
  ),
);

const readingsOf = (fact: FactId) => offered.filter((each) => each.fact === fact).map(({ reading }) => reading);

describe('what is asked', () => {
  test('is every fact that a person can tell, and no other', () => {
    const asked = new Set(questions.flatMap(({ facts }) => facts));
    expect([...asked].sort()).toEqual(factIds.filter((id) => !notAsked.includes(id)).sort());
  });

  test('is no trend in degrees a day: it is asked for in words', () => {
    const [question, ...others] = questions.filter(({ facts }) => facts.includes('soil.temperatureTrendCPerDay'));
    expect(others).toEqual([]);
    expect(question).toMatchObject({ form: 'choice' });
  });

  test('is for the dose only where it can change the dose alone', () => {
    expect(questions.filter(({ forDose }) => forDose).map(({ facts }) => facts)).toEqual([
      ['product.activeGPerL'],
      ['product.labelMaxGPerHa'],
      ['weed.plantsPerM2'],
    ]);
  });

  test.each(questions.filter(({ form }) => form === 'choice').map((question) => [question.id, question] as const))(
    '%s offers an answer for each of its facts',
    (_, { facts, choices = [] }) => {
      expect(choices.length).toBeGreaterThan(1);
      expect(facts.filter((fact) => !choices.some(({ gives }) => fact in gives))).toEqual([]);
    },
  );
});

describe('what is offered', () => {
  const derivationLimits = [
    ['air.temperatureC', 'noFrostAboveC'],
    ['wind.boomKmh', 'inversionWindBelowKmh'],
  ] as const;
  test.each(derivationLimits)('%s does not straddle %s, which a derivation reads', (fact, parameter) => {
    const limit = numberParameter(inForce, parameter);
    for (const reading of readingsOf(fact)) {
      if (reading.type !== 'number') continue;
      const { value, low = value, high = value } = reading;
      expect(high <= limit || low >= limit).toBe(true);
    }
  });
});

describe('a question that matters only by the answer to another is dearer, so that it is asked after it', () => {
  const effortOf = (fact: FactId) => questions.find(({ facts }) => facts.includes(fact))!.effortSeconds;
  test.each([
    ['soil.temperatureTrendCPerDay', 'soil.temperature30cmC'],
    ['field.waterPlanAgreed', 'field.protectedWaterArea'],
    ['field.waterPlanAgreed', 'field.loosenedThisSeason'],
    ['field.bufferMarked', 'field.waterDistanceM'],
    ['wind.towardsSensitive', 'wind.boomKmh'],
    ['soil.drainsExpected7d', 'field.drained'],
    ['soil.drainsRunning', 'field.drained'],
    ['crop.frostOnLeaves', 'air.temperatureC'],
  ] as const)('%s after %s', (later, earlier) => {
    expect(effortOf(later)).toBeGreaterThan(effortOf(earlier));
  });
});
