import fc from 'fast-check';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { coreFacts, type FactId } from '../../../src/core/facts/registry/index.ts';
import { resolveFacts } from '../../../src/core/facts/resolve.ts';
import type { FactObservation } from '../../../src/core/facts/resolved.ts';
import type { Reading } from '../../../src/core/facts/types.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { factDefinition, factIds } from '../../fixtures/core-facts.ts';
import { buildForecast } from '../../generators/forecast.ts';
import { testParameters } from '../../generators/parameters.ts';
import { hoursAfter, utc } from './moments.ts';

const at = utc('2026-11-06T09:00Z');
const parameters = testParameters();
const base = { forecast: null, at, zone: 'Europe/London', parameters, registry: coreFacts };
const forecast = buildForecast({ from: hoursAfter(at, -9), fetchedAt: at, columns: { precipitationMm: 0.1 } });

function seen(
  fact: FactId,
  reading: Reading,
  hoursAgo = 0,
  source: FactObservation['source'] = 'said',
): FactObservation {
  return { fact, reading, at: hoursAfter(at, -hoursAgo), source };
}

const number = (value: number, band?: readonly [number, number]): Reading =>
  band ? { type: 'number', value, low: band[0], high: band[1] } : { type: 'number', value };
const choice = (...possible: string[]): Reading => ({ type: 'choice', possible });
const doesNotKnow: Reading = { type: 'does-not-know' };

describe('which value stands', () => {
  test('the newest still-good reading stands, whatever its place in the list', () => {
    const observations = [seen('soil.temperature30cmC', number(9), 1), seen('soil.temperature30cmC', number(11), 5)];
    expect(resolveFacts({ ...base, observations })['soil.temperature30cmC']).toMatchObject({ value: 9 });
  });

  test('of two readings at the same time the later in the list stands', () => {
    const observations = [seen('soil.feel', choice('dry')), seen('soil.feel', choice('moist'))];
    expect(resolveFacts({ ...base, observations })['soil.feel']).toMatchObject({ possible: ['moist'] });
  });

  test('eyes outrank the forecast for now', () => {
    const observations = [seen('wind.boomKmh', number(12))];
    const fact = resolveFacts({ ...base, forecast, observations })['wind.boomKmh'];
    expect(fact).toMatchObject({ value: 12, low: 12, high: 12, source: 'said' });
  });

  test('what was seen too long ago gives way to the forecast', () => {
    const observations = [seen('wind.boomKmh', number(12), 1)];
    expect(resolveFacts({ ...base, forecast, observations })['wind.boomKmh']).toMatchObject({ source: 'forecast' });
  });

  test('a given 48 h rain outranks the forecast, a told one yields to a good forecast', () => {
    const given = [seen('rain.next48hMm', number(2))];
    const told = [seen('rain.next48hMm', number(20), 0, 'told')];
    const rain = (observations: FactObservation[], weather: typeof forecast | null) =>
      resolveFacts({ ...base, forecast: weather, observations })['rain.next48hMm'];
    expect(rain(given, forecast)).toMatchObject({ value: 2, source: 'said' });
    expect(rain(told, forecast)).toMatchObject({ value: 6, source: 'forecast' });
    expect(rain(told, null)).toMatchObject({ value: 20, source: 'told' });
    expect(rain(told, { ...forecast, fetchedAt: hoursAfter(at, -48) })).toMatchObject({ value: 20, source: 'told' });
    expect(rain([...told, ...given], forecast)).toMatchObject({ value: 2, source: 'said' });
  });

  test('a given value beats a derived one', () => {
    const observations = [seen('field.drained', choice('no')), seen('soil.drainsRunning', choice('yes'))];
    expect(resolveFacts({ ...base, observations })['soil.drainsRunning']).toMatchObject({ possible: ['yes'] });
  });

  test('an observation more than a minute ahead is not yet so', () => {
    const ahead = (seconds: number) => {
      const observation = { ...seen('soil.feel', choice('moist')), at: epochSeconds(at + seconds) };
      return resolveFacts({ ...base, observations: [observation] })['soil.feel'];
    };
    expect(ahead(60)).toMatchObject({ known: true });
    expect(ahead(61)).toEqual({ known: false, reason: 'not-asked' });
  });
});

