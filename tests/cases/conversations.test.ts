import { describe, expect, test } from 'vitest';
import { emptyConversation } from '../../src/core/dialogue/conversation.ts';
import type { ConversationEvent } from '../../src/core/dialogue/events.ts';
import { openQuestion } from '../../src/core/dialogue/open-question.ts';
import { headWord } from '../../src/core/dialogue/terms.ts';
import type { VerdictWord } from '../../src/core/verdict/types.ts';
import { filled, look, pressed, said, stamp, started, type Told, take, talk } from '../core/dialogue/talk.ts';
import { shippedPacks } from './shipped-pack.ts';

const { pack } = shippedPacks.find((one) => one.pack.id === 'fluroxypyr-winter-wheat')!;
const world = { pack, forecast: null };

/** A day on which nothing stands in the way: a button, a number or words for each question (our choice, invented). */
const fitDay: Readonly<Record<string, Told>> = {
  country: pressed('country', 'england'),
  undersown: pressed('undersown', 'no'),
  'already-applied': pressed('already-applied', 'no'),
  'label-read': pressed('label-read', 'yes'),
  'growth-stage': pressed('growth-stage', 'stems'),
  'crop-stress': pressed('crop-stress', 'no'),
  'cleavers-present': pressed('cleavers-present', 'yes'),
  'cleavers-length': filled('cleavers-length', { 'weed.cleaversLengthCm': 8 }),
  'leaves-wet': pressed('leaves-wet', 'no'),
  'water-distance': pressed('water-distance', 'far'),
  'buffer-marked': pressed('buffer-marked', 'yes'),
  wind: pressed('wind', 'light'),
  gusts: pressed('gusts', 'weak'),
  'wind-direction': pressed('wind-direction', 'no'),
  inversion: pressed('inversion', 'no'),
  'air-temperature': filled('air-temperature', { 'air.temperatureC': 13 }),
  humidity: filled('humidity', { 'air.relativeHumidityPercent': 70 }),
  'night-lowest': pressed('night-lowest', 'mild'),
  'rain-before-dry': pressed('rain-before-dry', 'none'),
  'heaviest-hour': pressed('heaviest-hour', 'moderate'),
};

/** Answers whatever is asked until nothing more is, and looks at what is shown then. */
function interview(language: string, other: Readonly<Record<string, Told>>) {
  let conversation = emptyConversation;
  const tell = (told: Told) => {
    const count = conversation.events.length;
    conversation = take(conversation, { ...told, language, ...stamp(count, count / 60) } as ConversationEvent, world);
  };
  tell(started(pack));
  for (let turn = 0; turn < 60; turn++) {
    const open = openQuestion(conversation.state, pack);
    if (open?.kind !== 'pack') break;
    const answer = other[open.question.id] ?? fitDay[open.question.id];
    expect(answer, open.question.id).toBeDefined();
    tell(answer!);
  }
  return look(conversation, pack, 30);
}

const table: readonly (readonly [
  string,
  VerdictWord,
  Readonly<Record<string, Told>>,
  Readonly<Record<string, string>>,
])[] = [
  ['nothing in the way', 'spray-today', {}, { en: 'Spray today', de: 'Heute spritzen' }],
  [
    'frost in the coming night',
    'wait',
    { 'night-lowest': pressed('night-lowest', 'frost') },
    { en: 'Wait', de: 'Warten' },
  ],
  [
    'wheat past the flag leaf',
    'do-not-spray',
    { 'growth-stage': pressed('growth-stage', 'later') },
    { en: 'Do not spray', de: 'nicht spritzen' },
  ],
];

describe.each(['en', 'de'])('a conversation under a second treatment, in %s', (language) => {
  test.each(table)('%s: %s', (_, word, other, headline) => {
    const { verdict, language: spoken } = interview(language, other);
    expect(spoken).toBe(language);
    expect(verdict?.verdict).toBe(word);
    expect(verdict?.headline).toContain(headline[language]);
  });
});

describe.each(shippedPacks.map((one) => one.pack))('whoever asks for help under $id', (each) => {
  test.each(['en', 'de'])('is told to ask for a trade term of that treatment, in %s', (language) => {
    const talked = talk([{ ...started(each), language } as Told, said(language === 'de' ? 'Hilfe' : 'help')], {
      pack: each,
      forecast: null,
    });
    const entry = look(talked, each).entries.findLast(({ kind }) => kind === 'said');
    const text = entry?.kind === 'said' ? entry.text : '';
    const [term] = each.glossary;
    expect(text).toContain(headWord(term!, language));
  });
});
