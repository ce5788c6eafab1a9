import { describe, expect, test } from 'vitest';
import { decideFacts } from '../../src/core/dialogue/decide.ts';
import { parseInstant } from '../../src/core/dialogue/moment.ts';
import { epochSeconds } from '../../src/core/units/brands.ts';
import { expectedOf, givenBy } from '../../src/core/verdict/cases/judge-case.ts';
import { shipped } from './shipped-pack.ts';

const files = [...new Set(shipped.cases.map(({ file }) => file))];

test('the shipped pack loads without any finding', () => {
  expect(shipped.findings).toEqual([]);
});

test('there are at least a hundred cases, each with a name of its own', () => {
  const names = shipped.cases.map(({ file, name }) => `${file}: ${name}`);
  expect(new Set(names).size).toBe(names.length);
  expect(names.length).toBeGreaterThanOrEqual(100);
});

describe.each(files)('%s', (file) => {
  const cases = shipped.cases.filter((one) => one.file === file);
  test.each(cases.map((one) => [one.name, one] as const))('%s', async (_, one) => {
    const { verdict, trace, missing, dose } = await decideFacts({
      pack: shipped.pack,
      facts: one.facts,
      forecast: null,
      at: one.at === undefined ? null : parseInstant(one.at),
      now: epochSeconds(0),
      language: 'en',
    });
    expect(givenBy(trace, one)).toEqual(expectedOf(one));
    expect(verdict).toBe(one.expect.verdict);
    expect(missing).toEqual(expect.arrayContaining([...(one.expect.missing ?? [])]));
    expect('needs' in dose ? undefined : dose.activeGPerHa).toBe(one.expect.doseGPerHa);
  });
});
