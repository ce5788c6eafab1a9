import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { classCentres, type TextureClass, textureClasses } from '../../../../src/core/science/soil/texture-class.ts';
import { textureClassOf } from '../../../../src/core/science/soil/texture-triangle.ts';
import { between, outOfRange } from '../published.ts';

const manual = 'class limits of the USDA Soil Survey Manual';
const table3 = 'class centres of Saxton & Rawls 2006, Soil Sci. Soc. Am. J. 70:1569-1578, Table 3';

/** [clay %, sand %, class, source] */
const rows: readonly [number, number, TextureClass, string][] = [
  [5, 90, 'sand', manual],
  [60, 32, 'clay', manual],
  [15, 70, 'sandy-loam', manual],
  [5, 70, 'sandy-loam', manual],
  [25, 20, 'silt-loam', manual],
  [5, 10, 'silt', manual],
  [25, 10, 'silt-loam', manual],
  [45, 10, 'silty-clay', manual],
  [65, 20, 'clay', manual],
  [75, 10, 'clay', manual],
  [13, 70, 'sandy-loam', manual],
  [47, 10, 'silty-clay', manual],
  [5, 88, 'sand', table3],
  [5, 80, 'loamy-sand', table3],
  [10, 65, 'sandy-loam', table3],
  [20, 40, 'loam', table3],
  [15, 20, 'silt-loam', table3],
  [5, 10, 'silt', table3],
  [25, 60, 'sandy-clay-loam', table3],
  [35, 30, 'clay-loam', table3],
  [35, 10, 'silty-clay-loam', table3],
  [45, 10, 'silty-clay', table3],
  [40, 50, 'sandy-clay', table3],
  [50, 25, 'clay', table3],
];

/** The limits as the manual words them, class by class, so that each stands alone. */
const limits: Record<TextureClass, (sand: number, silt: number, clay: number) => boolean> = {
  sand: (_sand, silt, clay) => silt + 1.5 * clay < 15,
  'loamy-sand': (_sand, silt, clay) => silt + 1.5 * clay >= 15 && silt + 2 * clay < 30,
  'sandy-loam': (sand, silt, clay) =>
    silt + 2 * clay >= 30 && ((clay >= 7 && clay < 20 && sand > 52) || (clay < 7 && silt < 50)),
  loam: (sand, silt, clay) => clay >= 7 && clay < 27 && silt >= 28 && silt < 50 && sand <= 52,
  'silt-loam': (_sand, silt, clay) => (silt >= 50 && clay >= 12 && clay < 27) || (silt >= 50 && silt < 80 && clay < 12),
  silt: (_sand, silt, clay) => silt >= 80 && clay < 12,
  'sandy-clay-loam': (sand, silt, clay) => clay >= 20 && clay < 35 && silt < 28 && sand > 45,
  'clay-loam': (sand, _silt, clay) => clay >= 27 && clay < 40 && sand > 20 && sand <= 45,
  'silty-clay-loam': (sand, _silt, clay) => clay >= 27 && clay < 40 && sand <= 20,
  'sandy-clay': (sand, _silt, clay) => clay >= 35 && sand > 45,
  'silty-clay': (_sand, silt, clay) => clay >= 40 && silt >= 40,
  clay: (sand, silt, clay) => clay >= 40 && sand <= 45 && silt < 40,
};

describe('the texture triangle', () => {
  test.each(rows)('%d %% clay and %d %% sand is %s (%s)', (clayPercent, sandPercent, expected) => {
    expect(textureClassOf({ sandPercent, clayPercent })).toBe(expected);
  });

  test('every soil has the one class whose limits in the USDA Soil Survey Manual enclose it', () => {
    for (let sandPercent = 0; sandPercent <= 100; sandPercent += 1) {
      for (let clayPercent = 0; sandPercent + clayPercent <= 100; clayPercent += 1) {
        const silt = 100 - sandPercent - clayPercent;
        const fitting = textureClasses.filter((name) => limits[name](sandPercent, silt, clayPercent));
        expect([textureClassOf({ sandPercent, clayPercent })]).toEqual(fitting);
      }
    }
  });

  test('each class has its centre inside', () => {
    for (const name of textureClasses) expect(textureClassOf(classCentres[name])).toBe(name);
    expect(textureClasses).toHaveLength(12);
  });

  test('any mixture has a class, and what is none is refused with its code', () => {
    const percent = between(0, 100);
    fc.assert(
      fc.property(percent, percent, (sandPercent, clayPercent) => {
        if (sandPercent + clayPercent <= 100)
          expect(textureClasses).toContain(textureClassOf({ sandPercent, clayPercent }));
        else expect(() => textureClassOf({ sandPercent, clayPercent })).toThrow(outOfRange);
      }),
    );
    expect(() => textureClassOf({ sandPercent: -1, clayPercent: 20 })).toThrow(outOfRange);
    expect(() => textureClassOf({ sandPercent: Number.NaN, clayPercent: 20 })).toThrow(outOfRange);
  });
});
