/** Words of numbers below a hundred. */
export const smallNumbers: Readonly<Record<string, number>> = {
  zero: 0,
  nought: 0,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
  thirteen: 13,
  fourteen: 14,
  fifteen: 15,
  sixteen: 16,
  seventeen: 17,
  eighteen: 18,
  nineteen: 19,
  twenty: 20,
  thirty: 30,
  forty: 40,
  fifty: 50,
  sixty: 60,
  seventy: 70,
  eighty: 80,
  ninety: 90,
};

/** Words that multiply what stands before them. */
export const multipliers: Readonly<Record<string, number>> = { hundred: 100, thousand: 1000, dozen: 12 };

/** Words after which "one" counts nothing: "this one", "no one". */
export const noCountBeforeOne: ReadonlySet<string> = new Set(
  'this that which no the any each every last next some other another good bad same'.split(' '),
);

/** Words before "of", "by", "more" and the like make no number of "one" either. */
export const noCountAfterOne: ReadonlySet<string> = new Set('of more by day or is was that time in'.split(' '));

/** Fractions that may follow a number. */
export const fractions: readonly (readonly [string, number])[] = [
  ['and a half', 0.5],
  ['and a quarter', 0.25],
  ['and three quarters', 0.75],
  ['and a third', 1 / 3],
  ['and half', 0.5],
  ['an a half', 0.5],
  ['n a half', 0.5],
  ['an half', 0.5],
  ['n half', 0.5],
];

/** Words that make the number after them negative. */
export const minusWords: ReadonlySet<string> = new Set(['minus', 'negative']);

/** Words between a whole number and its decimals. */
export const pointWords: ReadonlySet<string> = new Set(['point']);

/** A number before one of these is a day, a time or a count of something else. */
export const oddAfterNumber: ReadonlySet<string> = new Set(
  (
    'st nd rd th am pm oclock hrs january february march april may june july august september october november december ' +
    'jan feb mar apr jun jul aug sept sep oct nov dec x g gb'
  ).split(' '),
);
