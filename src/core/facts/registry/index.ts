import type { FactDefinition } from '../types.ts';
import { cropAndWeedFacts } from './crop-and-weed.ts';
import { fieldFacts } from './field.ts';
import { placeFacts } from './place.ts';
import { soilFacts } from './soil.ts';
import { treatmentFacts } from './treatment.ts';
import { weatherFacts } from './weather.ts';

/** Every fact that a rule can read. Ids are public: case files, the command line and the protocol use them. */
export const factRegistry = {
  ...placeFacts,
  ...fieldFacts,
  ...cropAndWeedFacts,
  ...treatmentFacts,
  ...soilFacts,
  ...weatherFacts,
} as const satisfies Record<string, FactDefinition>;

/** Id of a registered fact. */
export type FactId = keyof typeof factRegistry;

/** All ids in registry order. */
export const factIds = Object.keys(factRegistry) as FactId[];

/** True for the id of a registered fact. */
export function isFactId(id: string): id is FactId {
  return Object.hasOwn(factRegistry, id);
}

/** The registry entry of a fact, widened to the general form. */
export function factDefinition(id: FactId): FactDefinition {
  return factRegistry[id];
}
