import { useEffect, useRef } from 'preact/hooks';
import type { FieldOffer } from '../../src/core/protocol/messages.ts';
import { noteIn } from '../../src/core/words/notes.ts';
import { coreWords, pageWords } from '../words.ts';
import { Invented } from './invented.tsx';
import { LearnLinks } from './learn-links.tsx';

interface StartScreenProps {
  readonly fields: readonly FieldOffer[];
  readonly onStart: (field: string | null) => void;
  /** Back to a conversation that stands; null where there is none. */
  readonly onBack: (() => void) | null;
  readonly takesFocus: boolean;
}

/** The choice of a field: those offered, or an own one. */
export function StartScreen({ fields, onStart, onBack, takesFocus }: StartScreenProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (takesFocus) heading.current?.focus();
  }, []);
  const words = pageWords.start;
  return (
    <section class="start">
      <h1 ref={heading} tabIndex={-1}>
        {words.heading}
      </h1>
      <p>{words.lead}</p>
      <h2>{words.which}</h2>
      <button type="button" class="field-choice" onClick={() => onStart(null)}>
        <b>{pageWords.ownField}</b>
        <span>{pageWords.ownFieldNote}</span>
      </button>
      {fields.some(({ invented }) => invented) && <p class="start-demo">{words.demo}</p>}
      {fields.map(({ id, name, note, invented }) => (
        <button type="button" class="field-choice" key={id} onClick={() => onStart(id)}>
          <b>
            {name} {invented && <Invented />}
          </b>
          <span>{note && noteIn(note, coreWords)}</span>
        </button>
      ))}
      <h2>{pageWords.learn.heading}</h2>
      <LearnLinks isMain />
      {onBack && (
        <button type="button" class="button" onClick={onBack}>
          {words.back}
        </button>
      )}
    </section>
  );
}
