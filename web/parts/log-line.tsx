import type { Entry } from '../../src/core/dialogue/view-types.ts';
import { pageWords } from '../words.ts';
import { TermText } from './term-text.tsx';

interface LogLineProps {
  readonly entry: Entry;
  /** True where it can be taken back. */
  readonly canUndo: boolean;
  readonly onUndo: (event: string) => void;
}

/** One line of the log. A verdict given earlier shows its sentence only. */
export function LogLine({ entry, canUndo, onUndo }: LogLineProps) {
  switch (entry.kind) {
    case 'person':
      return (
        <p class="line is-person">
          <span class="for-ear">{pageWords.you}: </span>
          <Told text={entry.text} undone={entry.undone} />
        </p>
      );
    case 'understood':
      return (
        <div class="line is-understood">
          <p>{entry.undone ? <Told text={entry.text} undone /> : <TermText text={entry.text} />}</p>
          {canUndo && (
            <button
              type="button"
              class="button is-quiet"
              aria-label={pageWords.undoWhat(entry.text)}
              onClick={() => onUndo(entry.undo)}
            >
              {pageWords.undo}
            </button>
          )}
        </div>
      );
    case 'verdict':
      return (
        <p class="line is-verdict">
          <b>{entry.verdict.headline}</b> {entry.verdict.change && <TermText text={entry.verdict.change} />}
        </p>
      );
    case 'error':
      return (
        <p class="line is-error">
          {entry.text} <code>{entry.error.code}</code>
        </p>
      );
    case 'question':
    case 'said':
      return (
        <p class={`line is-${entry.kind}`}>
          <TermText text={entry.text} />
        </p>
      );
  }
}

function Told({ text, undone }: { readonly text: string; readonly undone: boolean }) {
  if (!undone) return <>{text}</>;
  return (
    <>
      <s>{text}</s> <small>({pageWords.undone})</small>
    </>
  );
}
