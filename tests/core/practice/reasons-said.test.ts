import { describe, expect, test } from 'vitest';
import { type MatchedReason, matchReason } from '../../../src/core/practice/match-reason.ts';
import { catalogueOf } from '../../../src/core/words/catalogue.ts';
import { practiceWordsOf } from '../../../src/core/words/practice-words.ts';
import { world } from './world.ts';

const match = (text: string, language = 'en'): MatchedReason =>
  matchReason(text, world.pack, world.definitionOf, catalogueOf(language), practiceWordsOf(language));

const nothing = { nothing: true } as const;
const none = { none: true } as const;

describe('a reason as it is typed', () => {
  test.each<[string, MatchedReason]>([
    ['Nothing.', nothing],
    ['oh, nothing in the way', nothing],
    ['NOTHING AT ALL', nothing],
    ['nothing else', nothing],
    ['oh, all good', nothing],
    // An exception that is not told yet is none.
    ['nothing but', nothing],
    // All fine but one thing is that thing.
    ['nothing except gusts', { rule: 'gusty' }],
    ['nothing except for gusts', { rule: 'gusty' }],
    ['nothing but the gusts', { rule: 'gusty' }],
    ['nothing, only frost', { rule: 'frost-on-leaves' }],
    ['nothing other than the frost', { rule: 'frost-on-leaves' }],
    ['gusts, nothing else', { rule: 'gusty' }],
    ['oh, nothing, frost', { rule: 'frost-on-leaves' }],
    ['all good but gusts', { rule: 'gusty' }],
    ['all fine, only the frost', { rule: 'frost-on-leaves' }],
    // What is excepted and fits no rule is not known: that is no "nothing".
    ['nothing except bananas', none],
    ['all fine, other than my knee', none],
    ['all fine, apart from the gusts', { rule: 'gusty' }],
    // Words that only begin or end like "nothing" are words of their own.
    ['nothingness', none],
    ['nothings', none],
    ['thing', none],
    ['gusty nothingness', { rule: 'gusty' }],
    // Among the rules is one whose title begins with it.
    ['nothing to control', { rule: 'nothing-to-control' }],
    ['GUSTS', { rule: 'gusty' }],
    ['gústs', { rule: 'gusty' }],
    ['', none],
    ['x 7 !', none],
    ['except', none],
  ])('"%s"', (text, means) => {
    expect(match(text)).toEqual(means);
  });

  test.each<[string, MatchedReason]>([
    ['Nichts.', nothing],
    ['Gar nichts', nothing],
    ['sonst nichts', nothing],
    ['nichts außer Böen', { rule: 'gusty' }],
    ['nichts ausser Böen', { rule: 'gusty' }],
    ['nichts bis auf den Frost', { rule: 'frost-on-leaves' }],
    ['alles gut, nur Frost', { rule: 'frost-on-leaves' }],
    ['nichts außer Bananen', none],
    ['Nichtsnutz', none],
    ['nichtsdestotrotz', none],
  ])('in German: "%s"', (text, means) => {
    expect(match(text, 'de')).toEqual(means);
  });
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
