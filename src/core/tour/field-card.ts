import { questionsInOrder } from '../dialogue/asking-order.ts';
import type { FactId } from '../facts/registry/index.ts';
import type { Pack, Question } from '../rules/pack-types.ts';
import type { CompiledRule, CompiledRules } from '../rules/types.ts';
import type { Tour } from './types.ts';

/** Parts of the card, in the order in which one meets them on the way to the field and in it. */
export const cardParts = ['season', 'field', 'crop', 'soil', 'weather'] as const;
/** A part of the card. */
export type CardPart = (typeof cardParts)[number];

/** A class of the hand test and the rules that it meets. */
export interface HandClass {
  readonly choice: string;
  readonly met: readonly string[];
}

/** What stands on the card for the cab, without words. */
export interface FieldCard {
  readonly parts: readonly { readonly part: CardPart; readonly rules: readonly CompiledRule[] }[];
  /** The hand test: its question, and each class from dry to wet; null where the pack has none. */
  readonly hand: { readonly question: Question; readonly classes: readonly HandClass[] } | null;
  /** The question that tells where areas of drinking water are looked up; null where the pack has none. */
  readonly waterArea: Question | null;
}

const handFact: FactId = 'soil.feel';
const waterAreaFact: FactId = 'field.protectedWaterArea';

/**
 * The card of a pack: every rule once, by the part in which the last of its facts is met (what a rule waits for decides where it is
 * judged), stops before holds before advice.
 */
export function fieldCard(pack: Pack, { rules }: CompiledRules, tour: Tour): FieldCard {
  const partOf = new Map<FactId, CardPart>();
  for (const { facts, group } of questionsInOrder(pack)) {
    for (const fact of facts) if (group !== 'dose') partOf.set(fact, group);
  }
  const placed = rules.map((rule) => ({ rule, part: lastPart(rule, partOf) }));
  const parts = cardParts.flatMap((part) => {
    const own = placed.filter((one) => one.part === part).map(({ rule }) => rule);
    return own.length === 0 ? [] : [{ part, rules: own.sort(byEffect) }];
  });
  const asking = (fact: FactId) => pack.questions.find(({ facts }) => facts.includes(fact)) ?? null;
  const hand = asking(handFact);
  return {
    parts,
    hand: hand && { question: hand, classes: classesOf(hand, tour) },
    waterArea: asking(waterAreaFact),
  };
}

function lastPart({ facts }: CompiledRule, partOf: ReadonlyMap<FactId, CardPart>): CardPart {
  const at = facts.flatMap((fact) => partOf.get(fact) ?? []).map((part) => cardParts.indexOf(part));
  if (at.length > 0) return cardParts[Math.max(...at)] ?? 'weather';
  return facts.every((fact) => fact === 'date') ? 'season' : 'weather';
}

const effectOrder = ['stop', 'hold', 'advise'];

function byEffect(a: CompiledRule, b: CompiledRule): number {
  return effectOrder.indexOf(a.rule.effect) - effectOrder.indexOf(b.rule.effect);
}

function classesOf(hand: Question, tour: Tour): HandClass[] {
  const step = tour.steps.find(({ question }) => question === hand.id);
  return (step?.answers ?? []).flatMap(({ shape, rules }) =>
    shape.kind === 'choice'
      ? [{ choice: shape.choice, met: rules.filter(({ outcome }) => outcome === 'met').map(({ rule }) => rule) }]
      : [],
  );
}
