import { describe, expect, test } from 'vitest';
import { decidingOf, reasonChoices } from '../../../src/core/practice/deciding.ts';
import { parseDaySet, parseReview } from '../../../src/core/practice/files.ts';
import { hangTogether } from '../../../src/core/practice/hang-together.ts';
import { judgeDay, tryDay } from '../../../src/core/practice/judge-day.ts';
import { seeded } from '../../../src/core/practice/seeded.ts';
import type { JudgedDay, PracticeDay } from '../../../src/core/practice/types.ts';
import { verdictWord } from '../../../src/core/verdict/verdict-of.ts';
import { traceOf } from '../../generators/outcomes.ts';
import { good, smallPack } from '../compare/small-pack.ts';
import { utc } from '../facts/moments.ts';

describe('wind and gusts, or the rain of an hour and of two days', () => {
  const facts = (boom: unknown, gust: unknown) => ({ 'wind.boomKmh': boom, 'wind.gustKmh': gust, other: 'kept' });
  const moved = { 'wind.boomKmh': 1 };
  const gusts = { 'wind.gustKmh': 1 };
  test.each<[string, object, object, object | null]>([
    ['that hang together stay', facts(5, 9), moved, facts(5, 9)],
    ['that are the same stay, both moved', facts(5, 5), { ...moved, ...gusts }, facts(5, 5)],
    ['of which the wind was moved above raise the gusts', facts(9, 5), moved, facts(9, 9)],
    ['of which neither was moved raise the gusts', facts(9, 5), {}, facts(9, 9)],
    ['of which the gusts were moved below lower the wind', facts(9, 5), gusts, facts(5, 5)],
    ['that were both moved apart cannot be', facts(9, 5), { ...moved, ...gusts }, null],
    ['of which one is told as a band stay', facts(9, { low: 1, high: 2 }), moved, facts(9, { low: 1, high: 2 })],
    ['of which one is not known stay', facts(null, 5), moved, facts(null, 5)],
    ['of which the wind has no value stay', facts(undefined, 5), moved, facts(undefined, 5)],
    ['of which the other is not known stay', facts(9, undefined), moved, facts(9, undefined)],
    [
      'the rain of two days is raised to its heaviest hour',
      { 'rain.next48hMaxMmPerH': 6, 'rain.next48hMm': 4 },
      { 'rain.next48hMaxMmPerH': 6 },
      { 'rain.next48hMaxMmPerH': 6, 'rain.next48hMm': 6 },
    ],
  ])('%s', (_, given, put, together) => {
    expect(hangTogether(given as Record<string, unknown>, put as Record<string, unknown>)).toEqual(together);
  });
});

describe('what looks like chance', () => {
  // From the code itself: a day kept by its seed must come out the same in every version.
  test('is the same for the same seed, in every version', () => {
    const { below, shuffled } = seeded('a');
    expect([below(1000), below(1000), below(1000), shuffled([1, 2, 3, 4, 5, 6, 7, 8]).join('')]).toMatchInlineSnapshot(`
      [
        394,
        76,
        110,
        "12738645",
      ]
    `);
    expect([
      seeded('').below(1_000_000),
      seeded('ab').below(1_000_000),
      seeded('ba').below(1_000_000),
    ]).toMatchInlineSnapshot(`
      [
        923005,
        934078,
        769366,
      ]
    `);
  });

  test('stays in its range and reaches all of it; a list in another order has the same things', () => {
    const { below, shuffled } = seeded('b');
    const numbers = Array.from({ length: 200 }, () => below(3));
    expect([...new Set(numbers)].toSorted()).toEqual([0, 1, 2]);
    expect([below(1), below(0)]).toEqual([0, 0]);
    const list = [1, 2, 3, 4, 5];
    expect(shuffled(list).toSorted()).toEqual(list);
    expect(list).toEqual([1, 2, 3, 4, 5]);
    expect(shuffled([])).toEqual([]);
  });
});

