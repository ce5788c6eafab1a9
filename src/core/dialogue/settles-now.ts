import { definitionIn } from '../facts/registry/index.ts';
import { resolvedFact } from '../facts/resolved.ts';
import type { Question } from '../rules/pack-types.ts';
import { reasonsOf } from '../verdict/reasons.ts';
import { usefulFacts } from '../verdict/useful.ts';
import { joinWords, shortList } from '../words/units.ts';
import { describeValue } from '../words/values.ts';
import { standingOf } from './standing.ts';
import type { State } from './state.ts';
import type { ViewContext } from './view-context.ts';
import { ruleText } from './worded-reason.ts';

const mostNamed = 3;

/** Which of the rules that are open just now an answer would help to settle, in a line; empty where there is none. */
export function settlesNow({ facts }: Question, state: State, { pack, words }: ViewContext): string {
  const trace = standingOf(state, pack)?.trace ?? [];
  const open = trace.filter(({ effect, outcome }) => effect !== 'advise' && outcome === 'unknown');
  const settled = open.filter((rule) => {
    const useful = usefulFacts([rule]);
    return facts.some((fact) => useful.has(fact));
  });
  const titles = reasonsOf(settled).map(({ rule }) =>
    words.values.inSentence(ruleText(pack, rule, words.language)?.title ?? rule),
  );
  if (titles.length === 0) return '';
  return words.asking.settles(joinWords(shortList(titles, mostNamed, words.asking.more), words.values.and));
}

/** The answer that stands to a question, in words; null where nothing is known. */
export function standingAnswer({ facts }: Question, state: State, { pack, words }: ViewContext): string | null {
  const standing = standingOf(state, pack);
  const known = facts.flatMap((fact) => {
    const resolved = resolvedFact(standing?.facts ?? {}, fact);
    return resolved.known ? [describeValue(definitionIn(pack.facts, fact), resolved, words)] : [];
  });
  return known.length === 0 ? null : words.asking.answerNow(known.join('; '));
}
