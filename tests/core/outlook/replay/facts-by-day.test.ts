import { describe, expect, test } from 'vitest';
import { coreFacts, type FactId } from '../../../../src/core/facts/registry/index.ts';
import type { Resolved } from '../../../../src/core/facts/types.ts';
import { replayFacts } from '../../../../src/core/outlook/replay/facts-by-day.ts';
import { noonAt } from '../../../../src/core/outlook/replay/soil-temperature.ts';
import type { FactsReplayInput, WeatherDay } from '../../../../src/core/outlook/replay/types.ts';
import { epochSeconds } from '../../../../src/core/units/brands.ts';
import { testParameters } from '../../../generators/parameters.ts';
import { replayField } from '../../../generators/replay-field.ts';
import { daysOf, place } from './mild-days.ts';

const parameters = testParameters();

describe('the facts of each day of a season', () => {
  const wanted: readonly FactId[] = [
    'date',
    'field.latitude',
    'field.longitude',
    'soil.fieldCapacityPercent',
    'soil.drainsRunning',
    'soil.drainsExpected7d',
    'soil.feel',
    'air.deltaTC',
    'crop.frostOnLeaves',
  ];
  const season = { opens: '09-01', lastDay: '09-30' };
  const replayOf = (record: readonly WeatherDay[], more: Partial<FactsReplayInput> = {}) => [
    ...replayFacts({
      parameters,
      registry: coreFacts,
      wanted,
      season,
      place,
      record,
      given: replayField(),
      readingEveryDays: 7,
      ...more,
    }),
  ];
  const factsOn = (record: readonly WeatherDay[], iso: string, more: Partial<FactsReplayInput> = {}) =>
    replayOf(record, more).find((day) => day.iso === iso)!.facts;

  test('are from the record, the place, the model, what follows from them, and what is held', () => {
    const facts = factsOn(daysOf(60), '2026-09-10', {
      given: {
        ...replayField(),
        'soil.feel': {
          known: true,
          type: 'choice',
          possible: ['moist'],
          source: 'said',
          at: epochSeconds(0),
          goodUntil: null,
        },
      },
    });
    const at = noonAt('2026-09-10', place);
    expect(facts['date']).toEqual({
      known: true,
      type: 'date',
      iso: '2026-09-10',
      source: 'derived',
      at,
      goodUntil: null,
    });
    expect(facts['field.latitude']).toMatchObject({ value: 53, low: 53, high: 53, note: 'of the record' });
    expect(facts['field.longitude']).toMatchObject({ value: -1, note: 'of the record' });
    expect(facts['soil.fieldCapacityPercent']).toMatchObject({ source: 'derived', note: 'by the water balance' });
    expect(facts['soil.feel']).toMatchObject({ possible: ['moist'], source: 'said' });
    expect(facts['crop.frostOnLeaves']).toMatchObject({ possible: ['no'], source: 'derived' });
    expect(facts['air.deltaTC']).toEqual({ known: false, reason: 'not-asked' });
    expect(Object.keys(facts)).toEqual(wanted);
  });

  test('drains run after a day whose rain ran through: surely, perhaps or not; none run in a field without', () => {
    const rainOn = (mm: number) => daysOf(60, (at) => (at === 39 ? { rainMm: mm } : {}));
    const running = (mm: number, drained = 'yes') =>
      factsOn(rainOn(mm), '2026-09-10', { given: replayField({ 'field.drained': drained }) })['soil.drainsRunning'];
    const note = 'by the water balance of the day before';
    expect(running(300)).toMatchObject({ possible: ['yes'], note });
    expect(running(0)).toMatchObject({ possible: ['no'], note });
    expect(running(300, 'no')).toMatchObject({ possible: ['no'], note: 'the field is not drained' });
    const wetStart = daysOf(60, (at) => (at === 39 ? { rainMm: 12 } : at < 39 && at > 30 ? { rainMm: null } : {}));
    expect(factsOn(wetStart, '2026-09-10')['soil.drainsRunning']).toMatchObject({ possible: ['yes', 'no'] });
  });

  test('drains are expected by the rain of the day and the six after it, and not of a later one', () => {
    const expectedFor = (rainAt: number, mm = 300, length = 60) =>
      factsOn(
        daysOf(length, (at) => (at === rainAt ? { rainMm: mm } : {})),
        '2026-09-10',
      )['soil.drainsExpected7d'];
    const note = 'by the water balance of the days to come';
    expect(expectedFor(40)).toMatchObject({ possible: ['yes'], note });
    expect(expectedFor(46)).toMatchObject({ possible: ['yes'] });
    expect(expectedFor(47)).toMatchObject({ possible: ['no'], note });
    const unknownBefore = daysOf(60, (at) => ({ rainMm: at === 39 ? null : at === 40 ? 25 : 0 }));
    expect(factsOn(unknownBefore, '2026-09-10')['soil.drainsExpected7d']).toMatchObject({ possible: ['yes', 'no'] });
    expect(expectedFor(40, 0, 47)).toMatchObject({ possible: ['no'] });
    expect(expectedFor(40, 0, 46)).toEqual({ known: false, reason: 'forecast-gap' });
  });

  test('without a texture, or for a pack that asks nothing of drains, water is not followed', () => {
    const { 'field.texture': _, ...untextured } = replayField();
    for (const more of [
      { given: untextured },
      { registry: { 'soil.drainsRunning': coreFacts['soil.drainsRunning'] } },
    ]) {
      const facts = factsOn(daysOf(60), '2026-09-10', more);
      for (const id of ['soil.fieldCapacityPercent', 'soil.drainsRunning', 'soil.drainsExpected7d']) {
        expect(facts[id]).toEqual({ known: false, reason: 'not-asked' } satisfies Resolved);
      }
    }
  });

  test('the soil is read on the first day of each season and every so many days after it', () => {
    const readOn = (readingEveryDays: number) =>
      replayOf(daysOf(62), { wanted: ['soil.temperature30cmC'], readingEveryDays })
        .filter(({ facts }) => {
          const fact = facts['soil.temperature30cmC'];
          return fact?.known && fact.source === 'measured';
        })
        .map(({ iso }) => iso.slice(5));
    expect(readOn(7)).toEqual(['09-01', '09-08', '09-15', '09-22', '09-29']);
    expect(readOn(20)).toEqual(['09-01', '09-21']);
    expect(readOn(1)).toHaveLength(30);
    const years = daysOf(430);
    const first = replayOf(years, { wanted: ['soil.temperature30cmC'], readingEveryDays: 50 }).filter(
      ({ facts }) => facts['soil.temperature30cmC']?.known && facts['soil.temperature30cmC'].source === 'measured',
    );
    expect(first.map(({ season, iso }) => [season, iso])).toEqual([
      [2026, '2026-09-01'],
      [2027, '2027-09-01'],
    ]);
  });

  test('a hole in the record, or a day told twice, is refused with the two days', () => {
    const record = daysOf(60);
    const refusal = (came: string) =>
      expect.objectContaining({
        code: 'SCIENCE_OUT_OF_RANGE',
        details: { expected: 'days that follow each other without a hole', came },
      });
    expect(() => replayOf(record.filter((_, at) => at !== 3))).toThrow(refusal('2026-08-05 after 2026-08-03'));
    expect(() => replayOf([record[0]!, ...record])).toThrow(refusal('2026-08-01 after 2026-08-01'));
  });
});
