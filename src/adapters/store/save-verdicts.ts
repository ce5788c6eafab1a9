import type { ConversationStore } from './conversation-store.ts';

/**
 * The same store, which also hands on each verdict event that it is given, as one line of JSON: for a file that rule sets are tried
 * on later. Nothing else that was said goes there. A line that could not be added hinders nothing; `onFault` is told.
 */
export function savingVerdicts(
  store: ConversationStore,
  add: (lines: string) => Promise<void>,
  onFault: (error: unknown) => void,
): ConversationStore {
  return {
    ...store,
    append: async (token, events, at) => {
      await store.append(token, events, at);
      const verdicts = events.filter(({ kind }) => kind === 'verdict-given');
      if (verdicts.length === 0) return;
      await add(verdicts.map((event) => `${JSON.stringify(event)}\n`).join('')).catch(onFault);
    },
  };
}
