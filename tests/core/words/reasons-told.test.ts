import { describe, expect, test } from 'vitest';
import type { WordedReason } from '../../../src/core/dialogue/decision-types.ts';
import type { Lifts } from '../../../src/core/rules/types.ts';
import type { VerdictWord } from '../../../src/core/verdict/types.ts';
import { catalogueOf } from '../../../src/core/words/catalogue.ts';
import { describeChange } from '../../../src/core/words/change.ts';
import { headlineOf } from '../../../src/core/words/headline.ts';
import { jobsOf, liftBeside, notJudged } from '../../../src/core/words/jobs.ts';
import { whyOf } from '../../../src/core/words/why.ts';
import { factDefinition } from '../../fixtures/core-facts.ts';
import { reason } from './reason-of.ts';

const words = catalogueOf('en');

const person = { lifts: 'person' } as const;
const unknown = { outcome: 'unknown' } as const;
const seasonStop = { effect: 'stop', lifts: 'season' } as const;

describe('the jobs', () => {
  test.each<[string, WordedReason[], string[]]>([
    ['of nothing', [], []],
    ['that a person lifts', [reason('a', person), reason('b')], ['Lift a.']],
    ['without a sentence that lifts', [reason('a', { ...person, lift: null })], ['Text a.']],
    [
      'said by two',
      [reason('a', { ...person, lift: 'Mark it.' }), reason('b', { ...person, lift: 'Mark it.' })],
      ['Mark it.'],
    ],
    ['of what is not known', [reason('a', { ...person, ...unknown })], []],
    ['past a stop for the season', [reason('a', person), reason('s', seasonStop)], []],
    ['past a stop for days', [reason('a', person), reason('s', { ...seasonStop, lifts: 'days' })], ['Lift a.']],
    ['past a hold for the season', [reason('a', person), reason('s', { lifts: 'season' })], ['Lift a.']],
    ['past a stop that is not known', [reason('a', person), reason('s', { ...seasonStop, ...unknown })], ['Lift a.']],
  ])('%s', (_, reasons, jobs) => {
    expect(jobsOf(reasons)).toEqual(jobs);
  });
});

describe('what is left open', () => {
  test.each<[string, WordedReason[], string | null]>([
    ['beside a hold is named', [reason('a'), reason('b', unknown), reason('c', unknown)], 'title b; title c'],
    ['alone is not named here', [reason('b', unknown)], null],
    ['where nothing is open there is nothing', [reason('a')], null],
    ['beside a stop is idle', [reason('a', { effect: 'stop' }), reason('b', unknown)], null],
    ['beside a hold and a stop too', [reason('h'), reason('a', { effect: 'stop' }), reason('b', unknown)], null],
  ])('%s', (_, reasons, titles) => {
    expect(notJudged(reasons, words)).toBe(
      titles === null ? null : `Not judged, since the answer is sure without it: ${titles}.`,
    );
  });
});

describe('what lifts it, beside a reason', () => {
  const stop = reason('s', seasonStop);
  test.each<[string, WordedReason, WordedReason[], string | null]>([
    ['is said', reason('a'), [], 'Lift a.'],
    ['is not said of what is not known', reason('a', unknown), [], null],
    ['is said by the jobs alone', reason('a', person), [], null],
    ['is idle beside a stop for the season', reason('a'), [stop], null],
    ['is said of that stop itself', stop, [stop], 'Lift s.'],
  ])('%s', (_, one, others, said) => {
    expect(liftBeside(one, [one, ...others])).toBe(said);
  });
});

test.each<[VerdictWord, Exclude<Lifts, 'person'> | null, WordedReason[], string]>([
  ['spray-today', 'days', [reason('a', person)], 'Spray today: nothing that was checked speaks against it.'],
  ['wait', 'season', [], 'Wait: it will not come right on this field this season.'],
  ['wait', 'hours', [reason('a', person)], 'Wait: the weather is against it for now. Look again in some hours.'],
  [
    'wait',
    null,
    [reason('a', { ...person, ...unknown })],
    'Wait: something that matters is not known. Find it out first.',
  ],
  ['wait', null, [reason('a')], 'Wait: something that matters is not known. Find it out first.'],
  ['do-not-spray', null, [reason('a', person)], 'Do not spray before the job below is done.'],
  ['do-not-spray', null, [reason('a', person), reason('b', person)], 'Do not spray before the jobs below are done.'],
  ['do-not-spray', null, [], 'Wait: something that matters is not known. Find it out first.'],
])('the headline of %s, slowest %s, of %j', (verdict, slowest, reasons, text) => {
  expect(headlineOf({ verdict, slowest, reasons }, words)).toBe(text);
});

describe('what changed', () => {
  const change = (before: WordedReason[], after: WordedReason[], now: VerdictWord = 'wait') =>
    describeChange({ verdict: 'wait', reasons: before }, { verdict: now, reasons: after }, words);
  const [a, b] = [reason('a'), reason('b')];
  const [openA, openB] = [reason('a', unknown), reason('b', unknown)];

  test.each([
    ['nothing', [a, openB], [a, openB], 'As before: wait.'],
    ['one came', [a], [a, b], 'Still wait; new in the way: title b.'],
    ['one went', [a, b], [a], 'Still wait; no longer in the way: title b.'],
    ['one was found out to be in the way', [openA], [a], 'Still wait; new in the way: title a.'],
    ['one was found out not to be', [a, openB], [a], 'Still wait; checked and not in the way: title b.'],
    ['one is not known any more', [a], [openA], 'Still wait; no longer known: title a.'],
    ['one is newly not known', [], [openB], 'Still wait; no longer known: title b.'],
    [
      'several',
      [a, openB, reason('g'), reason('h')],
      [openA, b, reason('c')],
      'Still wait; new in the way: title b and title c; no longer known: title a; no longer in the way: title g and title h.',
    ],
  ])('%s', (_, before, after, text) => {
    expect(change(before, after)).toBe(text);
  });

  test('of the verdict comes first, with its cause where there is one', () => {
    expect(change([], [], 'spray-today')).toBe('It was wait; now spray today.');
    expect(change([a], [], 'spray-today')).toBe('It was wait; now spray today, because no longer in the way: title a.');
  });
});

describe('why', () => {
  const why = (verdict: VerdictWord, reasons: WordedReason[]) =>
    whyOf({ verdict, reasons, trace: [] }, factDefinition, words);
  const open = (...rules: string[]) => rules.map((rule) => reason(rule, unknown));

  test.each<[string, WordedReason[], string]>([
    ['one that is met', [reason('a')], 'Text a.'],
    ['the first two of three', [reason('a'), reason('b'), reason('c')], 'Text a. Text b.'],
    ['what is met before what is not known', [...open('u'), reason('a')], 'Text a.'],
    ['the one thing not known, by its own sentence', open('u'), 'Text u.'],
    ['two not known', open('u', 'v'), 'Cannot be judged yet: title u and title v.'],
    ['three not known', open('u', 'v', 'w'), 'Cannot be judged yet: title u, title v and title w.'],
    ['four not known', open('u', 'v', 'w', 'x'), 'Cannot be judged yet: title u, title v, title w and title x.'],
    ['three of five', open('u', 'v', 'w', 'x', 'y'), 'Cannot be judged yet: title u, title v, title w and 2 more.'],
    ['nothing at all', [], 'No rule speaks for or against it.'],
  ])('names %s', (_, reasons, text) => {
    expect(why('wait', reasons)).toBe(text);
  });

  test('a spray-today counts the reasons that do not apply', () => {
    expect(why('spray-today', [])).toBe('None of the 0 reasons to stop or wait applies.');
  });
});
