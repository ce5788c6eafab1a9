import { referenceEvapotranspirationOfDay } from '../../src/core/science/evapotranspiration/day.ts';
import { referenceEvapotranspirationOfHour } from '../../src/core/science/evapotranspiration/hour.ts';
import { afternoon, uccle } from '../core/science/evapotranspiration/examples.ts';

/** Worked examples of FAO Irrigation and Drainage Paper 56 (Allen, Pereira, Raes & Smith 1998): name, printed value, tolerance. */
export const publishedDays: readonly (readonly [
  name: string,
  expected: number,
  tolerance: number,
  value: () => number,
])[] = [
  ['FAO-56 Example 18 (Uccle, 6 July): 3.9 mm/day', 3.9, 0.05, () => referenceEvapotranspirationOfDay(uccle)],
  [
    "FAO-56 Example 19 (N'Diaye, 1 October, 14 to 15 h): 0.63 mm/h",
    0.63,
    0.005,
    () => referenceEvapotranspirationOfHour(afternoon, 0.8).mm,
  ],
];
