import { describe, expect, test } from 'vitest';
import { describeError } from '../../../../src/core/errors/coded-error.ts';
import { applyOverlays } from '../../../../src/core/rules/overlay/apply-overlays.ts';
import { brokenConditions } from './examples.ts';
import { brokenOtherwise } from './other-examples.ts';
import { apply, parameter, shipped } from './overlay-of.ts';
import { brokenParameters } from './parameter-examples.ts';
import { plain } from './plain-examples.ts';

describe('what loosens anything protected is refused', () => {
  test.each([...brokenConditions, ...brokenParameters, ...brokenOtherwise])(
    '$name',
    ({ parts, code, pointer, words = [] }) => {
      const applied = apply(parts);
      expect(applied.ok).toBe(false);
      const found = applied.findings.find((one) => one.code === code && one.pointer === pointer);
      expect(found, JSON.stringify(applied.findings, null, 1)).toBeDefined();
      const message = found ? describeError(found.code, found) : '';
      for (const each of words) expect(message).toContain(each);
    },
  );
});

test('of two limits of one rule that are moved at once, the one that loosens it is blamed', () => {
  const later = { validFrom: '2026-11-01' };
  const parameters = [parameter('rainTotalLimitMm', 5), parameter('rainHourLimitMmPerH', 9, later)];
  const { findings } = apply({ parameters });
  const blamed = findings.filter(({ code }) => code === 'OVERLAY_PARAMETER_LOOSENED').map(({ pointer }) => pointer);
  expect(new Set(blamed)).toEqual(new Set(['/parameters/1/value']));
});

describe('what tightens, adds, or changes practice alone is taken', () => {
  test.each(plain)('$name', ({ parts }) => {
    const applied = apply(parts);
    expect(applied.findings).toEqual([]);
    expect(applied.ok).toBe(true);
  });
});

test('a pack without overlays is the pack itself, hash and shape', () => {
  const applied = applyOverlays(shipped, []);
  expect(applied.ok && applied.pack).toBe(shipped);
  expect(shipped).not.toHaveProperty('overlays');
});
