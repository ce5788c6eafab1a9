import { type ComponentChildren, createContext } from 'preact';
import { useContext, useId, useState } from 'preact/hooks';
import type { TermView } from '../../src/core/dialogue/view-types.ts';
import { markTerms } from '../../src/core/words/mark-terms.ts';
import { pageWords } from '../words.ts';

/** What leaves all texts plain. */
export const noTerms: readonly TermView[] = [];

/** The trade terms that can be opened in what stands inside. */
export const Terms = createContext(noTerms);

/** What ends a clause, and stays on the line of the term before it. */
const closing = /^[.,;:!?)]+/;

interface Marked {
  /** The text, its terms as buttons. */
  readonly text: ComponentChildren;
  /** The explanation of the term that is open; null where none is. */
  readonly told: ComponentChildren;
}

/** A text whose trade terms open their explanation, in two parts: for a heading, below which the explanation stands. */
export function useTerms(text: string): Marked {
  const terms = useContext(Terms);
  const [open, setOpen] = useState<string | null>(null);
  const id = useId();
  const told = terms.find((term) => term.id === open);
  const marked = markTerms(text, terms);
  const parts = marked.map((part, index) => {
    if (typeof part === 'string') return index > 0 ? part.replace(closing, '') : part;
    const { term, said } = part;
    const isOpen = term.id === open;
    const next = marked[index + 1];
    const button = (
      <button
        type="button"
        class="term"
        aria-expanded={isOpen}
        aria-controls={isOpen ? id : undefined}
        onClick={() => setOpen(isOpen ? null : term.id)}
        onKeyDown={(event) => {
          if (event.key !== 'Escape' || open === null) return;
          event.stopPropagation();
          setOpen(null);
        }}
      >
        <span>{said}</span>
      </button>
    );
    return (
      <span key={term.id} class="term-hold">
        {button}
        {typeof next === 'string' && closing.exec(next)?.[0]}
      </span>
    );
  });
  return {
    text: parts,
    told: told ? (
      <span class="term-told" id={id} role="note">
        {told.text}{' '}
        <a class="term-more" href={`#glossary/${told.id}`}>
          {pageWords.learn.more}
        </a>
      </span>
    ) : null,
  };
}

/** A text whose trade terms open their explanation right below it. */
export function TermText({ text }: { readonly text: string }) {
  const { text: marked, told } = useTerms(text);
  return (
    <>
      {marked}
      {told}
    </>
  );
}
