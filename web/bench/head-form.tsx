import { useId } from 'preact/hooks';
import type { Draft, DraftHead } from './draft.ts';
import { useSpeech } from './speech.ts';

interface HeadFormProps {
  readonly draft: Draft;
  readonly onChange: (draft: Draft) => void;
}

/** Texts of the head that must be filled in, in the order in which they are asked. */
export const headTexts = [
  'reason',
  'author',
  'place',
  'title',
  'id',
  'validFrom',
] as const satisfies (keyof DraftHead)[];

/** Who changes the rules, for which place, why and from when. */
export function HeadForm({ draft, onChange }: HeadFormProps) {
  const { bench } = useSpeech();
  const change = (part: Partial<DraftHead>) => onChange({ ...draft, head: { ...draft.head, ...part } });
  return (
    <section aria-labelledby="bench-head">
      <h2 id="bench-head">{bench.head.heading}</h2>
      <p class="quiet">{bench.head.lead}</p>
      {headTexts.map((name) => (
        <HeadText key={name} name={name} text={draft.head[name]} onText={(text) => change({ [name]: text })} />
      ))}
      <fieldset>
        <legend>{bench.head.layer}</legend>
        {(['farm', 'area'] as const).map((layer) => (
          <label class="sign" key={layer}>
            <input
              type="radio"
              name="bench-layer"
              value={layer}
              checked={draft.head.layer === layer}
              onChange={() => change({ layer })}
            />
            <b>{bench.head.layers[layer]}</b>
          </label>
        ))}
      </fieldset>
      <p class="quiet">{bench.head.languages}</p>
    </section>
  );
}

interface HeadTextProps {
  readonly name: (typeof headTexts)[number];
  readonly text: string;
  readonly onText: (text: string) => void;
}

function HeadText({ name, text, onText }: HeadTextProps) {
  const id = useId();
  const { bench } = useSpeech();
  return (
    <div class="number-box">
      <label for={id}>{bench.head[name]}</label>
      <div class="number-line">
        <input
          id={id}
          type="text"
          class="bench-text"
          autoComplete="off"
          value={text}
          onInput={({ currentTarget }) => onText(currentTarget.value)}
        />
      </div>
    </div>
  );
}
