import type { Reading } from '../../../facts/types.ts';
import type { DefinitionOf } from '../../mutate/change-conditions.ts';
import { bandOf } from '../../pack/parse-reading.ts';
import type { AnswerChoice } from '../../pack-types.ts';

type Gives = Readonly<Partial<Record<string, Reading>>>;

/**
 * True where some answers say together what one answer of the pack said: each gives a part of the bands that it gave and the same as
 * it did for all else, and the parts leave no gap that the facts could lie in. Since no answer of the pack lies on both sides of a
 * limit, each part comes out at the pack's limits as the whole did.
 */
export function splitAnswer(
  whole: AnswerChoice,
  parts: readonly AnswerChoice[],
  facts: ReadonlySet<string>,
  definitionOf: DefinitionOf,
): boolean {
  if (parts.length < 2) return false;
  const differing = [...facts].filter((fact) =>
    parts.some((part) => !sameReading((whole.gives as Gives)[fact], part.gives as Gives, fact)),
  );
  const sides = differing.map((fact) => sideOf(fact, whole, parts, definitionOf));
  return sides.length > 0 && everyCorner(sides, 0, [...parts.keys()]);
}

/** One number that the parts share out: the values from which a gap could begin, and which parts hold each of them. */
type Side = readonly (readonly number[])[];

function sideOf(fact: string, whole: AnswerChoice, parts: readonly AnswerChoice[], definitionOf: DefinitionOf): Side {
  const [low, high] = bandFor(whole, fact) ?? [Number.NaN, Number.NaN];
  const bands = parts.map((part) => bandFor(part, fact));
  const step = definitionOf(fact as Parameters<DefinitionOf>[0]).precision ?? Number.EPSILON;
  const within = step * 1e-4;
  const after = bands.flatMap((band) => (band ? [band[1] + step] : [])).filter((value) => value <= high + within);
  const begins = [low, ...after];
  return begins.map((value) =>
    bands.flatMap((band, index) => (band && band[0] <= value + within && value <= band[1] + within ? [index] : [])),
  );
}

/** True where some part holds every corner: from the least value of each side, or the one after a part, upwards a gap would begin. */
function everyCorner(sides: readonly Side[], at: number, holding: readonly number[]): boolean {
  const side = sides[at];
  if (side === undefined) return holding.length > 0;
  return side.every((held) =>
    everyCorner(
      sides,
      at + 1,
      holding.filter((part) => held.includes(part)),
    ),
  );
}

function bandFor({ gives }: AnswerChoice, fact: string): readonly [number, number] | null {
  const reading = (gives as Gives)[fact];
  return reading?.type === 'number' ? bandOf(reading) : null;
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
