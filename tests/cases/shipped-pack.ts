import { join } from 'node:path';
import { readPackFolder } from '../../src/adapters/pack-files/read-pack-folder.ts';
import { parseInstant } from '../../src/core/dialogue/moment.ts';
import { localDate } from '../../src/core/facts/local-day.ts';
import { momentOfFacts, parseFacts } from '../../src/core/facts/parse/index.ts';
import { resolveFacts } from '../../src/core/facts/resolve.ts';
import type { ResolvedFacts } from '../../src/core/facts/resolved.ts';
import { loadPack } from '../../src/core/rules/pack/load-pack.ts';
import type { PackCase } from '../../src/core/rules/pack-types.ts';
import type { Outcome, Trace } from '../../src/core/rules/trace-types.ts';
import { parametersOn } from '../../src/core/units/parameter.ts';
import type { VerdictWord } from '../../src/core/verdict/types.ts';
import { verdictWord } from '../../src/core/verdict/verdict-of.ts';
import { root } from '../repo/files.ts';

const folder = join(root, 'rules', 'propyzamide-winter-oilseed-rape');

/** The shipped pack with its cases and the findings of loading it. */
export const shipped = loadPack(await readPackFolder(folder));

/** A case with its facts resolved at its moment. */
export interface ResolvedCase {
  readonly one: PackCase;
  /** Day at the field, whose parameters hold. */
  readonly day: string;
  readonly facts: ResolvedFacts;
}

/** Resolves the facts of a case at its `at`, else at noon of its `date`, without a forecast. */
export function resolveCase(one: PackCase): ResolvedCase {
  const { zone, parameters, facts: registry } = shipped.pack;
  const at = one.at === undefined ? momentOfFacts(one.facts, zone, registry) : parseInstant(one.at);
  if (at === null) throw new Error(`"${one.name}" in ${one.file} needs "at", or "date" among its facts`);
  const day = localDate(at, zone);
  const observations = parseFacts(one.facts, at, zone, registry);
  const facts = resolveFacts({
    observations,
    forecast: null,
    at,
    zone,
    parameters: parametersOn(parameters, day),
    registry,
  });
  return { one, day, facts };
}

/** Every case of the shipped pack, resolved. */
export const resolvedCases: readonly ResolvedCase[] = shipped.cases.map(resolveCase);

/** What a case says and a trace gives, side by side: `met` holds every stop and hold that is met, and the advice that the case names. */
export function expectedOf({ expect }: PackCase) {
  const { verdict, met = [], notMet = [], unknown = [] } = expect;
  return { verdict, met: met.toSorted(), notMet: notMet.toSorted(), unknown: unknown.toSorted() };
}

/** The same of a trace, looking only at the rules that the case names beyond the stops and holds that are met. */
export function givenBy(trace: Trace, { expect }: PackCase): ReturnType<typeof expectedOf> {
  const named = (outcome: Outcome, among: readonly string[] = []) =>
    trace.filter((rule) => rule.outcome === outcome && among.includes(rule.rule)).map(({ rule }) => rule);
  const blocking = trace.filter(({ effect, outcome }) => effect !== 'advise' && outcome === 'met');
  const met = new Set([...blocking.map(({ rule }) => rule), ...named('met', expect.met)]);
  const verdict: VerdictWord = verdictWord(trace);
  return {
    verdict,
    met: [...met].sort(),
    notMet: named('not-met', expect.notMet).sort(),
    unknown: named('unknown', expect.unknown).sort(),
  };
}
