import { useEffect, useRef, useState } from 'preact/hooks';
import type { FieldOffer, TreatmentOffer } from '../../src/core/protocol/messages.ts';
import { noteIn } from '../../src/core/words/notes.ts';
import { coreWords, pageWords } from '../words.ts';
import { Invented } from './invented.tsx';
import { LearnLinks } from './learn-links.tsx';
import { TreatmentChoice } from './treatment-choice.tsx';

interface StartScreenProps {
  readonly fields: readonly FieldOffer[];
  /** Those that can be chosen; asked for only where there are several. */
  readonly treatments: readonly TreatmentOffer[];
  /** Id of that which is chosen at first; the first of all where it is null. */
  readonly treatment: string | null;
  readonly onStart: (field: string | null, treatment?: string) => void;
  /** Back to a conversation that stands; null where there is none. */
  readonly onBack: (() => void) | null;
  readonly takesFocus: boolean;
}

/** The choice of a treatment where there are several, and of a field: those offered for it, or an own one. */
export function StartScreen({ fields, treatments, treatment, onStart, onBack, takesFocus }: StartScreenProps) {
  const [chosenId, choose] = useState(treatment);
  const chosen = treatments.find(({ id }) => id === chosenId) ?? treatments[0];
  const offered = fields.filter(({ id }) => chosen?.fields.includes(id) ?? true);
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
      {chosen && treatments.length > 1 && (
        <TreatmentChoice treatments={treatments} chosen={chosen.id} onChoose={choose} />
      )}
      <h2>{words.which}</h2>
      <button type="button" class="field-choice" onClick={() => onStart(null, chosen?.id)}>
        <b>{pageWords.ownField}</b>
        <span>{pageWords.ownFieldNote}</span>
      </button>
      {offered.some(({ invented }) => invented) && <p class="start-demo">{words.demo}</p>}
      {offered.map(({ id, name, note, invented }) => (
        <button type="button" class="field-choice" key={id} onClick={() => onStart(id, chosen?.id)}>
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
