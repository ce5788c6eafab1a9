import fc from 'fast-check';
import type { FactId } from '../../src/core/facts/registry/index.ts';
import type { ResolvedFacts } from '../../src/core/facts/resolved.ts';
import type { Known, Resolved } from '../../src/core/facts/types.ts';
import { epochSeconds } from '../../src/core/units/brands.ts';
import { choiceFacts, countries, numberFacts, signs } from './fact-pool.ts';

const origin = fc.option(fc.integer({ min: 1, max: 1000 }), { nil: null }).map((goodUntil) => ({
  source: 'said' as const,
  at: epochSeconds(0),
  goodUntil: goodUntil === null ? null : epochSeconds(goodUntil),
}));

function withOrigin<Shape extends object>(shape: fc.Arbitrary<Shape>): fc.Arbitrary<Known> {
  return fc.tuple(origin, shape).map(([from, value]) => ({ known: true, ...from, ...value }) as unknown as Known);
}

const steps = fc.constantFrom(0, 0, 0.1, 0.5, 5);

function knownNumber(limits: readonly number[]): fc.Arbitrary<Known> {
  const value = fc.tuple(fc.constantFrom(...limits), fc.constantFrom(-3, -0.1, 0, 0, 0.1, 3)).map(([a, b]) => a + b);
  return withOrigin(
    fc
      .tuple(value, steps, steps)
      .map(([at, down, up]) => ({ type: 'number', value: at, low: at - down, high: at + up })),
  );
}

function knownChoice(choices: readonly string[]): fc.Arbitrary<Known> {
  const possible = fc.oneof(
    { weight: 3, arbitrary: fc.constantFrom(...choices).map((one) => [one]) },
    { weight: 1, arbitrary: fc.subarray([...choices], { minLength: 1 }) },
  );
  return withOrigin(possible.map((some) => ({ type: 'choice', possible: some })));
}

const knownSigns = withOrigin(
  fc
    .subarray([...signs])
    .chain((possible) => fc.subarray(possible).map((present) => ({ type: 'signs', present, possible }))),
);

const knownDate = withOrigin(
  fc
    .constantFrom('2026-01-31', '2026-02-01', '2028-02-29', '2026-03-01', '2026-08-01', '2026-10-19', '2026-12-10')
    .map((iso) => ({ type: 'date', iso })),
);

/** Each fact that generated rules read, with its known values. */
export const knownByFact: readonly (readonly [FactId, fc.Arbitrary<Known>])[] = [
  ...numberFacts.map(({ fact, limits }) => [fact, knownNumber(limits)] as const),
  ...choiceFacts.map(({ fact, choices }) => [fact, knownChoice(choices)] as const),
  ['field.country', knownChoice(countries)],
  ['soil.surface', knownSigns],
  ['date', knownDate],
];

/** An unknown fact. */
export const unknownFact: Resolved = { known: false, reason: 'person-does-not-know' };

/** Resolved facts: each known (with or without a band), unknown or absent. `knownShare` of 10 are known. */
export function resolvedFacts(knownShare = 6): fc.Arbitrary<ResolvedFacts> {
  const entries = knownByFact.map(([fact, known]) =>
    fc.oneof(
      { weight: knownShare, arbitrary: known.map((value): [FactId, Resolved][] => [[fact, value]]) },
      { weight: 10 - knownShare, arbitrary: fc.constantFrom<[FactId, Resolved][]>([[fact, unknownFact]], []) },
    ),
  );
  return fc.tuple(...entries).map((pairs) => Object.fromEntries(pairs.flat()));
}
