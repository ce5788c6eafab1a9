import { describe, expect, test } from 'vitest';
import { carriedOver } from '../../../src/core/dialogue/carried-over.ts';
import { joinSaidTwice } from '../../../src/core/dialogue/said-twice.ts';
import { emptyState, type State, type StateObservation } from '../../../src/core/dialogue/state.ts';
import type { OfferedReading } from '../../../src/core/dialogue/take-readings.ts';
import type { FactId } from '../../../src/core/facts/registry/index.ts';
import type { Reading } from '../../../src/core/facts/types.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { fieldOf, filled, morning, pressed, stamp, started, type Told, take, talk } from './talk.ts';

const { pack } = shipped;
const world = { pack, forecast: null };

describe('what goes along to another field', () => {
  const mill = {
    ...fieldOf({ 'field.latitude': 54, 'field.longitude': -2, 'field.country': 'GB-ENG' }),
    id: 'mill-piece',
  };
  const at = (minutes: number) => epochSeconds(morning + minutes * 60);
  const carriedFrom = (told: Told[], to: Parameters<typeof carriedOver>[1], minutes = 10) =>
    carriedOver(talk(told, world).state, to, at(minutes), pack);

  test('is nothing before the start, of a field without a name, and where nothing was told', () => {
    expect(carriedOver(emptyState, mill, at(1), pack)).toBeNull();
    expect(carriedFrom([started(pack), pressed('partner', 'yes')], mill)).toBeNull();
    expect(carriedFrom([started(pack, { ...mill, observations: [] })], mill)).toBeNull();
  });

  test('is what the field brought of the farm too, with field and moment', () => {
    expect(carriedFrom([started(pack, mill)], null)).toEqual({
      from: { id: 'mill-piece', name: 'Mill Piece' },
      observations: [
        {
          fact: 'field.country',
          reading: { type: 'choice', possible: ['GB-ENG'] },
          at: morning - 600,
          source: 'profile',
          doubtful: false,
          quote: null,
        },
      ],
    });
  });

  test('is the newest of what was told twice, and nothing that was not yet told then', () => {
    const told = [started(pack, mill), pressed('partner', 'yes'), pressed('partner', 'no')];
    const partner = (minutes: number) =>
      carriedFrom(told, null, minutes)?.observations.find(({ fact }) => fact === 'treatment.partnerInTank')?.reading;
    expect(partner(2)).toEqual({ type: 'choice', possible: ['no'] });
    expect(partner(1)).toBeUndefined();
  });

  test('is no weather that the profile of a field nearby brought', () => {
    const windy = { ...fieldOf({ 'field.latitude': 54, 'field.longitude': -2, 'wind.boomKmh': 5 }), id: 'windy' };
    const carried = (told: Told[]) =>
      carriedFrom(told, { ...mill, id: 'next' })?.observations.map(({ fact }) => fact) ?? [];
    expect(carried([started(pack, windy)])).not.toContain('wind.boomKmh');
    expect(carried([started(pack, mill), filled('wind', { 'wind.boomKmh': 5 })])).toContain('wind.boomKmh');
  });

  test('is nothing on which two devices differ', () => {
    const other = { ...pressed('country', 'scotland'), ...stamp(1, 2, 'tablet') } as Parameters<typeof take>[1];
    const { state } = take(
      talk(
        [started(pack, { ...mill, observations: mill.observations.slice(0, 2) }), pressed('country', 'england')],
        world,
      ),
      other,
      world,
    );
    expect(carriedOver(state, null, at(5), pack)?.observations.map(({ fact }) => fact) ?? []).not.toContain(
      'field.country',
    );
  });
});

describe('a temperature said twice within the hour', () => {
  const number = (value: number): Reading => ({ type: 'number', value });
  const soil = 'soil.temperature30cmC';
  const earlier = (reading: Reading, minutesAgo = 30, fact: FactId = soil): StateObservation => ({
    fact,
    reading,
    at: epochSeconds(morning - minutesAgo * 60),
    source: 'said',
    event: 'e',
    device: 'phone',
    doubtful: false,
    quote: null,
  });
  const offered = (value: number, more: Partial<OfferedReading> = {}): OfferedReading => ({
    fact: soil,
    reading: number(value),
    quote: `${value}`,
    doubtful: false,
    agoHours: 0,
    ...more,
  });
  const joined = (one: OfferedReading, observations: StateObservation[], isCorrection = false) => {
    const state: State = { ...emptyState, observations };
    const {
      offered: [first],
      differ,
    } = joinSaidTwice([one], state, morning, isCorrection);
    return [first?.reading, differ];
  };

  test.each<[string, OfferedReading, StateObservation[], boolean, Reading, string[]]>([
    ['spans both', offered(10), [earlier(number(9))], false, { type: 'number', value: 9.5, low: 9, high: 10 }, ['10']],
    [
      'without words of its own, with an empty quote',
      offered(10, { quote: null }),
      [earlier(number(9))],
      false,
      { type: 'number', value: 9.5, low: 9, high: 10 },
      [''],
    ],
    ['is the new one where it corrects', offered(10), [earlier(number(9))], true, number(10), []],
    ['is the new one where both are the same', offered(9), [earlier(number(9))], false, number(9), []],
    ['is the new one where the other is older', offered(10), [earlier(number(9), 61)], false, number(10), []],
    [
      'is the new one where the other was not known',
      offered(10),
      [earlier({ type: 'does-not-know' })],
      false,
      number(10),
      [],
    ],
    [
      'is the new one where it was itself read hours ago',
      offered(10, { agoHours: 5 }),
      [earlier(number(9))],
      false,
      number(10),
      [],
    ],
    ['is the new one where nothing was said', offered(10), [], false, number(10), []],
    [
      'is left alone for another fact',
      offered(10, { fact: 'air.temperatureC' }),
      [earlier(number(9), 30, 'air.temperatureC')],
      false,
      number(10),
      [],
    ],
    [
      'counts the newest number, past a "don\'t know"',
      offered(10),
      [earlier(number(9), 40), earlier({ type: 'does-not-know' }, 20)],
      false,
      { type: 'number', value: 9.5, low: 9, high: 10 },
      ['10'],
    ],
  ])('%s', (_, one, observations, isCorrection, reading, differ) => {
    expect(joined(one, observations, isCorrection)).toEqual([reading, differ]);
  });
});
