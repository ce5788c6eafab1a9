import { expect, test } from 'vitest';
import { checkPack } from '../../src/core/rules/pack/load-pack.ts';
import { filesOf, miniPack } from '../fixtures/mini-pack.ts';

function checkCaseFile(content: unknown) {
  return checkPack(filesOf({ ...miniPack(), 'cases/a.json': content }));
}

const expected = { verdict: 'wait' };

test('the facts of a case lie over those of its file, and null takes one away', () => {
  const checked = checkCaseFile({
    about: 'Invented.',
    base: { 'wind.boomKmh': 5, 'soil.feel': 'moist' },
    cases: [{ name: 'windy, feel not known', facts: { 'wind.boomKmh': 12, 'soil.feel': null }, expect: expected }],
  });
  expect(checked.ok && checked.cases.map(({ facts }) => facts)).toEqual([{ 'wind.boomKmh': 12 }]);
});

test('a base that names no fact is refused with its place and the nearest right name', () => {
  const { ok, findings } = checkCaseFile({ base: { 'wind.boomKm': 5 }, cases: [] });
  expect(ok).toBe(false);
  expect(findings).toEqual([
    expect.objectContaining({ code: 'CASE_MISFIT', pointer: '/base/wind.boomKm', nearest: 'wind.boomKmh' }),
  ]);
});

test('what lifts a rule that is not there is refused with its place', () => {
  const cases = [{ name: 'windy', facts: {}, expect: { ...expected, lifts: { 'too-windyy': 'hours' } } }];
  expect(checkCaseFile({ cases }).findings).toEqual([
    expect.objectContaining({ code: 'CASE_MISFIT', pointer: '/cases/0/expect/lifts/too-windyy', nearest: 'too-windy' }),
  ]);
});
