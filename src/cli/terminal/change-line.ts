import type { ConversationView } from '../../core/dialogue/view-types.ts';

/** What a line that changes an answer is sent as, before its stamp. */
export type ChangeMessage =
  | { readonly type: 'request'; readonly request: 'change'; readonly fact: string }
  | { readonly type: 'request'; readonly request: 'keep' };

/** "change soil feel" opens that question again, "keep" leaves its answer; null for any other line. The label may be cut short. */
export function changeLine(line: string, view: ConversationView | null): ChangeMessage | null {
  const text = line.trim().toLowerCase();
  if (text === 'keep' && view?.question?.before != null) return { type: 'request', request: 'keep' };
  const wanted = /^(?:change|ändern?) (?:the )?(.+)$/.exec(text)?.[1];
  if (wanted === undefined) return null;
  const told = view?.said.filter(({ canChange }) => canChange) ?? [];
  const found =
    told.find(({ label }) => label.toLowerCase() === wanted) ??
    told.find(({ label, fact }) => label.toLowerCase().includes(wanted) || fact.toLowerCase() === wanted);
  return found ? { type: 'request', request: 'change', fact: found.fact } : null;
}
