import { describe, expect, test } from 'vitest';
import { protectCautions } from '../../../../src/core/rules/overlay/protect/protect-cautions.ts';
import { protectRules } from '../../../../src/core/rules/overlay/protect/protect-rules.ts';
import { protectSentences } from '../../../../src/core/rules/overlay/protect/protect-sentences.ts';
import { sayBreach } from '../../../../src/core/rules/overlay/protect/say-breach.ts';
import { daysOfChange, type ProtectWorld, placeIn } from '../../../../src/core/rules/overlay/protect/world.ts';
import { collectFindings } from '../../../../src/core/rules/pack/findings.ts';
import type { Caution, Pack } from '../../../../src/core/rules/pack-types.ts';
import type { Effect, Lifts, Rule } from '../../../../src/core/rules/types.ts';
import { factDefinition } from '../../../fixtures/core-facts.ts';
import { holdRule } from '../../../generators/small.ts';
import { newRule, overlayOf, parameter, shipped } from './overlay-of.ts';

/** What one part of the protection says of a pack before and after. */
function said(protect: (world: ProtectWorld) => void, before: Partial<Pack>, after: Partial<Pack>): string[] {
  const { findings, report } = collectFindings();
  const packs = { before: { ...shipped, ...before }, after: { ...shipped, ...after } };
  protect({ ...packs, overlay: overlayOf({}), definitionOf: factDefinition, days: [], report });
  return findings.map(({ code, expected, came }) => `${code}: ${expected}; ${came}`);
}

const held = (more: Partial<Rule> = {}): Rule => ({
  ...holdRule('held', { fact: 'soil.feel', is: 'dry' }),
  authority: 'label',
  ...more,
});
const rules = (was: Partial<Rule>, is: Partial<Rule>) =>
  said(protectRules, { rules: [held(was)] }, { rules: [held(is)] });

describe('a protected rule given anew', () => {
  const order: readonly Effect[] = ['advise', 'hold', 'stop'];
  test.each(order.flatMap((was) => order.map((is) => [was, is] as const)))('as %s may be %s or not', (was, is) => {
    const isWeaker = order.indexOf(is) < order.indexOf(was);
    expect(rules({ effect: was }, { effect: is })).toEqual(
      isWeaker ? [`OVERLAY_EFFECT_WEAKER: ${was} or stronger; ${is}`] : [],
    );
  });

  const slower: Readonly<Record<Lifts, readonly (Lifts | null)[]>> = {
    hours: ['hours', 'days', 'season'],
    days: ['days', 'season'],
    person: ['person', 'season'],
    season: ['season'],
  };
  const all: readonly (Lifts | null)[] = ['hours', 'days', 'person', 'season', null];
  test.each((Object.keys(slower) as Lifts[]).flatMap((was) => all.map((is) => [was, is] as const)))(
    'that %s lift may be lifted by %s or not',
    (was, is) => {
      expect(rules({ lifts: was }, { lifts: is })).toEqual(
        slower[was].includes(is) ? [] : [`OVERLAY_LIFTS_QUICKER: ${was} or slower; ${is}`],
      );
    },
  );

  test('that nothing lifted, as advice, may be lifted by anything', () => {
    for (const is of all) expect(rules({ lifts: null }, { lifts: is })).toEqual([]);
  });

  test.each<readonly [Partial<Rule>, Partial<Rule>, string | null]>([
    [{ authority: 'label' }, { authority: 'law' }, 'label; law'],
    [{ authority: 'label' }, { authority: 'practice', protectedByPractice: true }, 'label; practice, protected'],
    [{ authority: 'water' }, { authority: 'water', protectedByPractice: true }, null],
    [{ authority: 'water', protectedByPractice: true }, { authority: 'water' }, null],
    [{ authority: 'practice', protectedByPractice: true }, { authority: 'practice' }, 'practice, protected; practice'],
    [{ authority: 'practice', protectedByPractice: true }, { authority: 'water' }, null],
    [{ authority: 'practice', protectedByPractice: true }, { authority: 'practice', protectedByPractice: true }, null],
    [{ authority: 'practice' }, { authority: 'practice', effect: 'advise', lifts: 'hours' }, null],
  ])('of %j may be of %j or not', (was, is, refused) => {
    expect(rules(was, is)).toEqual(refused === null ? [] : [`OVERLAY_RULE_UNPROTECTED: ${refused}`]);
  });

  test('may not go, while one of practice may, and one more may come', () => {
    const gone = ['OVERLAY_RULE_REMOVED: held, a protected rule; no such rule'];
    expect(said(protectRules, { rules: [held()] }, { rules: [] })).toEqual(gone);
    expect(said(protectRules, { rules: [held({ authority: 'practice' })] }, { rules: [] })).toEqual([]);
    expect(said(protectRules, { rules: [] }, { rules: [held()] })).toEqual([]);
    const both = [held(), held({ id: 'other', effect: 'stop' })];
    expect(said(protectRules, { rules: both }, { rules: [held({ id: 'other' })] })).toEqual([
      ...gone,
      'OVERLAY_EFFECT_WEAKER: stop or stronger; hold',
    ]);
  });
});

