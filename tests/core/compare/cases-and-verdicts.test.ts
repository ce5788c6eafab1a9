import { describe, expect, test } from 'vitest';
import { compareNearLimits, compareOnCases, compareOnVerdicts, type Side } from '../../../src/core/compare/index.ts';
import type { SavedVerdict } from '../../../src/core/compare/types.ts';
import type { Pack, PackCase } from '../../../src/core/rules/pack-types.ts';
import { resolveCase } from '../../../src/core/rules/resolve-case.ts';
import { sidesOf } from './sides.ts';
import { good, parametersWith, ruleWith, smallPack, smallSide } from './small-pack.ts';

const calmer = { parameters: parametersWith('windMostKmh', { value: 4 }) };

/** A pack with a fact of its own that one more rule reads. */
function withOwnFact(): Pack {
  const pack = smallPack();
  const [windy] = pack.rules;
  return {
    ...pack,
    facts: { ...pack.facts, 'own.gateShut': { ...pack.facts['treatment.alreadyApplied']! } },
    rules: [...pack.rules, { ...windy!, id: 'gate-shut', when: { fact: 'own.gateShut', is: 'yes' } }],
  };
}

/** Facts that cannot even be looked at: a fault of a program, not of what a person gave. */
const faulty = new Proxy<Record<string, never>>(
  {},
  {
    get: () => {
      throw new RangeError('broken');
    },
    ownKeys: () => {
      throw new RangeError('broken');
    },
  },
);
const faultyCase: PackCase = { ...smallSide({}, [good]).cases[0]!, facts: faulty };

describe('cases under both rule sets', () => {
  test('that differ are told with verdict, rules met, what lifts them and dose of each, and by which rules', () => {
    const b = smallSide({
      rules: ruleWith('too-windy', { effect: 'stop', lifts: 'days' }).rules,
    });
    const a = smallSide({}, [good, { ...good, 'wind.boomKmh': 12 }]);
    expect(compareOnCases(sidesOf(a, b))).toEqual({
      transitions: [
        { a: 'spray-today', b: 'spray-today', way: 'same', count: 1 },
        { a: 'wait', b: 'do-not-spray', way: 'stricter', count: 1 },
      ],
      differing: [
        {
          name: 'B',
          file: 'cases/1.json',
          way: 'stricter',
          a: { verdict: 'wait', met: ['late', 'too-windy'], lifts: { 'too-windy': 'hours' }, dose: { needs: [] } },
          b: {
            verdict: 'do-not-spray',
            met: ['late', 'too-windy'],
            lifts: { 'too-windy': 'days' },
            dose: { needs: [] },
          },
          by: ['too-windy'],
        },
      ],
      notJudged: [],
    });
  });

  test('that stand in both are judged once, as A has them; those of B alone are judged after those of A', () => {
    const windy = { ...good, 'wind.boomKmh': 5 };
    const [a, b] = [smallSide({}, [windy]), smallSide(calmer, [windy, windy, windy])];
    const moved: Side = {
      pack: b.pack,
      cases: b.cases.map((one, at) => ({
        ...one,
        name: at === 1 ? 'other' : 'A',
        file: `cases/b${at}.json`,
        at: at === 2 ? '2026-11-07T12:00:00Z' : '2026-11-06T12:00:00Z',
      })),
    };
    expect(compareOnCases(sidesOf(a, moved)).differing.map(({ name, file }) => [name, file])).toEqual([
      ['A', 'cases/0.json'],
      ['other', 'cases/b1.json'],
      ['A', 'cases/b2.json'],
    ]);
  });

  test('that give a fact of one pack alone are judged without it by the other', () => {
    const b: Side = { pack: withOwnFact(), cases: smallSide({}, [{ ...good, 'own.gateShut': 'yes' }]).cases };
    const { differing, notJudged } = compareOnCases(sidesOf(smallSide(), b));
    expect([differing.map(({ way, by }) => [way, by]), notJudged]).toEqual([[['stricter', ['gate-shut']]], []]);
  });

  test('that cannot be judged are named with the reason; a fault of the program is no such reason', () => {
    const broken = smallSide({}, [{ ...good, 'wind.boomKmh': 'much' }]);
    expect(compareOnCases(sidesOf(broken, smallSide()))).toMatchObject({
      transitions: [],
      differing: [],
      notJudged: [{ name: 'A', error: { code: 'FACT_WRONG_TYPE', fact: 'wind.boomKmh' } }],
    });
    const side: Side = { ...smallSide(), cases: [faultyCase] };
    expect(() => compareOnCases(sidesOf(side, smallSide()))).toThrow(new RangeError('broken'));
  });
});

