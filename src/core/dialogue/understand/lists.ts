import type { ClauseKind } from './clause-kind.ts';

/**
 * Which clauses stand in a list that a "not" before it still holds: "no cracks, puddles or frost". The list must be closed by
 * "or", and none of its later members says "not" itself.
 */
export function listsUnderNot(kinds: readonly ClauseKind[]): readonly boolean[] {
  const held = kinds.map(() => false);
  for (let end = kinds.length - 1; end > 0; end -= 1) {
    if (!isMember(kinds[end]!) || !kinds[end]!.rest?.flags.has('or')) continue;
    let first = end;
    while (first > 0 && isMember(kinds[first]!)) first -= 1;
    if (kinds[first]?.rest?.flags.has('not')) held.fill(true, first + 1, end + 1);
    end = first + 1;
  }
  return held;
}

function isMember({ clause, rest, answer, corrects }: ClauseKind): boolean {
  return clause.joiner === ',' && rest !== null && answer === null && !corrects && !rest.flags.has('not');
}
