import type { Reading } from '../../../facts/types.ts';
import type { DefinitionOf } from '../../mutate/change-conditions.ts';
import { bandOf } from '../../pack/parse-reading.ts';
import type { AnswerChoice } from '../../pack-types.ts';

type Gives = Readonly<Partial<Record<string, Reading>>>;

/**
 * True where some answers say together what one answer of the pack said: each gives a part of the band that it gave for one fact
 * and the same as it did for all others, and the parts leave no gap that the fact could lie in. Since no answer of the pack lies on
 * both sides of a limit, each part comes out at the pack's limits as the whole did.
 */
export function splitAnswer(
  whole: AnswerChoice,
  parts: readonly AnswerChoice[],
  facts: ReadonlySet<string>,
  definitionOf: DefinitionOf,
): boolean {
  if (parts.length < 2) return false;
  const gives: Gives = whole.gives;
  const differing = [...facts].filter((fact) =>
    parts.some((part) => !sameReading(gives[fact], part.gives as Gives, fact)),
  );
  const [fact] = differing;
  const reading = fact === undefined ? undefined : gives[fact];
  if (fact === undefined || differing.length !== 1 || reading?.type !== 'number') return false;
  const [low, high] = bandOf(reading);
  const step = (definitionOf(fact as Parameters<DefinitionOf>[0]).precision ?? 0) * 1.0001;
  const bands = parts
    .map((part) => (part.gives as Gives)[fact])
    .flatMap((part) => (part?.type === 'number' ? [bandOf(part)] : []))
    .sort(([a], [b]) => a - b);
  if (bands.length !== parts.length || bands[0]?.[0] !== low) return false;
  const meets = bands.every(([from], index) => index === 0 || from <= (bands[index - 1]?.[1] ?? low) + step);
  return meets && bands.every(([, to]) => to <= high) && bands.some(([, to]) => to === high);
}

/** True where a reading lies wholly within that of an answer of the pack, for every one of some facts. */
export function liesWithin(part: AnswerChoice, whole: AnswerChoice, facts: ReadonlySet<string>): boolean {
  const gives: Gives = whole.gives;
  return [...facts].every((fact) => {
    if (sameReading(gives[fact], part.gives as Gives, fact)) return true;
    const [outer, inner] = [gives[fact], (part.gives as Gives)[fact]];
    if (outer?.type !== 'number' || inner?.type !== 'number') return false;
    const [low, high] = bandOf(outer);
    const [from, to] = bandOf(inner);
    return low <= from && to <= high;
  });
}

function sameReading(one: Reading | undefined, gives: Gives, fact: string): boolean {
  return canonical(one) === canonical(gives[fact]);
}

/** A reading as text, keys in order. */
export function canonical(reading: Reading | undefined): string {
  return JSON.stringify(Object.fromEntries(Object.entries(reading ?? {}).sort(([a], [b]) => (a < b ? -1 : 1))));
}
