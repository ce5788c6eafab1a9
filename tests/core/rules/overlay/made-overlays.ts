import fc from 'fast-check';
import { changesOf } from '../../../../src/core/rules/mutate/changes.ts';
import type { Change } from '../../../../src/core/rules/mutate/types.ts';
import type { Condition, Rule } from '../../../../src/core/rules/types.ts';
import { factDefinition } from '../../../fixtures/core-facts.ts';
import { newRule, overlayOf, parameter, rule, shipped } from './overlay-of.ts';

/** The pack without its questions, so that no offered answer stands in the way of a moved limit, and with sentences that fit any condition. */
export const bare = {
  ...shipped,
  questions: [],
  rules: shipped.rules.map((one) => ({ ...one, text: plainText(one.effect) })),
};

const changes = changesOf(bare, factDefinition);
const limits = bare.parameters.filter(({ value }) => typeof value === 'number');
const conditions: readonly Condition[] = [
  ...bare.rules.map(({ when }) => when),
  ...bare.rules.map(({ id }) => ({ rule: id })),
];
const simple = conditions.filter((condition) => 'fact' in condition || 'rule' in condition);

type Part = {
  readonly rules?: readonly { id: string }[];
  readonly parameters?: readonly { id: string }[];
  readonly removes?: string;
};

function partOf(change: Change): Part {
  if (change.kind === 'limit') return { parameters: [parameter(change.after.id, change.after.value)] };
  return { rules: [written(change.after)] };
}

function written({ id, effect, lifts, when }: Rule): { id: string } {
  const { lifts: _lifts, ...given } = rule(id) as { lifts?: string; id: string };
  return { ...given, ...{ effect, when, text: plainText(effect) }, ...(lifts === null ? {} : { lifts }) } as {
    id: string;
  };
}

function plainText(effect: Rule['effect']): Rule['text'] {
  const said = { title: 'Local', met: 'Met.', unknown: 'Look.', ...(effect === 'advise' ? {} : { lift: 'Wait.' }) };
  return { en: said, de: said } as Rule['text'];
}

const anyRule = fc.constantFrom(...bare.rules);

/** Parts of overlays, most of them of ill will: a thing changed, a limit moved far, a condition swapped, joined or negated, a rule gone. */
const part: fc.Arbitrary<Part> = fc.oneof(
  { weight: 6, arbitrary: fc.constantFrom(...changes).map(partOf) },
  {
    weight: 2,
    arbitrary: fc.tuple(fc.constantFrom(...limits), fc.constantFrom(0, 0.5, 0.9, 1.1, 2, 10)).map(
      ([{ id, value }, factor]): Part => ({
        parameters: [parameter(id, Math.round((value as number) * factor * 100) / 100)],
      }),
    ),
  },
  {
    weight: 2,
    arbitrary: fc
      .tuple(anyRule, fc.constantFrom(...conditions))
      .map(([one, when]): Part => ({ rules: [written({ ...one, when })] })),
  },
  {
    weight: 3,
    arbitrary: fc
      .tuple(anyRule, fc.constantFrom(...simple), fc.constantFrom('any', 'all', 'not'))
      .map(([one, other, how]): Part => {
        const joined = how === 'not' ? { all: [one.when, { not: other }] } : { [how]: [one.when, other] };
        return { rules: [written({ ...one, when: joined as Condition })] };
      }),
  },
  { weight: 1, arbitrary: anyRule.map(({ id }): Part => ({ removes: id })) },
  {
    weight: 1,
    arbitrary: fc
      .constantFrom(...conditions)
      .map((when): Part => ({ rules: [newRule('local-rule', when)] as { id: string }[] })),
  },
);

/** An overlay of one to three such parts, each entry once. */
export const madeOverlay = (layer: 'area' | 'farm') =>
  fc.array(part, { minLength: 1, maxLength: 3 }).map((parts) => {
    const once = <Entry extends { id: string }>(list: readonly Entry[]) => [
      ...new Map(list.map((one) => [one.id, one])).values(),
    ];
    const removed = parts.flatMap(({ removes }) => (removes === undefined ? [] : [removes]));
    const rules = once(parts.flatMap((each) => each.rules ?? [])).filter(({ id }) => !removed.includes(id));
    return overlayOf(
      {
        overlay: { id: `made-${layer}`, layer },
        parameters: once(parts.flatMap((each) => each.parameters ?? [])),
        rules,
        ...(removed.length === 0 ? {} : { removes: { rules: [...new Set(removed)] } }),
      },
      `${layer}.json`,
    );
  });
