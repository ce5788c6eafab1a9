import { describe, expect, test } from 'vitest';
import { emptyConversation } from '../../../src/core/dialogue/conversation.ts';
import { saidViews } from '../../../src/core/dialogue/view-said.ts';
import type { Pack } from '../../../src/core/rules/pack-types.ts';
import { catalogueOf } from '../../../src/core/words/catalogue.ts';
import { inventedForecast } from '../../../src/demo/invented-weather.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { heard, listener } from './listener.ts';
import { fieldLess, fitMorning } from './ready-field.ts';
import {
  doesNotKnow,
  fieldOf,
  filled,
  lines,
  look,
  morning,
  pressed,
  requested,
  said,
  started,
  type Told,
  talk,
  undone,
} from './talk.ts';

const { pack } = shipped;
const world = { pack, forecast: null };
const soil = 'soil.temperature30cmC';
const small = fieldOf({ 'field.country': 'GB-ENG', 'air.deltaTC': 4 });
const listed = (...told: Told[]) => look(talk(told, world), pack).said;

describe('the list of what was told', () => {
  test('has a line a fact in the order in which they were first told, what the field brought first', () => {
    const told = listed(
      started(pack, small),
      pressed('soil-feel', 'dry'),
      pressed('partner', 'yes'),
      pressed('soil-feel', 'moist'),
    );
    expect(told.map(({ fact, value, undo }) => [fact, value, undo])).toEqual([
      ['field.country', 'England', null],
      ['air.deltaTC', '4.0 C', null],
      ['soil.feel', 'moist', 'phone-3'],
      ['treatment.partnerInTank', 'yes', 'phone-2'],
    ]);
  });

  test('lets be changed what a question asks for, and nothing else', () => {
    expect(listed(started(pack, small)).map(({ fact, canChange }) => [fact, canChange])).toEqual([
      ['field.country', true],
      ['air.deltaTC', false],
    ]);
  });

  test('says from where and how long ago', () => {
    const told = listed(started(pack, small), filled('soil-temperature', { [soil]: 8 }));
    expect(told.map(({ label, from }) => [label, from])).toEqual([
      ['country of the field', 'field profile'],
      ['Delta T (dry less wet bulb)', 'field profile'],
      ['soil temperature at 30 cm', 'you said, 29 min ago'],
    ]);
  });

  test('is empty before the start, and leaves out facts that the rules at hand do not have', () => {
    expect(saidViews(emptyConversation.state, { pack, now: morning, words: catalogueOf('en') })).toEqual([]);
    const { [soil]: _, ...facts } = pack.facts;
    const without: Pack = { ...pack, facts, rules: [], questions: [] };
    const { state } = talk([started(pack, small), filled('soil-temperature', { [soil]: 8 })], world);
    expect(
      saidViews(state, { pack: without, now: morning, words: catalogueOf('en') }).map(({ fact }) => fact),
    ).not.toContain(soil);
  });
});