describe('a day judged', () => {
  const at = '2026-11-06T12:00:00Z';
  test('says what is met, the leading first, what is not known and what is worth knowing', () => {
    const { 'soil.temperature30cmC': _, ...facts } = { ...good, 'wind.boomKmh': 12, 'field.country': 'FR' };
    const judged = judgeDay({ facts: { ...facts, 'soil.feel': 'dry' }, at }, smallPack())!;
    expect(judged).toMatchObject({
      at: utc('2026-11-06T12:00Z'),
      verdict: 'do-not-spray',
      met: ['elsewhere', 'too-dry', 'too-windy'],
      unknown: ['warm-and-dry'],
      advice: ['late'],
    });
    const { 'wind.boomKmh': __, ...still } = good;
    expect(judgeDay({ facts: still, at }, smallPack())).toMatchObject({
      verdict: 'wait',
      met: [],
      unknown: ['too-windy'],
    });
  });

  test('has the moment of its date where none is given, and is none without either', () => {
    expect(judgeDay({ facts: { ...good, date: '2026-07-03' } }, smallPack())).toMatchObject({
      at: utc('2026-07-03T11:00Z'),
      advice: [],
      verdict: 'spray-today',
    });
    expect(judgeDay({ facts: good }, smallPack())).toBeNull();
    expect(tryDay({ facts: good }, smallPack())).toBeNull();
  });

  test('whose facts cannot be read is none where it is only tried, and an error where it is judged', () => {
    const day = { facts: { 'wind.boomKmh': 'much' }, at };
    expect(tryDay(day, smallPack())).toBeNull();
    expect(() => judgeDay(day, smallPack())).toThrow(/^FACT_/);
    const broken = { ...smallPack(), rules: null } as unknown as ReturnType<typeof smallPack>;
    expect(() => tryDay({ facts: good, at }, broken)).toThrow(TypeError);
  });
});

/** A day of rules named by what they do: "s" stops, "h" holds, "a" advises; "!" met, "?" not known, "-" not met. */
function judgedOf(...rules: readonly string[]): JudgedDay {
  const effects = { s: 'stop', h: 'hold', a: 'advise' } as const;
  const outcomes = { '!': 'met', '?': 'unknown', '-': 'not-met' } as const;
  const trace = rules.map((one) =>
    traceOf(one, effects[one[0] as 's'], outcomes[one.at(-1) as '!'], { lifts: 'days' }),
  );
  const named = (kinds: string, outcome: string) =>
    rules
      .filter((one) => kinds.includes(one[0]!) && one.endsWith(outcome))
      .toSorted((a, b) => (a[0]! > b[0]! ? -1 : 1));
  return {
    at: utc('2026-11-06T12:00Z'),
    facts: {},
    trace,
    verdict: verdictWord(trace),
    met: named('sh', '!'),
    unknown: named('sh', '?'),
    advice: named('a', '!'),
  };
}

describe('what decides a day', () => {
  test.each<[string[], string[], boolean]>([
    [['h1!', 'h2!', 'h3-'], ['h1!', 'h2!'].toSorted((a, b) => (a < b ? -1 : 1)), false],
    [['h1!', 's2!', 'h3?'], ['s2!'], false],
    [['h1!', 's2?'], ['h1!'], false],
    [['h1?', 's2?', 'a3?', 'h4-'], ['h1?', 's2?'], false],
    [['h1-', 'a2!', 'a3-'], ['a2!'], true],
    [['h1-'], [], true],
  ])('of %j is %j', (rules, deciding, nothing) => {
    const found = decidingOf(judgedOf(...rules));
    expect([[...found.rules].toSorted(), found.nothing]).toEqual([deciding, nothing]);
  });
});

