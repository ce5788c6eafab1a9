import type { FactId } from '../../src/core/facts/registry/index.ts';
import type { ResolvedFacts } from '../../src/core/facts/resolved.ts';
import type { Known } from '../../src/core/facts/types.ts';
import { epochSeconds } from '../../src/core/units/brands.ts';

/** An invented drained field on which nothing blocks but weather and soil; what would be seen is held all season. */
export function replayField(replaced: Readonly<Partial<Record<FactId, string>>> = {}): ResolvedFacts {
  const origin = { known: true, source: 'profile', at: epochSeconds(0), goodUntil: null } as const;
  const choice = (one: string): Known => ({ ...origin, type: 'choice', possible: [one] });
  const number = (value: number): Known => ({ ...origin, type: 'number', value, low: value, high: value });
  const choices = {
    'field.country': 'GB-ENG',
    'field.texture': 'clay-loam',
    'field.drained': 'yes',
    'field.loosenedThisSeason': 'no',
    'field.protectedWaterArea': 'outside',
    'field.organicSoil': 'no',
    'weed.present': 'yes',
    'treatment.alreadyApplied': 'no',
    'treatment.partnerInTank': 'no',
    'wind.towardsSensitive': 'no',
    'crop.frostOnLeaves': 'no',
    'air.inversionRisk': 'no',
    ...replaced,
  };
  return {
    ...Object.fromEntries(Object.entries(choices).map(([id, one]) => [id, choice(one)])),
    'field.slopePercent': number(1),
    'field.waterDistanceM': number(300),
    'crop.trueLeaves': number(5),
    'weed.tillers': number(1),
    'rain.nowMmPerH': number(0),
    'soil.surface': { ...origin, type: 'signs', present: ['friable'], possible: ['friable'] },
  };
}
