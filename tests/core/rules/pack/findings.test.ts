import { describe, expect, test } from 'vitest';
import { show, toPointer } from '../../../../src/core/rules/pack/findings.ts';

describe('what came, in a finding', () => {
  test.each([
    [undefined, 'nothing'],
    [null, 'null'],
    [12.5, '12.5'],
    ['wet', '"wet"'],
    [{ fact: 'soil.feel' }, '{"fact":"soil.feel"}'],
    ['x'.repeat(58), `"${'x'.repeat(58)}"`],
    ['x'.repeat(59), `"${'x'.repeat(58)}…`],
  ])('%j is shown whole up to 60 characters, then cut', (value, text) => {
    expect(show(value)).toBe(text);
  });
});

test.each([
  [[], ''],
  [['foo', 0], '/foo/0'],
  [['a/b'], '/a~1b'],
  [['m~n'], '/m~0n'],
  [['~1'], '/~01'],
])('the path %j is written %s (RFC 6901, section 5)', (path, pointer) => {
  expect(toPointer(path)).toBe(pointer);
});
