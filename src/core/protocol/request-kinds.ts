import type { RequestedEvent } from '../dialogue/events.ts';

/** What a person may press that is no answer. */
export const requestKinds = [
  'why-asked',
  'what-said',
  'check-the-rest',
  'look-again',
  'dose',
  'verdict-now',
  'confirm',
  'deny',
  'why-not',
  'when',
  'needs',
  'fields',
  'change',
  'keep',
  'same-for',
  'language',
] as const satisfies readonly RequestedEvent['request'][];
