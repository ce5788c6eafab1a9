import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { reportOf } from '../../../src/core/errors/coded-error.ts';
import { errorTable } from '../../../src/core/errors/table.ts';
import { parseClientMessage, parseServerMessage } from '../../../src/core/protocol/parse-message.ts';
import { emptyView } from '../../web/views.ts';

const stamp = { id: 'e1', at: 1_795_600_000, device: 'page', count: 1 };
const answer = {
  type: 'answer',
  ...stamp,
  question: 'soil-temperature',
  choices: [],
  numbers: { 'soil.temperature30cmC': 9.2 },
  doesNotKnow: false,
};

describe('a message that is right', () => {
  test.each([
    { type: 'hello', protocol: 1, resume: null },
    { type: 'start', ...stamp, field: 'mill-piece' },
    { type: 'start', ...stamp, field: null },
    { type: 'say', ...stamp, text: 'clay loam, 9.2 at 30 cm' },
    answer,
    { type: 'request', ...stamp, request: 'look-again' },
    { type: 'undo', ...stamp, of: 'e0' },
    { type: 'alive' },
  ])('from a client comes back as it is: $type', (message) => {
    expect(parseClientMessage(JSON.stringify(message))).toEqual({ ok: true, message });
  });

  test.each([
    {
      type: 'welcome',
      protocol: 1,
      token: 'a'.repeat(64),
      resumed: false,
      fields: [{ id: 'f', name: 'F', invented: true, note: '' }],
      serverTime: 1,
      packTitle: 'Pack',
    },
    { type: 'view', view: emptyView, kept: 0 },
    { type: 'error', error: reportOf('FIELD_UNKNOWN', { expected: 'a', came: 'b', nearest: 'c' }), of: null },
    { type: 'notice', notice: 'choose-field' },
    { type: 'rules' },
    { type: 'alive' },
  ])('from the server comes back as it is: $type', (message) => {
    expect(parseServerMessage(JSON.stringify(message))).toEqual({ ok: true, message });
  });
});

