import type { ClauseKind } from './clause-kind.ts';
import type { Subject } from './lexicon-types.ts';
import type { Measure } from './measures.ts';
import { measuresFor } from './pack-words.ts';
import type { Quantity } from './quantities.ts';
import type { Amount, Scan } from './scan.ts';
import type { UnderstandContext } from './types.ts';

/** Subjects that grow. */
const growing: ReadonlySet<Subject> = new Set<Subject>(['weed', 'crop', 'leaves', 'tillers']);

/** True for what grows, and so has a height. */
export function isPlant(subject: Subject): boolean {
  return growing.has(subject) || subject.startsWith('plant:');
}

/** Units in which a height is told without saying that it is one; in others "tall" or the like stands beside it. */
const plainUnits: ReadonlySet<Quantity['unit']> = new Set<Quantity['unit']>(['cm', 'in', 'ft']);
const lengths: ReadonlySet<Quantity['unit']> = new Set<Quantity['unit']>(['mm', 'cm', 'm', 'in', 'ft', 'yd']);

/**
 * The plant that a length is the height of: the one named right after it, else the nearest before it, else the first after it, else
 * the one that the clause before spoke of. Null where it is no length, or something else is spoken of that may have one.
 */
export function plantOf({ at, quantity, isTall }: Amount, scan: Scan, carried: Subject | null): Subject | null {
  if (!(isTall ? lengths : plainUnits).has(quantity.unit)) return null;
  const subjects = scan.subjects.filter(({ subject }) => !['temperature', 'treatment'].includes(subject));
  if (subjects.some(({ subject }) => !isPlant(subject))) return null;
  const owner =
    subjects.find((one) => one.at === at + 1 + Number(isTall)) ??
    subjects.findLast((one) => one.at < at) ??
    subjects.find((one) => one.at > at);
  if (owner !== undefined) return namedAt(owner.at, subjects);
  return carried !== null && isOfPlantBefore(scan) ? carried : null;
}

/** What is named at a place: the pack's own before what is built in. */
function namedAt(place: number, subjects: Scan['subjects']): Subject | null {
  const named = subjects.flatMap(({ at, subject }) => (at === place ? [subject] : []));
  return named.find((subject) => subject.startsWith('plant:')) ?? named[0] ?? null;
}

/** The plant that a clause says to be there by "yes" to the open question. */
export function plantAnswered({ answer }: ClauseKind, { asked, pack }: UnderstandContext): Subject | null {
  if (!answer?.isYes) return null;
  const heights = Object.values(measuresFor(pack)).flatMap((measure) => measure ?? []);
  const height = heights.find(({ grows = [] }) => grows.some((fact) => asked?.facts.includes(fact)));
  return height?.heightOf?.[0] ?? null;
}

/** The plant that a clause told to be there, by its words or as the answer of the open question. */
export function plantTold(kind: ClauseKind, context: UnderstandContext): Subject | null {
  const { rest } = kind;
  if (rest === null) return plantAnswered(kind, context);
  const last = rest.subjects.findLast(({ subject }) => isPlant(subject));
  return last === undefined || rest.flags.has('not') ? null : namedAt(last.at, rest.subjects);
}

/** True where a clause says nothing beside the height that could be of another thing. */
function isOfPlantBefore({ clause, cues, amounts, language }: Scan): boolean {
  const isDoubt = (at: number) =>
    cues.some(({ from, to, entry }) => from <= at && at < to && entry.flags.includes('doubt'));
  return clause.items.every((item, at) => {
    if (item.kind === 'quantity') return amounts.some((one) => one.at === at);
    return (
      item.kind === 'word' &&
      (isDoubt(at) || language.little.tall.has(item.text) || language.little.ofIt.has(item.text))
    );
  });
}

/** True where a clause denies something of a plant beside its height: "no cleavers over 8 cm" tells of neither. */
export function deniesHeight(scan: Scan): boolean {
  const denials = scan.cues.filter(({ entry: { flags } }) => flags.includes('not') || flags.includes('scant'));
  if (denials.length === 0) return false;
  return scan.amounts.some((amount) => {
    if (plantOf(amount, scan, null) === null) return false;
    const last = Math.max(amount.at, ...scan.subjects.flatMap(({ at, subject }) => (isPlant(subject) ? [at] : [])));
    return denials.some(({ from }) => from < last);
  });
}

/** True where "no" stands right before a height and its plant, or a plant and its height, so that it may deny either: "no 8 cm cleavers". */
export function mayDenyHeight({ answer, isPlain, rest }: ClauseKind): boolean {
  if (answer === null || answer.isYes || !isPlain || rest === null) return false;
  return rest.amounts.some((amount) => plantOf(amount, rest, null) !== null);
}

/** True for the height of this plant. */
export function isHeightOf({ heightOf = [] }: Measure, plant: Subject): boolean {
  return heightOf.includes(plant);
}
