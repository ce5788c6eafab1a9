import { expect, test } from 'vitest';
import { parseOverlay } from '../../../../src/core/rules/overlay/parse-overlay.ts';
import { overlayOf, parameter } from './overlay-of.ts';

const told = () => overlayOf({ parameters: [parameter('soilTemperatureMaxC', 9)] });

test('an overlay that tells its hash is taken where it fits, and keeps it', () => {
  const { content, hash } = told();
  expect(parseOverlay('farm.json', JSON.stringify({ ...content, hash })).overlay?.hash).toBe(hash);
});

test('one that was changed after its hash was made is refused, naming both', () => {
  const { content, hash } = told();
  const changed = { ...content, parameters: [parameter('soilTemperatureMaxC', 9.5)], hash };
  const { overlay, findings } = parseOverlay('farm.json', JSON.stringify(changed));
  expect(overlay).toBeNull();
  expect(findings).toMatchObject([{ code: 'OVERLAY_HASH_MISFIT', pointer: '/hash', expected: hash }]);
  const again = overlayOf({ parameters: [parameter('soilTemperatureMaxC', 9.5)] });
  expect(findings[0]?.came).toBe(again.hash);
});
