import { loadPack } from '../../../../src/core/rules/pack/load-pack.ts';
import type { Pack, PackCase } from '../../../../src/core/rules/pack-types.ts';
import { type TriedRules, tryRules } from '../../../../src/core/verdict/cases/try-rules.ts';
import { factDefinition } from '../../../fixtures/core-facts.ts';
import { filesOf, miniPack } from '../../../fixtures/mini-pack.ts';

/** The mini pack, or one made of its files, with a root depth that soil can have; some of it replaced. */
export function mini(more: Partial<Pack> = {}, files: Record<string, unknown> = miniPack()): Pack {
  const { pack } = loadPack(filesOf(files));
  const parameters = pack.parameters.map((one) => (one.id === 'deficitDepthM' ? { ...one, value: 0.3 } : one));
  return { ...pack, parameters, ...more };
}

/** A day on which nothing of the mini pack stands in the way. */
export const calm: PackCase = {
  file: 'cases/a.json',
  name: 'a calm day',
  at: '2026-11-06T09:00:00Z',
  facts: {
    'field.country': 'GB-ENG',
    'wind.boomKmh': 5,
    'soil.feel': 'moist',
    'soil.surface': [],
    'soil.temperature30cmC': 8,
  },
  expect: { verdict: 'spray-today' },
};

/** What comes of trying the changes of a pack, the mini pack where none is given. */
export function trying(cases: readonly PackCase[], pack: Pack = mini()): TriedRules {
  return tryRules(pack, cases, factDefinition);
}
