import { spell } from './spelling.ts';

const ones = ['null', 'ein', 'zwei', 'drei', 'vier', 'fünf', 'sechs', 'sieben', 'acht', 'neun'];
const teens = 'zehn elf zwölf dreizehn vierzehn fünfzehn sechzehn siebzehn achtzehn neunzehn'.split(' ');
const tens = 'zwanzig dreißig vierzig fünfzig sechzig siebzig achtzig neunzig'.split(' ');

function* belowHundred(): Generator<readonly [string, number]> {
  for (const [at, word] of ones.entries()) yield [at === 1 ? 'eins' : word, at];
  yield ['zwo', 2];
  for (const [at, word] of teens.entries()) yield [word, 10 + at];
  for (const [at, word] of tens.entries()) {
    yield [word, 20 + 10 * at];
    for (let one = 1; one < 10; one += 1) yield [`${ones[one]}und${word}`, 20 + 10 * at + one];
  }
}

function* allNumbers(): Generator<readonly [string, number]> {
  const small = [...belowHundred()];
  for (const [word, value] of small) {
    yield [word, value];
    if (value > 0) yield [`${value === 1 ? 'ein' : word}einhalb`, value + 0.5];
  }
  yield ['anderthalb', 1.5];
  for (let hundred = 1; hundred < 10; hundred += 1) {
    for (const lead of hundred === 1 ? ['hundert', 'einhundert'] : [`${ones[hundred]}hundert`]) {
      yield [lead, 100 * hundred];
      for (const [word, value] of small) if (value > 0) yield [lead + word, 100 * hundred + value];
    }
  }
}

/** Words of numbers, written as one word: "zweiundzwanzig", "achteinhalb", "hundertzwanzig". */
export const smallNumbers: Readonly<Record<string, number>> = Object.fromEntries(
  [...allNumbers()].map(([word, value]) => [spell(word), value]),
);

/** Words that multiply what stands before them. */
export const multipliers: Readonly<Record<string, number>> = { hundert: 100, tausend: 1000 };

/** Words after which "eins" counts nothing. */
export const noCountBeforeOne: ReadonlySet<string> = new Set('nummer punkt noch'.split(' '));

/** Words before which "eins" counts nothing. */
export const noCountAfterOne: ReadonlySet<string> = new Set('a von der ist'.split(' '));

/** Fractions that may follow a number. */
export const fractions: readonly (readonly [string, number])[] = [
  ['einhalb', 0.5],
  ['ein halb', 0.5],
  ['und ein halb', 0.5],
  ['und einhalb', 0.5],
  ['ein viertel', 0.25],
  ['einviertel', 0.25],
  ['und ein viertel', 0.25],
  ['dreiviertel', 0.75],
  ['drei viertel', 0.75],
  ['und dreiviertel', 0.75],
];

/** Words that make the number after them negative. */
export const minusWords: ReadonlySet<string> = new Set(['minus']);

/** Words between a whole number and its decimals. */
export const pointWords: ReadonlySet<string> = new Set(['komma', 'punkt']);

/** A number before one of these is a day, a time or a count of something else. */
export const oddAfterNumber: ReadonlySet<string> = new Set(
  (
    'uhr uhrs januar jaenner februar maerz april mai juni juli august september oktober november dezember jan feb apr jun jul aug ' +
    'sept sep okt nov dez x mal ter ten te er'
  ).split(' '),
);