describe('saved verdicts under both rule sets', () => {
  const saved = (facts: object, change: Partial<SavedVerdict> = {}): SavedVerdict => {
    const { pack, cases } = smallSide({}, [{ ...good, ...facts }]);
    const { id, version, hash } = pack;
    const at = '2026-11-06T12:00:00.000Z';
    return {
      verdict: 'spray-today',
      at,
      facts: resolveCase(cases[0]!, pack).facts,
      pack: { id, version, hash },
      ...change,
    };
  };

  test('are told where they come out otherwise under A, under B, or than they did then', () => {
    const told = compareOnVerdicts(sidesOf(smallSide(), smallSide(calmer)), [
      saved({ 'wind.boomKmh': 3 }),
      saved({ 'wind.boomKmh': 3 }, { verdict: 'wait' }),
      saved({ 'wind.boomKmh': 5 }),
      saved({ 'wind.boomKmh': 5 }, { verdict: 'wait' }),
      saved({ 'wind.boomKmh': 20 }, { verdict: 'wait' }),
    ]);
    const at = '2026-11-06T12:00:00.000Z';
    const stricter = { at, a: 'spray-today', b: 'wait', way: 'stricter', by: ['too-windy'] };
    expect(told).toEqual({
      verdicts: 5,
      transitions: [
        { a: 'spray-today', b: 'spray-today', way: 'same', count: 2 },
        { a: 'spray-today', b: 'wait', way: 'stricter', count: 2 },
        { a: 'wait', b: 'wait', way: 'same', count: 1 },
      ],
      asThen: 3,
      differing: [
        { at, saved: 'wait', a: 'spray-today', b: 'spray-today', way: 'same', by: [] },
        { ...stricter, saved: 'spray-today' },
        { ...stricter, saved: 'wait' },
      ],
      notKept: [],
      unjudged: [],
    });
  });

  test('say which facts that either reads now were not kept, and which verdicts are of another pack', () => {
    const b = { ...smallSide(), pack: { ...withOwnFact(), id: 'pack-b' } };
    const ofB = { ...saved({}).pack, id: 'pack-b' };
    const told = compareOnVerdicts(sidesOf(smallSide(), b), [
      saved({}),
      saved({}, { pack: ofB }),
      saved({}, { pack: { ...ofB, id: 'third' } }),
    ]);
    expect(told.notKept).toEqual(['own.gateShut']);
    expect([told.asThen, told.differing.map((one) => one.b)]).toEqual([2, ['wait', 'wait']]);
    expect(told.unjudged).toMatchObject([
      { count: 1, error: { code: 'PACK_UNKNOWN', expected: 'a verdict of mini-pack', came: 'third' } },
    ]);
  });

  test('a fault of the program is not counted as one that could not be judged', () => {
    const sides = sidesOf(smallSide(), smallSide());
    expect(() => compareOnVerdicts(sides, [saved({}, { facts: faulty })])).toThrow(new RangeError('broken'));
  });
});

describe('facts near every limit', () => {
  const near = (a: Side, b: Side, pairs = 0) => compareNearLimits(sidesOf(a, b), { seed: 1, pairs });

  test('move one fact alone, then two, on a day on which all is well, and keep the plainest example', () => {
    const a = smallSide({}, [good]);
    const b = smallSide({ parameters: parametersWith('windMostKmh', { value: 8 }) }, [good]);
    const { transitions, ...rest } = near(a, b, 100);
    expect(rest).toEqual({
      base: { name: 'A', file: 'cases/0.json', day: '2026-11-06', moved: {} },
      alone: 29,
      pairs: 100,
      changed: transitions[0]!.count,
    });
    expect(transitions).toMatchObject([
      {
        a: 'spray-today',
        b: 'wait',
        way: 'stricter',
        alone: 2,
        example: { facts: { 'wind.boomKmh': 9.6 }, by: ['too-windy'] },
      },
    ]);
    expect(near(a, b).transitions).toMatchObject([{ count: 2, alone: 2 }]);
    expect(near(a, b, 1000).pairs).toBe(near(a, b, 2000).pairs);
  });

  test('begin from the fullest case that most of the two call spray today, whichever side gives it', () => {
    const { 'soil.fieldCapacityPercent': _, ...fewer } = good;
    const more = { ...good, 'crop.trueLeaves': 5 };
    const baseOf = (a: Side, b: Side) => near(a, b).base?.name;
    const calm = { 'wind.boomKmh': 3 };
    expect(baseOf(smallSide({}, [fewer, good, { ...more, 'wind.boomKmh': 12 }]), smallSide())).toBe('B');
    expect(baseOf(smallSide({}, [more, { ...good, ...calm }]), smallSide(calmer))).toBe('B');
    expect(baseOf(smallSide(), smallSide({}, [fewer, good]))).toBe('B');
    expect(baseOf(smallSide({}, [{ ...good, 'wind.boomKmh': 'much' }, fewer]), smallSide())).toBe('B');
    expect(near(smallSide(), smallSide())).toEqual({ base: null, alone: 0, pairs: 0, changed: 0, transitions: [] });
    const side: Side = { ...smallSide(), cases: [faultyCase] };
    expect(() => near(side, smallSide())).toThrow(new RangeError('broken'));
  });

  test('where no case is well under both, as few facts as bring that about are moved first', () => {
    const bad = { ...good, 'wind.boomKmh': 12, 'soil.temperature30cmC': 14, 'soil.surface': ['cracked'] };
    const { base, transitions } = near(smallSide({}, [bad]), smallSide(calmer));
    expect(base?.moved).toEqual({ 'wind.boomKmh': 4, 'soil.temperature30cmC': 10 });
    expect(transitions).toMatchObject([{ a: 'spray-today', b: 'wait', example: { by: ['too-windy'] } }]);
  });

  test('a fact that only one of the two reads is moved too', () => {
    const { transitions } = near(smallSide({}, [good]), { pack: withOwnFact(), cases: [] });
    expect(transitions).toMatchObject([{ way: 'stricter', example: { by: ['gate-shut'] } }]);
  });
});
