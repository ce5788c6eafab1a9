import type { CompiledComparison, CompiledCondition, Limit } from '../../types.ts';

/**
 * True where it shows from the structure that one condition never comes out lower than another, in the order not-met, unknown,
 * met, whatever the facts: bands, what is not known and absent members of eitherOf included. False where it does not show.
 *
 * `all` is the least of its members and `any` the greatest, `not` turns the order (Kleene's strong logic), and a comparison whose
 * limit lets more values through comes out no lower for any of them.
 */
export function isAtLeast(one: CompiledCondition, other: CompiledCondition): boolean {
  if (one.kind === 'rule') return isAtLeast(one.member, other);
  if (other.kind === 'rule') return isAtLeast(one, other.member);
  if (one.kind === 'comparison' && other.kind === 'comparison') return comparisonIsAtLeast(one, other);
  if (one.kind === 'not' && other.kind === 'not') return isAtLeast(other.member, one.member);
  if (one.kind === 'eitherOf' && other.kind === 'eitherOf' && sameWaysToKnow(one.members, other.members)) return true;
  if (other.kind === 'any' && other.members.every((member) => isAtLeast(one, member))) return true;
  if (one.kind === 'all' && one.members.every((member) => isAtLeast(member, other))) return true;
  if (one.kind === 'any' && one.members.some((member) => isAtLeast(member, other))) return true;
  if (other.kind === 'all' && other.members.some((member) => isAtLeast(one, member))) return true;
  return other.kind === 'eitherOf' && other.members.every((member) => isAtLeast(one, member));
}

/** Both list the same facts, so that the same members are present, and each comes out no lower than its counterpart. */
function sameWaysToKnow(one: readonly CompiledCondition[], other: readonly CompiledCondition[]): boolean {
  if (one.length !== other.length) return false;
  return other.every((each) =>
    one.some(
      (own) =>
        own.kind === 'comparison' &&
        each.kind === 'comparison' &&
        own.fact === each.fact &&
        comparisonIsAtLeast(own, each),
    ),
  );
}

function comparisonIsAtLeast(one: CompiledComparison, other: CompiledComparison): boolean {
  if (one.fact !== other.fact) return false;
  const range = rangeOf(one);
  const otherRange = rangeOf(other);
  if (range && otherRange) {
    if (range.side !== otherRange.side) return false;
    const further = range.side === 'up' ? otherRange.limit - range.limit : range.limit - otherRange.limit;
    return further > 0 || (further === 0 && (range.closed || !otherRange.closed));
  }
  const choices = choicesOf(one);
  const otherChoices = choicesOf(other);
  if (!choices || !otherChoices || choices.side !== otherChoices.side) return false;
  const [inner, outer] = choices.side === 'out' ? [choices, otherChoices] : [otherChoices, choices];
  return inner.values.every((value) => outer.values.includes(value));
}

interface Range {
  readonly side: 'up' | 'down';
  readonly limit: number;
  readonly closed: boolean;
}

const ranges = {
  above: { side: 'up', closed: false },
  atLeast: { side: 'up', closed: true },
  below: { side: 'down', closed: false },
  atMost: { side: 'down', closed: true },
} as const;

function rangeOf({ op, limit }: CompiledComparison): Range | null {
  if (limit.kind === 'choices' || !Object.hasOwn(ranges, op)) return null;
  return { ...ranges[op as keyof typeof ranges], limit: limit.value };
}

interface Choices {
  /** Met within the values, or without them; `sign` compares with the same sign alone. */
  readonly side: 'in' | 'out' | 'sign';
  readonly values: readonly string[];
}

const sides = { is: 'in', oneOf: 'in', isNot: 'out', noneOf: 'out', has: 'sign' } as const;

function choicesOf({ op, limit }: { readonly op: string; readonly limit: Limit }): Choices | null {
  if (limit.kind !== 'choices' || !Object.hasOwn(sides, op)) return null;
  const side = sides[op as keyof typeof sides];
  return { side, values: side === 'sign' ? [...limit.values].sort() : limit.values };
}
