import { describe, expect, test } from 'vitest';
import { type Difference, differencesOf } from '../../../src/core/compare/index.ts';
import type { Pack } from '../../../src/core/rules/pack-types.ts';
import { parametersWith, smallPack } from './small-pack.ts';

const told = (all: readonly Difference[]) =>
  all.map((one) => [
    one.kind,
    one.id,
    one.before && one.after ? 'both' : one.before ? 'only A' : 'only B',
    one.kind === 'parameter' ? [one.from, one.way] : one.parts,
  ]);
const changedTo = (change: Partial<Pack>) => {
  const pack = smallPack();
  return [differencesOf(pack, { ...pack, ...change }), differencesOf({ ...pack, ...change }, pack)].map(told);
};

describe('what differs in writing', () => {
  test('is told by kind: parameters, rules, questions, cautions, terms, facts, with the parts that differ', () => {
    const pack = smallPack();
    const term = { id: 'friable', words: { en: ['friable'] }, text: { en: 'Crumbles.' }, source: 'invented for tests' };
    const other: Pack = {
      ...pack,
      parameters: parametersWith('windMostKmh', { value: 8 }),
      rules: pack.rules.map((one) => (one.id === 'too-dry' ? { ...one, effect: 'stop', lifts: 'days' } : one)),
      questions: pack.questions.map((one) => (one.id === 'wind' ? { ...one, effortSeconds: 12 } : one)),
      cautions: pack.cautions.map((one) => ({ ...one, text: { en: 'Read it.' } })),
      glossary: [term],
      facts: { ...pack.facts, 'wind.boomKmh': { ...pack.facts['wind.boomKmh']!, label: 'wind' } },
    };
    expect(told(differencesOf(pack, other))).toEqual([
      ['parameter', 'windMostKmh', 'both', ['2020-01-01', 'tighter']],
      ['rule', 'too-dry', 'both', ['effect', 'lifts']],
      ['question', 'wind', 'both', ['effortSeconds']],
      ['caution', 'label-in-hand', 'both', ['text']],
      ['term', 'friable', 'only B', []],
      ['fact', 'wind.boomKmh', 'both', ['label']],
    ]);
  });

  test('what only one has is told with it, the other being null, those of A first; a part that only one has is a part that differs', () => {
    const { rules, questions } = smallPack();
    const [windy, ...others] = rules;
    const added = { ...windy!, id: 'added' };
    expect(changedTo({ rules: [added, ...others] })).toEqual([
      [
        ['rule', 'too-windy', 'only A', []],
        ['rule', 'added', 'only B', []],
      ],
      [
        ['rule', 'added', 'only A', []],
        ['rule', 'too-windy', 'only B', []],
      ],
    ]);
    const drawn = questions.map((one) => (one.id === 'surface' ? { ...one, forDose: true as const } : one));
    expect(changedTo({ questions: drawn })).toEqual(Array(2).fill([['question', 'surface', 'both', ['forDose']]]));
  });
});

describe('a parameter that differs', () => {
  test.each<[string, Partial<Pack['parameters'][number]>, unknown, unknown]>([
    ['windMostKmh', { value: 8 }, 'tighter', 'looser'],
    ['soilDryPercent', { value: 85 }, 'tighter', 'looser'],
    ['countries', { value: ['GB-ENG'] }, 'tighter', 'looser'],
    ['seasonStart', { value: '10-15' }, null, null],
    ['windMostKmh', { source: 'another source' }, null, null],
  ])('%s with %j is %s, and %s the other way round', (id, change, way, back) => {
    const from = '2020-01-01';
    expect(changedTo({ parameters: parametersWith(id, change) })).toEqual(
      [way, back].map((one) => [['parameter', id, 'both', [from, one]]]),
    );
  });

  test('names the rules that read it, in either rule set, those through a reference too, each once', () => {
    const pack = smallPack();
    const readBy = (a: Pack, b: Pack) => differencesOf(a, b).flatMap((one) => ('readBy' in one ? [one.readBy] : []));
    const drier = { ...pack, parameters: parametersWith('soilDryPercent', { value: 85 }) };
    expect(readBy(pack, drier)).toEqual([['too-dry', 'warm-and-dry']]);
    const without = { ...pack, rules: pack.rules.filter(({ id }) => id !== 'too-dry' && id !== 'warm-and-dry') };
    expect(readBy(without, drier)).toEqual([['too-dry', 'warm-and-dry']]);
    expect(readBy(without, { ...without, parameters: drier.parameters })).toEqual([[]]);
  });

  test('is told from the day on which they part, again where the difference becomes another, and not where they meet', () => {
    const { parameters } = smallPack();
    const wind = parameters.find(({ id }) => id === 'windMostKmh')!;
    const later = [
      { ...wind, validTo: '2026-09-30' },
      { ...wind, value: 8, validFrom: '2026-10-01', validTo: '2026-12-31' },
      { ...wind, value: 11, validFrom: '2027-01-01', validTo: '2027-02-28' },
      { ...wind, validFrom: '2027-03-01', validTo: '2028-02-28' },
    ];
    expect(changedTo({ parameters: [...parameters.filter((one) => one !== wind), ...later] })).toEqual(
      [
        ['tighter', 'looser', 'only A'],
        ['looser', 'tighter', 'only B'],
      ].map(([autumn, winter, end]) => [
        ['parameter', 'windMostKmh', 'both', ['2020-01-01', null]],
        ['parameter', 'windMostKmh', 'both', ['2026-10-01', autumn]],
        ['parameter', 'windMostKmh', 'both', ['2027-01-01', winter]],
        ['parameter', 'windMostKmh', 'both', ['2027-03-01', null]],
        ['parameter', 'windMostKmh', end, ['2028-02-29', null]],
      ]),
    );
  });
});
