import { expect, test } from 'vitest';
import { findNested } from '../../../../src/core/rules/analyse/find-nested.ts';
import { placesIn } from '../../../../src/core/rules/analyse/places.ts';
import { compileRules } from '../../../../src/core/rules/compile.ts';
import { collectFindings } from '../../../../src/core/rules/pack/findings.ts';
import type { Rule } from '../../../../src/core/rules/types.ts';
import { factDefinition, ofCore } from '../../../fixtures/core-facts.ts';
import { holdRule } from '../../../generators/small.ts';

const dryOnly = holdRule('dry-only', { fact: 'soil.feel', is: 'dry' });
const dryish = holdRule('dryish', { fact: 'soil.feel', oneOf: ['dry', 'slightly-moist'] });

function found(...rules: Rule[]): string[] {
  const { findings, report } = collectFindings();
  const compiled = compileRules({ ...ofCore, rules, parameters: [] }, '2026-11-06');
  findNested(compiled.rules, factDefinition, placesIn(new Map()), report);
  return findings.map(({ code, rule }) => `${code} ${rule}`);
}

const advice = { effect: 'advise', lifts: null } as const;

test.each<readonly [string, Partial<Rule>, Partial<Rule>, boolean]>([
  ['the same weight', {}, {}, true],
  ['a stop over a hold', {}, { effect: 'stop' }, true],
  ['a hold over advice', advice, {}, true],
  ['a hold over a stop', { effect: 'stop' }, {}, false],
  ['advice over a hold', {}, advice, false],
  ['the label over practice', {}, { authority: 'label' }, true],
  ['practice over water', { authority: 'water' }, {}, false],
  ['law over the label', { authority: 'label' }, { authority: 'law' }, true],
  ['the label over law', { authority: 'law' }, { authority: 'label' }, false],
  ['the season over hours', {}, { lifts: 'season' }, true],
  ['hours over days', { lifts: 'days' }, {}, false],
  ['days over a person', { lifts: 'person' }, { lifts: 'days' }, false],
])('a wider rule hides a narrower one by weight: %s', (_name, narrow, wide, hides) => {
  const findings = found({ ...dryOnly, ...narrow }, { ...dryish, ...wide });
  expect(findings).toEqual(hides ? ['RULE_HIDDEN dry-only'] : []);
});

test('of two rules that come out alike the lighter one is hidden, and neither where each outweighs the other', () => {
  const same = { ...dryOnly, id: 'same' };
  expect(found(dryOnly, same)).toEqual(['RULE_SAID_TWICE same']);
  expect(found(dryOnly, { ...same, effect: 'stop' })).toEqual(['RULE_HIDDEN dry-only']);
  expect(found({ ...dryOnly, effect: 'stop' }, same)).toEqual(['RULE_HIDDEN same']);
  expect(found({ ...dryOnly, effect: 'stop' }, { ...same, authority: 'law' })).toEqual([]);
});

test('a rule that the wider one names is its part, and not hidden by it', () => {
  const naming = holdRule('naming', { any: [{ rule: 'dry-only' }, { fact: 'soil.feel', is: 'slightly-moist' }] });
  expect(found(dryOnly, naming)).toEqual([]);
  const narrowing = holdRule('narrowing', {
    all: [{ rule: 'dryish' }, { fact: 'soil.feel', isNot: 'slightly-moist' }],
  });
  expect(found(dryish, narrowing)).toEqual(['RULE_HIDDEN narrowing']);
});

test('rules without a fact in common are not compared', () => {
  const cracked = holdRule('cracked', { fact: 'soil.surface', has: 'cracked' });
  expect(found(dryOnly, cracked)).toEqual([]);
});
