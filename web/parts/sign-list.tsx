import { useState } from 'preact/hooks';
import { pageWords } from '../words.ts';
import type { FormProps } from './question-card.tsx';

/** A checklist: none, one or several signs, then confirmed. */
export function SignList({ question, onAnswer }: FormProps) {
  const [ticked, setTicked] = useState<readonly string[]>([]);
  const words = pageWords.question;
  const toggle = (id: string) => setTicked(ticked.includes(id) ? ticked.filter((one) => one !== id) : [...ticked, id]);
  return (
    <form
      class="signs"
      onSubmit={(event) => {
        event.preventDefault();
        onAnswer({ choices: [...ticked], numbers: {}, doesNotKnow: false });
      }}
    >
      <fieldset>
        <legend>{words.signsHelp}</legend>
        {question.choices.map(({ id, label, help }) => (
          <label class="sign" key={id}>
            <input type="checkbox" checked={ticked.includes(id)} onChange={() => toggle(id)} />
            <span>
              <b>{label}</b>
              {help && <small>{help}</small>}
            </span>
          </label>
        ))}
      </fieldset>
      <button type="submit" class="button is-main">
        {ticked.length === 0 ? words.signsNone : words.signsTake(ticked.length)}
      </button>
    </form>
  );
}
