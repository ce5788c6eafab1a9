import fc from 'fast-check';
import type { CertainFacts } from './design-oracle.ts';
import { certainFacts, oracleFacts, surfaceSigns, valuesTried } from './facts-near-limits.ts';

type Id = keyof CertainFacts;

/** A facts file in which some facts are left out, banded or one of several, with what each may really be. */
export interface Uncertain {
  readonly json: Readonly<Record<string, unknown>>;
  /** Values that each fact may have; one where it is certain. */
  readonly mayBe: Readonly<Record<Id, readonly unknown[]>>;
}

/** Of these nobody can see the middle of a band: its high end stands for it. */
const highEndStands: readonly Id[] = ['rain.next48hMm', 'rain.next48hMaxMmPerH'];

type Loosen = (id: Id, value: unknown) => { readonly given: unknown; readonly mayBe: readonly unknown[] };

const certain: Loosen = (_, value) => ({ given: value, mayBe: [value] });

const leftOut: Loosen = (id) => ({
  given: undefined,
  mayBe: id === 'soil.surface' ? allSurfaces : valuesTried[id].filter((one) => one !== null),
});

const allSurfaces = [[], ...surfaceSigns.map((sign) => [sign]), [...surfaceSigns]];

/** A band, a list of choices, or signs that may be there, out to the next values tried. */
const widened: Loosen = (id, value) => {
  if (typeof value === 'number') {
    const all = (valuesTried[id] as readonly number[]).filter((one) => one !== null).toSorted((a, b) => a - b);
    const at = all.indexOf(value);
    const mayBe = all.slice(Math.max(0, at - 1), at + 3);
    const given = { value, low: mayBe[0], high: mayBe.at(-1) };
    return { given, mayBe: highEndStands.includes(id) ? mayBe.slice(-1) : mayBe };
  }
  if (Array.isArray(value)) {
    const maybe = surfaceSigns.filter((sign) => !value.includes(sign)).slice(0, 2);
    const mayBe = [value, ...maybe.map((sign) => [...value, sign]), [...value, ...maybe]];
    return { given: { value, possible: maybe }, mayBe };
  }
  if (id === 'date' || value === null) return certain(id, value);
  const other = (valuesTried[id] as readonly unknown[]).find((one) => one !== value && one !== null);
  return { given: [value, other], mayBe: [value, other] };
};

const ways: Readonly<Record<string, Loosen>> = { certain, leftOut, widened };

/** Facts files of which about `share` of 100 facts are not certain. The date always is. */
export function uncertainFacts(share: number): fc.Arbitrary<Uncertain> {
  const way = fc.oneof(
    { weight: 100 - share, arbitrary: fc.constant('certain') },
    { weight: share, arbitrary: fc.constantFrom('leftOut', 'widened') },
  );
  return fc
    .tuple(certainFacts(10), fc.array(way, { minLength: oracleFacts.length, maxLength: oracleFacts.length }))
    .map(([facts, chosen]) => {
      const loosened = oracleFacts.map((id, index) => {
        const one = id === 'date' ? certain : ways[chosen[index]!]!;
        return [id, one(id, facts[id])] as const;
      });
      const json = Object.fromEntries(
        loosened.map(([id, { given }]) => [id, given]).filter(([, one]) => one !== undefined),
      );
      const mayBe = Object.fromEntries(loosened.map(([id, one]) => [id, one.mayBe])) as Uncertain['mayBe'];
      return { json, mayBe: withEitherOf(json, mayBe) };
    });
}

/** Feel and share of field capacity are two ways to know one thing: where one is there, the other's absence is no doubt. */
function withEitherOf(json: Uncertain['json'], mayBe: Uncertain['mayBe']): Uncertain['mayBe'] {
  const isThere = (id: Id) => (json[id] ?? null) !== null;
  const felt = isThere('soil.feel');
  const measured = isThere('soil.fieldCapacityPercent');
  return {
    ...mayBe,
    ...(felt && !measured ? { 'soil.fieldCapacityPercent': [null] } : {}),
    ...(measured && !felt ? { 'soil.feel': [null] } : {}),
  };
}

/** One way in which everything may really be; what follows from other facts follows. `pick` gives numbers from 0 up to 1. */
export function completed({ json, mayBe }: Uncertain, pick: () => number): CertainFacts {
  const facts = Object.fromEntries(
    oracleFacts.map((id) => [id, mayBe[id][Math.floor(pick() * mayBe[id].length)]]),
  ) as Record<Id, unknown>;
  const isGiven = (id: Id) => (json[id] ?? null) !== null;
  if (!isGiven('soil.drainsRunning') && facts['field.drained'] === 'no') facts['soil.drainsRunning'] = 'no';
  if (!isGiven('crop.frostOnLeaves') && (facts['air.temperatureC'] as number) > 4) facts['crop.frostOnLeaves'] = 'no';
  return facts as unknown as CertainFacts;
}