describe('why a fact is unknown', () => {
  test.each<[string, FactObservation[], FactId, object]>([
    ['nothing was asked', [], 'soil.feel', { reason: 'not-asked' }],
    ['the person cannot say', [seen('soil.feel', doesNotKnow)], 'soil.feel', { reason: 'person-does-not-know' }],
    ['GB settles no nation', [seen('field.country', choice('GB'))], 'field.country', { reason: 'does-not-settle' }],
    ['nor does UK', [seen('field.country', choice('UK'))], 'field.country', { reason: 'does-not-settle' }],
    ['it is too old', [seen('soil.feel', choice('moist'), 24)], 'soil.feel', { reason: 'too-old' }],
    [
      'too old, and now the person cannot say',
      [seen('soil.feel', choice('moist'), 30), seen('soil.feel', doesNotKnow, 1)],
      'soil.feel',
      { reason: 'person-does-not-know', note: 'moist at 2026-11-05 03:00' },
    ],
    [
      'the number cannot be',
      [seen('soil.temperature30cmC', number(99))],
      'soil.temperature30cmC',
      { reason: 'implausible' },
    ],
    ['the choice does not exist', [seen('soil.feel', choice('soggy'))], 'soil.feel', { reason: 'implausible' }],
    ['the kind is wrong', [seen('soil.feel', number(9))], 'soil.feel', { reason: 'implausible' }],
    [
      'a "does not know" ages too',
      [seen('wind.towardsSensitive', doesNotKnow, 1)],
      'wind.towardsSensitive',
      { reason: 'not-asked' },
    ],
  ])('%s', (_, observations, id, expected) => {
    expect(resolveFacts({ ...base, observations })[id]).toEqual({
      known: false,
      ...toldNote(expected, id),
      ...expected,
    });
  });

  function toldNote(expected: object, id: FactId) {
    const isTooOldFeel = id === 'soil.feel' && 'reason' in expected && expected.reason === 'too-old';
    return isTooOldFeel ? { note: 'moist at 2026-11-05 09:00' } : {};
  }

  test('nothing a person said is lost: not knowing, or GB, later does not erase a reading that is still good', () => {
    const observations = [
      seen('field.country', choice('GB-ENG'), 100),
      seen('field.country', choice('GB'), 1),
      seen('soil.feel', choice('moist'), 2),
      seen('soil.feel', doesNotKnow, 1),
    ];
    const facts = resolveFacts({ ...base, observations });
    expect(facts['field.country']).toMatchObject({ possible: ['GB-ENG'] });
    expect(facts['soil.feel']).toMatchObject({ possible: ['moist'] });
  });

  test('where the person cannot say, derivation and forecast still can', () => {
    const observations = [
      seen('wind.boomKmh', doesNotKnow),
      seen('soil.drainsRunning', doesNotKnow),
      seen('field.drained', choice('no')),
    ];
    const facts = resolveFacts({ ...base, forecast, observations });
    expect(facts['wind.boomKmh']).toMatchObject({ known: true, source: 'forecast' });
    expect(facts['soil.drainsRunning']).toMatchObject({ known: true, source: 'derived' });
  });
});

