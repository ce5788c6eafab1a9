import { coreFacts } from '../../../src/core/facts/registry/index.ts';
import type { Pack } from '../../../src/core/rules/pack-types.ts';

/** A pack without rules, for what does not judge. */
export const emptyPack: Pack = {
  id: 'empty',
  version: '0.0.0',
  title: { en: 'Nothing' },
  scope: { en: 'Nothing' },
  zone: 'Europe/London',
  active: 'nothing',
  languages: ['en'],
  facts: coreFacts,
  parameters: [],
  rules: [],
  questions: [],
  cautions: [],
  glossary: [],
  hash: '0'.repeat(64),
};