describe('a message that is wrong', () => {
  test.each([
    ['{"type":"say"', 'MESSAGE_NOT_JSON', undefined, 'one JSON object', '{"type":"say"'],
    ['null', 'MESSAGE_NOT_JSON', undefined, 'one JSON object', 'null'],
    ['{"type":"anser"}', 'MESSAGE_TYPE_UNKNOWN', '/type', /^a type that is one of hello, start, say/, 'anser'],
    ['{}', 'MESSAGE_TYPE_UNKNOWN', undefined, /^a type that is one of/, 'nothing'],
    [{ ...answer, count: -1 }, 'MESSAGE_FIELD_WRONG', '/count', 'at least 0', '-1'],
    [{ ...answer, count: 1.5 }, 'MESSAGE_FIELD_WRONG', '/count', 'a value of type int', '1.5'],
    [{ ...answer, at: 1e300 }, 'MESSAGE_FIELD_WRONG', '/at', 'at most 253402300799', '1e+300'],
    [{ ...answer, at: '9' }, 'MESSAGE_FIELD_WRONG', '/at', 'a value of type number', '9'],
    [{ ...answer, numbers: { a: '9.2' } }, 'MESSAGE_FIELD_WRONG', '/numbers/a', 'a value of type number', '9.2'],
    [{ ...answer, numbers: { 'a/b~': null } }, 'MESSAGE_FIELD_WRONG', '/numbers/a~1b~0', /number/, 'null'],
    [{ ...answer, choices: [1] }, 'MESSAGE_FIELD_WRONG', '/choices/0', 'a value of type string', '1'],
    [{ ...answer, choices: Array(21).fill('a') }, 'MESSAGE_FIELD_WRONG', '/choices', 'at most 20 members', /^\["a"/],
    [{ ...answer, extra: 1 }, 'MESSAGE_FIELD_WRONG', '/', 'no other fields', 'extra'],
    [{ type: 'say', ...stamp, text: '' }, 'MESSAGE_FIELD_WRONG', '/text', 'at least 1 letters', ''],
    [{ type: 'say', ...stamp, text: 'x'.repeat(2001) }, 'MESSAGE_FIELD_WRONG', '/text', 'at most 2000 letters', /…$/],
    [{ type: 'request', ...stamp, request: 'dos' }, 'MESSAGE_FIELD_WRONG', '/request', /^one of why-asked/, 'dos'],
  ])('%j is refused with the field, what was expected and what came', (message, code, pointer, expected, came) => {
    const parsed = parseClientMessage(typeof message === 'string' ? message : JSON.stringify(message));
    expect(parsed).toEqual({
      ok: false,
      error: expect.objectContaining({
        code,
        ...(pointer ? { pointer } : {}),
        expected: typeof expected === 'string' ? expected : expect.stringMatching(expected),
        came: typeof came === 'string' ? came : expect.stringMatching(came),
        next: expect.stringMatching(/\.$/),
      }),
    });
  });

  test('a misspelt kind names the nearest right one and its place', () => {
    expect(parseClientMessage('{"type":"anser"}')).toMatchObject({ error: { nearest: 'answer', pointer: '/type' } });
  });

  test.each([
    ['[]', 'MESSAGE_NOT_JSON', 'one JSON object', '[]'],
    ['7', 'MESSAGE_NOT_JSON', 'one JSON object', '7'],
    ['"alive"', 'MESSAGE_NOT_JSON', 'one JSON object', '"alive"'],
    ['{"type":7}', 'MESSAGE_TYPE_UNKNOWN', 'a type that is one of welcome, view, error, notice, rules, alive', '7'],
    [
      '{"type":null}',
      'MESSAGE_TYPE_UNKNOWN',
      'a type that is one of welcome, view, error, notice, rules, alive',
      'null',
    ],
    ['{"type":"toString"}', 'MESSAGE_TYPE_UNKNOWN', /^a type that is one of/, 'toString'],
    ['{"type":"zzzzzzzz"}', 'MESSAGE_TYPE_UNKNOWN', /^a type that is one of/, 'zzzzzzzz'],
  ])('%s from the server is no message, and nothing is near to it', (text, code, expected, came) => {
    const parsed = parseServerMessage(text);
    expect(parsed).toMatchObject({
      ok: false,
      error: { code, expected: typeof expected === 'string' ? expected : expect.stringMatching(expected), came },
    });
    expect(parsed.ok ? [] : Object.keys(parsed.error)).not.toContain('nearest');
    expect(parsed.ok ? [] : Object.keys(parsed.error)).not.toContain('pointer');
  });

  test.each([
    [
      'an unknown error code',
      { type: 'error', error: { ...reportOf('FIELD_UNKNOWN', { expected: '', came: '' }), code: 'X' }, of: null },
    ],
    ['a verdict word of no verdict', { type: 'view', view: { ...emptyView, verdict: { verdict: 'spray' } }, kept: 0 }],
    ['a view that lacks its log', { type: 'view', view: { ...emptyView, entries: undefined }, kept: 0 }],
    [
      'a log line of no kind',
      { type: 'view', view: { ...emptyView, entries: [{ kind: 'shout', id: 'a', text: 'b' }] }, kept: 0 },
    ],
  ])('a client does not believe %s', (_what, message) => {
    expect(parseServerMessage(JSON.stringify(message))).toMatchObject({
      ok: false,
      error: { code: 'MESSAGE_FIELD_WRONG' },
    });
  });

  test('no text whatever throws', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json(), fc.string({ unit: 'binary' })), (text) => {
        for (const parsed of [parseClientMessage(text), parseServerMessage(text)]) {
          if (!parsed.ok) expect(errorTable).toHaveProperty(parsed.error.code);
        }
      }),
      { numRuns: 2000 },
    );
  });
});
