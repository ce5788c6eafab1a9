import { describe, expect, test } from 'vitest';
import { observationsOf } from '../../../src/core/dialogue/decide.ts';
import { parseWhatIf } from '../../../src/core/dialogue/what-if.ts';
import { LoamwardError } from '../../../src/core/errors/coded-error.ts';
import type { FactId } from '../../../src/core/facts/registry/index.ts';
import type { Reading } from '../../../src/core/facts/types.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { morning } from './talk.ts';

const { pack } = shipped;
const number = (value: number): Reading => ({ type: 'number', value });
const signs = (...present: string[]) => expect.objectContaining({ type: 'signs', present });

function refusal(text: string) {
  try {
    return parseWhatIf(text, morning, pack);
  } catch (error) {
    return error instanceof LoamwardError ? error.toJSON() : error;
  }
}

describe('a fact supposed otherwise', () => {
  test.each<[string, FactId, unknown]>([
    ['soil.temperature30cmC=9', 'soil.temperature30cmC', number(9)],
    ['  soil.temperature30cmC =  9 ', 'soil.temperature30cmC', number(9)],
    ['soil.feel=moist', 'soil.feel', { type: 'choice', possible: ['moist'] }],
    ['soil.feel=["moist","wet"]', 'soil.feel', { type: 'choice', possible: ['moist', 'wet'] }],
    ['soil.surface=cracked, sticky', 'soil.surface', signs('cracked', 'sticky')],
    ['soil.surface=none', 'soil.surface', signs()],
    ['soil.surface=["cracked"]', 'soil.surface', signs('cracked')],
    ['soil.surface={"value":["cracked"],"possible":["cracked","sticky"]}', 'soil.surface', signs('cracked')],
  ])('%s is read as one of a facts file', (text, fact, reading) => {
    expect(parseWhatIf(text, morning, pack)).toEqual({ fact, reading, at: morning });
  });

  test.each([
    ['soil.temperature30cmC', 'a fact and its value, as soil.temperature30cmC=9'],
    ['=9', 'a fact and its value, as soil.temperature30cmC=9'],
    [' = 9', 'a fact and its value, as soil.temperature30cmC=9'],
    ['soil.temperature30cmC= ', 'a fact and its value, as soil.temperature30cmC=9'],
    ['date=2026-12-01', 'a fact other than the date: ask about another day with --at'],
    ['soil.temperature30cmC=null', 'a value of the fact'],
  ])('%s is refused with what was expected', (text, expected) => {
    expect(refusal(text)).toMatchObject({ code: 'OPTION_VALUE', expected, came: text });
  });
});

describe('the moment that is asked about', () => {
  const now = epochSeconds(morning + 9999);
  const at = (asked: typeof now | null, facts: object) =>
    observationsOf({ pack, facts, forecast: null, at: asked, now, language: 'en' }).at;

  test('is the one named, else noon of the date of the facts, else now', () => {
    expect(at(morning, { date: '2026-11-06' })).toBe(morning);
    expect(at(null, { date: '2026-11-09' })).toBe(Date.UTC(2026, 10, 9, 12) / 1000);
    expect(at(null, {})).toBe(now);
  });

  test('what is supposed stands in place of what the file gives of that fact alone', () => {
    const facts = { 'soil.temperature30cmC': 12, 'soil.feel': 'dry' };
    const instead = [{ fact: 'soil.temperature30cmC', reading: number(9), at: morning }] as const;
    const asked = { pack, facts, forecast: null, at: morning, now, language: 'en' } as const;
    const { observations } = observationsOf({ ...asked, instead });
    expect(observationsOf(asked).observations.map(({ fact }) => fact)).toEqual(Object.keys(facts));
    expect(observations.map(({ fact, reading, source }) => [fact, reading, source])).toEqual([
      ['soil.feel', { type: 'choice', possible: ['dry'] }, 'said'],
      ['soil.temperature30cmC', number(9), 'said'],
    ]);
  });
});
