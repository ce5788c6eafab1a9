import type { RefObject } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import type { PageState } from '../chat/page-state.ts';

/**
 * Moves the focus, and the top of the screen, to the heading of a verdict or question that is new, once the person has done something. Never while text
 * stands in the box that is being typed in, and never on a reload.
 */
export function useHeadingFocus(
  inside: RefObject<HTMLElement>,
  verdict: string | null,
  question: string | null,
  { hasActed }: PageState,
): void {
  const before = useRef({ verdict: null as string | null, question: null as string | null });
  useEffect(() => {
    const was = before.current;
    before.current = { verdict, question };
    if (!hasActed || isTyping()) return;
    const name =
      verdict !== null && verdict !== was.verdict
        ? '[data-heading="verdict"]'
        : question !== null && question !== was.question
          ? '[data-heading="question"]'
          : null;
    const heading = name === null ? null : inside.current?.querySelector<HTMLElement>(name);
    heading?.focus({ preventScroll: true });
    heading?.closest('section')?.scrollIntoView({ block: 'start' });
  }, [verdict, question]);
}

function isTyping(): boolean {
  const { activeElement } = document;
  return (
    (activeElement instanceof HTMLInputElement || activeElement instanceof HTMLTextAreaElement) &&
    activeElement.type !== 'checkbox' &&
    activeElement.value !== ''
  );
}
