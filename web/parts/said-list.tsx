import type { SaidView } from '../../src/core/dialogue/view-types.ts';
import { capital } from '../../src/core/words/units.ts';
import { pageWords } from '../words.ts';
import { Fold } from './fold.tsx';

interface SaidListProps {
  readonly said: readonly SaidView[];
  readonly onUndo: (event: string) => void;
  readonly onChange: (fact: string) => void;
}

/** All that was told, each with where it came from and a way to take it back. */
export function SaidList({ said, onUndo, onChange }: SaidListProps) {
  const words = pageWords.said;
  return (
    <Fold title={`${words.heading} (${said.length})`} class="fold said">
      {said.length === 0 && <p>{words.none}</p>}
      <ul>
        {said.map(({ fact, label, value, from, undo, canChange }) => (
          <li key={fact}>
            <span>
              {capital(label)}: <b>{value}</b> <small>{from}</small>
            </span>
            {canChange && (
              <button
                type="button"
                class="button is-quiet"
                aria-label={pageWords.asking.changeWhat(`${label}, ${value}`)}
                onClick={() => onChange(fact)}
              >
                {pageWords.asking.change}
              </button>
            )}
            {undo !== null && (
              <button
                type="button"
                class="button is-quiet"
                aria-label={pageWords.undoWhat(`${label}, ${value}`)}
                onClick={() => onUndo(undo)}
              >
                {pageWords.undo}
              </button>
            )}
          </li>
        ))}
      </ul>
    </Fold>
  );
}
