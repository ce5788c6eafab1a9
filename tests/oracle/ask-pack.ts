import { decideFacts } from '../../src/core/dialogue/decide.ts';
import { localDate } from '../../src/core/facts/local-day.ts';
import { momentOfFacts, parseFacts } from '../../src/core/facts/parse/index.ts';
import { resolveFacts } from '../../src/core/facts/resolve.ts';
import { compileRules } from '../../src/core/rules/compile.ts';
import { evaluateReference } from '../../src/core/rules/reference.ts';
import type { CompiledRules } from '../../src/core/rules/types.ts';
import { doseFor } from '../../src/core/sprayer/dose.ts';
import { epochSeconds } from '../../src/core/units/brands.ts';
import { verdictOf } from '../../src/core/verdict/verdict-of.ts';
import { shipped } from '../cases/shipped-pack.ts';

const { pack } = shipped;
const compiledOn = new Map<string, CompiledRules>();

function compiled(day: string): CompiledRules {
  const known = compiledOn.get(day) ?? compileRules(pack, day);
  compiledOn.set(day, known);
  return known;
}

/** The shipped pack's answer to a facts file with a `date`, by the evaluator that needs no engine. */
export function askPack(json: object) {
  const at = momentOfFacts(json, pack.zone, pack.facts);
  if (at === null) throw new Error('these facts need a date');
  const rules = compiled(localDate(at, pack.zone));
  const observations = parseFacts(json, at, pack.zone, pack.facts);
  const { zone } = pack;
  const { parameters, registry } = rules;
  const facts = resolveFacts({ observations, forecast: null, at, zone, parameters, registry });
  return { ...verdictOf(evaluateReference(rules, facts), facts, []), dose: doseFor(facts, rules.parameters) };
}

/** The same by the whole road of the command: engine and words included. */
export function askWholeRoad(json: object) {
  return decideFacts({ pack, facts: json, forecast: null, at: null, now: epochSeconds(0), language: 'en' });
}
