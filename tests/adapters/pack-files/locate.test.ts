import { describe, expect, test } from 'vitest';
import { locateFindings } from '../../../src/adapters/pack-files/locate.ts';
import type { Finding } from '../../../src/core/rules/pack/findings.ts';
import { checkPack } from '../../../src/core/rules/pack/load-pack.ts';
import { type Broken, breakPack, brokenTopics } from '../../fixtures/broken-pack.ts';
import { writtenOut } from '../../fixtures/thorough-pack.ts';

const examples = brokenTopics.flatMap(([, table]) => table);
const filesOf = (broken: Broken) => breakPack(broken, writtenOut);

/** The part of a text from a line and column on, both counted from 1. */
function from(text: string, { line, column }: { readonly line: number; readonly column: number }): string {
  const lines = text.split('\n').slice(line - 1);
  return [lines[0]!.slice(column - 1), ...lines.slice(1)].join('\n');
}

/** The value at a pointer, read by Node's own parser; undefined where there is none. */
function valueAt(text: string, pointer: string): unknown {
  const steps = pointer.split('/').slice(1);
  return steps.reduce<unknown>((at, step) => (at as Record<string, unknown> | undefined)?.[step], JSON.parse(text));
}

describe('a finding is placed at what its pointer names', () => {
  const placed = examples.filter(({ text, file, at }) => text === undefined && (file !== at || at !== ''));
  test.each(placed)('$code: $name', (broken) => {
    const files = filesOf(broken);
    const found = locateFindings(checkPack(files).findings, files).find(
      ({ code, pointer }) => code === broken.code && pointer === broken.pointer,
    )!;
    const text = files.get(found.file);
    const last = found.pointer.split('/').at(-1)!;
    if (text === undefined || found.pointer === '') expect(found).toMatchObject({ line: 1, column: 1 });
    else if (valueAt(text, found.pointer) === undefined) expect(from(text, found)).toMatch(/^("[^"]*": )?[{[]/);
    else if (!/^\d+$/.test(last)) expect(from(text, found).startsWith(`${JSON.stringify(last)}: `)).toBe(true);
    else expect(from(text, found).startsWith(JSON.stringify(valueAt(text, found.pointer)).slice(0, 1))).toBe(true);
  });
});

const finding = (code: string, pointer: string) => ({ code, pointer, file: 'a.json', severity: 'error' }) as Finding;

test.each<readonly [string, string, string, readonly [number, number]]>([
  ['RULES_NOT_JSON', '', '{\n  "a": 1,\n  "b": }\n', [3, 8]],
  ['RULES_NOT_JSON', '', '{\r\n  "a": 1\r\n  "b": 2\r\n}', [3, 3]],
  ['RULES_NOT_JSON', '', '{ "a": [1, 2', [1, 13]],
  ['RULES_NOT_JSON', '', '', [1, 1]],
  ['RULES_NOT_JSON', '', '{\n  // no comment\n}', [2, 3]],
  ['RULES_KEY_REPEATED', '/a', '{\n  "a": 1,\n    "a": 2\n}', [3, 5]],
  ['PACK_VALUE_WRONG', '/a~1b/~0c', '{"a/b": {"x": 1,\n "~c": 2}}', [2, 2]],
  ['PACK_VALUE_WRONG', '/list/1', '{"list": [\n 1,\n  2]}', [3, 3]],
  ['PACK_KEY_MISSING', '/list/0/id', '{"list": [\n  {}]}', [2, 3]],
  ['PACK_VALUE_WRONG', '/a', '\uFEFF{\n "a": 1}', [2, 2]],
])('%s at "%s" of %j', (code, pointer, text, [line, column]) => {
  expect(locateFindings([finding(code, pointer)], new Map([['a.json', text]]))).toMatchObject([{ line, column }]);
});

test('findings come in the order of files, lines and columns', () => {
  const files = new Map([
    ['a.json', '{"a": 1,\n"b": 2, "c": 3}'],
    ['b.json', '{}'],
  ]);
  const mixed = [
    { ...finding('PACK_FILE_MISSING', ''), file: 'b.json' },
    finding('X', '/c'),
    finding('X', '/b'),
    finding('X', '/a'),
  ];
  expect(locateFindings(mixed, files).map(({ file, pointer }) => `${file}${pointer}`)).toEqual([
    'a.json/a',
    'a.json/b',
    'a.json/c',
    'b.json',
  ]);
});
