import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { textureClasses } from '../../../../src/core/science/soil/texture-class.ts';
import { deficitOfState, startState, stepWater, type WaterFlow } from '../../../../src/core/science/water/balance.ts';
import { type Cover, type SoilStore, soilStoreOf } from '../../../../src/core/science/water/soil-store.ts';
import { between, expectWithin, outOfRange } from '../published.ts';

const covers: readonly Cover[] = [
  { kind: 'crop', coefficient: 0.35 },
  { kind: 'crop', coefficient: 1.15 },
  { kind: 'bare' },
];
const anyStore = fc
  .tuple(fc.constantFrom(...textureClasses), fc.constantFrom(...covers), fc.constantFrom(0.1, 0.3, 0.6, 1))
  .map(([texture, cover, depthM]) => soilStoreOf(texture, depthM, cover));
const flow = fc.record({
  rainMm: fc.oneof(fc.constant(0), between(0, 60)),
  referenceMm: between(-0.5, 12),
});
const flows = fc.array(flow, { minLength: 1, maxLength: 20 });
const start = between(-60, 90);

function run(store: SoilStore, startMm: number, through: readonly WaterFlow[]) {
  let state = startState(startMm, store);
  let used = 0;
  let surplus = 0;
  for (const one of through) {
    const end = stepWater(state, one, store.drying);
    state = end.state;
    used += end.usedMm;
    surplus += end.surplusMm;
    expect(deficitOfState(state)).toBeGreaterThanOrEqual(0);
    expect(Math.min(state.upperMm, state.lowerMm)).toBeGreaterThanOrEqual(0);
    expect(end.surplusMm).toBeGreaterThanOrEqual(0);
  }
  return { deficit: deficitOfState(state), used, surplus };
}

describe('a step of the soil water balance', () => {
  test.each([
    [20, 5, 1, 16, 0],
    [3, 10, 0.5, 0, 6.5],
    [0, 0, 0.5, 0.5, 0],
    [0, 8, 0, 0, 8],
    [-6, 0, 0.5, 0, 5.5],
  ])(
    '%d mm lacking, %d mm of rain and %d mm used leave %d mm lacking and %d mm to drain',
    (before, rainMm, used, deficit, surplus) => {
      const drying = { totalMm: 100, readyMm: 60, coefficient: 1 };
      const end = stepWater(startState(before, { dryingShare: 1 }), { rainMm, referenceMm: used }, drying);
      expectWithin(deficitOfState(end.state), deficit, 1e-9);
      expectWithin(end.surplusMm, surplus, 1e-9);
    },
  );

  test('no water is lost: rain is used, runs through, or fills what lacked, to 1e-9 mm', () => {
    fc.assert(
      fc.property(anyStore, start, flows, (store, before, through) => {
        const { deficit, used, surplus } = run(store, before, through);
        const rain = through.reduce((sum, { rainMm }) => sum + rainMm, 0);
        expect(Math.abs(deficit - surplus - (before - rain + used))).toBeLessThan(1e-9);
      }),
    );
  });

  test('more rain never leaves a larger deficit or a smaller surplus, whatever came before and after', () => {
    const more = between(0, 40);
    fc.assert(
      fc.property(anyStore, start, flows, more, fc.nat(), (store, before, through, extra, at) => {
        const wetter = through.map((one, index) =>
          index === at % through.length ? { ...one, rainMm: one.rainMm + extra } : one,
        );
        const [with0, with1] = [run(store, before, through), run(store, before, wetter)];
        expect(with1.deficit).toBeLessThanOrEqual(with0.deficit + 1e-9);
        expect(with1.surplus).toBeGreaterThanOrEqual(with0.surplus - 1e-9);
      }),
    );
  });

  test('a drier start never ends wetter, and what dries never passes what the layer gives', () => {
    fc.assert(
      fc.property(anyStore, start, start, flows, (store, one, other, through) => {
        const [wet, dry] = [run(store, Math.min(one, other), through), run(store, Math.max(one, other), through)];
        expect(wet.deficit).toBeLessThanOrEqual(dry.deficit + 1e-9);
        const { upperMm } = stepWater(startState(0, store), { rainMm: 0, referenceMm: 12 }, store.drying).state;
        expect(upperMm).toBeLessThanOrEqual(store.drying.totalMm + 1e-9);
      }),
    );
  });

  test('hours and the day that they make up agree where nothing runs short', () => {
    const store = soilStoreOf('clay-loam', 0.3, { kind: 'crop', coefficient: 0.35 });
    const hours = Array.from({ length: 24 }, () => ({ rainMm: 0.1, referenceMm: 0.05 }));
    const inHours = run(store, 10, hours);
    const inOne = run(store, 10, [{ rainMm: 2.4, referenceMm: 1.2 }]);
    expectWithin(inHours.deficit, inOne.deficit, 1e-9);
  });

  test('bare soil dries fast at first, then hardly; a young crop goes on slowly', () => {
    const dryWeek = Array.from({ length: 20 }, () => ({ rainMm: 0, referenceMm: 2 }));
    const bare = soilStoreOf('loam', 0.3, { kind: 'bare' });
    const early = run(bare, 0, dryWeek.slice(0, 3)).used / 3;
    const whole = run(bare, 0, dryWeek).used;
    expectWithin(early, 2.4, 1e-9);
    expect(whole).toBeLessThan(bare.drying.totalMm);
    expect(whole / 20).toBeLessThan(early / 2);
    const crop = soilStoreOf('loam', 0.3, { kind: 'crop', coefficient: 0.35 });
    expectWithin(run(crop, 0, dryWeek).used, 14, 1e-9);
  });

  test.each([
    () => startState(Number.NaN, { dryingShare: 1 }),
    () => startState(5000, { dryingShare: 1 }),
    () => run(soilStoreOf('clay', 0.3, { kind: 'bare' }), 0, [{ rainMm: -1, referenceMm: 0 }]),
    () => run(soilStoreOf('clay', 0.3, { kind: 'bare' }), 0, [{ rainMm: 0, referenceMm: 99 }]),
    () => soilStoreOf('clay', 5, { kind: 'bare' }),
    () => soilStoreOf('clay', 0.3, { kind: 'crop', coefficient: -1 }),
  ])('what cannot be is refused with its code (%#)', (call) => {
    expect(call).toThrow(outOfRange);
  });
});
