import type { Decision, WordedReason } from '../core/dialogue/decision-types.ts';
import { jobsFor } from '../core/dialogue/find-out.ts';
import type { Pack } from '../core/rules/pack-types.ts';
import type { Catalogue } from '../core/words/catalogue.ts';
import { describeForecast, describePack, describeValidUntil } from '../core/words/forecast.ts';
import { liftBeside, notJudged } from '../core/words/jobs.ts';
import { describeAuthority } from '../core/words/labels.ts';
import { secondsOf } from '../core/words/times.ts';
import { capital } from '../core/words/units.ts';

/** A whole answer as a person reads it in a terminal: verdict first, then reasons, advice, dose, cautions, sources. */
export function decisionText(decision: Decision, pack: Pack, words: Catalogue): string {
  const { sections } = words.terminal;
  const moment = { now: secondsOf(decision.at), zone: pack.zone };
  const open = notJudged(decision.reasons, words);
  return [
    decision.headline,
    decision.why,
    '',
    ...section(sections.reasons, reasonLines(decision, words)),
    ...section(jobsTitle(decision, words), jobsFor(decision, pack, words.language)),
    ...section(
      sections.advice,
      decision.advice.map((one) => adviceLine(one, words)),
    ),
    ...section(
      sections.dose,
      decision.verdict === 'do-not-spray' || decision.doseText === '' ? [] : [decision.doseText],
    ),
    ...section(
      sections.cautions,
      decision.cautions.map(({ text }) => text),
    ),
    ...(open === null ? [] : [open]),
    describeForecast(decision.forecast, moment, words),
    ...(decision.verdict === 'spray-today' ? [describeValidUntil(decision.validUntil, moment, words)] : []),
    describePack(decision.pack, words),
    '',
  ].join('\n');
}

/**
 * The reasons that are met, each in a line or two: what it is, its sentence where the why has not said it, how far from the
 * limit, what lifts it, who says so.
 */
export function reasonLines({ reasons, why }: Pick<Decision, 'reasons' | 'why'>, words: Catalogue): string[] {
  const met = reasons.filter(({ outcome }) => outcome === 'met');
  return met.map((reason) => {
    const margin = reason.marginText === null ? [] : [`${capital(reason.marginText)}.`];
    const text = why.includes(reason.text) ? [] : [reason.text];
    const lift = liftBeside(reason, reasons);
    return [`${reason.title}.`, ...text, ...margin, ...(lift === null ? [] : [lift]), whoSays(reason, words)].join(' ');
  });
}

/** Heading of the jobs: where nothing certain stands in the way they are things to find out. */
export function jobsTitle({ reasons }: Pick<Decision, 'reasons'>, { terminal }: Catalogue): string {
  return reasons.some(({ outcome }) => outcome === 'met') ? terminal.sections.toDo : terminal.sections.toFindOut;
}

/** An advice in a line: its sentence and who says so. */
export function adviceLine(advice: WordedReason, words: Catalogue): string {
  return `${advice.text} ${whoSays(advice, words)}`;
}

function whoSays({ authority }: WordedReason, words: Catalogue): string {
  return `[${describeAuthority(authority, words)}]`;
}

function section(title: string, lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : [`${title}:`, ...lines.map((line) => `  - ${line}`), ''];
}
