import type { SupposingWords } from '../language-words.ts';

/** Words with which a person supposes what is not so, at the start of a text; longer ones before those they begin with. */
const openings = [
  'and what if',
  'but what if',
  'so what if',
  'what about if',
  'how about if',
  'what would happen if',
  'what happens when',
  'would it be all right if',
  'would it be ok if',
  'would it be okay if',
  'would it help if',
  'would it change anything if',
  'would it make a difference if',
  'what difference would it make if',
  'just suppose',
  'just say',
  "let's suppose",
  'lets suppose',
  "let's assume",
  'pretend',
  'hypothetically',
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
  tells:
    /^(?:and |but )?if (?:it|we|there|the|that|this|they)(?:'s|s|'ll)? .*\b(?:they|it|i|we|the drains|drains|that)(?:'ll| will| wont| won't| might| should| may| could|ll)\b(?! (?:it|i|we|be (?:ok|okay|fit|right|alright|all right)))/,
  itWere,
  forms: [
    ['were', 'is'],
    ['was', 'is'],
  ],
  correction: 'no, it was ',
};
