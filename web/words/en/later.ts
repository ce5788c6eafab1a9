import { cardWords as card } from '../../../src/core/words/en/card.ts';
import type { LaterWords } from '../types.ts';
import { learn } from './learn.ts';
import { pictures } from './pictures.ts';

/** What is said in English only in parts that are loaded when they are asked for. */
export default { pictures, learn, card } satisfies LaterWords;
