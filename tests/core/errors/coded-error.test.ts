import { describe, expect, test } from 'vitest';
import {
  codedError,
  describeError,
  type ErrorDetails,
  isLoamwardError,
  reportOf,
} from '../../../src/core/errors/coded-error.ts';
import { editDistance, nearestName } from '../../../src/core/errors/nearest.ts';

const details: ErrorDetails = { expected: 'yes or no', came: 'perhaps' };

describe('a coded error', () => {
  test('says in one line what happened, where, what was expected, what came and what to do next', () => {
    const { says, next } = reportOf('HELLO_TWICE', details);
    const line = (more: Partial<ErrorDetails>) => describeError('HELLO_TWICE', { ...details, ...more });
    expect(line({})).toBe(`HELLO_TWICE: ${says} Expected yes or no; came perhaps. ${next}`);
    expect(line({ file: 'a.json' })).toContain(`${says} (a.json) Expected`);
    expect(line({ pointer: '/b' })).toContain(`${says} (/b) Expected`);
    expect(line({ file: 'a.json', pointer: '/b' })).toContain(`${says} (a.json at /b) Expected`);
    expect(line({ nearest: 'yes' })).toContain(`came perhaps. Nearest right name: yes. ${next}`);
    expect(line({ next: 'Say it again.' })).toBe(
      `HELLO_TWICE: ${says} Expected yes or no; came perhaps. Say it again.`,
    );
  });

  test('as plain data is the same report, with advice of its own before that of the code', () => {
    const error = codedError('HELLO_TWICE', { ...details, pointer: '/b' });
    const usual = { code: 'HELLO_TWICE', ...details, pointer: '/b' };
    expect(JSON.parse(JSON.stringify(error))).toEqual({
      ...usual,
      says: error.toJSON().says,
      next: error.toJSON().next,
    });
    expect(error.toJSON().says.length * error.toJSON().next.length).toBeGreaterThan(0);
    expect(codedError('HELLO_TWICE', { ...details, next: 'Say it again.' }).toJSON().next).toBe('Say it again.');
    expect([error.name, error.code, error.message]).toEqual([
      'LoamwardError',
      'HELLO_TWICE',
      describeError('HELLO_TWICE', { ...details, pointer: '/b' }),
    ]);
  });

  test.each([
    [codedError('HELLO_TWICE', details), true],
    [new Error('HELLO_TWICE'), false],
    [codedError('HELLO_TWICE', details).toJSON(), false],
    [null, false],
  ])('%s is told from any other: %s', (error, isOurs) => {
    expect(isLoamwardError(error)).toBe(isOurs);
  });
});

describe('the nearest right name', () => {
  // The first two are the examples of textbooks of the Levenshtein distance (from memory).
  test.each([
    ['kitten', 'sitting', 3],
    ['saturday', 'sunday', 3],
    ['', '', 0],
    ['', 'abc', 3],
    ['abc', '', 3],
    ['abc', 'abc', 0],
    ['abc', 'abd', 1],
    ['abc', 'bc', 1],
    ['bc', 'abc', 1],
    ['ab', 'ba', 2],
    ['aab', 'aba', 2],
  ])('"%s" and "%s" are %i letters apart', (one, other, letters) => {
    expect(editDistance(one, other)).toBe(letters);
    expect(editDistance(other, one)).toBe(letters);
  });

  test.each([
    // Two letters are near for any name, a third of the letters for a long one.
    ['win', ['wind'], 'wind'],
    ['wi', ['wind'], 'wind'],
    ['w', ['wind'], undefined],
    ['WIND', ['wind'], 'wind'],
    ['wind', ['WIND'], 'WIND'],
    ['soilTemp', ['soilTemperat'], 'soilTemperat'],
    ['soilTem', ['soilTemperat'], undefined],
    ['soilTem', ['soilTempera'], undefined],
    // The nearest; of two as near the first.
    ['gust', ['dust', 'gusts', 'gus'], 'dust'],
    ['gust', ['guts', 'gusts'], 'gusts'],
    ['gust', [], undefined],
  ])('to "%s" of %j is %s', (came, known, nearest) => {
    expect(nearestName(came, known)).toBe(nearest);
  });
});
