import { describe, expect, test } from 'vitest';
import type { Difference, ParameterDifference } from '../../../src/core/compare/differences.ts';
import { definitionsOf } from '../../../src/core/facts/registry/index.ts';
import { compileRules } from '../../../src/core/rules/compile.ts';
import type { Pack } from '../../../src/core/rules/pack-types.ts';
import { catalogueOf } from '../../../src/core/words/catalogue.ts';
import { sayDifference } from '../../../src/core/words/say-difference.ts';
import { factDefinition } from '../../fixtures/core-facts.ts';
import { parametersWith, ruleWith, smallPack } from '../compare/small-pack.ts';

/** How a difference between the small pack, and the small pack changed, is told. */
function said(difference: Difference, change: Partial<Pack> = {}, language = 'en') {
  const pack = smallPack();
  const [a, b] = [pack, { ...pack, ...change }].map((one) => compileRules(one, '2026-11-06'));
  return sayDifference(difference, { a: a!, b: b!, definitionOf: definitionsOf(pack.facts) }, catalogueOf(language));
}

describe('a limit that differs', () => {
  const wind = (change: Partial<Pack['parameters'][number]> = {}) => {
    return parametersWith('windMostKmh', change).find(({ id }) => id === 'windMostKmh')!;
  };
  const moved = (more: Partial<ParameterDifference>): ParameterDifference => {
    const [before, after] = [wind({ validFrom: '2026-01-01' }), wind({ value: 8.5, validFrom: '2026-01-01' })];
    const base = { kind: 'parameter', id: 'windMostKmh', from: '2026-01-01', way: null, readBy: [] } as const;
    return { ...base, before, after, ...more };
  };

  test.each<[string, Partial<ParameterDifference>, string]>([
    ['by its value', {}, 'windMostKmh: 9.6 km/h → 8.5 km/h, from 1 January 2026'],
    [
      'with the way and the rules that read it',
      { way: 'tighter', readBy: ['too-windy', 'late'] },
      'windMostKmh: 9.6 km/h → 8.5 km/h, from 1 January 2026; tighter; read by too-windy, late',
    ],
    ['the looser way', { way: 'looser' }, 'windMostKmh: 9.6 km/h → 8.5 km/h, from 1 January 2026; looser'],
    ['that is new', { before: null }, 'windMostKmh: nothing → 8.5 km/h, from 1 January 2026'],
    ['that is gone', { after: null }, 'windMostKmh: 9.6 km/h → nothing, from 1 January 2026'],
  ])('%s', (_, more, line) => {
    expect(said(moved(more)).line).toBe(line);
  });

  test('and holds for another time says for which', () => {
    const until = wind({ validFrom: '2026-01-01', validTo: '2026-12-31' });
    expect(said(moved({ after: until })).line).toContain('; holds from 1 January 2026 to 31 December 2026');
    expect(said(moved({ before: until, after: wind({ validFrom: '2026-01-01' }) })).line).toContain(
      '; holds from 1 January 2026',
    );
    expect(said(moved({ before: until, after: until })).line).not.toContain('holds');
  });

  test('tells both reasons where they differ, and neither where they are the same', () => {
    const change = (more: Partial<ParameterDifference>) => {
      const { change: what, way, before, after } = said(moved(more));
      return [what, way, before, after];
    };
    expect(change({ way: 'tighter' })).toEqual(['changed', 'tighter', null, null]);
    const after = wind({ why: { en: 'Nearer houses.' } });
    expect(change({ after })).toEqual(['changed', null, wind().why['en'], 'Nearer houses.']);
    expect(change({ before: null, after })).toEqual(['added', null, null, 'Nearer houses.']);
    expect(change({ before: after, after: null })).toEqual(['removed', null, 'Nearer houses.', null]);
  });
});