describe('an answer that is changed', () => {
  const change = (fact: string): Told => ({ kind: 'requested', request: 'change', fact });
  const begin = started(pack, fieldLess(fitMorning, soil, 'soil.feel'));
  const warm = filled('soil-temperature', { [soil]: 31 });

  test('takes the place of the one before, which is not among what was told any longer', () => {
    const { state } = talk(
      [begin, filled('soil-temperature', { [soil]: 8 }), change(soil), filled('soil-temperature', { [soil]: 9 })],
      world,
    );
    expect(state.changing).toBeNull();
    expect(state.observations.filter(({ fact }) => fact === soil).map(({ event }) => event)).toEqual(['phone-3']);
    expect(state.answered.filter(({ question }) => question === 'soil-temperature').map(({ event }) => event)).toEqual([
      'phone-3',
    ]);
    expect(
      lines(
        talk([begin, pressed('soil-feel', 'dry'), change('soil.feel'), pressed('soil-feel', 'moist')], world),
        pack,
      ),
    ).toContain('= Corrected: soil feels moist.');
  });

  test('stands where something else was told meanwhile, and the question stays open for it', () => {
    const { state } = talk(
      [begin, filled('soil-temperature', { [soil]: 8 }), change(soil), pressed('partner', 'yes')],
      world,
    );
    expect(state.changing).toBe(soil);
    expect(state.observations.some(({ fact, event }) => fact === soil && event === 'phone-1')).toBe(true);
  });

  test('to a value far outside what is usual keeps the one before until that is confirmed', () => {
    const asked = [begin, filled('soil-temperature', { [soil]: 8 }), change(soil), warm];
    const values = (...told: Told[]) =>
      talk([...asked, ...told], world).state.observations.flatMap(({ fact, reading }) =>
        fact === soil && reading.type === 'number' ? [reading.value] : [],
      );
    expect(values()).toEqual([8]);
    expect(values(requested('confirm'))).toEqual([31]);
    expect(values(requested('deny'))).toEqual([8]);
    expect(look(talk([...asked, requested('deny')], world), pack).question).toMatchObject({
      id: 'soil-temperature',
      before: 'So far: 8.0 C.',
    });
  });

  test('to "I don\'t know" is not known', () => {
    const { state } = talk(
      [begin, filled('soil-temperature', { [soil]: 8 }), change(soil), doesNotKnow('soil-temperature')],
      world,
    );
    expect(state.changing).toBeNull();
    expect(state.observations.filter(({ fact }) => fact === soil).map(({ reading }) => reading.type)).toEqual([
      'does-not-know',
    ]);
  });

  test('of a value far outside what is usual, waiting to be confirmed: "I don\'t know" drops it', () => {
    const { state } = talk([begin, warm, doesNotKnow('confirm:soil.temperature30cmC')], world);
    expect(state.unusual).toEqual([]);
  });

  test('taken back together with all that its event told, and nothing of other events', () => {
    const both: Told = {
      ...filled('soil-temperature', { [soil]: 8 }),
      also: [{ question: 'soil-feel', choices: ['dry'], numbers: {}, doesNotKnow: false }],
    } as Told;
    const { state } = talk([begin, pressed('partner', 'yes'), both, undone('phone-2')], world);
    expect(state.observations.filter(({ event }) => event === 'phone-2')).toEqual([]);
    expect(state.answered).toEqual([{ question: 'partner', event: 'phone-1' }]);
    expect(state.observations.some(({ fact }) => fact === 'treatment.partnerInTank')).toBe(true);
    expect(state.notes.findLast(({ kind }) => kind === 'undone')).toMatchObject({
      readings: [{ fact: soil }, { fact: 'soil.feel' }],
    });
    const waiting = talk([begin, warm, undone('phone-1')], world).state;
    expect(waiting.unusual).toEqual([]);
  });

  test('read back by mistake as another: no to it opens its question alone', () => {
    const understand = listener({
      'eight or so': heard(soil, 8, { doubtful: true }),
      no: { intents: ['no'] },
      yes: { intents: ['yes'] },
    });
    const doubted = [
      started(pack, fieldLess(fitMorning, soil)),
      pressed('partner', 'yes'),
      said('eight or so', 'soil-temperature'),
    ];
    const denied = talk([...doubted, said('no', 'confirm:soil.temperature30cmC')], { ...world, understand }).state;
    expect(denied.answered).toEqual([{ question: 'partner', event: 'phone-1' }]);
    expect(denied.observations.some(({ fact }) => fact === soil)).toBe(false);
    expect(denied.changing).toBeNull();
    expect(lines(talk([...doubted, said('no')], { ...world, understand }), pack)).toContain(
      '- Not taken: soil at 30 cm 8 C.',
    );
    const taken = talk([...doubted, said('yes')], { ...world, understand });
    expect(taken.state.observations.find(({ fact }) => fact === soil)?.doubtful).toBe(false);
    expect(taken.state.observations.find(({ fact }) => fact === soil)?.reading).toEqual({ type: 'number', value: 8 });
  });
});

describe('the next field', () => {
  const fields = [
    { id: 'field', name: 'Mill Piece' },
    { id: 'a', name: 'Top Brow' },
    { id: 'b', name: 'Long Ing' },
  ];
  const begin = { ...started(pack, fieldOf({})), fields } as Told;
  const goes = (told: Told, first: Told = begin) => {
    const { state } = talk([first, told], world);
    return state.notes.flatMap((note) => (note.kind === 'next-field' ? [note.field] : []));
  };

  test('is the first that was not looked at, or the one named; none where none is left', () => {
    expect(goes(requested('same-for'))).toEqual(['a']);
    expect(goes(said('the same for Long Ing'))).toEqual(['b']);
    expect(goes(said('the same for the next field'))).toEqual(['a']);
    expect(goes(said('the same for Nowhere'))).toEqual([null]);
    expect(goes(requested('same-for'), { ...begin, fields: fields.slice(0, 1) } as Told)).toEqual([null]);
    expect(goes(requested('same-for'), started(pack))).toEqual([null]);
  });

  test('is said by its name', () => {
    expect(lines(talk([begin, requested('same-for')], world), pack)).toContain(
      '- Next: Top Brow, with what holds for the whole farm.',
    );
  });
});

test('the coming days are headed by whether it is spray today, with what would change it only where it is not', () => {
  const home = { ...fitMorning, 'field.latitude': 54, 'field.longitude': -2 };
  const looked = (feel: string) => {
    const told = [started(pack, fieldLess(home, 'soil.feel')), pressed('soil-feel', feel)];
    return look(talk(told, { pack, forecast: inventedForecast(morning) }), pack).outlook;
  };
  expect(looked('moist')).toMatchObject({ heading: 'The coming days', changes: [], least: null });
  const later = looked('dry');
  expect(later).toMatchObject({
    heading: 'When will it come right?',
    least: "The least that would turn today's answer, as far as it is known: feel of the soil in the hand.",
    changes: ['Feel of the soil in the hand: dry; it has to be moist. That takes days.'],
    further: expect.stringMatching(/^One more such stretch follows\. /),
  });
  expect(later?.windows.map(({ state, from, until }) => [state, from, until])).toEqual([
    ['clear-if', '2026-11-07T10:00:00Z', '2026-11-09T14:00:00Z'],
    ['clear-if', '2026-11-09T16:00:00Z', '2026-11-14T10:00:00Z'],
  ]);
});
