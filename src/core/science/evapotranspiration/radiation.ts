import { aboveZero, inRange } from '../../units/in-range.ts';

/** Stefan-Boltzmann constant, MJ/K4/m2/day (FAO-56 eq. 39). */
const stefanBoltzmann = 4.903e-9;
/** Albedo of the reference crop (FAO-56 eq. 38). */
const albedo = 0.23;

/** Solar radiation in MJ/m2/day from hours of sunshine, possible hours and `extraterrestrial`, MJ/m2/day (FAO-56 eq. 35). */
export function radiationFromSunshine(sunshineH: number, possibleH: number, extraterrestrial: number): number {
  inRange('possible hours of sunshine', possibleH, 0, 24, 'h');
  inRange('hours of sunshine within those possible', sunshineH, 0, possibleH, 'h');
  const share = possibleH > 0 ? sunshineH / possibleH : 0;
  return (0.25 + 0.5 * share) * radiation(extraterrestrial);
}

/**
 * Solar radiation in MJ/m2/day from the highest and lowest temperature of a day, C, and `extraterrestrial`, MJ/m2/day (FAO-56
 * eq. 50). The coefficient is 0.16 inland, 0.19 by the coast.
 */
export function radiationFromTemperature(
  highestC: number,
  lowestC: number,
  extraterrestrial: number,
  coefficient: number,
): number {
  const span = inRange('a highest temperature not below the lowest', highestC - lowestC, 0, 60, 'C');
  inRange('a coefficient', coefficient, 0.1, 0.25, '');
  return coefficient * Math.sqrt(span) * radiation(extraterrestrial);
}

/** Radiation under a clear sky in MJ/m2/day at an elevation of -500 to 6,000 m (FAO-56 eq. 37). */
export function clearSkyRadiation(elevationM: number, extraterrestrial: number): number {
  return (0.75 + 2e-5 * inRange('an elevation', elevationM, -500, 6000, 'm')) * radiation(extraterrestrial);
}

/** Solar radiation kept by the reference crop, MJ/m2/day (FAO-56 eq. 38). */
export function netShortwave(solar: number): number {
  return (1 - albedo) * radiation(solar);
}

/** What the heat radiated by the ground depends on. */
export interface LongwaveInput {
  /** Highest and lowest air temperature of the day, C. */
  readonly highestC: number;
  readonly lowestC: number;
  /** Actual vapour pressure, kPa. */
  readonly vapourPressureKPa: number;
  /** Solar radiation, and that under a clear sky (above 0), MJ/m2/day; their ratio counts as at most 1. */
  readonly solar: number;
  readonly clearSky: number;
}

/** Net heat radiated away in MJ/m2/day (FAO-56 eq. 39, with Kelvin as C + 273.16 as printed there). */
export function netLongwave({ highestC, lowestC, vapourPressureKPa, solar, clearSky }: LongwaveInput): number {
  const emitted = stefanBoltzmann * ((kelvin(highestC) ** 4 + kelvin(lowestC) ** 4) / 2);
  const skyShare = Math.min(1, radiation(solar) / aboveZero('a clear-sky radiation', clearSky, 'MJ/m2/day'));
  return netLongwaveOf(emitted, vapourPressureKPa, skyShare);
}

/**
 * Net heat radiated away in the unit of `emitted` (sigma T^4), through air of a vapour pressure of 0 to 5.8 kPa under a sky that
 * lets through a share of clear-sky radiation, 0 to 1 (the last two factors of FAO-56 eq. 39).
 */
export function netLongwaveOf(emitted: number, vapourPressureKPa: number, skyShare: number): number {
  const damp = 0.34 - 0.14 * Math.sqrt(inRange('a vapour pressure', vapourPressureKPa, 0, 5.8, 'kPa'));
  return emitted * damp * (1.35 * inRange('a share of clear sky', skyShare, 0, 1, '') - 0.35);
}

/** Heat flowing into the soil in a month, MJ/m2/day, from the mean temperatures of the months before and after, C (FAO-56 eq. 43). */
export function monthlySoilHeat(previousMonthC: number, nextMonthC: number): number {
  return 0.07 * (temperature(nextMonthC) - temperature(previousMonthC));
}

function radiation(value: number): number {
  return inRange('a radiation', value, 0, 60, 'MJ/m2/day');
}

function temperature(value: number): number {
  return inRange('an air temperature', value, -60, 60, 'C');
}

function kelvin(value: number): number {
  return temperature(value) + 273.16;
}
