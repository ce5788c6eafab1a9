import type { Side } from '../../../src/core/compare/index.ts';
import { loadPack } from '../../../src/core/rules/pack/load-pack.ts';
import type { Pack } from '../../../src/core/rules/pack-types.ts';
import { filesOf, miniPack } from '../../fixtures/mini-pack.ts';

/** Facts of an invented day on which nothing of the small pack stands in the way. */
export const good = {
  'field.country': 'GB-ENG',
  'wind.boomKmh': 5,
  'soil.feel': 'moist',
  'soil.fieldCapacityPercent': 90,
  'soil.temperature30cmC': 8,
  'soil.surface': ['friable'],
} as const;

/** The small invented pack of the fixtures: windMostKmh 9.6, soilWarmC 10, rules too-windy, too-dry, warm-and-dry, elsewhere, late. */
export function smallPack(): Pack {
  const { pack } = loadPack(filesOf(miniPack()));
  const heights: Readonly<Record<string, number>> = { cropHeightM: 0.2, boomHeightAboveCropM: 0.5 };
  return { ...pack, parameters: pack.parameters.map((one) => ({ ...one, value: heights[one.id] ?? one.value })) };
}

/** A side made of the small pack, changed, with cases that are given by their facts and named by their place, A, B, C. */
export function smallSide(change: Partial<Pack> = {}, cases: readonly Readonly<Record<string, unknown>>[] = []): Side {
  return {
    pack: { ...smallPack(), ...change },
    cases: cases.map((facts, at) => ({
      file: `cases/${at}.json`,
      name: 'ABCDEFGH'.charAt(at),
      at: '2026-11-06T12:00:00Z',
      facts,
      expect: { verdict: 'wait' as const },
    })),
  };
}

/** The small pack's parameters with one replaced in part. */
export function parametersWith(id: string, change: Partial<Pack['parameters'][number]>): Pack['parameters'] {
  return smallPack().parameters.map((one) => (one.id === id ? { ...one, ...change } : one));
}

/** The small pack's rules with one replaced in part. */
export function ruleWith(id: string, change: Partial<Pack['rules'][number]>): Pick<Pack, 'rules'> {
  return { rules: smallPack().rules.map((one) => (one.id === id ? { ...one, ...change } : one)) };
}
