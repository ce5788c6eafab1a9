import { pageWords } from '../words.ts';
import { type RecognitionResults, recogniserMaker } from './abilities.ts';

/** Why nothing was heard. */
export type ListenProblem = 'refused' | 'no-microphone' | 'no-service' | 'heard-nothing' | 'failed';

/** What listening tells. */
export interface ListenListener {
  /** All that was heard so far; what is not final may still change. */
  readonly onHeard: (text: string) => void;
  /** It is over: with what was heard, or why not. */
  readonly onEnd: (text: string, problem: ListenProblem | null) => void;
}

const problems: Readonly<Record<string, ListenProblem | null>> = {
  'not-allowed': 'refused',
  'service-not-allowed': 'refused',
  'audio-capture': 'no-microphone',
  network: 'no-service',
  'no-speech': 'heard-nothing',
  aborted: null,
};

/** Listens until the person pauses or it is stopped; returns how to stop it. Null where the browser cannot listen. */
export function listen({ onHeard, onEnd }: ListenListener): (() => void) | null {
  const Maker = recogniserMaker();
  if (!Maker) return null;
  const recogniser = new Maker();
  let heard = '';
  let problem: ListenProblem | null = null;
  recogniser.lang = pageWords.tag;
  recogniser.continuous = false;
  recogniser.interimResults = true;
  recogniser.onresult = (event) => {
    heard = textOfResults(event);
    onHeard(heard);
  };
  recogniser.onerror = ({ error }) => {
    problem = error in problems ? problems[error]! : 'failed';
  };
  recogniser.onend = () => onEnd(heard, heard === '' ? (problem ?? 'heard-nothing') : null);
  try {
    recogniser.start();
  } catch {
    onEnd('', 'failed');
    return null;
  }
  return () => recogniser.stop();
}

/** The best guess of every piece, joined. */
export function textOfResults({ results }: RecognitionResults): string {
  return Array.from(results, (result) => result[0]?.transcript.trim() ?? '')
    .filter((piece) => piece !== '')
    .join(' ');
}
