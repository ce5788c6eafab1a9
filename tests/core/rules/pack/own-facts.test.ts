import { expect, test } from 'vitest';
import { checkPack } from '../../../../src/core/rules/pack/load-pack.ts';
import { filesOf, miniPack } from '../../../fixtures/mini-pack.ts';

const height = {
  ...{ id: 'crop.height', label: { en: 'height of the crop' }, type: 'number', unit: 'cm', range: [0, 200] },
  ...{ precision: 0.1, shownDecimals: 0, obtained: ['asked'], goodFor: { kind: 'season' }, source: 'invented' },
};
const choices = [
  { id: 'low', label: { en: 'low' } },
  { id: 'high', label: { en: 'high' } },
];
const { unit: _u, range: _r, precision: _p, shownDecimals: _s, ...bare } = height;
const kind = { ...bare, type: 'choice', choices };
const rain = { ...height, unit: 'mm', obtained: ['forecast'] };
const hoursAhead = { hoursAhead: 'sprayHours' };

/** The mini pack with parameters in hours, days and mm, and these facts of its own. */
function checked(...facts: object[]) {
  const parsed = miniPack() as Record<string, { parameters: object[] }>;
  const [first] = parsed['parameters.json']!.parameters;
  const more = [
    ['sprayHours', 'h'],
    ['growDays', 'days'],
    ['wetMm', 'mm'],
  ].map(([id, unit]) => ({ ...first, id, unit, value: 4 }));
  const parameters = [...parsed['parameters.json']!.parameters, ...more];
  return checkPack(filesOf({ ...parsed, 'parameters.json': { parameters }, 'facts.json': { facts } }));
}

/** What is found in the facts, without that nothing reads them. */
const found = (...facts: object[]) =>
  checked(...facts)
    .findings.filter(({ file, code }) => file === 'facts.json' && code !== 'PACK_FACT_UNUSED')
    .map(({ code, pointer, expected, came }) => `${code} ${pointer.slice('/facts/'.length)}: ${expected}; ${came}`);

const misfit = 'PACK_FACT_MISFIT';

test.each<readonly [string, object]>([
  ['a number with its unit, range, precision and decimals', height],
  ['usual values that reach to both ends of the range', { ...height, plausible: [0, 200] }],
  ['a choice, which needs choices alone', kind],
  ['signs with their choices', { ...kind, type: 'signs' }],
  ['a day, which needs nothing', { ...bare, type: 'date' }],
  ['one good for the day', { ...height, goodFor: { kind: 'same-day' } }],
  ['one good for days by a parameter in days', { ...height, goodFor: { kind: 'days', parameter: 'growDays' } }],
  [
    'one good for hours, and until so much rain',
    { ...height, goodFor: { kind: 'hours', parameter: 'sprayHours', untilRainMm: 'wetMm' } },
  ],
  ['a sum of rain over hours', { ...rain, forecast: { variable: 'rain', over: hoursAhead, take: 'sum' } }],
  ['a rate of rain now', { ...rain, unit: 'mm/h', forecast: { variable: 'rain', over: 'now', take: 'value' } }],
  [
    'the strongest gust of a night, and asked besides',
    {
      ...rain,
      ...{ unit: 'km/h', obtained: ['asked', 'forecast'] },
      forecast: { variable: 'gusts-at-boom', over: 'next-night', take: 'max', end: 'high' },
    },
  ],
])('is taken: %s', (_, fact) => {
  expect(found(fact)).toEqual([]);
  expect(checked(fact).ok).toBe(true);
});

