import { makeDay } from './make-day.ts';
import { cardKey, type Review, standingOfCards } from './schedule.ts';
import { seeded } from './seeded.ts';
import { type Card, madeKinds, type PracticeDay, type PracticeWorld } from './types.ts';

/** What the next day is chosen by. */
export interface NextDayInput {
  readonly world: PracticeWorld;
  /** Days of a file; null where they are made from the pack. */
  readonly days: readonly PracticeDay[] | null;
  readonly reviews: readonly Review[];
  /** Epoch seconds UTC. */
  readonly now: number;
  readonly seed: string;
}

/**
 * The day to put next: the card that is longest due; else one not seen yet, those at a limit before the mixed ones; else the one
 * that is due soonest. A card that comes back has other values, where it has others. Null where there is no day at all.
 */
export function nextDay(input: NextDayInput): PracticeDay | null {
  const { days, reviews, now, seed } = input;
  const standings = standingOfCards(reviews);
  const cards = days === null ? cardsOf(input.world, seed) : distinctCards(days);
  const seen = cards.flatMap((card) => standings.get(cardKey(card)) ?? []).sort((a, b) => a.due - b.due);
  const fresh = cards.filter((card) => !standings.has(cardKey(card)));
  const ordered: readonly Card[] = [
    ...seen.filter(({ due }) => due <= now),
    ...fresh,
    ...seen.filter(({ due }) => due > now),
  ];
  for (const card of ordered) {
    const times = standings.get(cardKey(card))?.seen ?? 0;
    const day = days === null ? made(input, card, times) : leastSeen(days, card, reviews);
    if (day) return day;
  }
  return null;
}

/** Every card of a pack in a seeded order: days at a limit first, then what is not known and what comes together. */
export function cardsOf({ pack }: PracticeWorld, seed: string): Card[] {
  const chance = seeded(`${seed} cards`);
  const of = (kinds: readonly (typeof madeKinds)[number][]) =>
    chance.shuffled(pack.rules.flatMap(({ id }) => kinds.map((kind): Card => ({ rule: id, kind }))));
  const [inside, outside, ...rest] = madeKinds;
  return [...of([inside, outside]), ...of(rest)];
}

function made({ world, seed }: NextDayInput, card: Card, times: number): PracticeDay | null {
  const found = makeDay(world, card, times === 0 ? seed : `${seed} ${times}`);
  return 'day' in found ? found.day : null;
}

function distinctCards(days: readonly PracticeDay[]): Card[] {
  return [...new Map(days.map((day) => [cardKey(day), { rule: day.rule, kind: day.kind }])).values()];
}

function leastSeen(days: readonly PracticeDay[], card: Card, reviews: readonly Review[]): PracticeDay | null {
  const own = days.filter((day) => cardKey(day) === cardKey(card));
  const times = ({ id }: PracticeDay) => reviews.filter(({ day }) => day === id).length;
  return own.toSorted((a, b) => times(a) - times(b))[0] ?? null;
}
