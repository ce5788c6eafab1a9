import type { ConversationView } from '../../src/core/dialogue/view-types.ts';
import { pageWords } from '../words.ts';
import { Invented } from './invented.tsx';

/** Name of the program, the treatment, and the field that is talked about. */
export function Masthead({
  packTitle,
  field,
}: {
  readonly packTitle: string;
  readonly field: ConversationView['field'];
}) {
  return (
    <header class="masthead">
      <p class="masthead-name">
        <b>{pageWords.name}</b> <span>{packTitle}</span>
      </p>
      {field && (
        <h1 class="masthead-field">
          {field.name} {field.invented && <Invented />}
        </h1>
      )}
      {field?.invented && <p class="quiet">{pageWords.inventedNote}</p>}
    </header>
  );
}
