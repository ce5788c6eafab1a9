import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readPackFolder } from '../../src/adapters/pack-files/read-pack-folder.ts';
import { decideFacts } from '../../src/core/dialogue/decide.ts';
import { parseInstant } from '../../src/core/dialogue/moment.ts';
import { checkThoroughly } from '../../src/core/rules/analyse/check-thoroughly.ts';
import { epochSeconds } from '../../src/core/units/brands.ts';
import { expectedOf, givenBy } from '../../src/core/verdict/cases/judge-case.ts';
import { root } from '../repo/files.ts';
import { packTable } from './shipped-pack.ts';

describe.each(packTable)('%s', (_, { pack, cases, findings }) => {
  test('passes the thorough check without any finding', async () => {
    expect(findings).toEqual([]);
    const files = await readPackFolder(join(root, 'rules', pack.id));
    expect(checkThoroughly(files, '2026-11-06').findings).toEqual([]);
  });

  test('has at least a hundred cases, each with a name of its own', () => {
    const names = cases.map(({ file, name }) => `${file}: ${name}`);
    expect(new Set(names).size).toBe(names.length);
    expect(names.length).toBeGreaterThanOrEqual(100);
  });

  test('has cases for each verdict', () => {
    const expected = new Set(cases.map((one) => one.expect.verdict));
    expect([...expected].sort()).toEqual(['do-not-spray', 'spray-today', 'wait']);
  });

  test.each(cases.map((one) => [`${one.file}: ${one.name}`, one] as const))('%s', async (__, one) => {
    const { verdict, trace, missing, dose } = await decideFacts({
      pack,
      facts: one.facts,
      forecast: null,
      at: one.at === undefined ? null : parseInstant(one.at),
      now: epochSeconds(0),
      language: 'en',
    });
    expect(givenBy(trace, one)).toEqual(expectedOf(one));
    expect(verdict).toBe(one.expect.verdict);
    expect(missing).toEqual(expect.arrayContaining([...(one.expect.missing ?? [])]));
    expect(dose === null || 'needs' in dose ? undefined : dose.activeGPerHa).toBe(one.expect.doseGPerHa);
  });
});
