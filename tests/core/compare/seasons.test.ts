import { describe, expect, test } from 'vitest';
import { factsComeOutAlike } from '../../../src/core/compare/fact-parameters.ts';
import { compareSeasons, fieldOfFacts, plainField, type Side, seasonRules } from '../../../src/core/compare/index.ts';
import type { ResolvedFacts } from '../../../src/core/facts/resolved.ts';
import type { WeatherDay } from '../../../src/core/outlook/replay/index.ts';
import { compileRules } from '../../../src/core/rules/compile.ts';
import type { Pack } from '../../../src/core/rules/pack-types.ts';
import { utc } from '../facts/moments.ts';
import { sidesOf } from './sides.ts';
import { good, parametersWith, smallPack, smallSide } from './small-pack.ts';

const day = '2026-11-06';
const place = { latitude: 53, longitude: -1, elevationM: 80 };

/** Invented days in a row whose wind at 10 m is given, km/h; nothing else is recorded. */
function windy(first: string, ...winds: readonly (number | null)[]): WeatherDay[] {
  const from = Date.parse(`${first}T00:00Z`);
  return winds.map((windKmh, at) => ({
    iso: new Date(from + at * 86_400_000).toISOString().slice(0, 10),
    airMeanC: 8,
    airMinC: null,
    airMaxC: null,
    rainMm: 0,
    windKmh,
    gustKmh: null,
    referenceMm: null,
    soil30cmC: 8,
  }));
}

function seasonsOf(a: Side, b: Side, days: readonly WeatherDay[], given: ResolvedFacts) {
  const station = { name: 'Top brow', place, days };
  return [...compareSeasons({ ...seasonRules(sidesOf(a, b), day), station, given, readingEveryDays: 1 })];
}

/** The facts of the small pack's good day, without those that the record tells. */
function held(replaced: Readonly<Record<string, unknown>> = {}): ResolvedFacts {
  const { 'wind.boomKmh': _wind, 'soil.temperature30cmC': _soil, ...others } = good;
  return fieldOfFacts({ ...others, ...replaced }, utc('2026-11-06T12:00Z'), smallPack()).resolved;
}

describe('seasons of a record under both rule sets', () => {
  test('are told day by day with what changed, by which rules, which windows differ and what was only held', () => {
    const calmer = smallSide({ parameters: parametersWith('windMostKmh', { value: 5 }) });
    const [one, ...more] = seasonsOf(smallSide(), calmer, windy('2021-11-06', 2, 2, 14, 14, 2, 60), held());
    expect(more).toEqual([]);
    const [spray, changed, wait] = [
      { a: 'spray-today', b: 'spray-today' },
      { a: 'spray-today', b: 'wait' },
      { a: 'wait', b: 'wait' },
    ];
    expect(one).toEqual({
      station: 'Top brow',
      season: 2021,
      first: '2021-11-06',
      verdicts: [spray, spray, changed, changed, spray, wait],
      transitions: [
        { ...spray, way: 'same', count: 3 },
        { ...changed, way: 'stricter', count: 2 },
        { ...wait, way: 'same', count: 1 },
      ],
      changed: [
        { iso: '2021-11-08', ...changed, way: 'stricter', by: ['too-windy'] },
        { iso: '2021-11-09', ...changed, way: 'stricter', by: ['too-windy'] },
      ],
      windows: [
        {
          change: 'shrinks',
          a: [{ first: 0, last: 4 }],
          b: [
            { first: 0, last: 1 },
            { first: 4, last: 4 },
          ],
        },
      ],
      held: ['field.country', 'soil.feel', 'soil.fieldCapacityPercent', 'soil.surface'],
    });
  });

  test('a pack without a season has the whole year, beside one with a season too; each year is a season', () => {
    const months = [
      { ...smallPack().parameters[0]!, id: 'seasonOpens', value: '10-01', unit: 'month-day' },
      { ...smallPack().parameters[0]!, id: 'seasonLastDay', value: '01-31', unit: 'month-day' },
    ];
    const seasonal = smallSide({ parameters: [...smallPack().parameters, ...months] });
    const half = smallSide({ parameters: [...smallPack().parameters, months[0]!] });
    const yearLong = { opens: '01-01', lastDay: '12-31' };
    expect(seasonRules(sidesOf(seasonal, seasonal), day).season).toEqual({ opens: '10-01', lastDay: '01-31' });
    expect(seasonRules(sidesOf(smallSide(), seasonal), day).season).toEqual(yearLong);
    expect(seasonRules(sidesOf(half, half), day).season).toEqual(yearLong);
    const seasons = seasonsOf(smallSide(), seasonal, windy('2021-12-30', 2, 2, 2), held());
    expect(seasons.map(({ season, first, verdicts }) => [season, first, verdicts.length])).toEqual([
      [2021, '2021-12-30', 2],
      [2022, '2022-01-01', 1],
    ]);
    expect(seasonsOf(seasonal, seasonal, windy('2021-06-01', 2, 2), held())).toEqual([]);
  });

  test('a fact that only one of them defines is told by the record for that one, though the other facts are shared', () => {
    const pack = smallPack();
    const night = {
      ...pack.facts['air.temperatureC']!,
      forecast: { variable: 'air-temperature', take: 'mean', over: 'now' },
    } as const;
    const cold = { ...pack.rules[0]!, id: 'cold', when: { fact: 'own.airC', below: 'soilWarmC' } };
    const b = smallSide({ facts: { ...pack.facts, 'own.airC': night }, rules: [...pack.rules, cold] });
    const days = windy('2021-11-06', 2, 2).map((one) => ({ ...one, airMinC: 2, airMaxC: 9 }));
    const [season] = seasonsOf(smallSide(), b, days, held());
    expect(season!.changed.map(({ way, by }) => [way, by])).toEqual(Array(2).fill(['stricter', ['cold']]));
  });

  test('each is judged on facts of its own where a parameter by which facts are worked out differs', () => {
    // Wind at a boom 8 m above the crop is near that at 10 m, at one of 0.5 m it is some half of it.
    const [low, high] = [0.5, 8].map((value) =>
      smallSide({ parameters: parametersWith('boomHeightAboveCropM', { value }) }),
    );
    const days = windy('2021-11-06', 12, 12);
    for (const [a, b, way] of [
      [low!, high!, 'stricter'],
      [high!, low!, 'looser'],
    ] as const) {
      const [season] = seasonsOf(a, b, days, held());
      expect(season!.changed.map((one) => [one.way, one.by])).toEqual(Array(2).fill([way, ['too-windy']]));
    }
  });
});

