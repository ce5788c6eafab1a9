import { describe, expect, test } from 'vitest';
import { coreFacts, type FactId } from '../../../src/core/facts/registry/index.ts';
import { contextOf } from '../../../src/core/facts/resolve.ts';
import type { FactObservation } from '../../../src/core/facts/resolved.ts';
import type { FactDefinition, Resolved } from '../../../src/core/facts/types.ts';
import { type HeldObservation, holdObservations, isHeld } from '../../../src/core/outlook/hold-facts.ts';
import { slowFacts, slowlyMoving } from '../../../src/core/outlook/slow-facts.ts';
import { type EpochSeconds, epochSeconds } from '../../../src/core/units/brands.ts';
import { buildForecast } from '../../generators/forecast.ts';
import { testParameters } from '../../generators/parameters.ts';
import { hoursAfter } from '../facts/moments.ts';
import { morning } from './field.ts';

const zone = 'Europe/London';
const parameters = testParameters();

describe('what was observed is held as an assumption once it has aged', () => {
  test.each<[FactId, boolean]>([
    ['field.drained', true],
    ['soil.feel', true],
    ['soil.surface', true],
    ['crop.trueLeaves', true],
    ['wind.towardsSensitive', true],
    ['treatment.partnerInTank', true],
    ['wind.boomKmh', false],
    ['rain.nowMmPerH', false],
    ['rain.next48hMm', false],
    ['crop.frostOnLeaves', false],
    ['air.inversionRisk', false],
    ['date', false],
  ])('%s: %s', (id, held) => {
    expect(isHeld(id, coreFacts)).toBe(held);
  });

  test('a fact of its own that a pack takes from the forecast only where it stands for the season', () => {
    const own = (goodFor: FactDefinition['goodFor']) => {
      const forecast = { variable: 'rain', take: 'sum', over: 'next-night' } as const;
      return isHeld('own.rain', { 'own.rain': { ...coreFacts['rain.next48hMm'], forecast, goodFor } });
    };
    expect(own({ kind: 'season' })).toBe(true);
    expect(own({ kind: 'same-day' })).toBe(false);
    expect(own({ kind: 'hours', parameter: 'goodForSoilSeenHours' })).toBe(false);
    const seen = (parameter: string) => {
      const { forecast: _, ...bare }: FactDefinition = coreFacts['soil.feel'];
      return isHeld('own.seen', { 'own.seen': { ...bare, goodFor: { kind: 'hours', parameter } } });
    };
    expect([seen('goodForSeenNowHours'), seen('goodForToldForecastHours')]).toEqual([true, true]);
  });
});

describe('an observation in the hours to come', () => {
  const ageing = { zone, parameters, registry: coreFacts, forecast: null };
  const felt = (possible: readonly string[], hoursAgo: number): FactObservation => ({
    fact: 'soil.feel',
    reading: { type: 'choice', possible },
    at: hoursAfter(morning, -hoursAgo),
    source: 'said',
  });
  const held = (observations: readonly FactObservation[], id: FactId = 'soil.feel') =>
    holdObservations(id, observations, morning, ageing);
  const feelOf = (one: Resolved | null) => (one?.known && one.type === 'choice' ? one.possible.join() : one);

  test('stands until it is too old, and is held from then on, too old as it surely is', () => {
    const at = held([felt(['moist'], 4)]);
    const before = at(epochSeconds(hoursAfter(morning, 20) - 1));
    expect([feelOf(before.observed.given), before.aged]).toEqual(['moist', null]);
    const after = at(hoursAfter(morning, 20));
    expect(feelOf(after.observed.given)).toBe('moist');
    expect(after.aged).toMatchObject({ known: false, reason: 'too-old' });
    expect(at(hoursAfter(morning, 99))).toBe(after);
  });

  test('between moments at which something ages it is one object, of several readings too', () => {
    const at = held([felt(['dry'], 20), felt(['moist'], 4)]);
    expect(at(morning)).toBe(at(hoursAfter(morning, 3.9)));
    expect(at(hoursAfter(morning, 4))).toBe(at(hoursAfter(morning, 19.9)));
    expect(at(hoursAfter(morning, 4))).not.toBe(at(hoursAfter(morning, 20)));
    expect(feelOf(at(hoursAfter(morning, 30)).observed.given)).toBe('moist');
  });

  test('that was too old before now is not held: there is nothing to hold', () => {
    const { observed, aged } = held([felt(['moist'], 25)])(hoursAfter(morning, 5));
    expect([observed.given, aged]).toEqual([null, null]);
    expect(observed.unknown).toMatchObject({ reason: 'too-old' });
    expect(held([])(morning)).toMatchObject({ observed: { given: null, told: null, unknown: null }, aged: null });
  });

  test('of the weather just now is given up when it is too old, since the forecast tells it', () => {
    const wind: FactObservation = {
      fact: 'wind.boomKmh',
      reading: { type: 'number', value: 5 },
      at: morning,
      source: 'said',
    };
    const at = held([wind], 'wind.boomKmh');
    expect(at(morning).observed.given).toMatchObject({ value: 5 });
    const later = at(hoursAfter(morning, 1));
    expect([later.observed.given, later.aged]).toEqual([null, null]);
  });

  test('of signs leaves what was seen since, as it surely is', () => {
    const surface = (present: readonly string[], hoursAgo: number): FactObservation => ({
      fact: 'soil.surface',
      reading: { type: 'signs', present, absent: [], complete: false },
      at: hoursAfter(morning, -hoursAgo),
      source: 'said',
    });
    const { observed, aged } = held(
      [surface(['cracked'], 20), surface(['sticky'], 2)],
      'soil.surface',
    )(hoursAfter(morning, 10));
    expect(observed.given).toMatchObject({ present: ['cracked', 'sticky'] });
    expect(aged).toMatchObject({ known: true, present: ['sticky'] });
  });
});

