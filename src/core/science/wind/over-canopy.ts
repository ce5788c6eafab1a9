import { inRange } from '../../units/in-range.ts';

/** Displacement height as a share of the height of the crop (FAO-56, notes to eq. 4). */
const displacementShare = 2 / 3;
/** Roughness length for momentum as a share of the height of the crop (FAO-56, notes to eq. 4). */
const roughnessShare = 0.123;

/** Where the wind is sought: heights above the ground in metres. */
export interface AboveCanopy {
  /** Height of the boom, above the crop and at most 10 m. */
  readonly boomHeightM: number;
  /** Height of the crop, 0.01 to 3 m. */
  readonly canopyHeightM: number;
}

/**
 * Wind at boom height as a share of the wind at 10 m, by the logarithmic profile `ln((z - d) / z0) / ln((10 - d) / z0)` with
 * d = 2/3 h and z0 = 0.123 h (FAO-56, notes to eq. 4). Holds in neutral air over a wide level field; inside the crop there is
 * no such profile, and a boom there is SCIENCE_OUT_OF_RANGE.
 */
export function canopyWindShare({ boomHeightM, canopyHeightM }: AboveCanopy): number {
  inRange('a crop height', canopyHeightM, 0.01, 3, 'm');
  inRange('a boom height above the crop', boomHeightM, canopyHeightM, 10, 'm');
  const displacement = displacementShare * canopyHeightM;
  const roughness = roughnessShare * canopyHeightM;
  return Math.log((boomHeightM - displacement) / roughness) / Math.log((10 - displacement) / roughness);
}
