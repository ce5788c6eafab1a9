import type { WordedReason } from '../dialogue/decision-types.ts';
import type { Catalogue } from './catalogue.ts';

/**
 * The jobs by which a person lifts a hold, as sentences without repeats. None where a stop holds for the whole season: no job
 * would change it.
 */
export function jobsOf(reasons: readonly WordedReason[]): string[] {
  if (isOverForSeason(reasons)) return [];
  const met = reasons.filter(({ outcome, lifts }) => outcome === 'met' && lifts === 'person');
  return [...new Set(met.map(({ lift, text }) => lift ?? text))];
}

/** What was left open because a certain hold settles the answer, by name; null where there is none, and past a stop. */
export function notJudged(reasons: readonly WordedReason[], words: Catalogue): string | null {
  const met = reasons.filter(({ outcome }) => outcome === 'met');
  const unknown = reasons.filter(({ outcome }) => outcome === 'unknown');
  if (met.length === 0 || unknown.length === 0 || met.some(({ effect }) => effect === 'stop')) return null;
  return words.verdict.stillUnknown(unknown.map(({ title }) => words.values.inSentence(title)).join('; '));
}

/** What lifts a reason, where saying it beside the reason helps: not what the jobs say, nor what a season's stop makes idle. */
export function liftBeside(reason: WordedReason, reasons: readonly WordedReason[]): string | null {
  if (reason.outcome !== 'met' || reason.lifts === 'person') return null;
  return isOverForSeason(reasons) && reason.lifts !== 'season' ? null : reason.lift;
}

function isOverForSeason(reasons: readonly WordedReason[]): boolean {
  return reasons.some(({ effect, lifts, outcome }) => effect === 'stop' && lifts === 'season' && outcome === 'met');
}
