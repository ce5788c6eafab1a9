import type { ConversationView, VerdictView } from '../../src/core/dialogue/view-types.ts';

/** A view of an invented conversation in which nothing was said yet. */
export const emptyView: ConversationView = {
  language: 'en',
  field: { id: 'mill-piece', name: 'Mill Piece', invented: true, note: 'A note.' },
  packTitle: 'A pack',
  entries: [],
  earlier: 0,
  question: null,
  verdict: null,
  outlook: null,
  said: [],
  fields: [],
  terms: [],
  now: '2026-11-12T10:00:00Z',
  busy: null,
  eventCount: 1,
};

/** A verdict without reasons. */
export const plainVerdict: VerdictView = {
  verdict: 'spray-today',
  headline: 'Spray today.',
  why: 'Because.',
  reasons: [],
  advice: [],
  jobs: [],
  doseText: 'No dose.',
  doseNeeds: false,
  cautions: [],
  forecastText: 'None.',
  packText: 'A pack.',
  at: '2026-11-12T10:00:00Z',
  validUntil: '2026-11-12T11:00:00Z',
  validUntilText: null,
  givenText: 'Given at 10:00.',
  goodUntilText: null,
  canCheckRest: false,
  change: null,
  rules: [],
};
