import type { WordedReason } from '../dialogue/decision-types.ts';
import type { Catalogue } from './catalogue.ts';
import { lowerFirst } from './units.ts';

/**
 * What a person can do about a verdict, as sentences without repeats: the jobs that lift a hold; then, where nothing certain
 * stands in the way, what to find out, each with how; past a certain hold what is still unknown, by name alone; past a stop none.
 */
export function jobsOf(reasons: readonly WordedReason[], words: Catalogue): string[] {
  const met = reasons.filter(({ outcome }) => outcome === 'met');
  const unknown = reasons.filter(({ outcome }) => outcome === 'unknown');
  const jobs = met.filter(({ lifts }) => lifts === 'person').map(({ lift, text }) => lift ?? text);
  if (met.length === 0) return [...new Set(unknown.map(({ text }) => text))];
  if (unknown.length === 0 || met.some(({ effect }) => effect === 'stop')) return [...new Set(jobs)];
  const titles = unknown.map(({ title }) => lowerFirst(title));
  return [...new Set(jobs), words.verdict.stillUnknown(titles.join('; '))];
}
