import type { RefObject } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import type { ConversationView } from '../../src/core/dialogue/view-types.ts';
import type { PageState } from '../chat/page-state.ts';

/**
 * Moves the focus, and the top of the screen, to the heading of a verdict or question that is new, once the person has done something. Never while text
 * stands in the box that is being typed in, and never on a reload. What was said in own words, and any line that comes without a new card, is
 * brought into view from the person's own line on.
 */
export function useHeadingFocus(
  inside: RefObject<HTMLElement>,
  verdict: string | null,
  { question, entries }: Pick<ConversationView, 'question' | 'entries'>,
  { hasActed }: PageState,
): void {
  const asked = question && `${question.id} ${question.ask}`;
  const line = entries.at(-1)?.id;
  const before = useRef({ verdict: null as string | null, asked: null as string | null, line });
  useEffect(() => {
    const was = before.current;
    before.current = { verdict, asked, line };
    if (!hasActed || isTyping()) return;
    const name =
      verdict !== null && verdict !== was.verdict
        ? '[data-heading="verdict"]'
        : asked !== null && asked !== was.asked
          ? '[data-heading="question"]'
          : null;
    const isInOwnWords = document.activeElement?.closest('.free-text') != null;
    const heading = name === null ? null : inside.current?.querySelector<HTMLElement>(name);
    heading?.focus({ preventScroll: true });
    if (heading && !isInOwnWords) return heading.closest('section')?.scrollIntoView();
    if (!heading && line === was.line) return;
    lastSaid(inside.current)?.scrollIntoView({ block: isInOwnWords ? 'start' : 'nearest' });
  }, [verdict, asked, line]);
}

/** The person's last line in the log; the last line of all where none of theirs is shown. */
function lastSaid(inside: HTMLElement | null): Element | null | undefined {
  const lines = [...(inside?.querySelectorAll('[role="log"] > .line') ?? [])];
  return lines.findLast((one) => one.classList.contains('is-person')) ?? lines.at(-1);
}

function isTyping(): boolean {
  const { activeElement } = document;
  return (
    (activeElement instanceof HTMLInputElement || activeElement instanceof HTMLTextAreaElement) &&
    activeElement.type !== 'checkbox' &&
    activeElement.value !== ''
  );
}
