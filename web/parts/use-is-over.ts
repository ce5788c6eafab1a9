import { useEffect, useState } from 'preact/hooks';
import type { ChatMeans } from '../chat/means.ts';
import { conversationNow, type PageState } from '../chat/page-state.ts';

/** Longest wait that a browser's timer takes, ms. */
const longestTimerMs = 2 ** 31 - 1;

/** True once the moment of the conversation has passed `until` (ISO instant); the page's own timer draws again when it does. */
export function useIsOver(state: PageState, until: string | null, means: ChatMeans): boolean {
  const [, drawAgain] = useState(0);
  const left =
    until === null ? Number.POSITIVE_INFINITY : Date.parse(until) / 1000 - conversationNow(state, means.now());
  useEffect(() => {
    if (!(left >= 0 && left < Number.POSITIVE_INFINITY)) return undefined;
    return means.after(Math.min(left * 1000 + 50, longestTimerMs), () => drawAgain((count) => count + 1));
  });
  return !(left >= 0);
}
