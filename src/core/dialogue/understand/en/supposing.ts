import type { SupposingWords } from '../language-words.ts';

/** Words with which a person supposes what is not so, at the start of a text; longer ones before those they begin with. */
const openings = [
  'what if',
  'what would you say if',
  'what happens if',
  'and if',
  'suppose that',
  'supposing',
  'suppose',
  'imagine',
  'assuming',
  'assume',
  "let's say",
  'lets say',
  'if',
] as const;

/** What may stand for the fact last spoken of: "if it were 9". */
const itWere = ['it were', 'it was', 'it is', "it's", 'its', 'that were', 'that was'] as const;

/** What is supposed only. */
export const supposing: SupposingWords = {
  openings,
  itWere,
  forms: [
    ['were', 'is'],
    ['was', 'is'],
  ],
  correction: 'no, it was ',
};
