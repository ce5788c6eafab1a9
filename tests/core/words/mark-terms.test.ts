import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { markTerms } from '../../../src/core/words/mark-terms.ts';

const terms = [
  { id: 'drains', said: ['drains', 'drained', 'Dräne', 'dränierte'] },
  { id: 'mole', said: ['mole-drained', 'mole drains'] },
  { id: 'capacity', said: ['field capacity'] },
  { id: 'field', said: ['field'] },
  { id: 'delta', said: ['Delta T'] },
];
const marked = (text: string) =>
  markTerms(text, terms).map((part) => (typeof part === 'string' ? part : `[${part.said}=${part.term.id}]`));

describe('the terms of a text', () => {
  test.each([
    ['Drains run.', ['[Drains=drains]', ' run.']],
    [
      'At field capacity, the field is wet.',
      ['At ', '[field capacity=capacity]', ', the ', '[field=field]', ' is wet.'],
    ],
    ['mole-drained, not drained', ['[mole-drained=mole]', ', not ', '[drained=drains]']],
    ['drains, drained and DRAINS', ['[drains=drains]', ', drained and DRAINS']],
    ['field capacity, then field capacity', ['[field capacity=capacity]', ', then field capacity']],
    ['undrained draining drained-out', ['undrained draining drained-out']],
    ['Die Dräne im dränierten Feld', ['Die ', '[Dräne=drains]', ' im dränierten Feld']],
    ['Delta T: 3 C; the label’s drains’ end', ['[Delta T=delta]', ': 3 C; the label’s ', '[drains=drains]', '’ end']],
    ['Delta Tea', ['Delta Tea']],
    ['', []],
  ])('%s', (text, parts) => {
    expect(marked(text)).toEqual(parts);
  });

  test('leave the text as it is, whatever it is, each marked once at most', () => {
    const piece = fc.oneof(fc.constantFrom(...terms.flatMap(({ said }) => said), ' ', '-', ', '), fc.string());
    fc.assert(
      fc.property(fc.array(piece), (pieces) => {
        const text = pieces.join('');
        const parts = markTerms(text, terms);
        expect(parts.map((part) => (typeof part === 'string' ? part : part.said)).join('')).toBe(text);
        const ids = parts.flatMap((part) => (typeof part === 'string' ? [] : [part.term.id]));
        expect(new Set(ids).size).toBe(ids.length);
      }),
    );
  });
});
