import { useId, useState } from 'preact/hooks';
import { SpeakButton } from '../speech/speak-button.tsx';
import { pageWords } from '../words.ts';

/** Most letters that the protocol takes at once. */
const longestText = 2000;

interface FreeTextProps {
  readonly hasQuestion: boolean;
  readonly onSay: (text: string) => void;
}

/** The box for own words beside the buttons, typed or spoken; on a phone it stays at the thumb. */
export function FreeText({ hasQuestion, onSay }: FreeTextProps) {
  const id = useId();
  const [text, setText] = useState('');
  const words = pageWords.question;
  const send = (what: string) => {
    if (what.trim() === '') return;
    setText('');
    onSay(what.trim().slice(0, longestText));
  };
  return (
    <>
      <form
        class="free-text"
        onSubmit={(event) => {
          event.preventDefault();
          send(text);
        }}
      >
        <label for={id}>{hasQuestion ? words.ownWords : words.ownWordsAny}</label>
        <div class="free-line">
          <input
            id={id}
            type="text"
            autoComplete="off"
            enterKeyHint="send"
            maxLength={longestText}
            value={text}
            aria-describedby={`${id}-help`}
            onInput={(event) => setText(event.currentTarget.value)}
          />
          <SpeakButton onHeard={setText} onSend={send} />
          <button type="submit" class="button is-main">
            {words.send}
          </button>
        </div>
      </form>
      <p id={`${id}-help`} class="quiet free-help">
        {hasQuestion ? words.ownWordsHelp : words.ownWordsAnyHelp}
      </p>
    </>
  );
}
