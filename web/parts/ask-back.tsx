import type { VerdictView } from '../../src/core/dialogue/view-types.ts';
import type { Chat } from '../chat/chat.ts';
import { coreWords, pageWords } from '../words.ts';

const ways = ['why-not', 'when', 'needs'] as const;

interface AskBackProps {
  readonly verdict: VerdictView['verdict'];
  readonly onRequest: Chat['request'];
}

/** What a person may want to know of an answer that is not spray today. */
export function AskBack({ verdict, onRequest }: AskBackProps) {
  if (verdict === 'spray-today') return null;
  return (
    <section class="menu" aria-label={pageWords.asking.askBack}>
      {ways.map((way) => (
        <button key={way} type="button" class="button" onClick={() => onRequest(way)}>
          {coreWords.dialogue.person[way]}
        </button>
      ))}
    </section>
  );
}
