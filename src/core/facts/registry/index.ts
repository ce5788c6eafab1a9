import { codedError } from '../../errors/coded-error.ts';
import type { FactDefinition } from '../types.ts';
import { cropAndWeedFacts } from './crop-and-weed.ts';
import { fieldFacts } from './field.ts';
import { placeFacts } from './place.ts';
import { soilFacts } from './soil.ts';
import { treatmentFacts } from './treatment.ts';
import { weatherFacts } from './weather.ts';

/** The facts built in, which any pack can read. Ids are public: case files, the command line and the protocol use them. */
const builtIn = {
  ...placeFacts,
  ...fieldFacts,
  ...cropAndWeedFacts,
  ...treatmentFacts,
  ...soilFacts,
  ...weatherFacts,
} as const satisfies Record<string, FactDefinition>;

/** Id of a fact built in: tables over these are typed by it. */
export type CoreFactId = keyof typeof builtIn;

/** Id of a fact of some registry: one built in, or a pack's own. */
export type FactId = string;

/** The facts that can be read, by id: those built in and a pack's own. Plain data. */
export type FactRegistry = Readonly<Record<FactId, FactDefinition>>;

/** The facts built in as a registry. */
export const coreFacts: Readonly<Record<CoreFactId, FactDefinition>> = builtIn;

/** Ids of the facts built in, in registry order. */
export const coreFactIds = Object.keys(builtIn) as CoreFactId[];

/** True for the id of a fact of the registry. */
export function isFactOf(registry: FactRegistry, id: string): boolean {
  return Object.hasOwn(registry, id);
}

const idsOf = new WeakMap<FactRegistry, readonly FactId[]>();

/** All ids of a registry, in its order. */
export function factIdsOf(registry: FactRegistry): readonly FactId[] {
  const known = idsOf.get(registry);
  if (known) return known;
  const ids = Object.keys(registry);
  idsOf.set(registry, ids);
  return ids;
}

/** The entry of a fact. Throws FACT_UNKNOWN_ID where the registry has none. */
export function definitionIn(registry: FactRegistry, id: FactId): FactDefinition {
  const definition = Object.hasOwn(registry, id) ? registry[id] : undefined;
  if (definition) return definition;
  throw codedError('FACT_UNKNOWN_ID', { expected: 'the id of a fact', came: id, fact: id });
}

const lookUps = new WeakMap<FactRegistry, (id: FactId) => FactDefinition>();

/** `definitionIn` of one registry, the same function each time; for sentences, which are handed it. */
export function definitionsOf(registry: FactRegistry): (id: FactId) => FactDefinition {
  const known = lookUps.get(registry);
  if (known) return known;
  const lookUp = (id: FactId) => definitionIn(registry, id);
  lookUps.set(registry, lookUp);
  return lookUp;
}
