import type { Verdict } from '../verdict/types.ts';
import type { Catalogue } from './catalogue.ts';

/** What the headline is made from. */
export type HeadlineInput = Pick<Verdict, 'verdict' | 'reasons' | 'slowest'>;

/**
 * The verdict as a sentence. It never says never: the words follow the slowest of hours, days and season; jobs for a person
 * stand beside it and make the headline only where nothing else is in the way.
 */
export function headlineOf({ verdict, reasons, slowest }: HeadlineInput, words: Catalogue): string {
  if (verdict === 'spray-today') return words.verdict.sprayToday;
  const met = reasons.filter(({ outcome }) => outcome === 'met');
  const jobs = met.filter(({ lifts }) => lifts === 'person').length;
  const family = verdict === 'wait' ? words.verdict.wait : words.verdict.doNotSpray;
  if (slowest !== null) return family[slowest];
  return jobs > 0 ? family.jobs(jobs) : words.verdict.wait.findOut;
}
