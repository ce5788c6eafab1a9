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
  tall: set('tall high long'),
  being: 'is|are|was|were|still|has|been',
  opposites: { wet: 'dry' },
  ofIt: set(
    'they theyre it its them some most mostly all are is only just up to at now already still growing grown getting got but in places yes yeah yep aye',
  ),
  off: set('off away'),
  since: set('since'),
  depthBefore: set('depth'),
  abbreviations: set('approx deg temp abt c ca'),
  mayLeadNumber: set('bbch gs at force'),
  shortened: set("it's that's what's there's here's he's she's how's where's who's let's boom's"),
  toFuture: set('next coming within in'),
  notBefore: set('not no'),
  telling: set(
    'say says said saying read reads reading show shows showing showed get gets getting got give gives gave giving come comes came make makes made take took ' +
      'measured recorded clocked registered settled tell tells telling reckons reckon have had has call at sits sat stands stood hovers allows allowed permits states',
  ),
  pairs: set(
    'on-off off-on now-then up-down here-there by-large again-again in-out now-again bits-pieces ball-it ball-falls ball-breaks ball-crumbles ball-then lump-it',
  ),
  soBefore: set('i id its call we ill that thats reckon say ive no nope nah yes yeah aye its it theres'),
  clause: set('and but plus though although however whereas while then because cos coz depending seeing'),
};

/** Words that may stand within a phrase without changing it. */
export const gapWords = set(
  'a an the my your our me yer its it just right really very quite pretty fairly all only still now already bit little nice nicely lovely good well ' +
    'actually properly proper absolutely completely totally dead bang bloody damn flipping right up down out away off there here like about sort kind of any is are was were',
);
