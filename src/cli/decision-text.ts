import type { Decision, WordedReason } from '../core/dialogue/decision-types.ts';
import { factDefinition } from '../core/facts/registry/index.ts';
import type { Pack } from '../core/rules/pack-types.ts';
import { catalogueOf } from '../core/words/catalogue.ts';
import { describeForecast, describePack, describeValidUntil } from '../core/words/forecast.ts';
import { describeAuthority } from '../core/words/labels.ts';
import { secondsOf } from '../core/words/times.ts';

/** A whole answer as a person reads it in a terminal: verdict first, then reasons, advice, dose, cautions, sources. */
export function decisionText(decision: Decision, pack: Pick<Pack, 'zone'>): string {
  const words = catalogueOf('en');
  const moment = { now: secondsOf(decision.at), zone: pack.zone };
  const missing = decision.missing.map((id) => factDefinition(id).label);
  return [
    decision.headline,
    decision.why,
    '',
    ...section('Reasons', decision.reasons.map(reasonLine)),
    ...section('Advice', decision.advice.map(reasonLine)),
    ...section('What could still change this', missing),
    ...section('Dose', [decision.doseText]),
    ...section(
      'Cautions',
      decision.cautions.map(({ text }) => text),
    ),
    describeForecast(decision.forecast, moment, words),
    ...(decision.verdict === 'spray-today' ? [describeValidUntil(decision.validUntil, moment, words)] : []),
    describePack(decision.pack, words),
    '',
  ].join('\n');
}

/** One reason in a line or two: sentence, how far from the limit, what lifts it, who says so. */
export function reasonLine({ text, marginText, lift, outcome, authority }: WordedReason): string {
  const margin = marginText === null ? '' : ` (${marginText})`;
  const lifts = outcome === 'met' && lift ? ` ${lift}` : '';
  return `${text}${margin}${lifts} [${describeAuthority(authority, catalogueOf('en'))}]`;
}

function section(title: string, lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : [`${title}:`, ...lines.map((line) => `  - ${line}`), ''];
}
