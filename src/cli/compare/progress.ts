import type { CompareWords } from '../../core/words/compare-words.ts';
import type { Io } from '../io.ts';

/** Tells how far a long piece of work is. */
export type Progress = (what: string, done: number, all: number) => void;

/** Seconds before anything is told, and between two lines. */
const quietSeconds = 0.5;

/** Lines on standard error, from half a second on and at most two a second. */
export function progressOn(io: Pick<Io, 'now' | 'writeError'>, told: CompareWords): Progress {
  let last = io.now();
  return (what, done, all) => {
    const now = io.now();
    if (now - last < quietSeconds) return;
    last = now;
    io.writeError(`${told.progress(what, done, all)}\n`);
  };
}
