/** A class of the USDA texture triangle. */
export type TextureClass =
  | 'sand'
  | 'loamy-sand'
  | 'sandy-loam'
  | 'loam'
  | 'silt-loam'
  | 'silt'
  | 'sandy-clay-loam'
  | 'clay-loam'
  | 'silty-clay-loam'
  | 'sandy-clay'
  | 'silty-clay'
  | 'clay';

/** Sand and clay of a soil, percent by mass of the mineral part under 2 mm; the rest is silt. */
export interface SandAndClay {
  readonly sandPercent: number;
  readonly clayPercent: number;
}

/** A typical soil of each class (Saxton & Rawls 2006, Soil Sci. Soc. Am. J. 70:1569-1578, Table 3). */
export const classCentres: Readonly<Record<TextureClass, SandAndClay>> = {
  sand: { sandPercent: 88, clayPercent: 5 },
  'loamy-sand': { sandPercent: 80, clayPercent: 5 },
  'sandy-loam': { sandPercent: 65, clayPercent: 10 },
  loam: { sandPercent: 40, clayPercent: 20 },
  'silt-loam': { sandPercent: 20, clayPercent: 15 },
  silt: { sandPercent: 10, clayPercent: 5 },
  'sandy-clay-loam': { sandPercent: 60, clayPercent: 25 },
  'clay-loam': { sandPercent: 30, clayPercent: 35 },
  'silty-clay-loam': { sandPercent: 10, clayPercent: 35 },
  'sandy-clay': { sandPercent: 50, clayPercent: 40 },
  'silty-clay': { sandPercent: 10, clayPercent: 45 },
  clay: { sandPercent: 25, clayPercent: 50 },
};

/** Every texture class, from light to heavy as the triangle lists them. */
export const textureClasses = Object.keys(classCentres) as readonly TextureClass[];