describe('reasons offered', () => {
  const day: PracticeDay = { id: 'd', rule: 'h1!', kind: 'inside', facts: {}, at: '2026-11-06T12:00:00Z' };
  const offered = (rules: readonly string[], more: Partial<PracticeDay> = {}, seed = 's') => {
    const judged = judgedOf(...rules);
    const pack = { ...smallPack(), rules: rules.map((id) => ({ ...smallPack().rules[0]!, id, topic: id[0]! })) };
    return reasonChoices({ ...day, ...more }, judged, pack, seed);
  };

  test('are six at most: two of those that decide at most, and the one that the day is about', () => {
    const rules = ['h1!', 'h2!', 'h3!', 'h4-', 'h5-', 'h6-', 'h7-', 's8-', 'a9-'];
    for (const seed of ['s', 't', 'u', 'v', 'w']) {
      const found = offered(rules, { rule: 'h4-' }, seed);
      expect(found).toHaveLength(6);
      expect(found).toEqual(rules.filter((one) => found.includes(one)));
      expect(found.filter((one) => one.endsWith('!'))).toHaveLength(2);
      expect(found).toContain('h4-');
    }
  });

  test('are all that there are, where there are few, in the order of the files', () => {
    expect(offered(['a9-', 'h1!', 'h2-'])).toEqual(['a9-', 'h1!', 'h2-']);
    expect(offered(['h1!'], { rule: 'gone' })).toEqual(['h1!']);
  });

  test('hold the nearest of the others: half of what is left is of the same topic', () => {
    const rules = ['h1!', 's2-', 's3-', 's4-', 's5-', 's6-', 's7-', 'h8-', 'h9-', 'h0-'];
    for (const seed of ['s', 't', 'u'])
      expect(offered(rules, {}, seed)).toEqual(expect.arrayContaining(['h8-', 'h9-', 'h0-']));
    expect(offered(rules, {}, 's')).not.toEqual(offered(rules, {}, 't'));
  });
});

describe('a file of days', () => {
  const pack = smallPack();
  const day = {
    id: 'd1',
    rule: 'too-windy',
    kind: 'weather',
    facts: { 'wind.boomKmh': 12 },
    at: '2026-11-06T12:00:00Z',
  };
  const set = {
    format: 'loamward-practice-days',
    pack: { id: pack.id, hash: 'h' },
    place: 'P',
    season: 2025,
    days: [day],
  };

  test('is read as it is', () => {
    expect(parseDaySet(set, pack, 'a.json')).toEqual(set);
    const near = { ...set, days: [{ ...day, near: { fact: 'wind.boomKmh', within: null } }] };
    expect(parseDaySet(near, pack, 'a.json')).toEqual(near);
  });

  test.each<[string, object, string]>([
    ['another format', { ...set, format: 'days' }, '/format'],
    ['no days', { ...set, days: [] }, '/days'],
    ['a day of no kind', { ...set, days: [{ ...day, kind: 'other' }] }, '/days/0/kind'],
    ['a day without a name', { ...set, days: [{ ...day, id: '' }] }, '/days/0/id'],
    ['a day about no rule', { ...set, days: [{ ...day, rule: '' }] }, '/days/0/rule'],
    ['half a season', { ...set, season: 2025.5 }, '/season'],
    ['something more', { ...set, more: 1 }, ''],
  ])('with %s is refused with its place', (_, json, pointer) => {
    const details = expect.objectContaining({ expected: 'a set of practice days', file: 'a.json', pointer });
    expect(() => parseDaySet(json, pack, 'a.json')).toThrow(
      expect.objectContaining({ code: 'PRACTICE_FILE_MISFIT', details }),
    );
  });

  test('with a day whose facts cannot be read is refused by the error of that fact', () => {
    const json = { ...set, days: [day, { ...day, facts: { 'wind.boomKmh': 'much' } }] };
    expect(() => parseDaySet(json, pack, 'a.json')).toThrow(/^FACT_/);
  });

  test('of answers is read row by row, and a row of another form is refused', () => {
    const row = { rule: 'r', kind: 'inside', at: 5, day: 'd', verdict: 'wait', result: 'right', reason: null };
    expect(parseReview(row, 'r.json')).toEqual(row);
    expect(parseReview({ ...row, reason: 'r', typed: 'wind' }, 'r.json')).toEqual({
      ...row,
      reason: 'r',
      typed: 'wind',
    });
    const details = { expected: 'an answer to a practice day', file: 'r.json', pointer: '/verdict' };
    expect(() => parseReview({ ...row, verdict: 'never' }, 'r.json')).toThrow(
      expect.objectContaining({ code: 'PRACTICE_FILE_MISFIT', details: expect.objectContaining(details) }),
    );
  });
});
