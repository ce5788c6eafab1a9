// Written by `npm run fit` on 2026-11-25. Do not edit by hand.
import type { SoilModelConstants } from './model-constants.ts';

/**
 * At 30 cm. Fitted on September to December of even years (January to April of a record without an autumn) of
 * 127x07 (USDA ARS Reynolds Creek, 17:00 MST);
 * WBAN 53974 (NOAA US Climate Reference Network, daily);
 * bracknell-beaufort-park (Met Office MIDAS Open, 09 UTC).
 */
export const soilConstants30cm: SoilModelConstants = {
  depthM: 0.3,
  quickStep: 0.2811,
  slowStep: 0.05844,
  quickShare: 0.3547,
  slowShare: 0.4693,
  offsetC: 2.827,
  offsetCosC: -1.697,
  offsetSinC: -1.001,
  frostShare: 0.1255,
  siteKept: 0.9993,
  siteSdC: 0.8,
  siteNoiseC: 0.08136,
  passingKept: 0.6967,
  passingNoiseC: 0.291,
  quickShareSd: 0.1791,
  slowShareSd: 0.2067,
  quickShareNoise: 0.000891,
  slowShareNoise: 0.0009697,
  summerNoise: 0.03763,
  frostNoise: 0.08983,
  firstWorth: 3.354,
  scaleWorth: 15.4,
  spotSdC: 0.04813,
  reach80: 1.282,
  reach95: 1.988,
};

/**
 * At 10 cm. Fitted on September to December of even years (January to April of a record without an autumn) of
 * BELMULLET (Met Eireann daily);
 * DUNSANY (Met Eireann daily).
 */
export const soilConstants10cm: SoilModelConstants = {
  depthM: 0.1,
  quickStep: 0.6897,
  slowStep: 0.1308,
  quickShare: 0.5975,
  slowShare: 0.3109,
  offsetC: 1.95,
  offsetCosC: -1.897,
  offsetSinC: 0.1463,
  frostShare: 0.2005,
  siteKept: 0.9988,
  siteSdC: 0.8,
  siteNoiseC: 0.01907,
  passingKept: 0.5159,
  passingNoiseC: 0.734,
  quickShareSd: 0.08193,
  slowShareSd: 0.05375,
  quickShareNoise: 0.002981,
  slowShareNoise: 0.001894,
  summerNoise: 1,
  frostNoise: 0.2929,
  firstWorth: 11.47,
  scaleWorth: 9.349,
  spotSdC: 0.03959,
  reach80: 1.322,
  reach95: 2.042,
};
