import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { codeLines, sampleOf, wilson } from '../../../src/tools/mutation/sample.ts';

describe('the interval of a share', () => {
  test.each([
    [81, 263, 0.2553, 0.3662, 'Newcombe, Statistics in Medicine 17 (1998), table I, method 3'],
    [15, 148, 0.0624, 0.1605, 'Newcombe, Statistics in Medicine 17 (1998), table I, method 3'],
    [0, 20, 0, 0.1611, 'Newcombe, Statistics in Medicine 17 (1998), table I, method 3'],
    [1, 29, 0.0061, 0.1718, 'Newcombe, Statistics in Medicine 17 (1998), table I, method 3'],
  ])('of %d of %d goes from %d to %d (%s, from memory)', (hits, of, low, high) => {
    const [from, until] = wilson(hits, of);
    expect(from).toBeCloseTo(low, 4);
    expect(until).toBeCloseTo(high, 4);
  });

  test('of nothing is everything', () => {
    expect(wilson(0, 0)).toEqual([0, 1]);
  });

  test('holds the share, and the share not noticed has its mirror', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), fc.double({ min: 0, max: 1, noNaN: true }), (of, share) => {
        const hits = Math.round(share * of);
        const [low, high] = wilson(hits, of);
        const [lowMissed, highMissed] = wilson(of - hits, of);
        expect(low).toBeLessThanOrEqual(hits / of + 1e-12);
        expect(high).toBeGreaterThanOrEqual(hits / of - 1e-12);
        expect(lowMissed).toBeCloseTo(1 - high, 12);
        expect(highMissed).toBeCloseTo(1 - low, 12);
      }),
    );
  });
});

describe('a sample', () => {
  const many = Array.from({ length: 400 }, (_, index) => index);

  test('repeats nothing, is the same for the same seed, and another for another', () => {
    const first = sampleOf(many, 60, 7);
    expect(new Set(first).size).toBe(60);
    expect(sampleOf(many, 60, 7)).toEqual(first);
    expect(sampleOf(many, 60, 8)).not.toEqual(first);
  });

  test('of more than there is is all of it', () => {
    expect(sampleOf(many, 900, 1).toSorted((a, b) => a - b)).toEqual(many);
  });

  test('takes each as often as any other: over many seeds no item is left out', () => {
    const few = many.slice(0, 10);
    const counts = few.map(() => 0);
    for (let seed = 0; seed < 1000; seed += 1) for (const item of sampleOf(few, 3, seed)) counts[item]! += 1;
    for (const count of counts) expect(Math.abs(count - 300)).toBeLessThan(100);
  });
});

test('lines of code are those that do something: no comments, imports, types or blank lines', () => {
  const text = [
    "import { a } from './a.ts';",
    'import {',
    '  b,',
    "} from './b.ts';",
    "export * from './c.ts';",
    '',
    '/** One line of words. */',
    'export type Kind = 1 | 2;',
    'interface Row {',
    '  readonly size: number;',
    '}',
    '/**',
    ' * More words.',
    ' */',
    'export function double(size: number): number {',
    '  // said beside it',
    '  return a(b, 2 * size);',
    '}',
  ].join('\n');
  expect(codeLines('x.ts', text).map(({ line }) => line)).toEqual([9, 11, 15, 17, 18]);
  expect(codeLines('x.ts', text)[0]?.file).toBe('x.ts');
});