test.each<readonly [string, object, readonly string[]]>([
  [
    'a number that says nothing of itself',
    { ...bare, type: 'number' },
    ['unit', 'range', 'precision', 'shownDecimals'].map(
      (key) => `${misfit} 0/${key}: \`${key}\` for type number; nothing`,
    ),
  ],
  [
    'a day that says what a number says',
    { ...height, type: 'date', plausible: [1, 2] },
    [
      `${misfit} 0/unit: no \`unit\` for type date; "cm"`,
      `${misfit} 0/range: no \`range\` for type date; [0,200]`,
      `${misfit} 0/precision: no \`precision\` for type date; 0.1`,
      `${misfit} 0/shownDecimals: no \`shownDecimals\` for type date; 0`,
      `${misfit} 0/plausible: no \`plausible\` for type date; [1,2]`,
    ],
  ],
  [
    'a day with choices',
    { ...kind, type: 'date' },
    [`${misfit} 0/choices: no \`choices\` for type date; [{"id":"low","label":{"en":"low"}},{"id":"high","label":{"e…`],
  ],
  ['signs without choices', { ...bare, type: 'signs' }, [`${misfit} 0/choices: \`choices\` for type signs; nothing`]],
  ['a range of one value', { ...height, range: [5, 5] }, [`${misfit} 0/range: lowest, then highest; [5,5]`]],
  [
    'usual values of one value',
    { ...height, plausible: [5, 5] },
    [`${misfit} 0/plausible: lowest, then highest; [5,5]`],
  ],
  [
    'usual values from below the range',
    { ...height, plausible: [-0.1, 200] },
    [`${misfit} 0/plausible: a span within the range; [-0.1,200]`],
  ],
  [
    'usual values to above the range',
    { ...height, plausible: [0, 200.1] },
    [`${misfit} 0/plausible: a span within the range; [0,200.1]`],
  ],
  [
    'a choice twice',
    { ...kind, choices: [...choices, ...choices.slice(0, 1)] },
    [`${misfit} 0/choices: each choice once; [{"id":"low","label":{"en":"low"}},{"id":"high","label":{"e…`],
  ],
  [
    'something taken from a forecast that is not named',
    { ...rain, obtained: ['asked'], forecast: { variable: 'rain', over: hoursAhead, take: 'sum' } },
    [
      `${misfit} 0/forecast: \`forecast\` just where \`obtained\` names it; {"variable":"rain","over":{"hoursAhead":"sprayHours"},"take…`,
    ],
  ],
  [
    'a parameter of hours in days, and of rain in hours',
    { ...height, goodFor: { kind: 'hours', parameter: 'growDays', untilRainMm: 'sprayHours' } },
    [
      'PARAMETER_UNIT_MISFIT 0/goodFor/parameter: growDays in h; days',
      'PARAMETER_UNIT_MISFIT 0/goodFor/untilRainMm: sprayHours in mm; h',
    ],
  ],
  [
    'parameters that there are none of',
    { ...height, goodFor: { kind: 'days', parameter: 'growDay' } },
    ['RULE_PARAMETER_UNKNOWN 0/goodFor/parameter: the id of a parameter in days; "growDay"'],
  ],
  [
    'hours ahead by a parameter in days',
    { ...rain, forecast: { variable: 'rain', over: { hoursAhead: 'growDays' }, take: 'sum' } },
    ['PARAMETER_UNIT_MISFIT 0/forecast/over/hoursAhead: growDays in h; days'],
  ],
  [
    'a value of many hours',
    { ...rain, unit: 'mm/h', forecast: { variable: 'rain', over: 'next-night', take: 'value' } },
    [`${misfit} 0/forecast/take: min, max, sum or mean of the hours; "value"`],
  ],
  [
    'the most of one hour',
    { ...rain, unit: 'mm/h', forecast: { variable: 'rain', over: 'now', take: 'max' } },
    [`${misfit} 0/forecast/take: value of the hour; "max"`],
  ],
  [
    'a sum of gusts',
    { ...rain, forecast: { variable: 'gusts-at-boom', over: hoursAhead, take: 'sum' } },
    [`${misfit} 0/forecast/take: a sum of rain alone; "sum of gusts-at-boom"`],
  ],
  [
    'a sum of rain as a rate',
    { ...rain, unit: 'mm/h', forecast: { variable: 'rain', over: hoursAhead, take: 'sum' } },
    [`${misfit} 0/forecast/variable: a fact in mm; "mm/h"`],
  ],
  ...(
    [
      ['air-temperature', 'C'],
      ['relative-humidity', '%'],
      ['rain', 'mm/h'],
      ['wind-at-boom', 'km/h'],
      ['gusts-at-boom', 'km/h'],
      ['delta-t', 'C'],
    ] as const
  ).map(
    ([variable, unit]) =>
      [
        `${variable} in hPa`,
        { ...rain, unit: 'hPa', forecast: { variable, over: hoursAhead, take: 'mean' } },
        [`${misfit} 0/forecast/variable: a fact in ${unit}; "hPa"`],
      ] as const,
  ),
  [
    'a day from the forecast',
    { ...bare, type: 'date', obtained: ['forecast'], forecast: { variable: 'rain', over: 'now', take: 'value' } },
    [`${misfit} 0/forecast/variable: a fact of type number; "date"`],
  ],
  [
    'words, and the label of a choice, in a language that the pack does not have',
    { ...kind, words: { en: ['kind'], fr: ['genre'] }, choices: [choices[0], { id: 'high', label: { fr: 'haut' } }] },
    [
      'PACK_LANGUAGE_MISSING 0/words/fr: a text for each of en; "fr"',
      'PACK_LANGUAGE_MISSING 0/choices/1/label/en: a text for each of en; nothing',
      'PACK_LANGUAGE_MISSING 0/choices/1/label/fr: a text for each of en; "fr"',
    ],
  ],
])('is refused: %s', (_, fact, findings) => {
  expect(found(fact)).toEqual(findings);
  expect(checked(fact).ok).toBe(false);
});

