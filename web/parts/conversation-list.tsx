import type { PageState } from '../chat/page-state.ts';
import { pageWords } from '../words.ts';
import { Invented } from './invented.tsx';

/** Most that are listed, that last used first. */
const mostListed = 12;

interface ConversationListProps {
  readonly state: PageState;
  readonly onGoTo: (token: string) => void;
}

/** Earlier conversations that this device keeps, to go back to. */
export function ConversationList({ state, onGoTo }: ConversationListProps) {
  const words = pageWords.offline;
  const others = state.conversations.filter(({ token }) => token !== state.token).slice(0, mostListed);
  if (others.length === 0) return null;
  return (
    <section class="start earlier">
      <h2>{words.conversations}</h2>
      <p class="quiet">{words.conversationsNote}</p>
      {others.map(({ token, usedAt, fieldName, invented, headline }) => (
        <button type="button" class="field-choice" key={token} onClick={() => onGoTo(token)}>
          <b>
            {words.goTo(fieldName ?? pageWords.ownField, dayOf(usedAt))} {invented && <Invented />}
          </b>
          <span>{headline ?? words.noVerdict}</span>
        </button>
      ))}
    </section>
  );
}

function dayOf(at: number): string {
  const form = { dateStyle: 'medium', timeStyle: 'short' } as const;
  return new Date(at * 1000).toLocaleString(document.documentElement.lang, form);
}
