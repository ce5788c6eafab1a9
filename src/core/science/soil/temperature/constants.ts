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
  quickStep: 0.3251,
  slowStep: 0.06335,
  quickShare: 0.3469,
  slowShare: 0.4665,
  offsetC: 2.863,
  offsetCosC: -1.575,
  offsetSinC: -1.007,
  frostShare: 0.143,
  siteKept: 0.9991,
  siteSdC: 0.3197,
  siteNoiseC: 0.07844,
  passingKept: 0.7001,
  passingNoiseC: 0.3352,
  quickShareSd: 0.1603,
  slowShareSd: 0.2021,
  quickShareNoise: 0.001068,
  slowShareNoise: 0.001148,
  spotSdC: 0.04592,
  reach80: 1.282,
  reach95: 1.997,
};

/**
 * At 10 cm. Fitted on September to December of even years (January to April of a record without an autumn) of
 * BELMULLET (Met Eireann daily);
 * DUNSANY (Met Eireann daily).
 */
export const soilConstants10cm: SoilModelConstants = {
  depthM: 0.1,
  quickStep: 0.6855,
  slowStep: 0.1239,
  quickShare: 0.5794,
  slowShare: 0.3008,
  offsetC: 2.232,
  offsetCosC: -1.866,
  offsetSinC: 0.2234,
  frostShare: 0.1355,
  siteKept: 0.9992,
  siteSdC: 0.2946,
  siteNoiseC: 0.04421,
  passingKept: 0.489,
  passingNoiseC: 0.5127,
  quickShareSd: 0.1307,
  slowShareSd: 0.1694,
  quickShareNoise: 0.001284,
  slowShareNoise: 0.001297,
  spotSdC: 0.1188,
  reach80: 1.282,
  reach95: 1.96,
};