describe('a fact that moves slowly', () => {
  const soil: FactId = 'soil.temperature30cmC';
  const forecast = buildForecast({ from: hoursAfter(morning, -48), hours: 480, fetchedAt: morning });
  const reading: FactObservation = {
    fact: soil,
    reading: { type: 'number', value: 9 },
    at: hoursAfter(morning, -20),
    source: 'measured',
  };
  const ageing = { zone, parameters, registry: coreFacts, forecast };

  /** Looks at a fact hour after hour and keeps which moments were worked out, grown for the days ahead or not. */
  function follow(id: FactId, observations: readonly FactObservation[], weather: typeof forecast | null = forecast) {
    const asked: (readonly [hours: number, grown: boolean])[] = [];
    const heldOf = holdObservations(id, observations, morning, ageing);
    const slow = slowFacts(morning, zone);
    const at = (moment: EpochSeconds, held: HeldObservation = heldOf(moment)) =>
      slow({
        id,
        at: moment,
        held,
        contextAt: (time, grown) => {
          asked.push([(time - morning) / 3600, grown]);
          return contextOf({ observations, forecast: weather, at: time, zone, parameters, registry: coreFacts });
        },
      });
    return { at, asked };
  }

  test('stands as observed while that is good, then as modelled at noon of the day, worked out once a day', () => {
    const { at, asked } = follow(soil, [reading]);
    expect(at(hoursAfter(morning, 3))).toMatchObject({ source: 'measured', value: 9 });
    const carried = at(hoursAfter(morning, 4));
    expect(carried).toMatchObject({ source: 'derived' });
    expect(at(hoursAfter(morning, 14))).toBe(carried);
    expect(at(hoursAfter(morning, 15))).not.toBe(carried);
    // 6 November, 09:00: noon of the day is 3 hours on and noon of the next 27.
    expect(asked).toEqual([
      [3, true],
      [3, false],
      [27, false],
    ]);
  });

  test('is never worked out for a moment before now', () => {
    const { at, asked } = follow('date', []);
    expect(at(hoursAfter(morning, 0))).toMatchObject({ iso: '2026-11-06' });
    expect(at(hoursAfter(morning, 20))).toMatchObject({ iso: '2026-11-07' });
    expect(asked).toEqual([
      [3, true],
      [27, true],
    ]);
    const drains = follow('soil.drainsExpected7d', []);
    drains.at(hoursAfter(morning, 1));
    drains.at(hoursAfter(morning, 4));
    drains.at(hoursAfter(morning, 14));
    drains.at(hoursAfter(morning, 15));
    // Half days of UTC: 00:00 to 12:00, which began before now, and from 12:00, 3 hours on.
    expect(drains.asked).toEqual([
      [0, true],
      [3, true],
      [15, true],
    ]);
  });

  test('is held as observed only where no model tells it', () => {
    const { at } = follow(soil, [reading], null);
    expect(at(hoursAfter(morning, 40))).toMatchObject({ source: 'measured', value: 9 });
    expect(follow(soil, [], null).at(hoursAfter(morning, 40))).toEqual({ known: false, reason: 'not-asked' });
  });

  test('any other is worked out for its own hour', () => {
    const { at, asked } = follow('soil.feel', []);
    at(hoursAfter(morning, 5));
    expect(asked).toEqual([[5, true]]);
    expect(Object.keys(slowlyMoving)).not.toContain('soil.feel');
  });
});
