import { useEffect, useRef, useState } from 'preact/hooks';
import { useComfort } from '../comfort/comfort-context.ts';
import { pageWords } from '../words.ts';
import { canListen } from './abilities.ts';
import { type ListenProblem, listen } from './listen.ts';

interface SpeakButtonProps {
  /** Shows what was heard in the box. */
  readonly onHeard: (text: string) => void;
  /** Sends it, where the person has set so. */
  readonly onSend: (text: string) => void;
}

type Listening = 'no' | 'yes' | 'heard' | ListenProblem;

/** The button to speak beside the box for own words, where it is wanted and the browser can; what goes on is said beside it. */
export function SpeakButton({ onHeard, onSend }: SpeakButtonProps) {
  const [comfort] = useComfort();
  const [state, setState] = useState<Listening>('no');
  const stop = useRef<(() => void) | null>(null);
  useEffect(() => () => stop.current?.(), []);
  if (!comfort.listens || !canListen()) return null;
  const words = pageWords.comfort;
  const begin = () => {
    setState('yes');
    stop.current = listen({
      onHeard,
      onEnd: (text, problem) => {
        stop.current = null;
        if (problem === null && text !== '' && comfort.sendsHeard) onSend(text);
        setState(problem ?? (comfort.sendsHeard ? 'no' : 'heard'));
      },
    });
  };
  const isListening = state === 'yes';
  return (
    <>
      <button
        type="button"
        class="button speak"
        aria-pressed={isListening}
        onClick={() => (isListening ? stop.current?.() : begin())}
      >
        <Microphone />
        <span>{isListening ? words.stopListening : words.speak}</span>
      </button>
      <p class="speak-state" role="status">
        {saidOf(state)}
      </p>
    </>
  );
}

function saidOf(state: Listening): string {
  const words = pageWords.comfort;
  if (state === 'no') return '';
  if (state === 'yes') return words.listening;
  return state === 'heard' ? words.heard : words.problems[state];
}

function Microphone() {
  return (
    <svg class="icon" viewBox="0 0 24 24" aria-hidden="true" focusable="false">
      <path d="M12 3a3 3 0 0 1 3 3v5a3 3 0 0 1-6 0V6a3 3 0 0 1 3-3ZM6 11a6 6 0 0 0 12 0M12 17v4M8 21h8" />
    </svg>
  );
}
