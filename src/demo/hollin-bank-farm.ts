import { type EpochSeconds, epochSeconds } from '../core/units/brands.ts';
import type { DemoField } from './demo-field.ts';
import { novemberHour } from './invented-rain.ts';
import { inventedForecast, inventedPlace } from './invented-weather.ts';
import { observe, type ShortValues } from './observations.ts';

/** What holds for the whole of Hollin Bank Farm. */
const farm: ShortValues = {
  'field.country': 'GB-ENG',
  'field.latitude': inventedPlace.latitude,
  'field.longitude': inventedPlace.longitude,
  'field.organicSoil': 'no',
  'field.loosenedThisSeason': 'no',
  'treatment.alreadyApplied': 'no',
};

/** The invented day on which the season's profiles were filled in. */
const profiledAt = epochSeconds(Date.UTC(2026, 9, 5, 9) / 1000);

/** Hollin Bank Farm is invented: its three fields, each on its own day of an invented November. */
export const hollinBankFarm: readonly DemoField[] = [
  field({
    id: 'mill-piece',
    name: 'Mill Piece',
    note: 'Clay loam, gentle slope, far from water; a still, mild morning.',
    inventedNow: novemberHour(12, 10),
    season: {
      'field.areaHa': 8.4,
      'field.texture': 'clay-loam',
      'field.slopePercent': 1.5,
      'field.waterDistanceM': 420,
      'field.drained': 'no',
      'field.protectedWaterArea': 'outside',
      'field.waterPlanAgreed': 'no',
    },
    walked: { 'crop.trueLeaves': 5, 'weed.present': 'yes', 'weed.plantsPerM2': 35, 'weed.tillers': 1 },
  }),
  field({
    id: 'long-ing',
    name: 'Long Ing',
    note: 'Drained clay beside a ditch, inside a protected water area.',
    inventedNow: novemberHour(24, 11),
    season: {
      'field.areaHa': 5.2,
      'field.texture': 'clay',
      'field.slopePercent': 0.8,
      'field.waterDistanceM': 6,
      'field.bufferMarked': 'yes',
      'field.drained': 'yes',
      'field.protectedWaterArea': 'inside',
      'field.waterPlanAgreed': 'no',
    },
    walked: { 'crop.trueLeaves': 6, 'weed.present': 'yes', 'weed.plantsPerM2': 60, 'weed.tillers': 1 },
  }),
  field({
    id: 'top-brow',
    name: 'Top Brow',
    note: 'Sandy loam, heavy black-grass; rain is on its way.',
    inventedNow: novemberHour(18, 10, 30),
    season: {
      'field.areaHa': 11.7,
      'field.texture': 'sandy-loam',
      'field.slopePercent': 6,
      'field.waterDistanceM': 310,
      'field.drained': 'no',
      'field.protectedWaterArea': 'outside',
      'field.waterPlanAgreed': 'no',
    },
    walked: { 'crop.trueLeaves': 5, 'weed.present': 'yes', 'weed.plantsPerM2': 260, 'weed.tillers': 2 },
  }),
];

interface FieldInShort {
  readonly id: string;
  readonly name: string;
  readonly note: string;
  readonly inventedNow: EpochSeconds;
  /** Asked once a season. */
  readonly season: ShortValues;
  /** Seen when the crop was walked, two days before the invented day. */
  readonly walked: ShortValues;
}

function field({ id, name, note, inventedNow, season, walked }: FieldInShort): DemoField {
  const walkedAt = epochSeconds(inventedNow - 2 * 24 * 3600);
  return {
    profile: {
      id,
      name,
      invented: true,
      note,
      observations: [...observe({ ...farm, ...season }, profiledAt, 'profile'), ...observe(walked, walkedAt, 'said')],
    },
    inventedNow,
    forecastAt: inventedForecast,
    packs: ['propyzamide-winter-oilseed-rape'],
  };
}
