import type { WordedReason } from '../dialogue/decision-types.ts';

/** What a person can do about a verdict: jobs that lift a hold, then what to find out, as sentences without repeats. */
export function jobsOf(reasons: readonly WordedReason[]): string[] {
  const jobs = reasons.filter(({ outcome, lifts }) => outcome === 'met' && lifts === 'person');
  const unknown = reasons.filter(({ outcome }) => outcome === 'unknown');
  return [...new Set([...jobs.map(({ lift, text }) => lift ?? text), ...unknown.map(({ text }) => text)])];
}
