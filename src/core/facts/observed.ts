import type { EpochSeconds } from '../units/brands.ts';
import { type AgeingInput, goodUntilOf } from './ageing.ts';
import { isUnsettledCountry } from './country-codes.ts';
import { isWorkedOut } from './depth-reading.ts';
import { type DatedReading, knownFrom, type LiveReading } from './observed-known.ts';
import { fitsFact } from './reading-fits.ts';
import { definitionIn, type FactId, type FactRegistry } from './registry/index.ts';
import type { FactObservation } from './resolved.ts';
import { describeReading } from './say-reading.ts';
import type { FactDefinition, Known, Unknown } from './types.ts';

/** What an observation is judged by: ageing, and the registry that its fact stands in. */
export interface ObservedInput extends AgeingInput {
  readonly registry: FactRegistry;
}

/** What was observed of a fact, as it stands at a moment. */
export interface Observed {
  /** From a person's eyes, instruments or papers; outranks all else. */
  readonly given: Known | null;
  /** A person's account of a forecast; yields to a good forecast. */
  readonly told: Known | null;
  /** Why there is no still-good reading; null where there is one or nothing was ever observed. */
  readonly unknown: Unknown | null;
}

/**
 * What the observations of one fact (oldest first, none later than `at`) say at a moment. Nothing a person said is lost:
 * "does not know" and a country that settles nothing stand only where there is no still-good reading.
 */
export function observedOf(
  id: FactId,
  observations: readonly FactObservation[],
  at: EpochSeconds,
  ageing: ObservedInput,
): Observed {
  const definition = definitionIn(ageing.registry, id);
  const dated = observations.map(
    (observation): DatedReading => ({
      ...observation,
      goodUntil: goodUntilOf(definition.goodFor, observation.at, ageing),
    }),
  );
  const still = dated.filter((reading) => reading.goodUntil > at);
  const live = still.filter((reading): reading is LiveReading => isReading(id, definition, reading));
  const told = live.filter(({ source }) => source === 'told');
  const seen = live.filter(({ source }) => source !== 'told');
  const direct = seen.filter(({ reading }) => !isWorkedOut(reading));
  const given = direct.length > 0 ? direct : seen;
  return {
    given: knownFrom(definition, given),
    told: knownFrom(definition, told),
    unknown: live.length > 0 ? null : whyUnknown(id, definition, dated, still, ageing.zone),
  };
}

function isReading(id: FactId, definition: FactDefinition, { reading }: DatedReading): boolean {
  return reading.type !== 'does-not-know' && fitsFact(id, definition, reading) && !isUnsettled(reading);
}

function isUnsettled(reading: DatedReading['reading']): boolean {
  return reading.type === 'choice' && reading.possible.some(isUnsettledCountry);
}

function whyUnknown(
  id: FactId,
  definition: FactDefinition,
  dated: readonly DatedReading[],
  still: readonly DatedReading[],
  zone: string,
): Unknown | null {
  const past = dated.findLast((one) => isReading(id, definition, one) && !still.includes(one));
  const note = past === undefined ? {} : { note: describeReading(definition, past, zone) };
  if (still.some(({ reading }) => isUnsettled(reading))) return { known: false, reason: 'does-not-settle', ...note };
  if (still.some(({ reading }) => reading.type === 'does-not-know')) {
    return { known: false, reason: 'person-does-not-know', ...note };
  }
  if (still.length > 0) return { known: false, reason: 'implausible', ...note };
  return past === undefined ? null : { known: false, reason: 'too-old', ...note };
}
