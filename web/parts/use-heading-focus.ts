import type { RefObject } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import type { ConversationView } from '../../src/core/dialogue/view-types.ts';
import type { PageState } from '../chat/page-state.ts';

/**
 * Moves the focus, and the top of the screen, to the heading of a verdict or question that is new, once the person has done something. Never while text
 * stands in the box that is being typed in, and never on a reload. What was said in own words, and any line that comes without a new card, is
 * brought into view from the person's own line on. Where what was pressed is gone, as Undo is, the focus rests on the card that stands.
 */
export function useHeadingFocus(
  inside: RefObject<HTMLElement>,
  verdict: string | null,
  { question, entries }: Pick<ConversationView, 'question' | 'entries'>,
  { hasActed }: PageState,
): void {
  const asked = question && `${question.id} ${question.ask}`;
  const line = entries.at(-1)?.id;
  const before = useRef({ verdict: null as string | null, asked: null as string | null, line, isOwn: false });
  useEffect(() => {
    const was = before.current;
    const isOnCard = isFocused('[data-heading]');
    /** True from what was said in own words on, also once the card that came of it has taken the focus. */
    const isOwn = isFocused('.free-text') || (isOnCard && was.isOwn);
    before.current = { verdict, asked, line, isOwn };
    if (!hasActed || isTyping()) return;
    const name =
      verdict !== null && verdict !== was.verdict
        ? '[data-heading="verdict"]'
        : asked !== null && asked !== was.asked
          ? '[data-heading="question"]'
          : null;
    const find = (selector: string) => inside.current?.querySelector<HTMLElement>(selector);
    const heading = name === null ? null : find(name);
    const isLost = document.activeElement === document.body && line !== was.line;
    const rest = isLost ? (find('[data-heading="question"]') ?? find('[data-heading]')) : null;
    (heading ?? rest)?.focus({ preventScroll: true });
    if (heading && !isOwn) return heading.closest('section')?.scrollIntoView();
    if (!heading && (line === was.line || (isOnCard && !isOwn))) return;
    lastLine(inside.current, isOwn)?.scrollIntoView({ block: isOwn ? 'start' : 'nearest' });
  }, [verdict, asked, line]);
}

/** The last line of the log; the person's own last one where that is wanted and shown. */
function lastLine(inside: HTMLElement | null, isOwn: boolean): Element | undefined {
  const lines = [...(inside?.querySelectorAll('[role="log"] > .line') ?? [])];
  return lines.findLast((one) => isOwn && one.classList.contains('is-person')) ?? lines.at(-1);
}

function isFocused(within: string): boolean {
  return document.activeElement?.closest(within) != null;
}

function isTyping(): boolean {
  const { activeElement } = document;
  return (
    (activeElement instanceof HTMLInputElement || activeElement instanceof HTMLTextAreaElement) &&
    activeElement.type !== 'checkbox' &&
    activeElement.value !== ''
  );
}
