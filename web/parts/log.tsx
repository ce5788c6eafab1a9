import { useState } from 'preact/hooks';
import type { ConversationView, Entry } from '../../src/core/dialogue/view-types.ts';
import { pageWords } from '../words.ts';
import { Fold } from './fold.tsx';
import { LogLine } from './log-line.tsx';

/** Lines shown before the rest is asked for. */
const shownLines = 5;

interface LogProps {
  readonly view: ConversationView;
  readonly onUndo: (event: string) => void;
}

/** What was said on both sides, newest last; the open question and the verdict that stands have cards of their own instead. */
export function Log({ view, onUndo }: LogProps) {
  const [isWhole, setWhole] = useState(false);
  const open = view.question && view.entries.findLast(({ kind }) => kind === 'question');
  const standing = view.verdict && view.entries.findLast(({ kind }) => kind === 'verdict');
  const present = view.entries.slice(view.earlier);
  const entries = present.filter(
    (entry, index) =>
      entry !== standing &&
      !isPassed(present.slice(index)) &&
      !(entry === open && entry.kind === 'question' && isOpen(entry.text, view)),
  );
  const earlier = Math.max(0, entries.length - shownLines);
  return (
    <div class="log">
      {view.earlier > 0 && (
        <Fold title={pageWords.putAside(view.earlier)}>
          {view.entries.slice(0, view.earlier).map((entry) => (
            <LogLine key={entry.id} entry={entry} canUndo={false} onUndo={onUndo} />
          ))}
        </Fold>
      )}
      {earlier > 0 && (
        <button type="button" class="button is-quiet" aria-expanded={isWhole} onClick={() => setWhole(!isWhole)}>
          {isWhole ? pageWords.fewer : pageWords.earlier(earlier)}
        </button>
      )}
      <div role="log" aria-live="polite" aria-relevant="additions" aria-label={pageWords.log}>
        {(isWhole ? entries : entries.slice(earlier)).map((entry) => (
          <LogLine key={entry.id} entry={entry} canUndo={counts(entry, view)} onUndo={onUndo} />
        ))}
      </div>
    </div>
  );
}

/** True for a question, the first of these, that was put away again before anybody said a word. */
function isPassed([first, ...after]: readonly Entry[]): boolean {
  const next = after.find(({ kind }) => kind === 'person' || kind === 'question' || kind === 'verdict');
  return first?.kind === 'question' && next !== undefined && next.kind !== 'person';
}

function isOpen(text: string, { question }: ConversationView): boolean {
  return question !== null && text.includes(question.ask);
}

/** True where what was understood still counts; not where it was corrected since. */
function counts(entry: Entry, { said }: ConversationView): boolean {
  return entry.kind === 'understood' && !entry.undone && said.some(({ undo }) => undo === entry.undo);
}
