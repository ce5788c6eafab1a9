import type { Understand } from './understand/types.ts';

/** Understands nothing of any text. */
export const nothingUnderstood: Understand = (text) => ({
  readings: [],
  intents: [],
  correction: false,
  notUnderstood: [text],
  refused: [],
  remarks: [],
});
