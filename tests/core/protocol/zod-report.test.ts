import { describe, expect, test } from 'vitest';
import * as z from 'zod';
import { reportIssue, shortText } from '../../../src/core/protocol/zod-report.ts';

/** What is reported of a value that a schema refuses. */
function refused(schema: z.ZodType, value: unknown) {
  const result = schema.safeParse(value);
  const { code, pointer, expected, came } = reportIssue(result.error?.issues ?? [], value);
  expect(code).toBe('MESSAGE_FIELD_WRONG');
  return [pointer, expected, came];
}

describe('what came, in short', () => {
  test.each<[unknown, string]>([
    ['text', 'text'],
    ['', ''],
    [7, '7'],
    [null, 'null'],
    [undefined, 'nothing'],
    [{ a: [1] }, '{"a":[1]}'],
    ['x'.repeat(80), 'x'.repeat(80)],
    ['x'.repeat(81), `${'x'.repeat(80)}…`],
  ])('%j is told as %s', (value, text) => {
    expect(shortText(value)).toBe(text);
  });
});

describe('a field that is wrong', () => {
  const list = z.strictObject({ list: z.array(z.strictObject({ a: z.number() })) });

  test.each<[string, z.ZodType, unknown, string, string, string]>([
    ['of another type', z.string(), 7, '/', 'a value of type string', '7'],
    ['that is missing', z.strictObject({ a: z.string() }), {}, '/a', 'a value of type string', 'nothing'],
    ['deep in a list', list, { list: [{ a: 1 }, { a: '1' }] }, '/list/1/a', 'a value of type number', '1'],
    ['of none of the words', z.enum(['a', 'b']), 'c', '/', 'one of a, b', 'c'],
    ['too long a text', z.string().max(2), 'abc', '/', 'at most 2 letters', 'abc'],
    ['too short a text', z.string().min(2), 'a', '/', 'at least 2 letters', 'a'],
    ['too long a list', z.array(z.number()).max(1), [1, 2], '/', 'at most 1 members', '[1,2]'],
    ['too large', z.number().max(1), 2, '/', 'at most 1', '2'],
    ['too small', z.number().min(1), 0, '/', 'at least 1', '0'],
    ['fields too many', z.strictObject({}), { a: 1, b: 2 }, '/', 'no other fields', 'a, b'],
    ['a name too long', z.record(z.string().max(1), z.number()), { ab: 1 }, '/ab', 'a name of 1 to 64 letters', '1'],
    ['of no day', z.iso.date(), 'soon', '/', 'a value of the protocol', 'soon'],
    [
      'with signs in its name',
      z.record(z.string(), z.number()),
      { 'a~/b': 'x' },
      '/a~0~1b',
      'a value of type number',
      'x',
    ],
  ])('%s', (_, schema, value, pointer, expected, came) => {
    expect(refused(schema, value)).toEqual([pointer, expected, came]);
  });

  test('of several shapes is told by the shape that it comes nearest to', () => {
    const near = z.strictObject({ deep: z.strictObject({ a: z.number() }) });
    const either = z.strictObject({ one: z.union([z.number(), near, z.string()]) });
    expect(refused(either, { one: { deep: { a: 'x' } } })).toEqual(['/one/deep/a', 'a value of type number', 'x']);
    expect(refused(z.union([z.number(), z.string()]), null)).toEqual(['/', 'a value of type number', 'null']);
  });

  test('of no issue at all is told as a message that is none', () => {
    expect(reportIssue([], 'x')).toMatchObject({ expected: 'a message of the protocol', came: 'x', pointer: '/' });
  });
});
