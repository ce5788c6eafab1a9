import type { LittleWords } from '../language-words.ts';

const set = (text: string): ReadonlySet<string> => new Set(text.split(' '));

/** Words that the reading of signs, times, depths and clauses hangs on. */
export const littleWords: LittleWords = {
  at: 'bei',
  and: 'und',
  about: 'ca',
  or: 'oder',
  joinedEnds: {},
  beforeYear: set('in seit anno'),
  atDepth: set('in auf bei'),
  depth: set('tief tiefe bodentiefe'),
  being: 'ist|sind|war|waren|noch|schon|wurde',
  opposites: { nass: 'trocken', nasse: 'trockene' },
  ofIt: set('sie sind ist es die meisten alle nur bis so schon noch jetzt im schnitt durchschnitt aber da ja jo etwa'),
  off: set('weg entfernt weit'),
  tall: set('hoch hohe hoher hohes hohen lang lange langer langes langen gross grosse grosser grosses grossen'),
  since: set('seit'),
  depthBefore: set('tiefe'),
  abbreviations: set('ca bzw evtl temp std max rel ungef'),
  mayLeadNumber: set('bbch in auf windstaerke'),
  shortened: set(
    "wie's geht's gibt's ist's läuft's liegt's war's hat's steht's regnet's klebt's passt's sind's wird's",
  ),
  toFuture: set('naechsten kommenden innerhalb in naechste kommende binnen'),
  notBefore: set('nicht nich kein keine'),
  clause: set('und aber sowie jedoch dann obwohl waehrend allerdings sondern ausserdem'),
};
