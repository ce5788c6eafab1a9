import { type ResolvedFacts, resolvedFact } from '../facts/resolved.ts';
import type { Pack } from '../rules/pack-types.ts';
import type { AnsweredQuestion } from './state.ts';

/**
 * Questions not to be asked again: answered, unless the answer grew too old or is contradicted; and those of which the person
 * has said, asked or not, that they cannot tell what is not known.
 */
export function spentQuestions(
  answered: readonly AnsweredQuestion[],
  pack: Pack,
  facts: ResolvedFacts,
): ReadonlySet<string> {
  const reopened = pack.questions.filter((question) =>
    question.facts.some((id) => {
      const fact = resolvedFact(facts, id);
      return !fact.known && (fact.reason === 'too-old' || fact.reason === 'in-conflict');
    }),
  );
  const open = new Set(reopened.map(({ id }) => id));
  const beyondThem = pack.questions.filter((question) => {
    const unknown = question.facts.map((id) => resolvedFact(facts, id)).filter((fact) => !fact.known);
    return unknown.length > 0 && unknown.every(({ reason }) => reason === 'person-does-not-know');
  });
  const told = answered.map(({ question }) => question).filter((id) => !open.has(id));
  return new Set([...told, ...beyondThem.map(({ id }) => id)]);
}

/** The answers that stand when a person looks again: "don't know" for as long as it is fresh; all else is judged anew. */
export function keptOnLookingAgain(
  answered: readonly AnsweredQuestion[],
  pack: Pack,
  facts: ResolvedFacts,
): readonly AnsweredQuestion[] {
  return answered.filter(({ question }) =>
    pack.questions
      .find(({ id }) => id === question)
      ?.facts.some((id) => {
        const fact = resolvedFact(facts, id);
        return !fact.known && fact.reason === 'person-does-not-know';
      }),
  );
}