describe('the sentences of a protected rule', () => {
  const text = { title: 'Windy', met: 'Wind {wind.boomKmh}, limit {windMostKmh}.', unknown: 'Look.', lift: 'Wait.' };
  const found = (changed: object | undefined, language = 'en', more: Partial<Rule> = {}) => {
    const is = changed === undefined ? {} : { [language]: { ...text, ...changed } };
    return said(
      protectSentences,
      { rules: [held({ ...more, text: { en: text } })] },
      { rules: [held({ ...more, text: is })] },
    );
  };
  const lost = (was: string, is: string) => `OVERLAY_SENTENCE_CHANGED: a text that holds "${was}"; "${is}"`;
  test.each<readonly [string, object | undefined, readonly string[]]>([
    ['stay', {}, []],
    ['may have words before and behind', { met: `Mind: ${text.met} Ring Ann.` }, []],
    ['may name a limit of the overlay', { met: 'Wind {wind.boomKmh}, limit {ownMostKmh}.' }, []],
    ['may not be said otherwise', { title: 'Breezy' }, [lost('Windy', 'Breezy')]],
    [
      'may not name another fact',
      { met: 'Wind {wind.gustKmh}, limit {windMostKmh}.' },
      [lost(text.met, 'Wind {wind.gustKmh}, limit {windMostKmh}.')],
    ],
    ['may not be left out', { lift: undefined, unknown: '' }, [lost('Look.', ''), lost('Wait.', '')]],
    [
      'may not be left out with their language',
      undefined,
      [text.title, text.met, 'Look.', 'Wait.'].map((one) => lost(one, '')),
    ],
  ])('%s', (_, changed, findings) => {
    expect(found(changed)).toEqual(findings);
  });

  test('of a rule of practice may be said otherwise, and one without a lift needs none', () => {
    expect(found({ title: 'Breezy' }, 'en', { authority: 'practice' })).toEqual([]);
    const { lift: _lift, ...advice } = text;
    const only = (more: object) => ({ rules: [held({ text: { en: { ...advice, ...more } } })] });
    expect(said(protectSentences, only({}), only({ lift: 'Wait.' }))).toEqual([]);
    expect(said(protectSentences, only({}), { rules: [] })).toEqual([]);
  });
});

