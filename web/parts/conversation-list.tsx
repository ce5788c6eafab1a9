import { useState } from 'preact/hooks';
import type { Chat } from '../chat/chat.ts';
import type { PageState } from '../chat/page-state.ts';
import { saveFile } from '../save-file.ts';
import { pageWords } from '../words.ts';
import { Invented } from './invented.tsx';

/** Most that are listed, that last used first. */
const mostListed = 12;

interface ConversationListProps extends Pick<Chat, 'saidEvents'> {
  readonly state: PageState;
  readonly onGoTo: (token: string) => void;
}

/** Earlier conversations that this device keeps, to go back to; all of them can be saved as a file. */
export function ConversationList({ state, onGoTo, saidEvents }: ConversationListProps) {
  const words = pageWords.offline;
  const others = state.conversations.filter(({ token }) => token !== state.token).slice(0, mostListed);
  const [said, setSaid] = useState('');
  if (state.conversations.length === 0) return null;
  const save = async () => {
    const events = await saidEvents();
    if (events !== null) saveFile('loamward-events.json', `${JSON.stringify({ events })}\n`, 'application/json');
    setSaid(events === null ? words.eventsNotSaved : words.eventsSaved(events.length));
  };
  return (
    <section class="start earlier">
      <h2>{words.conversations}</h2>
      <p class="quiet">{words.conversationsNote}</p>
      {others.map(({ token, usedAt, fieldName, invented, headline, packId }) => (
        <button type="button" class="field-choice" key={token} onClick={() => onGoTo(token)}>
          <b>
            {words.goTo(fieldName ?? pageWords.ownField, dayOf(usedAt))} {invented && <Invented />}
          </b>
          {state.treatments.length > 1 && <span>{state.treatments.find(({ id }) => id === packId)?.title}</span>}
          <span>{headline ?? words.noVerdict}</span>
        </button>
      ))}
      <button type="button" class="button" onClick={() => void save()}>
        {words.saveEvents}
      </button>
      <p class="quiet">{words.saveEventsNote}</p>
      <p role="status">{said}</p>
    </section>
  );
}

function dayOf(at: number): string {
  const form = { dateStyle: 'medium', timeStyle: 'short' } as const;
  return new Date(at * 1000).toLocaleString(document.documentElement.lang, form);
}
