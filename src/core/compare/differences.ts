import { DateTime } from 'luxon';
import type { FactDefinition } from '../facts/types.ts';
import { movedTighter } from '../rules/overlay/protect/protect-parameters.ts';
import type { Caution, GlossaryTerm, Pack, Question } from '../rules/pack-types.ts';
import { readsOf } from '../rules/reads.ts';
import type { Rule } from '../rules/types.ts';
import { type Parameter, parametersOn } from '../units/parameter.ts';

/** Something that only one of two rule sets has (null in the other), or that both have otherwise. */
interface Beside<Kind extends string, One> {
  readonly kind: Kind;
  readonly id: string;
  readonly before: One | null;
  readonly after: One | null;
}

/** A parameter that differs from a day on. */
export interface ParameterDifference extends Beside<'parameter', Parameter> {
  /** First day on which they differ, YYYY-MM-DD. */
  readonly from: string;
  /** By the direction that is declared tighter; null where nothing is declared or one of them lacks it. */
  readonly way: 'tighter' | 'looser' | null;
  /** Ids of the rules that read it, in either rule set, references followed. */
  readonly readBy: readonly string[];
}

/** Entries that differ, with the names of the parts in which they do. */
type Parted<Kind extends string, One> = Beside<Kind, One> & { readonly parts: readonly string[] };

export type RuleDifference = Parted<'rule', Rule>;
export type QuestionDifference = Parted<'question', Question>;
export type CautionDifference = Parted<'caution', Caution>;
export type TermDifference = Parted<'term', GlossaryTerm>;
/** A fact of a pack's own, or one that it defines otherwise. */
export type FactDifference = Parted<'fact', FactDefinition>;

/** One difference of two rule sets. */
export type Difference =
  | ParameterDifference
  | RuleDifference
  | QuestionDifference
  | CautionDifference
  | TermDifference
  | FactDifference;

/** Everything in which two rule sets differ, by what is written in them: parameters, rules, questions, cautions, terms, facts. */
export function differencesOf(a: Pack, b: Pack): readonly Difference[] {
  return [
    ...parameterDifferences(a, b),
    ...entries('rule', a.rules, b.rules),
    ...entries('question', a.questions, b.questions),
    ...entries('caution', a.cautions, b.cautions),
    ...entries('term', a.glossary, b.glossary),
    ...entries('fact', factsIn(a), factsIn(b)),
  ];
}

function factsIn({ facts }: Pack): (FactDefinition & { readonly id: string })[] {
  return Object.entries(facts).map(([id, definition]) => ({ id, ...definition }));
}

function entries<Kind extends Exclude<Difference['kind'], 'parameter'>, One extends { readonly id: string }>(
  kind: Kind,
  before: readonly One[],
  after: readonly One[],
): Parted<Kind, One>[] {
  const later = new Map(after.map((one) => [one.id, one]));
  const ids = new Set([...before, ...after].map(({ id }) => id));
  const earlier = new Map(before.map((one) => [one.id, one]));
  return [...ids].flatMap((id) => {
    const [was, is] = [earlier.get(id) ?? null, later.get(id) ?? null];
    const parts = was && is ? partsOf(was, is) : [];
    return was && is && parts.length === 0 ? [] : [{ kind, id, before: was, after: is, parts }];
  });
}

function partsOf(before: object, after: object): string[] {
  const keys = new Set([...Object.keys(before), ...Object.keys(after)]);
  const at = (one: object, key: string) => JSON.stringify((one as Readonly<Record<string, unknown>>)[key]);
  return [...keys].filter((key) => at(before, key) !== at(after, key));
}

function parameterDifferences(a: Pack, b: Pack): ParameterDifference[] {
  const both = [...a.parameters, ...b.parameters];
  const days = [...new Set(both.flatMap(turnsOf))].toSorted();
  const inForce = days.map((day) => ({ day, a: parametersOn(a.parameters, day), b: parametersOn(b.parameters, day) }));
  return [...new Set(both.map(({ id }) => id))].flatMap((id) => {
    let last: string | undefined;
    return inForce.flatMap(({ day, a: early, b: late }): ParameterDifference[] => {
      const [before, after] = [early.get(id) ?? null, late.get(id) ?? null];
      const key = JSON.stringify([before, after]);
      if (key === last) return [];
      last = key;
      if (JSON.stringify(before) === JSON.stringify(after)) return [];
      return [
        {
          kind: 'parameter',
          id,
          before,
          after,
          from: day,
          way: wayOfParameter(before, after),
          readBy: readers(id, a, b),
        },
      ];
    });
  });
}

/** Days on which a parameter begins to hold and has ceased to. */
function turnsOf({ validFrom, validTo }: Parameter): string[] {
  const end = validTo === undefined ? null : DateTime.fromISO(validTo, { zone: 'utc' }).plus({ days: 1 }).toISODate();
  return end === null ? [validFrom] : [validFrom, end];
}

function wayOfParameter(before: Parameter | null, after: Parameter | null): ParameterDifference['way'] {
  if (!before || !after || JSON.stringify(before.value) === JSON.stringify(after.value)) return null;
  if (movedTighter({ before, after })) return 'tighter';
  return movedTighter({ before: { ...after, tighter: before.tighter }, after: before }) ? 'looser' : null;
}

function readers(parameter: string, ...packs: readonly Pack[]): string[] {
  const found = packs.flatMap(({ rules }) => {
    const byId = new Map(rules.map((rule) => [rule.id, rule]));
    return rules.filter(({ when }) => readsOf(when, byId).parameters.has(parameter)).map(({ id }) => id);
  });
  return [...new Set(found)];
}
