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
  'treatment.alreadyApplied': 'no',
};

/** Its oilseed rape, and what holds for it; profiled in autumn. */
const rape: Crop = {
  pack: 'propyzamide-winter-oilseed-rape',
  profiledAt: epochSeconds(Date.UTC(2026, 9, 5, 9) / 1000),
  season: { 'field.organicSoil': 'no', 'field.loosenedThisSeason': 'no' },
};

/** Its winter wheat; profiled in spring. */
const wheat: Crop = {
  pack: 'fluroxypyr-winter-wheat',
  profiledAt: epochSeconds(Date.UTC(2026, 2, 9, 9) / 1000),
  season: { 'crop.undersownLegume': 'no' },
};

/** Hollin Bank Farm is invented: three fields of oilseed rape, each on its own day of an invented November, and one of wheat in April. */
export const hollinBankFarm: readonly DemoField[] = [
  field(rape, {
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
  field(rape, {
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
  field(rape, {
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
  field(wheat, {
    id: 'barn-close',
    name: 'Barn Close',
    note: 'Winter wheat with cleavers, far from water; a still, mild morning in April.',
    inventedNow: epochSeconds(Date.UTC(2026, 3, 22, 10) / 1000),
    season: { 'field.areaHa': 6.3, 'field.waterDistanceM': 240 },
    walked: { 'crop.growthStage': 24, 'weed.cleaversPresent': 'yes', 'weed.cleaversLengthCm': 8 },
  }),
];

interface Crop {
  /** The treatment that its fields are offered for. */
  readonly pack: string;
  /** The invented day on which the season's profiles were filled in. */
  readonly profiledAt: EpochSeconds;
  readonly season: ShortValues;
}

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

function field(crop: Crop, { id, name, note, inventedNow, season, walked }: FieldInShort): DemoField {
  const walkedAt = epochSeconds(inventedNow - 2 * 24 * 3600);
  return {
    profile: {
      id,
      name,
      invented: true,
      note,
      observations: [
        ...observe({ ...farm, ...crop.season, ...season }, crop.profiledAt, 'profile'),
        ...observe(walked, walkedAt, 'said'),
      ],
    },
    inventedNow,
    forecastAt: inventedForecast,
    packs: [crop.pack],
  };
}
