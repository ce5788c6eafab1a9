import type { LittleWords } from '../language-words.ts';

const set = (text: string): ReadonlySet<string> => new Set(text.split(' '));

/** Words that the reading of signs, times, depths and clauses hangs on. */
export const littleWords: LittleWords = {
  at: 'at',
  or: 'or',
  joinedEnds: { "'ll": 'will' },
  beforeYear: set('in since during back'),
  and: 'and',
  about: 'about',
  atDepth: set('at'),
  depth: set('deep down depth below'),
  depthBefore: set('depth'),
  abbreviations: set('approx deg temp abt c ca'),
  mayLeadNumber: set('bbch gs at force'),
  shortened: set("it's that's what's there's here's he's she's how's where's who's let's"),
  toFuture: set('next coming within in'),
  notBefore: set('not no'),
  clause: set('and but plus though although however whereas while then'),
};
