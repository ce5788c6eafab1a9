import { type ResolvedFacts, resolvedFact } from '../facts/resolved.ts';
import { numberParameter, type Parameters } from '../units/parameter.ts';
import type { PlanState } from './plan.ts';
import type { State } from './state.ts';

/** A point to fetch the forecast for, degrees. */
export interface Point {
  readonly latitude: number;
  readonly longitude: number;
}

/** Degrees within which a place counts as the same. */
const samePlaceDegrees = 0.001;

/** The field's point, or null where it is not known. */
export function pointOf(facts: ResolvedFacts): Point | null {
  const latitude = resolvedFact(facts, 'field.latitude');
  const longitude = resolvedFact(facts, 'field.longitude');
  if (!latitude.known || latitude.type !== 'number' || !longitude.known || longitude.type !== 'number') return null;
  return { latitude: latitude.value, longitude: longitude.value };
}

/**
 * The point for which a forecast is to be fetched now, or null: none was tried for this place yet, or the person looks again
 * and the last one failed or is older than `forecastFreshHours`.
 */
export function forecastNeed(
  { attempt, looks, forecast, at }: State,
  facts: ResolvedFacts,
  parameters: Parameters,
): Point | null {
  const point = pointOf(facts);
  if (point === null || at === null) return null;
  if (attempt === null || !isSamePlace(attempt, point)) return point;
  if (attempt.look === looks) return null;
  const ageHours = forecast === null ? Number.POSITIVE_INFINITY : (at - forecast.fetchedAt) / 3600;
  return attempt.failed || ageHours > numberParameter(parameters, 'forecastFreshHours') ? point : null;
}

/** How far the forecast has come, for planning. */
export function forecastStage(state: State, facts: ResolvedFacts, parameters: Parameters): PlanState['forecast'] {
  if (forecastNeed(state, facts, parameters) !== null) return 'coming';
  if (state.attempt?.failed) return 'failed';
  if (state.forecast !== null) return 'there';
  return 'no-place';
}

function isSamePlace(a: Point, b: Point): boolean {
  return Math.abs(a.latitude - b.latitude) < samePlaceDegrees && Math.abs(a.longitude - b.longitude) < samePlaceDegrees;
}
