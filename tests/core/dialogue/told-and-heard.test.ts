import { describe, expect, test } from 'vitest';
import { emptyConversation } from '../../../src/core/dialogue/conversation.ts';
import type { ConversationEvent } from '../../../src/core/dialogue/events.ts';
import { openQuestion } from '../../../src/core/dialogue/open-question.ts';
import { openConversation, step } from '../../../src/core/dialogue/step.ts';
import type { UnderstandContext } from '../../../src/core/dialogue/understand/types.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { heard, listener } from './listener.ts';
import { fieldLess, fitMorning } from './ready-field.ts';
import {
  fieldOf,
  filled,
  lines,
  look,
  pressed,
  requested,
  said,
  stamp,
  started,
  type Told,
  take,
  talk,
} from './talk.ts';

const { pack } = shipped;
const world = { pack, forecast: null };
const soil = 'soil.temperature30cmC';
const begin = started(pack, fieldLess(fitMorning, 'soil.feel', soil));

describe('what a text is understood by', () => {
  /** What the understanding was given with each text. */
  function given(...told: Told[]): UnderstandContext[] {
    const seen: UnderstandContext[] = [];
    const understand = (text: string, context: UnderstandContext) => {
      seen.push(context);
      return listener({ eight: heard(soil, 8), moist: heard('soil.feel', 'moist') })(text, context);
    };
    talk(told, { ...world, understand });
    return seen;
  }

  test('is the question, the language, whether something is read back, the fields on offer, and what was last told of', () => {
    const fields = [{ id: 'a', name: 'Top Brow' }];
    const first = { ...begin, fields, language: 'de' } as Told;
    const [one, two] = given(first, said('eight', 'soil-temperature'), {
      ...said('moist', `confirm:${soil}`),
      language: 'en',
    } as Told);
    expect(one).toMatchObject({
      asked: { id: 'soil-temperature' },
      confirming: false,
      fields,
      language: 'de',
      recent: [],
      pack,
    });
    expect(two).toMatchObject({
      asked: { id: 'soil-temperature' },
      confirming: true,
      fields,
      language: 'en',
      recent: [soil],
    });
    expect(given(begin, said('hm'))[0]).toMatchObject({ fields: [], language: 'en', confirming: false });
  });

  test('knows what was pressed and what waits to be confirmed, the newest first, and nothing that the field brought', () => {
    const warm = filled('soil-temperature', { [soil]: 31 });
    expect(given(begin, pressed('soil-feel', 'dry'), pressed('partner', 'yes'), said('hm'))[0]?.recent).toEqual([
      'treatment.partnerInTank',
      'soil.feel',
    ]);
    expect(given(begin, pressed('soil-feel', 'dry'), warm, said('hm'))[0]?.recent).toEqual([soil, 'soil.feel']);
  });
});

describe('what is said', () => {
  const table = {
    'some signs': {
      readings: [
        {
          fact: 'soil.surface',
          reading: { type: 'signs', present: ['friable'], absent: [], complete: false },
          quote: '',
          doubtful: false,
        },
      ],
    },
    'all signs': {
      readings: [
        {
          fact: 'soil.surface',
          reading: { type: 'signs', present: ['friable'], absent: [], complete: true },
          quote: '',
          doubtful: false,
        },
      ],
    },
    'of another': heard('wind.boomKmh', 6),
  } as const;
  const answered = (text: keyof typeof table) => {
    const first = started(pack, fieldLess(fitMorning, 'soil.surface', 'wind.boomKmh'));
    return talk([first, said(text, 'surface')], { ...world, understand: listener(table) }).state.answered.map(
      ({ question }) => question,
    );
  };

  test('answers the question that was asked where it settles it, not where it names some signs or speaks of something else', () => {
    expect(answered('all signs')).toEqual(['surface']);
    expect(answered('some signs')).toEqual([]);
    expect(answered('of another')).toEqual([]);
  });

  test('without anything to take is told so', () => {
    expect(lines(talk([begin, said('hm')], { ...world, understand: listener({ hm: {} }) }), pack).at(-1)).toBe(
      '- I found nothing to take from that. Say it in other words, or choose an answer.',
    );
  });

  test('"no" that corrects is no answer to a question, but one to what is read back', () => {
    const understand = listener({
      'no, wrong': { intents: ['no'], correction: true },
      'eight or so': heard(soil, 8, { doubtful: true }),
      'no, eight': { ...heard(soil, 8), intents: ['no'] },
      'yes, eight': { ...heard(soil, 8), intents: ['yes'] },
    });
    const talked = (...told: Told[]) =>
      talk([started(pack, fieldLess(fitMorning, soil)), ...told], { ...world, understand });
    const kinds = (...told: Told[]) => talked(...told).state.notes.map(({ kind }) => kind);
    expect(kinds(said('no, wrong'))).not.toContain('nothing-to-confirm');
    expect(kinds(said('eight or so'), said('no, wrong'))).toContain('denied');
    expect(kinds(said('no, eight'))).not.toContain('nothing-to-confirm');
    expect(kinds(said('yes, eight'))).not.toContain('nothing-to-confirm');
  });

  test('"don\'t know" of a question that is named is of that one', () => {
    const understand = listener({ 'no idea': { intents: ['dont-know'] } });
    const { state } = talk([begin, said('no idea', 'soil-temperature')], { ...world, understand });
    expect(state.answered.map(({ question }) => question)).toEqual(['soil-temperature']);
    expect(openQuestion(state, pack)?.id).toBe('soil-feel');
    const plain = talk([begin, said('no idea')], { ...world, understand }).state;
    expect(plain.answered.map(({ question }) => question)).toEqual(['soil-feel']);
  });
});

