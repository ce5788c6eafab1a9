import { describe, expect, test } from 'vitest';
import { coreFacts, isFactOf } from '../../src/core/facts/registry/index.ts';

import { epochSeconds } from '../../src/core/units/brands.ts';
import { variableMeanings, weatherVariables } from '../../src/core/weather/variables.ts';
import { hollinBankFarm } from '../../src/demo/hollin-bank-farm.ts';
import { demoPacks, tryDemo } from './support.ts';

/** Real moments at which somebody may try the program: the four seasons, night, a clock change, a leap day. */
const moments = [
  '2026-01-15T12:00:00Z',
  '2026-03-29T01:30:00Z',
  '2026-07-01T23:59:59.700Z',
  '2026-11-25T04:00:00.300Z',
  '2028-02-29T16:20:00Z',
].map((iso) => Date.parse(iso) / 1000);

describe('the demo farm', () => {
  describe.each([
    ['mill-piece', 'spray-today', 6],
    ['top-brow', 'wait', 0],
    ['long-ing', 'do-not-spray', 0],
    ['barn-close', 'spray-today', 5],
  ])('%s comes to %s', (field, verdict, mostQuestions) => {
    test.each(moments)(`after at most ${mostQuestions} questions when tried at %d`, async (at) => {
      const outcome = await tryDemo(field, at);
      expect([outcome.verdict?.verdict, outcome.questions.length <= mostQuestions]).toEqual([verdict, true]);
    });

    test('and says wherever it shows that it is invented', async () => {
      const { labels, verdict: given } = await tryDemo(field, moments[0]!);
      expect(labels).toContain('"invented":true');
      expect(labels).toMatch(/an invented field on \d+ (?:November|April)/);
      expect(given?.forecastText).toMatch(/invented/i);
    });
  });

  test('the verdicts stand for the reasons of the scenario', async () => {
    const [topBrow, longIng] = await Promise.all([tryDemo('top-brow', moments[0]!), tryDemo('long-ing', moments[0]!)]);
    const met = ({ verdict }: typeof topBrow) =>
      verdict?.reasons.filter(({ outcome }) => outcome === 'met').map(({ rule }) => rule);
    expect(met(topBrow)).toEqual(['heavy-rain-coming']);
    expect(met(longIng)).toEqual(['water-risk-field', 'water-risk-drained']);
  });

  test('four fields, each named, marked as invented, for one treatment that is there, with facts that it knows', () => {
    expect(hollinBankFarm.map(({ profile }) => profile.name)).toEqual([
      'Mill Piece',
      'Long Ing',
      'Top Brow',
      'Barn Close',
    ]);
    for (const { profile, packs } of hollinBankFarm) {
      const [pack] = demoPacks.filter(({ id }) => packs.includes(id));
      const facts = pack?.facts ?? coreFacts;
      expect([packs.length, pack?.id]).toEqual([1, packs[0]]);
      expect(profile).toMatchObject({ invented: true, note: expect.stringMatching(/^[A-Z].*\.$/) });
      expect(profile.observations.map(({ fact }) => fact).filter((fact) => !isFactOf(facts, fact))).toEqual([]);
      const place = profile.observations.filter(({ fact }) => /itude$/.test(fact));
      for (const { reading } of place)
        expect(reading).toMatchObject({ value: expect.closeTo(Math.round((reading as { value: number }).value), 9) });
    }
  });
});

describe('the invented weather', () => {
  const [field] = hollinBankFarm;
  const at = epochSeconds(field!.inventedNow + 1234);
  const forecast = field!.forecastAt(at);

  test('is whole, hourly, from 7 days back to 8 ahead, and marked as invented', () => {
    expect(forecast).toMatchObject({ invented: true, fetchedAt: at, attribution: expect.stringMatching(/^Invented/) });
    expect(forecast.times).toHaveLength((7 + 8) * 24 + 1);
    expect(forecast.times.every((time, index) => time === forecast.times[0]! + index * 3600)).toBe(true);
    expect(forecast.times[168]).toBe(Math.floor(at / 3600) * 3600);
    for (const variable of weatherVariables) {
      const [low, high] = variableMeanings[variable].range;
      const column = forecast.values[variable]!;
      expect(column).toHaveLength(forecast.times.length);
      expect(column.filter((value) => value === null || !(value >= low && value <= high))).toEqual([]);
    }
  });

  test('is the same however often and from whichever hour it is looked at', () => {
    const later = field!.forecastAt(epochSeconds(at + 5 * 3600));
    for (const variable of weatherVariables) {
      expect(later.values[variable]!.slice(0, -5)).toEqual(forecast.values[variable]!.slice(5));
    }
  });

  test('gusts are never below the wind and the dew point is never above the air', () => {
    const { windSpeed10mKmh: wind, windGusts10mKmh: gusts, temperature2mC: air, dewPoint2mC: dew } = forecast.values;
    expect(gusts!.every((gust, index) => gust! >= wind![index]!)).toBe(true);
    expect(dew!.every((point, index) => point! <= air![index]!)).toBe(true);
  });
});
