import type { ConversationView } from '../../src/core/dialogue/view-types.ts';
import { openSettings } from '../comfort/settings-panel.tsx';
import { pageWords } from '../words.ts';
import { Invented } from './invented.tsx';

/** Name of the program, the treatment, the way to the settings, and the field that is talked about; null while none is. */
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
      <div class="masthead-name">
        <p>
          <b>{pageWords.name}</b> <span>{packTitle}</span>
        </p>
        <button type="button" class="button is-quiet" onClick={openSettings}>
          {pageWords.comfort.open}
        </button>
      </div>
      {talksAbout && (
        <h1 class="masthead-field">
          {field?.name ?? pageWords.ownField} {field?.invented && <Invented />}
        </h1>
      )}
      {field?.invented && <p class="quiet">{pageWords.inventedNote}</p>}
    </header>
  );
}
