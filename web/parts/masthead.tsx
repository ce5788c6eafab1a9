import type { ConversationView } from '../../src/core/dialogue/view-types.ts';
import { pageWords } from '../words.ts';
import { Invented } from './invented.tsx';

/** Name of the program, the treatment, and the field that is talked about; null while none is. */
export function Masthead({
  packTitle,
  talksAbout,
}: {
  readonly packTitle: string;
  readonly talksAbout: Pick<ConversationView, 'field'> | null;
}) {
  const field = talksAbout?.field;
  return (
    <header class="masthead">
      <p class="masthead-name">
        <b>{pageWords.name}</b> <span>{packTitle}</span>
      </p>
      {talksAbout && (
        <h1 class="masthead-field">
          {field?.name ?? pageWords.ownField} {field?.invented && <Invented />}
        </h1>
      )}
      {field?.invented && <p class="quiet">{pageWords.inventedNote}</p>}
    </header>
  );
}
