import { describe, expect, test } from 'vitest';
import { compileRules } from '../../../../src/core/rules/compile.ts';
import { isAtLeast } from '../../../../src/core/rules/overlay/protect/at-least.ts';
import type { Condition } from '../../../../src/core/rules/types.ts';
import { ofCore } from '../../../fixtures/core-facts.ts';
import { generatedParameters } from '../../../generators/conditions.ts';
import { holdRule } from '../../../generators/small.ts';

/** n0l1 is 9.6 km/h of wind and n0l2 is 14.5. */
const wind = (op: string, limit = 'n0l1') => ({ fact: 'wind.boomKmh', [op]: limit }) as unknown as Condition;
const feel = (op: string, value: unknown) => ({ fact: 'soil.feel', [op]: value }) as unknown as Condition;
const warm: Condition = { fact: 'soil.temperature30cmC', above: 'n1l1' };
const cracked: Condition = { fact: 'soil.surface', has: 'cracked' };
const sticky: Condition = { fact: 'soil.surface', has: 'sticky' };

function atLeast(one: Condition, other: Condition): boolean {
  const rules = [holdRule('a', one), holdRule('b', other), holdRule('named', wind('above'))];
  const compiled = compileRules({ ...ofCore, rules, parameters: generatedParameters }, '2026-11-06').rules;
  return isAtLeast(compiled[0]!.condition, compiled[1]!.condition);
}

describe('it shows from the structure that one condition holds wherever another does', () => {
  test.each<readonly [string, Condition, Condition, shows: boolean, turned: boolean]>([
    ['the same limit', wind('above'), wind('above'), true, true],
    ['a limit taken, where the other leaves it', wind('atLeast'), wind('above'), true, false],
    ['a lower limit, above', wind('above'), wind('above', 'n0l2'), true, false],
    ['a lower limit left, where a higher is taken', wind('above'), wind('atLeast', 'n0l2'), true, false],
    ['a higher limit, below', wind('below', 'n0l2'), wind('below'), true, false],
    ['a limit taken, below', wind('atMost'), wind('below'), true, false],
    ['above and below', wind('above'), wind('below'), false, false],
    ['limits of two facts', wind('above'), warm, false, false],
    ['a wider list', feel('oneOf', ['dry', 'moist']), feel('oneOf', ['dry']), true, false],
    ['a list of one and that one', feel('oneOf', ['dry']), feel('is', 'dry'), true, true],
    ['fewer that are let off', feel('noneOf', ['dry']), feel('noneOf', ['dry', 'moist']), true, false],
    ['one that is let off and a list of it', feel('isNot', 'dry'), feel('noneOf', ['dry']), true, true],
    ['in a list and out of it', feel('is', 'dry'), feel('isNot', 'dry'), false, false],
    ['the same sign', cracked, cracked, true, true],
    ['two signs', cracked, sticky, false, false],
    ['a number and a choice', wind('above'), feel('is', 'dry'), false, false],
    ['what is turned by not', { not: wind('above', 'n0l2') }, { not: wind('above') }, true, false],
    ['not beside a plain comparison', { not: wind('above') }, wind('atMost'), false, false],
    ['any with one more', { any: [wind('above'), warm] }, wind('above'), true, false],
    ['any of the same in another order', { any: [warm, wind('above')] }, { any: [wind('above'), warm] }, true, true],
    ['all with one less', wind('above'), { all: [wind('above'), warm] }, true, false],
    ['all of the same in another order', { all: [warm, cracked] }, { all: [cracked, warm] }, true, true],
    ['any beside all of the same', { any: [warm, cracked] }, { all: [warm, cracked] }, true, false],
    ['a rule by name and what it says', { rule: 'named' }, wind('above'), true, true],
    ['a rule by name and less', { any: [{ rule: 'named' }, warm] }, { rule: 'named' }, true, false],
    [
      'ways to know the same, one of them wider',
      { eitherOf: [wind('atLeast'), warm] },
      { eitherOf: [warm, wind('above')] },
      true,
      false,
    ],
    [
      'ways to know with another fact among them',
      { eitherOf: [wind('above'), warm] },
      { eitherOf: [wind('above'), feel('is', 'dry')] },
      false,
      false,
    ],
    [
      'more ways to know, which may say no',
      { eitherOf: [wind('above'), warm, feel('is', 'dry')] },
      { eitherOf: [wind('above'), warm] },
      false,
      false,
    ],
    [
      'any of several and ways to know among them',
      { any: [wind('above'), warm] },
      { eitherOf: [wind('above'), warm] },
      true,
      false,
    ],
    ['any of one less than the ways to know', wind('above'), { eitherOf: [wind('above'), warm] }, false, false],
  ])('%s', (_, one, other, shows, turned) => {
    expect([atLeast(one, other), atLeast(other, one)]).toEqual([shows, turned]);
  });
});