describe('a caution', () => {
  const caution = (more: Partial<Caution> = {}): Caution => ({
    ...{ id: 'read', authority: 'label', text: { en: 'Read the label.', de: 'Etikett lesen.' } },
    ...more,
  });
  const found = (was: Caution, ...is: Caution[]) => said(protectCautions, { cautions: [was] }, { cautions: is });
  const lost = (words: string) => `OVERLAY_CAUTION_REMOVED: ${words}`;
  test.each<readonly [string, () => readonly string[], readonly string[]]>([
    [
      'of the label stays, and may say more',
      () => found(caution(), caution({ text: { en: 'Do: Read the label. Now.', de: 'Etikett lesen.' } })),
      [],
    ],
    ['of the label may not go', () => found(caution()), [lost('caution read, of label; no such caution')]],
    [
      'of the label may be of no other authority',
      () => found(caution(), caution({ authority: 'law' })),
      [lost('label; law')],
    ],
    [
      'may say no less in any language',
      () => found(caution(), caution({ text: { en: 'Read the label.', de: '' } })),
      [lost('a text that holds "Etikett lesen."; ""')],
    ],
    [
      'may leave out no language',
      () => found(caution(), caution({ text: { de: 'Etikett lesen.' } })),
      [lost('a text that holds "Read the label."; ""')],
    ],
    [
      'of practice may go, and one of another id does not stand for it',
      () => found(caution({ authority: 'practice' }), caution({ id: 'other' })),
      [],
    ],
  ])('%s', (_, findings, expected) => {
    expect(findings()).toEqual(expected);
  });
});

test('the place of a fault is where the overlay gives the entry, else where it takes it away, else its head', () => {
  const { file, ...one } = overlayOf({
    rules: [newRule('first', { fact: 'soil.feel', is: 'dry' }), newRule('second', { fact: 'soil.feel', is: 'wet' })],
    removes: { rules: ['third', 'fourth'] },
  });
  const place = (id: string, ...steps: string[]) => placeIn({ file, ...one }, 'rules', id, ...steps).path;
  expect(place('second', 'when')).toEqual(['rules', 1, 'when']);
  expect(place('fourth', 'when')).toEqual(['removes', 'rules', 1]);
  expect(place('fifth', 'when')).toEqual(['overlay']);
  expect(placeIn(overlayOf({}), 'cautions', 'read')).toEqual({ file: 'farm.overlay.json', path: ['overlay'] });
});

test('the days on which anything changes are the first of the overlay and later ones on which a value begins or has ended', () => {
  const dated = (validFrom: string, validTo?: string) => ({
    ...shipped.parameters[0]!,
    ...parameter('a', 1),
    validFrom,
    ...(validTo === undefined ? {} : { validTo }),
  });
  const pack = (...parameters: ReturnType<typeof dated>[]) => ({ ...shipped, parameters }) as Pack;
  expect(
    daysOfChange(
      [
        pack(dated('2026-01-01'), dated('2027-03-01', '2027-12-31'), dated('2026-11-01')),
        pack(dated('2026-10-01', '2026-10-01'), dated('2026-10-02'), dated('2026-11-01', '2028-02-28')),
      ],
      '2026-10-01',
    ),
  ).toEqual(['2026-10-01', '2026-10-02', '2026-11-01', '2027-03-01', '2028-01-01', '2028-02-29']);
  expect(daysOfChange([], '2026-10-01')).toEqual(['2026-10-01']);
});

test.each<readonly [string, unknown]>([
  ['unknown', null],
  ['8.5', 8.5],
  ['dry', 'dry'],
  ['none', []],
  ['cracked/sticky', ['cracked', 'sticky']],
  ['8 to 9', { value: 8.5, low: 8, high: 9 }],
  ['cracked, perhaps cracked/sticky', { value: ['cracked'], possible: ['cracked', 'sticky'] }],
  ['none, perhaps sticky', { value: [], possible: ['sticky'] }],
])('a breach says %s for a fact given so', (words, given) => {
  const cells = { 'soil.feel': { given, cost: 0, resolved: { known: false, reason: 'not-asked' } } } as const;
  expect(sayBreach({ cells, shipped: 'met', changed: 'not-met' })).toBe(
    `with soil.feel ${words} the shipped rule is met, the changed one not met`,
  );
  expect(sayBreach({ cells, shipped: 'unknown', changed: 'not-met' })).toContain('rule is unknown, the changed');
});
