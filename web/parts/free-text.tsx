import { useId, useState } from 'preact/hooks';
import { pageWords } from '../words.ts';

/** Most letters that the protocol takes at once. */
const longestText = 2000;

interface FreeTextProps {
  readonly hasQuestion: boolean;
  readonly onSay: (text: string) => void;
}

/** The box for own words beside the buttons. */
export function FreeText({ hasQuestion, onSay }: FreeTextProps) {
  const id = useId();
  const [text, setText] = useState('');
  const words = pageWords.question;
  return (
    <form
      class="free-text"
      onSubmit={(event) => {
        event.preventDefault();
        if (text.trim() === '') return;
        setText('');
        onSay(text.trim());
      }}
    >
      <label for={id}>{hasQuestion ? words.ownWords : words.ownWordsAny}</label>
      <div class="free-line">
        <input
          id={id}
          type="text"
          autoComplete="off"
          maxLength={longestText}
          value={text}
          aria-describedby={`${id}-help`}
          onInput={(event) => setText(event.currentTarget.value)}
        />
        <button type="submit" class="button">
          {words.send}
        </button>
      </div>
      <p id={`${id}-help`} class="quiet">
        {words.ownWordsHelp}
      </p>
    </form>
  );
}
