import { describe, expect, test } from 'vitest';
import { understand } from '../../../../src/core/dialogue/understand/index.ts';
import { languageFor, measuresFor } from '../../../../src/core/dialogue/understand/pack-words.ts';
import { type FactId, factIdsOf } from '../../../../src/core/facts/registry/index.ts';
import type { FactDefinition } from '../../../../src/core/facts/types.ts';
import { loadPack } from '../../../../src/core/rules/pack/load-pack.ts';
import type { Pack } from '../../../../src/core/rules/pack-types.ts';
import { shipped } from '../../../cases/shipped-pack.ts';
import { filesOf } from '../../../fixtures/mini-pack.ts';
import { springPack } from '../../../fixtures/spring-pack.ts';
import { inOneLine } from './told.ts';

const spring = loadPack(filesOf(springPack())).pack;

function definition(like: FactId, more: Partial<FactDefinition>): FactDefinition {
  const known = spring.facts[like];
  if (known === undefined) throw new Error(`no fact ${like}`);
  return { ...known, ...more };
}

const number = (unit: string | null, words: readonly string[], more: Partial<FactDefinition> = {}) =>
  definition('crop.growthStage', {
    unit,
    words: { en: words },
    labels: {},
    label: words[0] ?? '',
    range: [0, 500],
    ...more,
  });

/** Facts of a pack's own, invented: what no pack of ours holds. */
const own: Readonly<Record<string, FactDefinition>> = {
  'crop.rows': number(null, ['rows']),
  'crop.coverPercent': number('%', ['canopy']),
  'wind.vaneMs': number('m/s', ['vane']),
  'field.headM': number('m', ['head height']),
  'air.hedgeC': number('C', ['hedge']),
  'air.noonC': number('C', ['by noon'], {
    forecast: { variable: 'air-temperature', over: 'next-night', take: 'max', end: 'high' },
  }),
  'air.hereC': number('C', ['porch'], {
    forecast: { variable: 'air-temperature', over: 'now', take: 'max', end: 'high' },
  }),
  'crop.mood': definition('crop.vigour', {
    words: { en: ['mood'] },
    label: 'the mood | of it?',
    labels: {},
    choices: ['well-fed', 'off-colour'],
    choiceLabels: { 'well-fed': { en: 'thriving' }, 'off-colour': {} },
  }),
  'crop.spots': definition('crop.damage', {
    choices: ['leaf-spot', 'rust'],
    choiceLabels: { 'leaf-spot': { en: 'speckles' }, rust: {} },
  }),
  'crop.lodged': definition('crop.dewOnLeaves', { words: { en: ['flattened'] }, label: 'flattened crop', labels: {} }),
};

/** The spring pack with those facts, and a question for each. */
function richPack(): Pack {
  const [first] = spring.questions;
  const asking = factIdsOf(own).map((fact) => ({ ...first!, id: fact, facts: [fact] }));
  return { ...spring, facts: { ...spring.facts, ...own }, questions: [...spring.questions, ...asking] };
}

function heard(pack: Pack, text: string, language = 'en', asked: string | null = null): string {
  const question = pack.questions.find(({ id }) => id === asked) ?? null;
  return inOneLine(understand(text, { asked: question, pack, recent: [], language }));
}

describe('the facts of a pack of its own are understood', () => {
  test.each([
    ['rows 12', 'crop.rows=12'],
    ['rows 12 m', '"rows 12 m"'],
    ['canopy 60 %', 'crop.coverPercent=60'],
    ['canopy 60', 'crop.coverPercent=60'],
    ['canopy 60 m', '"canopy 60 m"'],
    ['vane 18 km/h', 'wind.vaneMs=5'],
    ['vane 5', 'wind.vaneMs=5'],
    ['vane 5 C', '"vane 5 C"'],
    ['head height 200 cm', 'field.headM=2'],
    ['head height 10 ft', 'field.headM=3.048'],
    ['hedge 50 F', 'air.hedgeC=10'],
    ['hedge 5 degrees', 'air.hedgeC=5'],
    ['vane 5 degrees', '"vane 5 degrees"'],
    ['by noon 5 tomorrow', 'air.noonC=5'],
    ['by noon 5', 'air.noonC=5'],
    ['porch 5 tomorrow', '"porch 5 tomorrow"'],
    ['porch 5', 'air.hereC=5'],
    ['growth stage 31', 'crop.growthStage=31'],
    ['BBCH 31', 'crop.growthStage=31'],
    ['the mood of it thriving', 'crop.mood=well-fed'],
    ['mood well fed', 'crop.mood=well-fed'],
    ['mood off colour', 'crop.mood=off-colour'],
    ['thriving', '"thriving"'],
    ['speckles', 'crop.spots=+leaf-spot'],
    ['leaf spot', 'crop.spots=+leaf-spot'],
    ['no rust', 'crop.spots=-rust'],
    ['flattened', 'crop.lodged=yes'],
    ['flattened crop', 'crop.lodged=yes'],
    ['xyzzy flattened', 'crop.lodged=yes?'],
    ['not flattened', 'crop.lodged=no'],
    ['wind 6 km/h', 'wind.boomKmh=6'],
    ['soil moist', '"soil moist"'],
    ['500 g/L', '"500 g/L"'],
  ])('"%s": %s', (text, said) => {
    expect(heard(richPack(), text)).toBe(said);
  });

  test('in another language by what it has there, else by the names of its choices', () => {
    const pack = richPack();
    expect(heard(pack, 'kein Tau', 'de')).toBe('crop.dewOnLeaves=no');
    expect(heard(pack, 'dew', 'de')).toBe('"dew"');
    expect(heard(pack, 'rust', 'de')).toBe('crop.spots=+rust');
    expect(heard(pack, 'nonsense 12', 'xx')).toBe('"nonsense 12"');
  });

  test('a bare number answers the question of its own fact', () => {
    expect(heard(richPack(), '12', 'en', 'crop.rows')).toBe('crop.rows=12');
  });
});

test('a pack that reaches all that is built in, and holds nothing of its own, is understood by the lists alone', () => {
  const { pack } = shipped;
  const all = { ...pack, questions: [{ ...pack.questions[0]!, facts: factIdsOf(pack.facts) }] };
  expect(languageFor(all, 'de')).toBe(languageFor({ ...all }, 'de'));
  expect(Object.keys(measuresFor(all))).toContain('soil.fieldCapacityPercent');
});

test('the words of a pack are worked out once, and each pack has its own', () => {
  const [one, other] = [richPack(), richPack()];
  expect(languageFor(one, 'en')).toBe(languageFor(one, undefined));
  expect(languageFor(one, 'en')).not.toBe(languageFor(other, 'en'));
  expect(measuresFor(one)).toBe(measuresFor(one));
  expect(Object.keys(measuresFor(one))).toEqual([
    'crop.growthStage',
    'air.nightLowestC',
    'rain.soonMm',
    'crop.rows',
    'crop.coverPercent',
    'wind.vaneMs',
    'field.headM',
    'air.hedgeC',
    'air.noonC',
    'air.hereC',
    'wind.boomKmh',
  ]);
});
