import { questionsInOrder } from '../dialogue/asking-order.ts';
import { momentOfFacts } from '../facts/parse/index.ts';
import { definitionsOf, type FactId } from '../facts/registry/index.ts';
import type { Pack } from '../rules/pack-types.ts';
import { evaluateReference } from '../rules/reference.ts';
import type { EpochSeconds } from '../units/brands.ts';
import { parseInstant } from '../units/instant.ts';
import { answerEffect, factsAfter, type TourWorld } from './answer-effect.ts';
import { answersOf } from './answers.ts';
import type { Tour, TourStep } from './types.ts';

/**
 * The tour of a pack: each question in the order of asking (cheapest first, those for the dose last), with the rules that read its
 * facts and what each answer alone opens or closes.
 */
export function makeTour(world: TourWorld): Tour {
  const { pack, compiled } = world;
  const definitionOf = definitionsOf(pack.facts);
  const before = evaluateReference(compiled, factsAfter({}, world));
  const readersOf = (facts: readonly FactId[]) =>
    compiled.rules.filter((rule) => facts.some((fact) => rule.facts.includes(fact))).map(({ rule }) => rule.id);
  const ordered = questionsInOrder(pack);
  const last = [...ordered.filter((one) => !one.forDose), ...ordered.filter((one) => one.forDose)];
  const steps = last.map(
    (question, at): TourStep => ({
      number: at + 1,
      question: question.id,
      facts: question.facts,
      rules: readersOf(question.facts),
      answers: answersOf(question, compiled, definitionOf).map((answer) =>
        answerEffect(question, answer, before, world),
      ),
      forDose: question.forDose === true,
    }),
  );
  const asked = new Set(pack.questions.flatMap(({ facts }) => facts));
  const read = [...new Set(compiled.rules.flatMap(({ facts }) => facts))];
  const unasked = read.filter((fact) => !asked.has(fact)).map((fact) => ({ fact, rules: readersOf([fact]) }));
  return { steps, unasked };
}

/** A moment on which the logic is best told: that of the pack's plain day, so that no date stands in the way; else `now`. */
export function tourMoment(
  { plainDay, zone, facts }: Pick<Pack, 'plainDay' | 'zone' | 'facts'>,
  now: EpochSeconds,
): EpochSeconds {
  if (!plainDay) return now;
  if (plainDay.at !== undefined) return parseInstant(plainDay.at);
  return momentOfFacts(plainDay.facts, zone, facts) ?? now;
}
