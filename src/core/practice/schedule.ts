import { createEmptyCard, fsrs, type Card as KeptCard, Rating } from 'ts-fsrs';
import { type EpochSeconds, epochSeconds } from '../units/brands.ts';
import type { AnswerResult, LearnerAnswer } from './check-answer.ts';
import type { Card } from './types.ts';

/** One answer given, as it is kept: rows are only added. */
export interface Review extends Card, Omit<LearnerAnswer, 'rule'> {
  /** Id of the treatment whose rules it was about; absent in rows kept before answers named it. */
  readonly pack?: string;
  /** Epoch seconds UTC. */
  readonly at: number;
  /** Id of the day. */
  readonly day: string;
  readonly result: AnswerResult;
  /** Rule named as the reason; null for "nothing stands in the way". */
  readonly reason: string | null;
}

/** Where practice of one card stands. */
export interface CardStanding extends Card {
  readonly seen: number;
  readonly right: number;
  /** When it is due again. */
  readonly due: EpochSeconds;
  readonly lastSeen: EpochSeconds;
}

/** The scheduler with its published weights, without chance. */
const scheduler = fsrs({ enable_fuzz: false });

const grades = { right: Rating.Good, 'reason-wrong': Rating.Hard, wrong: Rating.Again } as const;

/** The rows about the rules of one treatment; those that name none count where `unnamed` says so. */
export function reviewsOf(reviews: readonly Review[], pack: string, unnamed: boolean): readonly Review[] {
  return reviews.filter((row) => (row.pack === undefined ? unnamed : row.pack === pack));
}

/** What names a card in lists. */
export function cardKey({ rule, kind }: Card): string {
  return `${rule} ${kind}`;
}

/** Where every card stands that was seen, from all answers in the order in which they were given: the rows alone are kept. */
export function standingOfCards(reviews: readonly Review[]): ReadonlyMap<string, CardStanding> {
  const cards = new Map<string, { readonly kept: KeptCard; readonly standing: CardStanding }>();
  for (const { rule, kind, at, result } of reviews.toSorted((a, b) => a.at - b.at)) {
    const key = cardKey({ rule, kind });
    const before = cards.get(key);
    const { card } = scheduler.next(before?.kept ?? createEmptyCard(at * 1000), at * 1000, grades[result]);
    const standing = {
      rule,
      kind,
      seen: (before?.standing.seen ?? 0) + 1,
      right: (before?.standing.right ?? 0) + (result === 'right' ? 1 : 0),
      due: epochSeconds(card.due.getTime() / 1000),
      lastSeen: epochSeconds(at),
    };
    cards.set(key, { kept: card, standing });
  }
  return new Map([...cards].map(([key, { standing }]) => [key, standing]));
}

/** How far practice of one rule has come. */
export interface RuleProgress {
  readonly rule: string;
  readonly seen: number;
  readonly right: number;
  /** When it comes next; null where it was never seen. */
  readonly due: EpochSeconds | null;
}

/** Progress of each rule, in the order given: every kind of day taken together. */
export function progressOf(rules: readonly string[], reviews: readonly Review[]): RuleProgress[] {
  const standings = [...standingOfCards(reviews).values()];
  return rules.map((rule) => {
    const own = standings.filter((one) => one.rule === rule);
    const due = Math.min(...own.map((one) => one.due));
    const sum = (of: 'seen' | 'right') => own.reduce((all, one) => all + one[of], 0);
    return { rule, seen: sum('seen'), right: sum('right'), due: own.length === 0 ? null : epochSeconds(due) };
  });
}
