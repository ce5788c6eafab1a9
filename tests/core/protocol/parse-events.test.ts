import { describe, expect, test } from 'vitest';
import type { ConversationEvent } from '../../../src/core/dialogue/events.ts';
import { closeCodeOf } from '../../../src/core/protocol/close-codes.ts';
import { eventSchemas } from '../../../src/core/protocol/events/event-schema.ts';
import { parseEvents } from '../../../src/core/protocol/events/parse-events.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { buildForecast } from '../../generators/forecast.ts';
import { fieldLess, fitMorning } from '../dialogue/ready-field.ts';
import { doesNotKnow, filled, morning, pressed, requested, said, started, talk, undone } from '../dialogue/talk.ts';

const { pack } = shipped;
const stamp = { id: 'e1', at: morning, device: 'phone', count: 0 };
const said1 = { kind: 'said', ...stamp, text: 'wind 6', asked: null };
const forecast = buildForecast({ from: morning, hours: 3 });
const attached = { kind: 'forecast-attached', ...stamp, forecast };

/** Events of every kind that a conversation can come to, as kept. */
function everyKind(): readonly ConversationEvent[] {
  const home = { ...fitMorning, 'field.latitude': 54, 'field.longitude': -2 };
  const told = [
    started(pack, fieldLess(home, 'soil.feel', 'soil.surface', 'soil.temperature30cmC')),
    said('soil 8.1 at 30 cm'),
    pressed('surface', 'friable'),
    doesNotKnow('soil-feel'),
    undone('phone-3'),
    pressed('soil-feel', 'moist'),
    filled('wind', { 'wind.boomKmh': 6 }),
    requested('look-again'),
  ];
  const { events } = talk(told, { pack, forecast: null });
  const failed = { kind: 'evaluation-failed', ...stamp, id: 'f', tag: 't' } as const;
  const error = events.flatMap((event) => (event.kind === 'forecast-failed' ? [event.error] : []))[0]!;
  return [...events, { ...failed, error }, { ...attached, id: 'g' } as ConversationEvent];
}

describe('events handed over', () => {
  test('come back as they are, of every kind', () => {
    const events = everyKind();
    expect(new Set(events.map(({ kind }) => kind))).toEqual(new Set(Object.keys(eventSchemas)));
    const parsed = parseEvents(JSON.parse(JSON.stringify({ events })));
    expect(parsed).toEqual({ ok: true, events: JSON.parse(JSON.stringify(events)) });
  });

  test('may be none', () => {
    expect(parseEvents({ events: [] })).toEqual({ ok: true, events: [] });
  });

  test.each<[unknown, string]>([
    [null, 'null'],
    [undefined, 'nothing'],
    ['text', 'text'],
    [{}, '{}'],
    [[said1], /^\[\{"kind"/.source],
    [{ events: said1 }, /^\{"events"/.source],
  ])('%j are no list of events', (body, came) => {
    expect(parseEvents(body)).toEqual({
      ok: false,
      error: expect.objectContaining({
        code: 'EVENTS_UNREADABLE',
        expected: 'an object with a list named events',
        came: expect.stringMatching(came),
      }),
    });
  });

  test.each<[unknown, string, string | undefined]>([
    [{ ...said1, kind: 'sayd' }, 'sayd', 'said'],
    [{ ...said1, kind: 'toString' }, 'toString', undefined],
    [{ ...said1, kind: 7 }, '7', undefined],
    [null, 'nothing', undefined],
    ['said', 'nothing', undefined],
    [{}, 'nothing', undefined],
  ])(
    '%j is an event of no kind: its place is named, and the nearest kind where there is one',
    (wrong, came, nearest) => {
      expect(parseEvents({ events: [said1, wrong] })).toEqual({
        ok: false,
        error: {
          code: 'EVENTS_UNREADABLE',
          says: 'What was handed over could not be read.',
          expected:
            'an event whose kind is one of started, said, answered, requested, undone, forecast-attached, forecast-failed, evaluated, evaluation-failed, verdict-given',
          came,
          next: 'Nothing of it was taken; it stays on the device. Reload the page, then try again.',
          pointer: '/events/1/kind',
          ...(nearest === undefined ? {} : { nearest }),
        },
      });
    },
  );

  test.each<[string, unknown, string, string, string]>([
    ['a text of a wrong type', { ...said1, text: 1 }, '/events/0/text', 'a value of type string', '1'],
    ['a field too many', { ...said1, more: 1 }, '/events/0/', 'no other fields', 'more'],
    [
      'a column shorter than the stamps',
      { ...attached, forecast: { ...forecast, values: { temperature2mC: [1, 2] } } },
      '/events/0/forecast',
      'a value of the protocol',
      /^\{"place"/.source,
    ],
    [
      'a course of rain shorter than the stamps',
      { ...attached, forecast: { ...forecast, precipitationMembersMm: [[0, 0, 0], [0]] } },
      '/events/0/forecast',
      'a value of the protocol',
      /^\{"place"/.source,
    ],
  ])('with %s are refused, with the event and the field', (_, wrong, pointer, expected, came) => {
    expect(parseEvents({ events: [wrong] })).toEqual({
      ok: false,
      error: expect.objectContaining({
        code: 'MESSAGE_FIELD_WRONG',
        pointer,
        expected,
        came: expect.stringMatching(came),
      }),
    });
  });

  test('with courses of rain as long as the stamps are taken', () => {
    const whole = {
      ...attached,
      forecast: {
        ...forecast,
        precipitationMembersMm: [
          [0, 0, 0],
          [1, null, 2],
        ],
      },
    };
    expect(parseEvents({ events: [whole] })).toEqual({ ok: true, events: [whole] });
  });
});

test.each([
  ['MESSAGE_BAD_TEXT', 1007],
  ['MESSAGE_BAD_FRAME', 1002],
  ['MESSAGE_FIELD_WRONG', null],
] as const)('%s closes the connection with %s (RFC 6455, section 7.4.1)', (code, closeCode) => {
  expect(closeCodeOf(code)).toBe(closeCode);
});
