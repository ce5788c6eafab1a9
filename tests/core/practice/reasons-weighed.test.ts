import { expect, test } from 'vitest';
import { matchReason } from '../../../src/core/practice/match-reason.ts';
import type { Rule } from '../../../src/core/rules/types.ts';
import { catalogueOf } from '../../../src/core/words/catalogue.ts';
import { practiceWordsOf } from '../../../src/core/words/practice-words.ts';
import { holdRule } from '../../generators/small.ts';
import { world } from './world.ts';

/** An invented rule that reads the surface of the soil, with a title and a sentence. */
function rule(id: string, title: string, met = ''): Rule {
  return { ...holdRule(id, { fact: 'soil.surface', has: 'cracked' }), text: { en: { title, met, unknown: '' } } };
}

/** What a text means among invented rules: the ids, the best first; "nothing" or "none". */
function meant(text: string, rules: readonly Rule[], glossary: typeof world.pack.glossary = [], code = 'en'): string {
  const pack = { ...world.pack, rules, glossary };
  const found = matchReason(text, pack, world.definitionOf, catalogueOf(code), practiceWordsOf(code));
  if ('rule' in found) return found.rule;
  return 'perhaps' in found ? found.perhaps.join(' ') : Object.keys(found).join();
}

const four = [
  rule('gale', 'Windy slope', 'Bales lie about.'),
  rule('sandblow', 'Sands drift', 'Bales roll.'),
  rule('drought', 'Dry', 'It hails.'),
  rule('mire', 'Mud', 'It hails.'),
];

test.each([
  // The title counts most; what every rule has counts nothing, what half of them say in passing is too little.
  ['drift', 'sandblow'],
  ['soil surface', 'none'],
  ['hails', 'none'],
  // What one alone says in its sentence is enough.
  ['roll', 'sandblow'],
  ['lie', 'gale'],
  ['hails mud', 'mire'],
  ['mud hails', 'mire'],
  ['drift bales', 'sandblow'],
  // Forms of a word count: from its first four letters on, the last letter left off where it has more.
  ['wind', 'gale'],
  ['windiness', 'gale'],
  ['sandy', 'sandblow'],
  ['drifting', 'sandblow'],
  ['drifts', 'sandblow'],
  ['dryer', 'none'],
  ['muddy', 'none'],
  ['mu', 'none'],
  ['wine', 'none'],
  ['slop', 'gale'],
  ['slops', 'gale'],
  // The id counts too.
  ['mire', 'mire'],
  ['drought', 'drought'],
])('"%s" among four rules means %s', (text, means) => {
  expect(meant(text, four)).toBe(means);
});

test('of two rules that share a word, the one of which more of the title is said comes first, or is taken alone', () => {
  const pair = [rule('one', 'Wet ground below here', 'a'), rule('two', 'Wet ground', 'b'), rule('three', 'Frost', 'c')];
  expect(meant('wet', pair)).toBe('two one');
  expect(meant('wet ground', pair)).toBe('two one');
  expect(meant('wet ground below', pair)).toBe('one');
});

test('at most four of those that a word fits are asked about, in their order', () => {
  const many = ['a1', 'a2', 'a3', 'a4', 'a5'].map((id) => rule(id, 'Wet'));
  const others = ['b1', 'b2', 'b3', 'b4', 'b5', 'b6', 'b7', 'b8'].map((id) => rule(id, 'Frost'));
  expect(meant('wet', [...many, ...others])).toBe('a1 a2 a3 a4');
});

test('a trade term counts for the rules that say it, by all its words', () => {
  const rules = [rule('till', 'Plough pan'), rule('other', 'Frost'), rule('third', 'Hail'), rule('fourth', 'Snow')];
  const [term] = world.pack.glossary;
  const pan = { ...term!, words: { en: ['Plough pan'], de: ['Pflugsohle'] }, forms: { en: ['hardpan'] } };
  expect(meant('hardpan', rules)).toBe('none');
  expect(meant('hardpan', rules, [pan])).toBe('till');
  expect(meant('pflugsohle', rules, [pan])).toBe('none');
  expect(meant('hardpan', rules, [{ ...pan, forms: {} }])).toBe('none');
});

test('a word that only begins a phrase for "nothing", as German "sonst nichts", has forms like any other', () => {
  const german = (id: string, title: string): Rule => ({
    ...rule(id, ''),
    text: { de: { title, met: '', unknown: '' } },
  });
  const rules = [german('rest', 'Sonst feucht'), german('frost', 'Frost'), german('hail', 'Hagel')];
  expect(meant('sonstiges', rules, [], 'de')).toBe('rest');
  expect(meant('sonst nichts', rules, [], 'de')).toBe('nothing');
});
