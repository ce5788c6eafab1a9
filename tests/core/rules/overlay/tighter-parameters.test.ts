import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { momentOfFacts, parseFacts } from '../../../../src/core/facts/parse/index.ts';
import { resolveFacts } from '../../../../src/core/facts/resolve.ts';
import { compileRules } from '../../../../src/core/rules/compile.ts';
import { indirectReach } from '../../../../src/core/rules/overlay/protect/parameter-kinds.ts';
import { protectedFacts } from '../../../../src/core/rules/overlay/protect/world.ts';
import { reachedFacts } from '../../../../src/core/rules/reach.ts';
import { evaluateReference } from '../../../../src/core/rules/reference.ts';
import { isProtected } from '../../../../src/core/rules/types.ts';
import { epochSeconds } from '../../../../src/core/units/brands.ts';
import { type Parameter, parametersOn } from '../../../../src/core/units/parameter.ts';
import { verdictWord } from '../../../../src/core/verdict/verdict-of.ts';
import { inventedForecast } from '../../../../src/demo/invented-weather.ts';
import { shipped as cases } from '../../../cases/shipped-pack.ts';
import { factDefinition } from '../../../fixtures/core-facts.ts';
import { apply, parameter, shipped } from './overlay-of.ts';

const day = '2026-11-06';
const words = ['spray-today', 'wait', 'do-not-spray'];
const height = { 'not-met': 0, unknown: 1, met: 2 } as const;
const hour = 3600;

/** Parameters that the program reads by the way and that bear on a protected rule or the dose. */
const read = () =>
  shipped.parameters.filter(
    ({ id, value }) => typeof value === 'number' && indirectReach(id, protectedFacts(shipped, day), factDefinition),
  );

const movedBy = ({ value }: Parameter, share: number) => Number(value) * share;

/** What the rules say of facts as they were told, some hours later, with a forecast fetched some hours before that. */
function judge(
  pack: Pick<typeof shipped, 'parameters'>,
  told: Readonly<Record<string, unknown>>,
  later: number,
  fetchedBefore: number | null,
) {
  const seen = momentOfFacts(told, shipped.zone, shipped.facts) ?? epochSeconds(0);
  const at = epochSeconds(seen + later * hour);
  const facts = resolveFacts({
    observations: parseFacts(told, seen, shipped.zone, shipped.facts),
    forecast: fetchedBefore === null ? null : inventedForecast(epochSeconds(at - fetchedBefore * hour)),
    at,
    zone: shipped.zone,
    parameters: parametersOn(pack.parameters, day),
    registry: reachedFacts(shipped),
  });
  return evaluateReference(compileRules({ ...shipped, parameters: pack.parameters }, day), facts);
}

describe('a parameter that the program itself reads', () => {
  test('may be moved by an overlay only where that can but bring the facts nearer to a protected rule', () => {
    const taken = (share: number) =>
      read()
        .filter((one) => apply({ parameters: [parameter(one.id, movedBy(one, share))] }).ok)
        .map(({ id }) => id);
    expect(taken(1.25)).toEqual([
      'inversionWindBelowKmh',
      'inversionCloudAtMostPercent',
      'inversionBeforeSunsetHours',
      'inversionAfterSunriseHours',
    ]);
    expect(taken(0.8)).toEqual([
      'drainsSurplusMm',
      'deficitDepthM',
      'youngCropCoefficient',
      'usualDoseGPerHa',
      'severeDoseGPerHa',
    ]);
    expect(read().length).toBeGreaterThan(30);
  });

  test.each([
    // The wind was measured at the boom 45 minutes ago; the forecast is calm. Had it grown too old, the forecast would count.
    ['goodForSeenNowHours', { 'wind.boomKmh': 15 }, 0.75, 0.5, 'too-windy', 'not-met'],
    ['goodForSoilSeenHours', { 'soil.surface': ['ponded'] }, 13, 0.5, 'water-standing', 'unknown'],
    ['forecastWindBandShare', { 'wind.boomKmh': null }, 0, 3, 'too-windy', 'unknown'],
  ])(
    '%s is refused where it would trust less, since a rule that is met might no longer be',
    (id, told, later, share, rule, outcome) => {
      const [facts] = cases.cases.filter((one) => one.facts['date'] === day);
      const place = { 'field.latitude': 54, 'field.longitude': -2 };
      const all = Object.fromEntries(
        Object.entries({ ...facts?.facts, ...place, ...told }).filter(([, value]) => value !== null),
      );
      const parameters = shipped.parameters.map((one) =>
        one.id === id ? { ...one, value: movedBy(one, share) } : one,
      );
      const of = (pack: Pick<typeof shipped, 'parameters'>) =>
        judge(pack, all, later, 0).find((one) => one.rule === rule)?.outcome;
      expect([of(shipped), of({ parameters })]).toEqual(['met', outcome]);
      expect(
        apply({ parameters: [parameter(id, movedBy(shipped.parameters.find((one) => one.id === id)!, share))] }).ok,
      ).toBe(false);
    },
  );
});

test('whatever of them an overlay moves, no protected rule comes out better, at any age of what was told, with or without a forecast', () => {
  const kept = new Set(shipped.rules.filter(isProtected).map(({ id }) => id));
  const ofDay = cases.cases.filter(({ facts }) => facts['date'] === day).map(({ facts }) => facts);
  const move = fc.tuple(fc.constantFrom(...read()), fc.constantFrom(0.3, 0.8, 1.25, 3));
  const world = fc.record({
    told: fc.constantFrom(...ofDay),
    without: fc.array(
      fc.constantFrom(
        'wind.boomKmh',
        'air.inversionRisk',
        'soil.drainsExpected7d',
        'rain.next48hMm',
        'crop.frostOnLeaves',
      ),
    ),
    place: fc.constantFrom({}, { 'field.latitude': 54, 'field.longitude': -2 }),
    later: fc.constantFrom(0, 0, 0.75, 4, 7, 13, 25, 80, 200),
    fetchedBefore: fc.constantFrom(null, 0, 0, 3, 7, 40),
  });
  let [taken, stricter] = [0, 0];
  fc.assert(
    fc.property(
      fc.array(move, { minLength: 1, maxLength: 2 }),
      fc.array(world, { minLength: 6, maxLength: 6 }),
      (moves, worlds) => {
        const parameters = moves.map(([one, share]) => parameter(one.id, movedBy(one, share)));
        const overlaid = apply({ parameters });
        if (!overlaid.ok) return;
        taken += 1;
        for (const { told, without, place, later, fetchedBefore } of worlds) {
          const facts = Object.fromEntries(
            Object.entries({ ...told, ...place }).filter(([fact]) => !without.some((one) => one === fact)),
          );
          const was = judge(shipped, facts, later, fetchedBefore);
          const is = judge(overlaid.pack, facts, later, fetchedBefore);
          const now = new Map(is.map(({ rule, outcome }) => [rule, height[outcome]]));
          for (const { rule, outcome } of was) {
            if (kept.has(rule)) expect(now.get(rule), rule).toBeGreaterThanOrEqual(height[outcome]);
            if (now.get(rule)! > height[outcome]) stricter += 1;
          }
          const [before, after] = [was, is].map((trace) => words.indexOf(verdictWord(trace)));
          expect(after).toBeGreaterThanOrEqual(before!);
        }
      },
    ),
    { numRuns: 400, endOnFailure: true },
  );
  expect(taken).toBeGreaterThan(20);
  expect(stricter).toBeGreaterThan(0);
});