describe('a question put', () => {
  test('is noted once, and again where it comes back', () => {
    const asked = (...told: Told[]) =>
      talk([started(pack, fieldLess(fitMorning, 'soil.feel')), ...told], world).state.notes.flatMap((note) =>
        note.kind === 'question' && note.text.kind === 'pack' ? [note.text.question] : [],
      );
    expect(asked(said('hm'), requested('why-asked'))).toEqual(['soil-feel']);
    expect(asked(pressed('soil-feel', 'moist'), { kind: 'undone', of: 'phone-1' })).toEqual(['soil-feel', 'soil-feel']);
    expect(talk([started(pack, fieldLess(fitMorning))], world).state.asked).toBeNull();
  });

  test('on which devices differ says what each told', () => {
    const first = talk([started(pack, fieldLess(fitMorning, 'soil.feel')), pressed('soil-feel', 'dry')], world);
    const torn = take(
      first,
      { ...pressed('soil-feel', 'moist'), ...stamp(1, 2, 'tablet') } as ConversationEvent,
      world,
    );
    const note = torn.state.notes.findLast(({ kind }) => kind === 'question');
    expect(note).toMatchObject({
      text: {
        kind: 'pack',
        question: 'soil-feel',
        conflict: [
          { fact: 'soil.feel', reading: { possible: ['dry'] } },
          { fact: 'soil.feel', reading: { possible: ['moist'] } },
        ],
      },
    });
  });
});

describe('looking again', () => {
  test('asks anew what was answered, but not what the person could not say; and no longer checks the rest', () => {
    const told: Told[] = [
      begin,
      requested('check-the-rest'),
      pressed('soil-feel', 'dry'),
      { ...pressed('soil-temperature'), doesNotKnow: true } as Told,
    ];
    const { state } = talk([...told, requested('look-again')], world);
    expect([state.looks, state.checkRest]).toEqual([1, false]);
    expect(state.answered.map(({ question }) => question)).toEqual(['soil-temperature']);
  });
});

describe('a conversation opened anew', () => {
  test('asks for what is still to be carried out, and does not ask for it twice', () => {
    const home = started(pack, fieldOf({ 'field.latitude': 54, 'field.longitude': -2 }));
    const { conversation } = step(emptyConversation, { ...home, ...stamp(0) } as ConversationEvent, world);
    const opened = openConversation(conversation.events, world);
    expect(opened.effects).toEqual([{ kind: 'fetch-forecast', latitude: 54, longitude: -2 }]);
    expect(opened.conversation.waiting).toEqual(['forecast 54 -2 0']);
    expect(opened.refused).toBeNull();
    const next = step(opened.conversation, { ...said('hm'), ...stamp(1) } as ConversationEvent, world);
    expect(next.effects).toEqual([]);
  });

  test('understands as before where nobody says how', () => {
    const { conversation } = step(emptyConversation, { ...begin, ...stamp(0) } as ConversationEvent, world);
    const after = step(
      conversation,
      { ...said('soil feels moist'), ...stamp(1) } as ConversationEvent,
      world,
    ).conversation;
    expect(look(after, pack).said.find(({ fact }) => fact === 'soil.feel')?.value).toBe('moist');
  });
});
