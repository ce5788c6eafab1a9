import { useEffect } from 'preact/hooks';
import { useComfort } from '../comfort/comfort-context.ts';
import { pageWords } from '../words.ts';
import { canSpeak } from './abilities.ts';
import { hush, speak } from './speak.ts';

/** Reads the sentences aloud as they come, once the person has done something, and again at a press; nothing unless wanted. */
export function ReadAloud({
  sentences,
  startsByItself,
}: {
  readonly sentences: readonly string[];
  readonly startsByItself: boolean;
}) {
  const [{ readsAloud }] = useComfort();
  const isOn = readsAloud && canSpeak();
  useEffect(() => {
    if (!isOn) return undefined;
    if (startsByItself) speak(sentences);
    return hush;
  }, [isOn, sentences.join(' ')]);
  if (!isOn) return null;
  const words = pageWords.comfort;
  return (
    <div class="aloud">
      <button type="button" class="button" onClick={() => speak(sentences)}>
        {words.readAloud}
      </button>
      <button type="button" class="button is-quiet" onClick={hush}>
        {words.hush}
      </button>
    </div>
  );
}
