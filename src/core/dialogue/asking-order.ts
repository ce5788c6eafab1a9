import { type FactId, factIdsOf } from '../facts/registry/index.ts';
import type { Pack, Question } from '../rules/pack-types.ts';

const groups = ['season', 'field', 'crop', 'soil', 'weather', 'dose'] as const satisfies readonly Question['group'][];

/** The pack's questions, cheapest first; of equal effort by group (season, field, crop, soil, weather, dose), then as written. */
export function questionsInOrder(pack: Pick<Pack, 'questions'>): readonly Question[] {
  return pack.questions
    .map((question, index) => ({ question, index }))
    .sort(
      (a, b) =>
        a.question.effortSeconds - b.question.effortSeconds ||
        groups.indexOf(a.question.group) - groups.indexOf(b.question.group) ||
        a.index - b.index,
    )
    .map(({ question }) => question);
}

/** Facts in the order in which a pack's questions would ask for them, then those that none asks for, in registry order. */
export function askingOrder(pack: Pick<Pack, 'questions' | 'facts'>): readonly FactId[] {
  return [...new Set([...questionsInOrder(pack).flatMap((question) => question.facts), ...factIdsOf(pack.facts)])];
}
