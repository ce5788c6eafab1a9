import { localDate } from '../facts/local-day.ts';
import { momentOfFacts, parseFacts } from '../facts/parse/index.ts';
import { resolveFacts } from '../facts/resolve.ts';
import type { FactObservation } from '../facts/resolved.ts';
import { compileRules } from '../rules/compile.ts';
import { evaluateChecked } from '../rules/evaluate-checked.ts';
import type { Pack } from '../rules/pack-types.ts';
import type { EpochSeconds } from '../units/brands.ts';
import type { Forecast } from '../weather/forecast.ts';
import { decisionFrom } from './decision.ts';
import type { Decision } from './decision-types.ts';

/** A question to the rules as the command line and the case files put it. */
export interface DecideRequest {
  readonly pack: Pack;
  /** A parsed facts file: one flat object of fact ids and values. */
  readonly facts: unknown;
  readonly forecast: Forecast | null;
  /** The moment asked about; null = noon of the facts' `date`, or `now` where there is none. */
  readonly at: EpochSeconds | null;
  readonly now: EpochSeconds;
  /** ISO 639-1 code. */
  readonly language: string;
  /** Readings that stand in place of what the file gives for their facts. */
  readonly instead?: readonly Pick<FactObservation, 'fact' | 'reading' | 'at'>[];
}

/**
 * One whole answer for a facts file. Throws the FACT_ error of bad input, EVALUATORS_DISAGREE or EVALUATION_INCOMPLETE where
 * the evaluators fail: then there is no verdict.
 */
export async function decideFacts(request: DecideRequest): Promise<Decision> {
  return decideObservations({ ...request, ...observationsOf(request) });
}

/** The moment that a request asks about and what it says was observed then. Throws the FACT_ error of bad input. */
export function observationsOf({ pack, facts, now, at: asked, instead = [] }: DecideRequest): {
  readonly at: EpochSeconds;
  readonly observations: readonly FactObservation[];
} {
  const at = asked ?? momentOfFacts(facts, pack.zone, pack.facts) ?? now;
  const given = parseFacts(facts, at, pack.zone, pack.facts).filter(
    ({ fact }) => !instead.some((one) => one.fact === fact),
  );
  return { at, observations: [...given, ...instead.map((one): FactObservation => ({ ...one, source: 'said' }))] };
}

/** One whole answer for observations at a moment. Throws as `decideFacts` does. */
export async function decideObservations(request: {
  readonly pack: Pack;
  readonly observations: readonly FactObservation[];
  readonly forecast: Forecast | null;
  readonly at: EpochSeconds;
  readonly language: string;
}): Promise<Decision> {
  const { pack, observations, forecast, at, language } = request;
  const compiled = compileRules(pack, localDate(at, pack.zone));
  const { parameters, registry } = compiled;
  const facts = resolveFacts({ observations, forecast, at, zone: pack.zone, parameters, registry });
  const trace = await evaluateChecked(compiled, facts);
  return decisionFrom({ pack, compiled, facts, trace, at, forecast, language });
}