describe('a rule that differs', () => {
  const rule = () => smallPack().rules.find(({ id }) => id === 'too-windy')!;
  const structure = 'Holds (lifts in hours): when wind at boom height is above 9.6 km/h (windMostKmh).';

  test('in its structure is told by its sentences', () => {
    const after = { ...rule(), lifts: 'days' as const };
    const told = said(
      { kind: 'rule', id: 'too-windy', before: rule(), after, parts: ['lifts', 'no-such'] },
      ruleWith('too-windy', { lifts: 'days' }),
    );
    expect(told).toEqual({
      kind: 'rule',
      id: 'too-windy',
      change: 'changed',
      way: null,
      line: 'Rule too-windy: differs in what lifts it, no-such',
      before: structure,
      after: structure.replace('hours', 'days'),
    });
  });

  test('only in its words is told by those', () => {
    const text = { en: { title: 'Windy', met: 'Blows.', unknown: 'Feel it.', lift: 'Wait.' } };
    const told = said(
      { kind: 'rule', id: 'too-windy', before: rule(), after: { ...rule(), text }, parts: ['text'] },
      ruleWith('too-windy', { text }),
    );
    const { title, met, unknown, lift } = rule().text['en']!;
    expect(told.before).toBe([title, met, unknown, ...(lift === undefined ? [] : [lift])].join(' / '));
    expect(told.after).toBe('Windy / Blows. / Feel it. / Wait.');
    const { lift: _, ...short } = text.en;
    const shorter = said(
      { kind: 'rule', id: 'too-windy', before: rule(), after: { ...rule(), text: { en: short } }, parts: ['text'] },
      ruleWith('too-windy', { text: { en: short } }),
      'de',
    );
    expect(shorter.after).toBe('Windy / Blows. / Feel it.');
  });

  test('that only one has is told by its structure', () => {
    const gone = { rules: smallPack().rules.filter(({ id }) => id !== 'too-windy') };
    expect(said({ kind: 'rule', id: 'too-windy', before: rule(), after: null, parts: [] }, gone)).toMatchObject({
      change: 'removed',
      line: 'Rule too-windy: only in A',
      before: structure,
      after: null,
    });
    expect(said({ kind: 'rule', id: 'too-windy', before: null, after: rule(), parts: [] })).toMatchObject({
      change: 'added',
      line: 'Rule too-windy: only in B',
      before: null,
      after: structure,
    });
    // Not compiled on that day: there is nothing to say of it.
    expect(said({ kind: 'rule', id: 'lost', before: null, after: rule(), parts: [] }).after).toBeNull();
  });
});

describe('anything else that differs', () => {
  test.each(['en', 'de'])('is told by its text, in %s', (language) => {
    const before = {
      id: 'gloves',
      authority: 'label',
      text: { en: 'Wear gloves.', de: 'Handschuhe tragen.' },
    } as const;
    const after = { ...before, text: { en: 'Wear thick gloves.' } };
    const told = said({ kind: 'caution', id: 'gloves', before, after, parts: ['text'] }, {}, language);
    expect([told.before, told.after]).toEqual([before.text[language as 'en'], 'Wear thick gloves.']);
    expect(said({ kind: 'caution', id: 'gloves', before, after: { ...before, text: {} }, parts: [] }).after).toBeNull();
  });

  test('is told by what a question asks, why and how', () => {
    const [question] = smallPack().questions;
    const { ask, why, how } = question!.text['en']!;
    const told = said({ kind: 'question', id: question!.id, before: null, after: question!, parts: [] });
    expect(told).toMatchObject({
      line: `Question ${question!.id}: only in B`,
      before: null,
      after: `${ask} ${why} ${how}`,
    });
  });

  test('is told by the name of a fact in the language', () => {
    const before = { ...factDefinition('soil.feel'), label: 'feel', labels: { de: 'Gefühl' } };
    const after = { ...factDefinition('soil.feel'), label: 'touch' };
    const told = (language: string) => said({ kind: 'fact', id: 'soil.feel', before, after, parts: [] }, {}, language);
    expect([told('en').before, told('en').after]).toEqual(['feel', 'touch']);
    expect([told('de').before, told('de').after]).toEqual(['Gefühl', 'touch']);
    expect(said({ kind: 'fact', id: 'x', before: null, after, parts: [] })).toMatchObject({
      before: null,
      after: 'touch',
    });
  });
});
