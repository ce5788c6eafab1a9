import type { SoilModelConstants } from '../../core/science/soil/temperature/model-constants.ts';

type Name = Exclude<keyof SoilModelConstants, 'depthM' | 'reach80' | 'reach95' | 'siteSdC' | 'summerNoise'>;
type Scale = 'free' | 'positive' | 'share';

/** Which constants are fitted, and between which bounds each can lie. */
const scales: Readonly<Record<Name, Scale>> = {
  quickStep: 'share',
  slowStep: 'share',
  quickShare: 'free',
  slowShare: 'free',
  offsetC: 'free',
  offsetCosC: 'free',
  offsetSinC: 'free',
  frostShare: 'share',
  siteKept: 'share',
  siteNoiseC: 'positive',
  passingKept: 'share',
  passingNoiseC: 'positive',
  quickShareSd: 'positive',
  slowShareSd: 'positive',
  quickShareNoise: 'positive',
  slowShareNoise: 'positive',
  frostNoise: 'positive',
  firstWorth: 'positive',
  scaleWorth: 'positive',
  spotSdC: 'positive',
};

const names = Object.keys(scales) as Name[];
const toFree: Readonly<Record<Scale, (value: number) => number>> = {
  free: (value) => value,
  positive: Math.log,
  share: (value) => Math.log(value / (1 - value)),
};
const fromFree: Readonly<Record<Scale, (value: number) => number>> = {
  free: (value) => value,
  positive: Math.exp,
  share: (value) => 1 / (1 + Math.exp(-value)),
};

/** Constants as a point without bounds, for the search. */
export function pointOf(constants: SoilModelConstants): number[] {
  return names.map((name) => toFree[scales[name]](constants[name]));
}

/** Constants at a point of the search; what is not fitted is taken from `rest`. */
export function constantsAt(point: readonly number[], rest: SoilModelConstants): SoilModelConstants {
  const fitted = Object.fromEntries(names.map((name, index) => [name, fromFree[scales[name]](point[index]!)]));
  return { ...rest, ...fitted };
}
