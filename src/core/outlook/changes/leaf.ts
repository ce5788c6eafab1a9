import { DateTime } from 'luxon';
import { definitionIn, type FactId, type FactRegistry } from '../../facts/registry/index.ts';
import { type ResolvedFacts, resolvedFact } from '../../facts/resolved.ts';
import type { FactDefinition, Resolved } from '../../facts/types.ts';
import type { CompiledComparison } from '../../rules/types.ts';
import { withoutBinaryNoise } from '../../weather/banded.ts';

/** A change of one fact that gives one comparison the outcome wanted. */
export interface LeafChange {
  readonly fact: FactId;
  readonly how: 'reach' | 'without';
  readonly to: number | string;
  /** How hard it is to bring, to choose among ways: the share of the fact's usual span for numbers, 1 for a choice. */
  readonly cost: number;
}

/** What a change is looked for in: facts, the day at the field (YYYY-MM-DD), the registry. */
export interface LeafWorld {
  readonly facts: ResolvedFacts;
  readonly today: string;
  readonly registry: FactRegistry;
}

/** Facts of the field profile that a person can bring about; the others are as the field lies. */
const jobs: readonly FactId[] = ['field.bufferMarked', 'field.waterPlanAgreed'];

/** Cost that no way with a fact that can be brought about ever reaches. */
const fixedCost = 1000;

/**
 * The smallest change of a comparison's fact that makes it hold (`wanted` true) or fail; null where there is none. A value at
 * the limit is taken where that is enough, else one step of the fact's precision beyond it.
 */
export function leafChange(
  comparison: CompiledComparison,
  wanted: boolean,
  { facts, today, registry }: LeafWorld,
): LeafChange | null {
  const { fact, limit } = comparison;
  const definition = definitionIn(registry, fact);
  const change =
    limit.kind === 'number'
      ? numberChange(comparison, definition, limit.value, wanted, facts)
      : limit.kind === 'month-day'
        ? dateChange(comparison, limit.value, wanted, today)
        : choiceChange(comparison, definition, limit.values, wanted, facts);
  if (change === null) return null;
  const isFixed = definition.profile === true && !jobs.includes(fact);
  return { fact, ...change, cost: change.cost + (isFixed ? fixedCost : 0) };
}

type Change = Omit<LeafChange, 'fact'>;

function numberChange(
  { fact: id, op }: CompiledComparison,
  { precision, plausible, range }: FactDefinition,
  limit: number,
  wanted: boolean,
  facts: ResolvedFacts,
): Change | null {
  const mustRise = (op === 'above' || op === 'atLeast') === wanted;
  const atLimit = (op === 'atLeast' || op === 'atMost') === wanted;
  const to = withoutBinaryNoise(atLimit ? limit : limit + (mustRise ? precision! : -precision!));
  const [lowest, highest] = range!;
  if (to < lowest || to > highest) return null;
  const by = numberBy(to, resolvedFact(facts, id));
  const [least, most] = plausible ?? range!;
  return { how: 'reach', to, cost: by === null ? 1 : Math.abs(by) / (most - least) };
}

function choiceChange(
  { fact: id, op }: CompiledComparison,
  { choices }: FactDefinition,
  values: readonly string[],
  wanted: boolean,
  facts: ResolvedFacts,
): Change | null {
  if (op === 'has') {
    return { how: wanted ? 'reach' : 'without', to: values[0] ?? '', cost: 1 };
  }
  const inside = (op === 'is' || op === 'oneOf') === wanted;
  const offered = (choices ?? values).filter((choice) => values.includes(choice) === inside);
  const now = resolvedFact(facts, id);
  const here = now.known && now.type === 'choice' ? (choices?.indexOf(now.possible[0] ?? '') ?? 0) : 0;
  const distance = (choice: string) => Math.abs((choices?.indexOf(choice) ?? 0) - here);
  const [nearest] = offered.toSorted((a, b) => distance(a) - distance(b));
  return nearest === undefined ? null : { how: 'reach', to: nearest, cost: 1 };
}

function dateChange({ op }: CompiledComparison, limit: number, wanted: boolean, today: string): Change {
  const here = DateTime.fromISO(today, { zone: 'utc' });
  const nextOf = (month: number, day: number) => {
    const thisYear = here.set({ month, day });
    return thisYear > here ? thisYear : thisYear.plus({ years: 1 });
  };
  const mustBeLate = (op === 'above' || op === 'atLeast') === wanted;
  const atLimit = (op === 'atLeast' || op === 'atMost') === wanted;
  const onLimit = nextOf(Math.floor(limit / 100), limit % 100);
  const to = mustBeLate ? onLimit.plus({ days: atLimit ? 0 : 1 }) : nextOf(1, 1);
  const iso = to.toFormat('yyyy-MM-dd');
  return { how: 'reach', to: iso, cost: daysBetween(today, iso) / 366 };
}

/** How far a change goes from what a fact is: in its unit, days for a date; null for choices and where nothing is known. */
export function distanceOf({ to }: Pick<LeafChange, 'to'>, now: Resolved): number | null {
  if (typeof to === 'number') return numberBy(to, now);
  return now.known && now.type === 'date' ? daysBetween(now.iso, to) : null;
}

function numberBy(to: number, now: Resolved): number | null {
  return now.known && now.type === 'number' ? withoutBinaryNoise(to - now.value) : null;
}

function daysBetween(from: string, to: string): number {
  const dayOf = (iso: string) => DateTime.fromISO(iso, { zone: 'utc' });
  return dayOf(to).diff(dayOf(from), 'days').days;
}
