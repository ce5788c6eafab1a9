import type { FactId } from '../../facts/registry/index.ts';
import type { FactDefinition } from '../../facts/types.ts';
import type { Subject } from './lexicon-types.ts';

/** The subject of what a height in a pack is the height of. */
export function plantOfHeight(id: FactId): Subject {
  return `plant:${id}`;
}

/**
 * The facts of yes and no that tell whether what a length in cm is measured of is there: those of which a name stands within a
 * name of the length, as "cleavers" does in "cleavers length". None for what is no length in cm.
 */
export function thingsOf(
  height: FactDefinition,
  own: readonly (readonly [FactId, FactDefinition])[],
): readonly FactId[] {
  if (height.type !== 'number' || height.unit !== 'cm') return [];
  const lengths = namesOf(height);
  const isIn = (name: string) => lengths.some((length) => ` ${length} `.includes(` ${name} `));
  return own.flatMap(([id, definition]) =>
    definition.type === 'choice' && namesOf(definition).some(isIn) ? [id] : [],
  );
}

function namesOf({ label, labels = {}, words = {} }: FactDefinition): readonly string[] {
  const all = [label, ...Object.values(labels), ...Object.values(words).flat()];
  return all.map((name) => name.toLowerCase()).filter((name) => name !== '');
}
