import { describe, expect, test } from 'vitest';
import { everyFieldLine, fieldLines } from '../../../src/core/dialogue/field-lines.ts';
import { fieldResult, fieldResults } from '../../../src/core/dialogue/field-results.ts';
import { emptyState, type FieldResult, type State } from '../../../src/core/dialogue/state.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { catalogueOf } from '../../../src/core/words/catalogue.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { fieldLess, fitMorning } from './ready-field.ts';
import { lines, look, morning, pressed, requested, stamp, started, type Told, talk, undone } from './talk.ts';

const { pack } = shipped;
const world = { pack, forecast: null };
const context = { pack, now: morning, words: catalogueOf('en') };
const later = (minutes: number) => epochSeconds(morning + minutes * 60);
const field = (id: string, name: string, without: 'soil.feel' | 'soil.surface' = 'soil.feel') => ({
  ...fieldLess(fitMorning, without),
  id,
  name,
});
const begin = (id: string, name: string): Told => started(pack, field(id, name));
const today = [
  begin('a', 'Mill Piece'),
  pressed('soil-feel', 'dry'),
  begin('b', 'Top Brow'),
  pressed('soil-feel', 'moist'),
];

const left = (given: FieldResult['given']): State => ({
  ...emptyState,
  fields: [{ id: 'a', name: 'Mill Piece', at: morning, given }],
});
const lineOf = (given: FieldResult['given']) => fieldLines(left(given), context).map(({ text }) => text);

describe('a field in a line', () => {
  test.each<[string, FieldResult['given'], string]>([
    ['without an answer', null, 'Mill Piece: no answer yet'],
    [
      'spray today until a time',
      { verdict: 'spray-today', slowest: null, validUntil: '2026-11-06T09:00:01Z' },
      'Mill Piece: spray today until 09:00',
    ],
    [
      'spray today whose time has just come',
      { verdict: 'spray-today', slowest: null, validUntil: '2026-11-06T09:00:00Z' },
      'Mill Piece: was spray today until 09:00, look again',
    ],
    [
      'spray today with no end',
      { verdict: 'spray-today', slowest: 'hours', validUntil: null },
      'Mill Piece: spray today',
    ],
    ['wait for nobody knows how long', { verdict: 'wait', slowest: null, validUntil: null }, 'Mill Piece: wait'],
    [
      'wait, with a time that does not matter',
      { verdict: 'wait', slowest: 'hours', validUntil: '2026-11-06T10:00:00Z' },
      'Mill Piece: wait, hours',
    ],
    ['wait for days', { verdict: 'wait', slowest: 'days', validUntil: null }, 'Mill Piece: wait, days'],
    [
      'not this season',
      { verdict: 'do-not-spray', slowest: 'season', validUntil: null },
      'Mill Piece: do not spray, not this season',
    ],
  ])('%s', (_, given, text) => {
    expect(lineOf(given)).toEqual([text]);
  });
});

describe('the fields of a day', () => {
  test('are shown once there are two, in the order in which they were left, the present one last', () => {
    expect(look(talk(today.slice(0, 2), world), pack).fields).toEqual([]);
    const { fields } = look(talk(today, world), pack);
    expect(fields.map(({ id, text }) => [id, text])).toEqual([
      ['a', 'Mill Piece: wait, days'],
      ['b', 'Top Brow: spray today until 09:50'],
    ]);
    expect(look(talk(today, world), pack, 60).fields.at(-1)?.text).toBe(
      'Top Brow: was spray today until 09:50, look again',
    );
  });

  test('hold a field looked at twice once, with how it stands now', () => {
    const again = talk([...today, begin('a', 'Mill Piece'), pressed('soil-feel', 'moist')], world);
    expect(look(again, pack).fields.map(({ id, text }) => [id, text])).toEqual([
      ['b', 'Top Brow: spray today until 09:50'],
      ['a', 'Mill Piece: spray today until 09:50'],
    ]);
  });

  test('are told when asked for, and that there is none where one looks at a field without a name alone', () => {
    expect(lines(talk([...today, requested('fields')], world), pack).at(-1)).toBe(
      '- Today: Mill Piece: wait, days; Top Brow: spray today until 09:50.',
    );
    expect(lines(talk([started(pack), requested('fields')], world), pack).at(-1)).toBe(
      '- No field has been looked at today.',
    );
  });

  test('of yesterday are forgotten when a field of today begins', () => {
    const state = talk(today, world).state;
    const starting = (minutes: number, id = 'c') => {
      const event = { ...begin(id, 'Long Ing'), ...stamp(9, minutes) } as Parameters<typeof fieldResults>[1];
      return fieldResults(state, event, pack).map((one) => one.id);
    };
    expect(starting(10)).toEqual(['a', 'b']);
    expect(starting(10, 'a')).toEqual(['b']);
    expect(starting(10, 'b')).toEqual(['a']);
    // The day ends at midnight at the field, which in November is midnight UTC.
    expect(starting(15 * 60 - 1)).toEqual(['a', 'b']);
    expect(starting(15 * 60)).toEqual([]);
  });

  test('a day that is shifted is the shifted one', () => {
    const state = talk(today, world).state;
    const event = { ...begin('c', 'Long Ing'), shiftSeconds: -86_400, ...stamp(9, 24 * 60) } as never;
    expect(fieldResults(state, event, pack).map(({ id }) => id)).toEqual(['a', 'b']);
  });

  test('keep of a field what stood when it was left; nothing of an own field or before the start', () => {
    const { state } = talk(today.slice(0, 2), world);
    expect(fieldResult(state, pack)).toEqual({
      id: 'a',
      name: 'Mill Piece',
      at: later(1),
      given: { verdict: 'wait', slowest: 'days', validUntil: '2026-11-06T09:50:00Z' },
    });
    expect(fieldResult(emptyState, pack)).toBeNull();
    expect(fieldResult(talk([started(pack)], world).state, pack)).toBeNull();
    const stale = talk([...today.slice(0, 2), undone('phone-1')], world).state;
    expect(fieldResult(stale, pack)?.given).toBeNull();
  });
});

describe('every field that is on offer', () => {
  const offered = [
    { id: 'a', name: 'Mill Piece' },
    { id: 'c', name: 'Long Ing' },
  ];

  test('is told: those looked at, then those not', () => {
    const { state } = talk(
      [{ ...begin('a', 'Mill Piece'), fields: offered } as Told, pressed('soil-feel', 'dry')],
      world,
    );
    expect(everyFieldLine(state, context)).toEqual(['Mill Piece: wait, days', 'Long Ing: not looked at today']);
  });

  test('an own field has a line of its own, with how it stands', () => {
    const { state } = talk([{ ...started(pack), fields: offered } as Told, pressed('country', 'elsewhere')], world);
    expect(everyFieldLine(state, context)).toEqual([
      'This field: do not spray, not this season',
      'Mill Piece: not looked at today',
      'Long Ing: not looked at today',
    ]);
  });

  test('nothing is told before the start, and only the field itself where none is on offer', () => {
    expect(everyFieldLine(emptyState, context)).toEqual([]);
    expect(everyFieldLine(talk([begin('a', 'Mill Piece')], world).state, context)).toEqual([
      'Mill Piece: no answer yet',
    ]);
  });
});
