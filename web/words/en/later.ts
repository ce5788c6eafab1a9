import { cardWords as card } from '../../../src/core/words/en/card.ts';
import { handOverWords as handOver } from '../../../src/core/words/en/hand-over.ts';
import { outlookWords as outlook } from '../../../src/core/words/en/outlook.ts';
import type { LaterWords } from '../types.ts';
import { learn } from './learn.ts';
import { pictures } from './pictures.ts';

/** What is said in English only in parts that are loaded when they are asked for. */
export default { outlook, handOver, pictures, learn, card } satisfies LaterWords;
