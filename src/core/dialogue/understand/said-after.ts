import { is30cm } from '../../facts/depth-reading.ts';
import { definitionIn, type FactId, type FactRegistry } from '../../facts/registry/index.ts';
import type { Pack } from '../../rules/pack-types.ts';
import type { ClauseKind } from './clause-kind.ts';
import { depthRefusal, soilTemperature } from './depth-refusal.ts';
import type { Offered } from './merge.ts';
import type { ClauseReading } from './read-clause.ts';
import type { ReaderContext } from './reader-context.ts';
import type { Amount } from './scan.ts';
import { isToCome } from './time-span.ts';
import type { Intent, UnderstandContext, Understanding } from './types.ts';

/** What the clauses of a text have given so far. */
export interface Gathered {
  readonly offered: Offered[];
  readonly refused: Understanding['refused'][number][];
  readonly intents: Intent[];
  readonly lost: string[];
}

/** What one clause leaves for the next. */
export interface Left {
  readonly reading: ClauseReading | null;
  readonly kind: ClauseKind | null;
  readonly agoHours: number | undefined;
  readonly speedUnit: ReaderContext['speedUnit'];
  /** The numbers of the clause before. */
  readonly amounts: readonly Amount[];
  /** The words of a clause that spoke of something without saying anything of it; lost unless the next one says it. */
  readonly waiting: string | null;
}

/** The doubt holds for what the clause before said. */
export function doubtBack({ offered }: Gathered, { reading }: Left): void {
  const { length } = reading!.found;
  for (let at = offered.length - length; at < offered.length; at += 1)
    offered[at] = { ...offered[at]!, doubtful: true };
}

/** "There was a puddle, but it's gone", "drains were running, not now": what was said just before is there no more. */
export function endBack({ offered }: Gathered, { reading }: Left, quote: string): boolean {
  const last = offered.at(-1);
  if (last === undefined || reading?.found.length !== 1 || last.fact !== reading.found[0]?.fact) return false;
  if (last.reading.type === 'choice' && last.reading.possible.join() === 'yes') {
    const { agoHours, ...now } = last;
    if (agoHours === undefined) offered.pop();
    offered.push({ ...now, reading: { type: 'choice', possible: ['no'] }, quote, doubtful: true });
    return true;
  }
  if (last.reading.type !== 'signs') return false;
  const { present, absent } = last.reading;
  if (present.length === 0) return false;
  offered[offered.length - 1] = { ...last, reading: { ...last.reading, present: [], absent: [...absent, ...present] } };
  return true;
}

/** "9, half a degree either way": the number of the clause is how far the one before may be out, where that was told in the fact's unit. */
export function spreadBack({ offered }: Gathered, { rest }: ClauseKind, { reading, amounts }: Left): boolean {
  const [amount, ...more] = rest?.amounts ?? [];
  const last = offered.at(-1);
  if (!rest?.flags.has('spread') || amount === undefined || more.length + rest.subjects.length > 0) return false;
  if (last?.reading.type !== 'number' || reading?.found.length !== 1 || last.fact !== reading.found[0]?.fact)
    return false;
  if (!['deg', 'C', '%', null].includes(amount.quantity.unit)) return false;
  const { value } = last.reading;
  const isAsSaid = amounts.some(({ quantity }) => quantity.numeral.value === value);
  if (amount.quantity.unit === null && !isAsSaid) return false;
  const by = Math.abs(amount.quantity.numeral.value);
  const [low, high] = [value - by, value + by].map((end) => Number(end.toPrecision(12)));
  offered[offered.length - 1] = { ...last, reading: { type: 'number', value, low: low!, high: high! } };
  return true;
}

/** "9.2, that was at 25 cm": the depth holds for the soil temperature said just before. */
export function depthBack(
  gathered: Gathered,
  said: ClauseReading,
  { reading }: Left,
  { hasHour = false }: UnderstandContext,
): boolean {
  const { danglingDepthCm: depthCm } = said;
  const last = gathered.offered.at(-1);
  if (depthCm === null || last?.fact !== soilTemperature || last.depthCm !== undefined) return false;
  if (reading?.found.length !== 1 || reading.found[0]?.fact !== soilTemperature) return false;
  if (is30cm(depthCm)) return true;
  const problem = depthRefusal(depthCm, hasHour);
  gathered.offered.pop();
  if (problem === null) gathered.offered.push({ ...last, depthCm });
  else gathered.refused.push(problem);
  return true;
}

/** "9.2, yesterday": the time holds for what was said just before; what is to come cannot have been then. */
export function dateBack({ offered, lost }: Gathered, agoHours: number | undefined, pack: Pack): void {
  const said = offered.splice(0);
  for (const one of said) {
    if (one.agoHours !== undefined) offered.push(one);
    else if ((agoHours ?? 0) > 0 && isToCome(one.fact, pack)) lost.push(one.quote);
    else offered.push({ ...one, ...agoOf(one.fact, agoHours, pack.facts) });
  }
}

/** An hour or more ago, where the fact does not hold for the season. */
export function agoOf(fact: FactId, agoHours: number | undefined, registry: FactRegistry): { agoHours?: number } {
  const isOfSeason = definitionIn(registry, fact).goodFor.kind === 'season';
  return agoHours === undefined || agoHours === 0 || isOfSeason ? {} : { agoHours };
}
