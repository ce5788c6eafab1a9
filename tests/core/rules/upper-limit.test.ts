import { expect, test } from 'vitest';
import type { Pack } from '../../../src/core/rules/pack-types.ts';
import { shipped, shippedPacks } from '../../cases/shipped-pack.ts';
import { fullView } from '../../web/outlook-views.ts';

/** The pack with other names for the limits that figures draw: names that nobody could guess. */
const renamed = JSON.parse(
  JSON.stringify(shipped.pack).replaceAll('soilTemperatureMaxC', 'mullC').replaceAll('rainTotalLimitMm', 'wetMm'),
) as Pack;

test('a figure draws the limit that the rules read, whatever it is called', () => {
  const { soil, rain } = fullView(shipped.pack);
  expect([soil?.limitC, rain?.limitMm]).toEqual([10, 10]);
  expect(fullView(renamed)).toEqual(fullView(shipped.pack));
});

test('a limit of the sum to come is told with the decimal mark of the language', () => {
  const wetter = {
    ...shipped.pack,
    parameters: shipped.pack.parameters.map((one) => (one.id === 'rainTotalLimitMm' ? { ...one, value: 7.5 } : one)),
  };
  expect(fullView(wetter).rain?.limitText).toBe('limit 7.5 mm');
  expect(fullView(wetter, 'wait', undefined, 'de').rain?.limitText).toContain('7,5 mm');
});

test('a pack whose rules set no limit to the sum of 48 hours has no such figure', () => {
  const spring = shippedPacks.find(({ pack }) => pack.id === 'fluroxypyr-winter-wheat')!.pack;
  expect(fullView(spring).rain).toBeNull();
});
