import { parseReading } from '../core/facts/parse/index.ts';
import { definitionsOf } from '../core/facts/registry/index.ts';
import { compileRules } from '../core/rules/compile.ts';
import { applyChange, type Change, type RuleSet } from '../core/rules/mutate/types.ts';
import type { Pack, PackCase } from '../core/rules/pack-types.ts';
import type { Survivor } from '../core/verdict/cases/kill.ts';
import type { FailingCase } from '../core/verdict/cases/try-rules.ts';
import type { Catalogue } from '../core/words/catalogue.ts';
import { labelOf } from '../core/words/facts.ts';
import { describeParameter } from '../core/words/fill.ts';
import { phraseOf } from '../core/words/phrases.ts';
import { sayRule, titlesOf } from '../core/words/say-rule.ts';

/** A change in words. */
export interface SaidChange {
  readonly kind: Change['kind'];
  /** Id of the rule or the parameter that is changed. */
  readonly id: string;
  /** The change in one line. */
  readonly what: string;
  readonly was: string;
  readonly now: string;
}

/** A survivor in words, with the case that would notice it. */
export interface SaidSurvivor extends SaidChange {
  readonly kill: string;
  readonly facts: PackCase['facts'];
  readonly case: PackCase | null;
}

/** A change that nothing tells apart, in words. */
export function sayEqual(change: Change, pack: Pack, words: Catalogue): SaidChange {
  const { kind } = change;
  const { id } = change.before;
  if (change.kind === 'limit') {
    const [was, now] = [describeParameter(change.before, words), describeParameter(change.after, words)];
    return { kind, id, what: words.say.tried.made(id, was, now), was: now, now };
  }
  const sentence = (set: RuleSet) => {
    const compiled = compileRules(set, dayOf(pack)).rules.find(({ rule }) => rule.id === id);
    const world = { definitionOf: definitionsOf(pack.facts), titleOf: titlesOf(pack.rules, words) };
    return compiled ? sayRule(compiled, world, words).sentence : '';
  };
  const [was, now] = [sentence(pack), sentence(applyChange(pack, change))];
  return { kind, id, what: id, was, now };
}

/** A change that no case notices, in words: what it is, and what a case would have to say. */
export function saySurvivor({ change, kill, facts, base }: Survivor, pack: Pack, words: Catalogue): SaidSurvivor {
  const { tried } = words.say;
  const definitionOf = definitionsOf(pack.facts);
  const phrases = Object.entries(facts).map(([fact, given]) => {
    if (given === null) return tried.factNotKnown(labelOf(fact, definitionOf, words));
    return phraseOf(fact, parseReading(pack.facts, fact, given), definitionOf, words);
  });
  const told = phrases.join('; ');
  const text =
    kill === null ? tried.noKill(told) : `${tried.kill(told, expectedOf(kill, words))} ${tried.over(base, kill.file)}`;
  return { ...sayEqual(change, pack, words), kill: text, facts, case: kill };
}

/** A case that fails, in words: what it says and what comes out. */
export function sayFailing({ one, given }: FailingCase, words: Catalogue): string {
  const lifts = Object.entries(given.lifts).flatMap(([rule, how]) => (how === null ? [] : [[rule, how] as const]));
  const { missing, ...rest } = given;
  const came = { ...rest, lifts: Object.fromEntries(lifts), ...(one.expect.missing ? { missing } : {}) };
  return words.say.tried.failed(expectedOf(one, words), expectedOf({ expect: came }, words));
}

function expectedOf(
  { expect }: Pick<PackCase, 'expect'>,
  { verdict: { names }, say: { tried, lifts } }: Catalogue,
): string {
  const liftsOf = Object.entries(expect.lifts ?? {}).map(([rule, how]) => `${rule}: ${lifts[how]}`);
  return [
    tried.expected(names[expect.verdict], (expect.met ?? []).join(', ')),
    ...(expect.notMet ?? []).map(tried.notMet),
    ...(expect.unknown ?? []).map(tried.unknown),
    ...liftsOf,
    ...(expect.missing ? [tried.missing(expect.missing.join(', '))] : []),
  ].join('; ');
}

/** A day on which every parameter that has a version is in force, or was last changed. */
function dayOf({ parameters }: Pack): string {
  return (
    parameters
      .map(({ validFrom }) => validFrom)
      .toSorted()
      .at(-1) ?? '2026-01-01'
  );
}
