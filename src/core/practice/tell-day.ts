import { compiledFor } from '../dialogue/standing.ts';
import type { FactId } from '../facts/registry/index.ts';
import { resolvedFact } from '../facts/resolved.ts';
import { otherCountry } from '../rules/mutate/change-limits.ts';
import type { Pack, Question } from '../rules/pack-types.ts';
import { comparisonsIn } from '../rules/reads.ts';
import type { Catalogue } from '../words/catalogue.ts';
import { labelOf } from '../words/facts.ts';
import type { PracticeWords } from '../words/practice-words.ts';
import { capital } from '../words/units.ts';
import { describeValue } from '../words/values.ts';
import { tryDay } from './judge-day.ts';
import type { PracticeDay, PracticeWorld } from './types.ts';

/** One fact of a day as it is told. */
export interface ToldFact {
  readonly fact: FactId;
  readonly label: string;
  /** With its unit; "not known" where it is not. */
  readonly value: string;
  readonly isKnown: boolean;
}

/** Facts of a day that are looked for at one place: in the field, the crop, the soil, the weather. */
export interface ToldGroup {
  readonly title: string;
  readonly facts: readonly ToldFact[];
}

/** Sentences that a day is told with. */
export interface PracticeSpeech {
  readonly words: Catalogue;
  readonly practice: PracticeWords;
}

const groups = ['season', 'field', 'crop', 'soil', 'weather', 'rest'] as const;

/**
 * What is known and not known on a day of all that the rules read, grouped by where it is looked for. No outcome of a rule and no
 * limit is told; values are rounded for people but never onto or across a limit.
 */
export function tellDay(day: PracticeDay, { pack, definitionOf }: PracticeWorld, speech: PracticeSpeech): ToldGroup[] {
  const judged = tryDay(day, pack);
  if (judged === null) return [];
  const { rules } = compiledFor(pack, judged.at);
  const comparisons = rules.flatMap(({ condition }) => comparisonsIn(condition));
  const read = [...new Set(comparisons.map(({ fact }) => fact))];
  const order = pack.questions.flatMap(({ facts }) => facts);
  const rank = (fact: FactId) => (order.includes(fact) ? order.indexOf(fact) : order.length);
  const told = read
    .toSorted((a, b) => rank(a) - rank(b))
    .map((fact): ToldFact & { readonly group: (typeof groups)[number] } => {
      const resolved = resolvedFact(judged.facts, fact);
      const limits = comparisons.flatMap((one) =>
        one.fact === fact && one.limit.kind === 'number' ? [one.limit.value] : [],
      );
      const isElsewhere = resolved.known && resolved.type === 'choice' && resolved.possible.join() === otherCountry;
      const known = isElsewhere
        ? speech.practice.otherCountry
        : describeValue(definitionOf(fact), resolved, speech.words, limits);
      return {
        fact,
        label: capital(labelOf(fact, definitionOf, speech.words)),
        value: resolved.known ? known : speech.practice.notKnown,
        isKnown: resolved.known,
        group: groupOf(fact, pack),
      };
    });
  return groups.flatMap((group) => {
    const facts = told.filter((one) => one.group === group).map(({ group: _, ...fact }) => fact);
    return facts.length === 0 ? [] : [{ title: speech.practice.groups[group], facts }];
  });
}

/** By the question that asks for it; by the first part of its name where none does. */
function groupOf(fact: FactId, { questions }: Pick<Pack, 'questions'>): (typeof groups)[number] {
  const asked = questions.find(({ facts }) => facts.includes(fact))?.group;
  const found: Question['group'] | undefined = asked ?? byName[fact.split('.')[0] ?? ''];
  return found === undefined || found === 'dose' ? 'rest' : found;
}

const byName: Readonly<Record<string, Question['group']>> = {
  date: 'season',
  field: 'field',
  crop: 'crop',
  weed: 'crop',
  soil: 'soil',
  air: 'weather',
  wind: 'weather',
  rain: 'weather',
  sun: 'weather',
};
