import type { QuestionView } from '../../src/core/dialogue/view-types.ts';
import type { EventMessage } from '../../src/core/protocol/messages.ts';
import type { Outbox } from '../chat/outbox.ts';
import { coreWords, pageWords } from '../words.ts';

/** What was said and answered without a connection, kept until it is back. */
export function Unsent({ outbox, question }: { readonly outbox: Outbox; readonly question: QuestionView | null }) {
  return (
    <div class="log">
      {outbox.map((message) => (
        <p key={message.id} class="line is-person is-unsent">
          {unsentText(message, question)} <small>({pageWords.notSentYet})</small>
        </p>
      ))}
    </div>
  );
}

function unsentText(message: EventMessage, question: QuestionView | null): string {
  const { person } = coreWords.dialogue;
  switch (message.type) {
    case 'say':
      return message.text;
    case 'request':
      return person[message.request];
    case 'undo':
      return pageWords.undo;
    case 'start':
      return pageWords.menu.again;
    case 'answer': {
      if (message.doesNotKnow) return person.doesNotKnow;
      const labels = message.choices.map((id) => question?.choices.find((one) => one.id === id)?.label ?? id);
      return [...labels, ...Object.values(message.numbers)].join(', ') || person.nothing;
    }
  }
}