describe('facts come out the same under two rule sets', () => {
  const compiled = (change: Partial<Pack> = {}) => compileRules({ ...smallPack(), ...change }, day);
  const { facts } = smallPack();
  const wind = facts['wind.boomKmh']!;

  test.each<[string, boolean, Partial<Pack>]>([
    ['where only a limit of a rule differs', true, { parameters: parametersWith('windMostKmh', { value: 8 }) }],
    [
      'where a parameter of the same value has another source',
      true,
      { parameters: parametersWith('cropHeightM', { source: 'x' }) },
    ],
    ['where one knows a fact that the other does not', true, { facts: { ...facts, 'own.fact': wind } }],
    ['where one does not read a fact', true, { rules: [] }],
    ['not where the height of the crop differs', false, { parameters: parametersWith('cropHeightM', { value: 0.5 }) }],
    [
      'not where a fact is defined otherwise',
      false,
      { facts: { ...facts, 'wind.boomKmh': { ...wind, precision: 1 } } },
    ],
    [
      'not where one lacks a parameter that a fact is worked out by',
      false,
      { parameters: smallPack().parameters.filter(({ id }) => id !== 'cropHeightM') },
    ],
  ])('%s: %s', (_, alike, change) => {
    expect(factsComeOutAlike(compiled(), compiled(change))).toBe(alike);
    expect(factsComeOutAlike(compiled(change), compiled())).toBe(alike);
  });
});

describe('a field that is held through seasons', () => {
  test('holds what a file gives, as it stood, without its age; not the date, what is not known, or what follows from it', () => {
    const at = utc('2026-11-06T12:00Z');
    const json = { date: '2026-11-06', 'wind.boomKmh': 5, 'soil.feel': null, 'soil.surface': ['cracked'] };
    const field = fieldOfFacts(json, at, smallPack());
    expect(field.facts).toEqual(json);
    expect(field.resolved).toEqual({
      'wind.boomKmh': expect.objectContaining({ known: true, value: 5, at, goodUntil: null }),
      'soil.surface': expect.objectContaining({ known: true, present: ['cracked'], at, goodUntil: null }),
    });
  });

  test('is that of the fullest case that is to be sprayed, and holds nothing where there is none or it cannot be read', () => {
    const sprayed = (facts: Readonly<Record<string, unknown>>): Side => {
      const { pack, cases } = smallSide({}, [facts]);
      return { pack, cases: cases.map((one) => ({ ...one, expect: { verdict: 'spray-today' } })) };
    };
    const { facts, resolved } = plainField(sprayed({ ...good, 'field.drained': null }));
    expect(facts).toEqual({ ...good, 'field.drained': null });
    expect(Object.keys(resolved).toSorted()).toEqual(Object.keys(good).toSorted());
    expect(Object.values(resolved)).toEqual(Array(6).fill(expect.objectContaining({ known: true, goodUntil: null })));
    const nothing = { facts: {}, resolved: {} };
    expect(plainField(smallSide({}, [good]))).toEqual(nothing);
    expect(plainField(sprayed({ 'wind.boomKmh': 'much' }))).toEqual(nothing);
    const faulty = new Proxy<Record<string, never>>(
      {},
      {
        ownKeys: () => {
          throw new RangeError('broken');
        },
      },
    );
    expect(() => plainField(sprayed(faulty))).toThrow(new RangeError('broken'));
  });
});