describe('precision', () => {
  test.each<[Reading, object]>([
    [number(9.994), { value: 9.99, low: 9.99, high: 9.99 }],
    [number(9.995), { value: 10, low: 10, high: 10 }],
    [number(10.004, [9.996, 10.004]), { value: 10, low: 9.99, high: 10.01 }],
    [number(-0.001), { value: 0, low: 0, high: 0 }],
    [number(1.005, [1.005, 1.01]), { value: 1.01, low: 1, high: 1.01 }],
  ])('%j is kept as %j', (reading, kept) => {
    const observations = [seen('soil.temperature30cmC', reading)];
    expect(resolveFacts({ ...base, observations })['soil.temperature30cmC']).toMatchObject(kept);
  });

  test('a band of what nobody can see yet stands at its cautious end', () => {
    const observations = [seen('rain.next48hMm', number(9, [8, 11]))];
    const fact = resolveFacts({ ...base, observations })['rain.next48hMm'];
    expect(fact).toMatchObject({ value: 11, low: 11, high: 11, note: 'cautious end of the band 8 to 11' });
  });

  test('a forecast told in words keeps its band: no choice straddles a limit', () => {
    const observations = [seen('rain.next48hMm', number(12, [10, 500]), 0, 'told')];
    expect(resolveFacts({ ...base, observations })['rain.next48hMm']).toMatchObject({ value: 12, low: 10, high: 500 });
  });

  const numberIds = factIds.filter((id) => {
    const definition = factDefinition(id);
    return definition.type === 'number' && definition.cautiousEnd === undefined;
  });
  const banded = fc.record({ id: fc.constantFrom(...numberIds), share: fc.double({ min: 0, max: 1, noNaN: true }) });

  test('widening a band in an observation never narrows the band resolved', () => {
    const width = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(banded, width, width, width, width, ({ id, share }, down, up, moreDown, moreUp) => {
        const [lowest, highest] = factDefinition(id).range!;
        const value = lowest + (highest - lowest) * share;
        const band = (d: number, u: number): [number, number] => [
          Math.max(lowest, value - d),
          Math.min(highest, value + u),
        ];
        const [narrow, wide] = [band(down, up), band(down + moreDown, up + moreUp)].map((ends) => {
          return resolveFacts({ ...base, observations: [seen(id, number(value, ends))] })[id];
        });
        if (!narrow?.known || narrow.type !== 'number' || !wide?.known || wide.type !== 'number') throw new Error(id);
        expect(wide.low).toBeLessThanOrEqual(narrow.low);
        expect(wide.high).toBeGreaterThanOrEqual(narrow.high);
        expect(narrow.low).toBeLessThanOrEqual(narrow.value);
        expect(narrow.high).toBeGreaterThanOrEqual(narrow.value);
      }),
    );
  });
});

describe('resolving is pure', () => {
  afterEach(() => {
    vi.useRealTimers();
  });

  const observations = [
    seen('soil.temperature30cmC', number(10.4), 60),
    seen('soil.temperature30cmC', number(9.8), 2),
    seen('field.drained', choice('yes'), 500),
    seen('field.texture', choice('clay', 'clay-loam'), 500),
    seen('field.latitude', number(53), 500),
    seen('field.longitude', number(-1), 500),
    seen('soil.feel', choice('moist'), 3),
    seen('air.temperatureC', number(6), 0.5),
    seen('soil.surface', { type: 'signs', present: ['friable'], absent: [], complete: true }, 3),
  ];

  test('the order of observations of different facts does not matter', () => {
    const expected = resolveFacts({ ...base, forecast, observations });
    fc.assert(
      fc.property(fc.shuffledSubarray(observations, { minLength: observations.length }), (shuffled) => {
        expect(resolveFacts({ ...base, forecast, observations: shuffled })).toEqual(expected);
      }),
      { numRuns: 30 },
    );
  });

  test('every fact of the registry is accounted for', () => {
    expect(Object.keys(resolveFacts({ ...base, observations }))).toEqual(factIds);
  });

  test('the clock of the machine is not read', () => {
    const expected = resolveFacts({ ...base, forecast, observations });
    for (const now of ['2001-01-01T00:00Z', '2026-10-25T01:30Z', '2040-06-30T23:59Z']) {
      vi.useFakeTimers({ now: new Date(now) });
      expect(resolveFacts({ ...base, forecast, observations })).toEqual(expected);
    }
  });

  test('every known value says until when it may be relied on, and that is not past', () => {
    for (const fact of Object.values(resolveFacts({ ...base, forecast, observations }))) {
      if (fact?.known) expect(fact.goodUntil).toBeGreaterThan(at);
    }
  });
});
