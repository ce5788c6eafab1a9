import { describe, expect, test } from 'vitest';
import { recordedOwn } from '../../../src/core/outlook/replay/recorded-own.ts';
import type { WeatherDay } from '../../../src/core/outlook/replay/types.ts';
import { loadPack } from '../../../src/core/rules/pack/load-pack.ts';
import { parametersOn } from '../../../src/core/units/parameter.ts';
import { filesOf } from '../../fixtures/mini-pack.ts';
import { springPack } from '../../fixtures/spring-pack.ts';
import { morning } from '../dialogue/talk.ts';

const { pack } = loadPack(filesOf(springPack()));
const parameters = parametersOn(pack.parameters, '2026-04-10');

const day = (iso: string, airMinC: number | null, rainMm: number | null): WeatherDay => ({
  iso,
  airMeanC: 8,
  airMinC,
  airMaxC: 13,
  rainMm,
  windKmh: 10,
  gustKmh: 20,
  referenceMm: null,
  soil30cmC: null,
});
const recorded = (fact: string, ...days: WeatherDay[]) =>
  recordedOwn(pack.facts[fact]!, { at: morning, days, parameters });

describe('a fact of the pack by a record of days', () => {
  test('the coming night is no colder than the colder of the two days', () => {
    const lowest = recorded('air.nightLowestC', day('2026-04-10', 4, 0), day('2026-04-11', -1, 0));
    expect(lowest).toMatchObject({ known: true, value: -1, low: -1, high: -1 });
  });

  test('rain of the hours to come lies between none and that of the day', () => {
    expect(recorded('rain.soonMm', day('2026-04-10', 4, 3), day('2026-04-11', 4, 9))).toMatchObject({
      low: 0,
      high: 3,
    });
    expect(recorded('rain.soonMm', day('2026-04-10', 4, 0), day('2026-04-11', 4, 9))).toMatchObject({
      low: 0,
      high: 0,
    });
  });

  test.each([
    ['a gap', 'air.nightLowestC', [day('2026-04-10', 4, 0), day('2026-04-11', null, 0)]],
    ['the end of the record', 'air.nightLowestC', [day('2026-04-10', 4, 0)]],
    ['a fact that is only asked', 'crop.growthStage', [day('2026-04-10', 4, 0), day('2026-04-11', 4, 0)]],
  ] as const)('%s tells nothing', (_, fact, days) => {
    expect(recorded(fact, ...days)).toBeNull();
  });
});
