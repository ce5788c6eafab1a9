import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { allowedMass, dilutionVolume, waterVolume } from '../../../../src/core/science/fate/dilution.ts';
import { drainflowConcentration, drainflowLossPercent } from '../../../../src/core/science/fate/drainflow.ts';
import { leachingIndex, shareLeft } from '../../../../src/core/science/fate/leaching.ts';
import { between, expectWithin, outOfRange, type PublishedCall, publishedCallTitle } from '../published.ts';

const gustafson = 'Gustafson 1989, Environ. Toxicol. Chem. 8:339-357; computed';
const regulator = 'UK tier-1 drainflow, data requirements handbook of the regulator';
const spreadsheet = 'first-order decay, multiple-application spreadsheet of the UK regulator';
const ditch = (doseGPerHa: number, kocLPerKg: number) => drainflowConcentration({ doseGPerHa, kocLPerKg });
const july = { doseGPerHa: 60, kocLPerKg: 550, interception: 0.5, decay: { days: 92, halfLifeDays: 200 } };

const rows: PublishedCall[] = [
  ['GUS-47-840', 1.8, 0.005, 'Gustafson 1989; inputs from memory', () => leachingIndex(47, 840)],
  ['GUS-60-800', 1.95, 0.005, gustafson, () => leachingIndex(60, 800)],
  ['GUS-112-840', 2.2, 0.005, gustafson, () => leachingIndex(112, 840)],
  ['GUS-40-840', 1.72, 0.005, gustafson, () => leachingIndex(40, 840)],
  ['GUS-10-840', 1.08, 0.005, gustafson, () => leachingIndex(10, 840)],
  [
    'GUS-reference-atrazine',
    4.33,
    0.005,
    'inputs of US Geological Survey Circular 1291, Appendix 2; computed',
    () => leachingIndex(146, 100),
  ],
  ['uk-drain-ex1 in ug/L', 8.0769, 0.0001, regulator, () => ditch(150, 100)],
  ['uk-drain-ex2 in ug/L', 13.1538, 0.0001, regulator, () => ditch(90, 10)],
  ['uk-drain-ex3 in ug/L', 0.84, 0.005, regulator, () => drainflowConcentration(july)],
  ['uk-drain-840 in ug/L', 32.31, 0.01, `${regulator}; computed`, () => ditch(840, 840)],
  ['uk-drain-840-koc400 in ug/L', 45.23, 0.01, `${regulator}; computed`, () => ditch(840, 400)],
  ['uk-drain-pct-15', 1.9, 0, regulator, () => drainflowLossPercent(15)],
  ['uk-drain-pct-74.9', 1.9, 0, regulator, () => drainflowLossPercent(74.9)],
  ['uk-drain-pct-75', 0.7, 0, regulator, () => drainflowLossPercent(75)],
  ['uk-drain-pct-100', 0.7, 0, regulator, () => drainflowLossPercent(100)],
  ['uk-drain-pct-800', 0.5, 0, regulator, () => drainflowLossPercent(800)],
  ['uk-drain-pct-2000', 0.02, 0, regulator, () => drainflowLossPercent(2000)],
  ['uk-drain-pct-5000', 0.008, 0, regulator, () => drainflowLossPercent(5000)],
  ['sfo-actual-1d', 9.33, 0.0006, spreadsheet, () => 10 * shareLeft(1, 10)],
  ['sfo-actual-7d', 6.156, 0.0006, spreadsheet, () => 10 * shareLeft(7, 10)],
  ['sfo-actual-21d', 2.333, 0.0006, spreadsheet, () => 10 * shareLeft(21, 10)],
  ['sfo-actual-42d', 0.544, 0.0006, spreadsheet, () => 10 * shareLeft(42, 10)],
  ['dilute-1g in m3', 10_000, 0, 'mass over limit; computed (10 million L)', () => dilutionVolume(1, 0.1)],
  ['dilute-1ha in m3', 8_400_000, 0, 'mass over limit; computed', () => dilutionVolume(840, 0.1)],
  ['dilute-1mL-400SC in m3', 4000, 0, 'mass over limit; computed', () => dilutionVolume(0.4, 0.1)],
  ['allowed-mass-10mm in mg', 10, 0, '1 mm on 1 ha is 10,000 L; computed', () => allowedMass(10, 1, 0.1)],
  ['rain-drain-volume in m3', 100, 0, '1 mm on 1 ha is 10 m3; computed', () => waterVolume(10, 1)],
];

describe('illustrations of what reaches water (0.1 ug/L: Drinking Water Directive 98/83/EC, Annex I part B)', () => {
  test.each(rows)(publishedCallTitle, (_id, expected, tolerance, _source, value) => {
    expectWithin(value(), expected, tolerance);
  });

  test('each class of Koc ends just below its limit (same handbook)', () => {
    const around = [75, 500, 1000, 4000].map((limit) => [limit - 0.001, limit].map(drainflowLossPercent));
    expect(around).toEqual([
      [1.9, 0.7],
      [0.7, 0.5],
      [0.5, 0.02],
      [0.02, 0.008],
    ]);
  });

  test('the published half-lives of propyzamide, 10 to 112 days, carry the index across the line of 1.8', () => {
    expect(leachingIndex(10, 840)).toBeLessThan(1.8);
    expect(leachingIndex(112, 840)).toBeGreaterThan(1.8);
  });

  const koc = between(1, 10_000);

  test('a substance that binds more leaches and drains no more than one that binds less', () => {
    fc.assert(
      fc.property(koc, koc, between(1, 400), (a, b, halfLife) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)];
        expect(drainflowLossPercent(more)).toBeLessThanOrEqual(drainflowLossPercent(less));
        expect(leachingIndex(halfLife, more)).toBeLessThanOrEqual(leachingIndex(halfLife, less));
        expect(ditch(2 * halfLife, a)).toBeCloseTo(2 * ditch(halfLife, a), 9);
      }),
    );
  });

  test('half is left after each half-life, and interception or decay never adds', () => {
    const share = between(0, 1);
    fc.assert(
      fc.property(between(0, 500), fc.integer({ min: 1, max: 300 }), share, (days, halfLifeDays, interception) => {
        expect(shareLeft(days + halfLifeDays, halfLifeDays)).toBeCloseTo(shareLeft(days, halfLifeDays) / 2, 12);
        const cut = { doseGPerHa: 840, kocLPerKg: 840, interception, decay: { days, halfLifeDays } };
        expect(drainflowConcentration(cut)).toBeLessThanOrEqual(ditch(840, 840));
      }),
    );
  });

  test.each([
    () => leachingIndex(0, 840),
    () => leachingIndex(47, -1),
    () => shareLeft(-1, 10),
    () => drainflowLossPercent(Number.NaN),
    () => drainflowConcentration({ doseGPerHa: 840, kocLPerKg: 840, interception: 1.5 }),
    () => dilutionVolume(1, 0),
    () => dilutionVolume(Number.NaN, 0.1),
    () => waterVolume(-1, 1),
    () => allowedMass(10, 1, -0.1),
  ])('what cannot be is refused with its code (%#)', (call) => {
    expect(call).toThrow(outOfRange);
  });
});
