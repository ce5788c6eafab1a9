import { definitionsOf } from '../../src/core/facts/registry/index.ts';
import { type PartEnd, type SharedOut, shareOut } from '../../src/core/rules/overlay/share-out.ts';
import { collectLimits } from '../../src/core/rules/pack/straddle.ts';
import type { Pack, Question } from '../../src/core/rules/pack-types.ts';
import type { Parameter } from '../../src/core/units/parameter.ts';
import { benchWordsOf } from '../../src/core/words/bench-words.ts';
import { catalogueOf } from '../../src/core/words/catalogue.ts';
import { describeParameter } from '../../src/core/words/fill.ts';
import type { Draft } from './draft.ts';

/**
 * The questions whose answers lie on both sides of a limit once a draft is laid over a pack, with those answers shared out; words in
 * every language of the pack.
 */
export function sharedAnswers(pack: Pack, { limits, opened }: Pick<Draft, 'limits' | 'opened'>): SharedOut[] {
  const parameters = new Map<string, Parameter[]>();
  for (const one of pack.parameters) {
    const value = limits[one.id];
    const moved = value === undefined ? [] : [{ ...one, value }];
    parameters.set(one.id, [...(parameters.get(one.id) ?? []), one, ...moved]);
  }
  const limitsOf = collectLimits(new Map(pack.rules.map((rule) => [rule.id, rule])), parameters);
  const own = (opened?.questions ?? []) as readonly Pick<Question, 'id'>[];
  const asked = pack.questions.filter(({ id }) => !own.some((one) => one.id === id));
  const definitionOf = definitionsOf(pack.facts);
  return shareOut(asked, limitsOf, definitionOf, (language, label, ends) => {
    const words = catalogueOf(language);
    const { shared } = benchWordsOf(language);
    const say = ({ fact, is, value }: PartEnd) =>
      shared.ends[is](describeParameter({ value, unit: definitionOf(fact).unit ?? '' }, words));
    return [label, ...ends.map(say)].join(', ');
  });
}