test('a second fact of one id is refused, though the first is sound, and one built in is never taken', () => {
  expect(found(height, { ...kind, id: 'crop.height' })).toEqual([
    'PACK_ID_REPEATED 1/id: each fact id once; crop.height twice',
  ]);
  expect(found({ ...height, id: 'soil.feel' })).toEqual([
    'PACK_FACT_BUILT_IN 0/id: an id that no fact built in has; soil.feel',
  ]);
});

test('an own fact is entered with its label, unit and the labels of its choices; what nothing reads is a warning', () => {
  const { findings, ...rest } = checked(height, { ...kind, id: 'crop.kind' });
  const facts = rest.ok ? rest.pack.facts : {};
  const { id: _id, label: _label, ...said } = height;
  expect(facts['crop.height']).toEqual({ ...said, label: 'height of the crop', labels: height.label });
  expect(facts['crop.kind']).toEqual({
    ...{ type: 'choice', obtained: ['asked'], goodFor: { kind: 'season' }, source: 'invented', unit: null },
    ...{ label: 'height of the crop', labels: height.label },
    choices: ['low', 'high'],
    choiceLabels: { low: { en: 'low' }, high: { en: 'high' } },
  });
  const unused = findings.filter(({ code }) => code === 'PACK_FACT_UNUSED');
  expect(unused.map(({ severity, pointer, expected, came }) => [severity, pointer, expected, came])).toEqual([
    ['warning', '/facts/0/id', 'a rule or question that reads it', 'crop.height'],
    ['warning', '/facts/1/id', 'a rule or question that reads it', 'crop.kind'],
  ]);
});

test('a pack in another language alone takes the label in that one', () => {
  const parsed = JSON.parse(JSON.stringify(miniPack()).replaceAll('"en":', '"de":').replaceAll('["en"]', '["de"]'));
  const facts = [{ ...height, label: { de: 'Höhe' } }];
  const loaded = checkPack(filesOf({ ...parsed, 'facts.json': { facts } }));
  expect(loaded.ok && loaded.pack.facts['crop.height']).toMatchObject({ label: 'Höhe', labels: { de: 'Höhe' } });
});
