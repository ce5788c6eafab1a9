import { type ErrorReport, isLoamwardError, reportOf } from '../errors/coded-error.ts';
import type { Pack } from '../rules/pack-types.ts';
import { evaluateReference } from '../rules/reference.ts';
import { verdictWord } from '../verdict/verdict-of.ts';
import type { VerdictGivenEvent } from './events.ts';
import { parseInstant } from './moment.ts';
import { compiledFor } from './standing.ts';
import { tagOf, verdictIdOf } from './tag.ts';

/**
 * Why a verdict that another device gave cannot be taken in: under the pack named in it, the facts recorded in it must give the
 * same answer rule by rule (VERDICT_NOT_REPEATED; the error of a fact that the rules cannot read). Null where they do. The science is
 * not done again.
 */
export function refuseVerdict(event: VerdictGivenEvent, pack: Pack): ErrorReport | null {
  try {
    return difference(event, pack);
  } catch (error) {
    if (isLoamwardError(error)) return error.toJSON();
    throw error;
  }
}

function difference(event: VerdictGivenEvent, pack: Pack): ErrorReport | null {
  const { decision, tag, id } = event;
  if (decision.pack.hash !== pack.hash) return notRepeated(`rules ${pack.hash}`, `rules ${decision.pack.hash}`);
  const named = tagOf(pack.hash, decision.facts);
  if (tag !== named || id !== verdictIdOf(tag)) return notRepeated(`tag ${named} and its id`, `tag ${tag}, id ${id}`);
  const trace = evaluateReference(compiledFor(pack, parseInstant(decision.at)), decision.facts);
  const word = verdictWord(trace);
  if (word !== decision.verdict) return notRepeated(word, decision.verdict);
  const told = new Map(decision.trace.map(({ rule, outcome }) => [rule, outcome]));
  const other = trace.find(({ rule, outcome }) => told.get(rule) !== outcome);
  return other === undefined
    ? null
    : notRepeated(`${other.rule} ${other.outcome}`, `${other.rule} ${told.get(other.rule) ?? 'left out'}`);
}

function notRepeated(expected: string, came: string): ErrorReport {
  return reportOf('VERDICT_NOT_REPEATED', { expected, came });
}
