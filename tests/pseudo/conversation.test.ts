import './register.ts';
import { describe, expect, test } from 'vitest';
import { catalogueOf } from '../../src/core/words/catalogue.ts';
import { shipped } from '../cases/shipped-pack.ts';
import { lines, started, type Told, talk } from '../core/dialogue/talk.ts';
import { byRight } from './by-right.ts';
import { decorate, plainWords } from './decorate.ts';
import { decoratedPack } from './pack.ts';
import { talkIn } from './talks.ts';

/** A word that the terminal takes, in the made-up language. */
const typed = (word: string) => decorate(word);

const talks: readonly (readonly [string, string | null | undefined, readonly string[]])[] = [
  [
    'to its answer',
    'mill-piece',
    [
      'crumbly',
      'moist',
      'why do you ask',
      '8.4 at 30 cm',
      "don't know",
      'what have I told you',
      'check the rest',
      'no frost',
      'undo',
      typed('cautions'),
      typed('days'),
      typed('trace'),
      'dose',
      '500 g/l',
      '840',
      'why not',
      'when',
      'what would you need',
      'what if it were 12 at 30 cm',
      'what does field capacity mean',
      'what does bimbam mean',
      'help',
      'stop',
      'look again',
      'the same for the next field',
    ],
  ],
  [
    'a drained field',
    'long-ing',
    [
      'drains running',
      'sticky and cracked',
      '9 at 30 cm',
      'why not',
      'when',
      typed('trace'),
      typed('days'),
      'no it was 11',
      'start again',
      'moist',
      'another field',
      'top-brow',
      'between 8 and 9 at 30 cm',
      typed('trace'),
      typed('days'),
      'fields',
    ],
  ],
  [
    'a sandy field',
    'top-brow',
    [
      'friable',
      'moist',
      '7',
      'colder than a week ago',
      typed('trace'),
      typed('days'),
      'dose',
      typed('cautions'),
      '50 at 30 cm',
      'no',
      'gibberish and more',
      'change the soil feel',
      'keep',
    ],
  ],
  [
    'an own field',
    null,
    [
      'England',
      '53.1, -1.2',
      "don't know",
      'clay loam',
      'I am outside',
      'no peat',
      '12 m to a ditch',
      'not drained',
      "don't know",
      "don't know",
      "don't know",
      "don't know",
      "don't know",
      "don't know",
      "don't know",
      "don't know",
      "don't know",
      "don't know",
      typed('trace'),
      'when',
      'what would you need',
    ],
  ],
  ['the choice of a field', undefined, ['nonsense', '99', '1', typed('quit')]],
];

describe.each(talks)('a whole conversation in a language made up on the spot: %s', (_, field, lines) => {
  test('shows no word outside the catalogue', async () => {
    const { text } = await talkIn(decoratedPack, field, lines);
    const left = text.split('\n').filter((line) => plainWords(line, byRight).length > 0);
    expect(left).toEqual([]);
  });
});

describe('a language that rules and lists of typed words lack', () => {
  test('is told so as the conversation begins; the texts of the rules are in English, and typed words are read as English', async () => {
    const { text, views } = await talkIn(shipped.pack, 'mill-piece', ['crumbly']);
    expect(text).toContain(catalogueOf('zz').dialogue.packInEnglish);
    expect(text).toContain(catalogueOf('zz').dialogue.readAsEnglish);
    expect(text).toContain(catalogueOf('zz').values.choices['friable']);
    expect(views.at(-1)?.packTitle).toBe('Propyzamide on winter oilseed rape');
  });

  test('says nothing of it in English and German', () => {
    for (const language of ['en', 'de']) {
      const { dialogue } = catalogueOf(language);
      const conversation = talk([{ ...started(shipped.pack), language } as Told], {
        pack: shipped.pack,
        forecast: null,
      });
      const text = lines(conversation, shipped.pack).join(' ');
      expect(text).toContain(dialogue.hello);
      expect(text).not.toContain(dialogue.packInEnglish);
      expect(text).not.toContain(dialogue.readAsEnglish);
    }
  });
});
