import type { FieldLineView } from '../../src/core/dialogue/view-types.ts';
import { pageWords } from '../words.ts';
import { Fold } from './fold.tsx';

/** Today's fields, each with its verdict in a line; nothing where there is only one. */
export function FieldList({ fields }: { readonly fields: readonly FieldLineView[] }) {
  if (fields.length === 0) return null;
  return (
    <Fold title={`${pageWords.asking.fields} (${fields.length})`}>
      <ul>
        {fields.map(({ id, text }) => (
          <li key={id}>{text}</li>
        ))}
      </ul>
    </Fold>
  );
}
