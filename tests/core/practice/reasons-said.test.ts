import { expect, test } from 'vitest';
import { type MatchedReason, matchReason } from '../../../src/core/practice/match-reason.ts';
import { catalogueOf } from '../../../src/core/words/catalogue.ts';
import { practiceWordsOf } from '../../../src/core/words/practice-words.ts';
import { world } from './world.ts';

const match = (text: string, language = 'en'): MatchedReason =>
  matchReason(text, world.pack, world.definitionOf, catalogueOf(language), practiceWordsOf(language));

test.each<[string, MatchedReason]>([
  ['Nothing.', { nothing: true }],
  ['oh, nothing in the way', { nothing: true }],
  // All fine but one thing is that thing.
  ['all good but gusts', { rule: 'gusty' }],
  ['all fine, only the frost', { rule: 'frost-on-leaves' }],
  ['GUSTS', { rule: 'gusty' }],
  ['gústs', { rule: 'gusty' }],
  ['', { none: true }],
  ['x 7 !', { none: true }],
])('"%s"', (text, means) => {
  expect(match(text)).toEqual(means);
});

test('a word said twice counts no more than once', () => {
  for (const text of ['soil', 'wind', 'gusts', 'rain']) expect(match(`${text} ${text}`)).toEqual(match(text));
});

test('at most four are asked about, and each once', () => {
  for (const text of ['soil', 'water', 'rain', 'wind', 'field', 'weed']) {
    const found = match(text);
    if (!('perhaps' in found)) continue;
    expect(found.perhaps.length).toBeGreaterThan(1);
    expect(found.perhaps.length).toBeLessThanOrEqual(4);
    expect(new Set(found.perhaps).size).toBe(found.perhaps.length);
  }
});
