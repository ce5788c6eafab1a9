import type { ConversationView } from '../../core/dialogue/view-types.ts';
import type { Catalogue } from '../../core/words/catalogue.ts';
import type { Io } from '../io.ts';
import { outlookLines } from './outlook-text.ts';
import { entryLines, nextWords, questionAgain, questionLines } from './view-text.ts';

/** Where lines go; silent where only the last state is wanted, as JSON. */
export interface Screen {
  readonly say: (lines: readonly string[]) => void;
  /** The sign that the person may type, where one sits there. */
  readonly prompt: () => void;
  /** What has come since the last time: new entries of the log, then the question, whole where it is another. */
  readonly show: (view: ConversationView | null) => void;
}

/** A screen over standard output. */
export function createScreen(io: Io, silent: boolean, words: Catalogue): Screen {
  const shown = new Set<string>();
  let question: string | null = null;
  let days = '';
  const say = (lines: readonly string[]): void => {
    if (!silent && lines.length > 0) io.write(`${lines.join('\n')}\n`);
  };
  return {
    say,
    prompt: () => {
      if (io.interactive && !silent) io.write('> ');
    },
    show: (view) => {
      const fresh = view?.entries.filter(({ id }) => !shown.has(id)) ?? [];
      for (const { id } of fresh) shown.add(id);
      const first = view?.entries[view.earlier]?.id;
      say(fresh.flatMap((entry) => [...(entry.id === first ? opening(view) : []), ...entryLines(entry, words)]));
      if (view?.verdict && fresh.some(({ kind }) => kind === 'verdict')) say([nextWords(view.verdict, words)]);
      const coming = view?.outlook ? outlookLines(view.outlook, words) : [];
      if (coming.length > 0 && coming.join('\n') !== days) say(coming);
      days = coming.join('\n');
      const open = view?.question ?? null;
      if (open) say(open.id === question ? questionAgain(open, words) : questionLines(open, words));
      question = open?.id ?? null;
    },
  };
}

/** Names the treatment, and parts a new conversation from one that was put aside. */
function opening(view: ConversationView | null): string[] {
  const line = (view?.earlier ?? 0) > 0 ? ['', '-'.repeat(60), ''] : [];
  return view === null ? line : [...line, `${view.packTitle}.`];
}
