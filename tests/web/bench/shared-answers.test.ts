import { describe, expect, test } from 'vitest';
import { parseOverlay } from '../../../src/core/rules/overlay/parse-overlay.ts';
import { collectLimits, straddles } from '../../../src/core/rules/pack/straddle.ts';
import { type Draft, emptyDraft, openDraft } from '../../../web/bench/draft.ts';
import type { Bench } from '../../../web/bench/server.ts';
import { besideDraft, fileOf, sharedIn, tryDraft } from '../../../web/bench/try-draft.ts';
import { benchWith, secondBenchWith } from './bench-at-hand.ts';

const blank = emptyDraft('2026-11-25');
const wheat = secondBenchWith();
const beside = besideDraft(wheat, blank);
const draftWith = (limits: Draft['limits'], more: Partial<Draft> = {}): Draft => ({ ...blank, limits, ...more });
const codesOf = (bench: Bench, draft: Draft) => {
  const tried = tryDraft(bench, draft, 'en');
  return tried.kind === 'refused' ? tried.findings.map(({ code }) => code) : tried.kind;
};
const labels = (bench: Bench, draft: Draft, language: string) =>
  sharedIn(besideDraft(bench, draft), draft).flatMap(({ shared }) =>
    shared.map(({ whole, parts }) => [whole, ...parts].map(({ label }) => label[language])),
  );

/** Every limit that answers to press are fitted to, moved tighter into the middle of each answer. */
function movedLimits(bench: Bench): [string, number][] {
  const { rules, parameters, questions } = bench.shipped;
  const byId = new Map(parameters.map((one) => [one.id, [one]]));
  const limitsOf = collectLimits(new Map(rules.map((rule) => [rule.id, rule])), byId);
  const moved = questions.flatMap(({ choices = [] }) =>
    choices.flatMap(({ gives }) =>
      Object.entries(gives).flatMap(([fact, reading]): [string, number][] => {
        if (reading.type !== 'number' || reading.low === undefined || reading.high === undefined) return [];
        const value = Number(((reading.low + reading.high) / 2).toFixed(0));
        return limitsOf(fact).flatMap(({ parameter, op, value: now }): [string, number][] => {
          const way = byId.get(parameter)?.[0]?.tighter;
          const isTighter = way === 'lower' ? value < now : way === 'higher' ? value > now : false;
          const band = [reading.low ?? 0, reading.high ?? 0] as const;
          return isTighter && straddles(band, { op, value }) ? [[parameter, value]] : [];
        });
      }),
    ),
  );
  return moved.filter(([id, value], at) => moved.findIndex((one) => one[0] === id && one[1] === value) === at);
}

describe.each([
  ['oilseed rape', benchWith()],
  ['wheat', wheat],
] as const)('a limit of the treatment of %s moved into an answer', (_name, bench) => {
  const moved = movedLimits(bench);

  test('there are such limits', () => expect(moved.length).toBeGreaterThan(3));

  test.each(moved)('%s = %d is refused as it stands, and taken once the answers are shared out', (parameter, value) => {
    const draft = draftWith({ [parameter]: value });
    expect(codesOf(bench, draft)).toContain('CHOICE_STRADDLES_LIMIT');
    expect(codesOf(bench, { ...draft, sharesOut: true })).toBe('sound');
  });
});

describe('answers that are shared out', () => {
  const draft = draftWith({ windMaxKmh: 8 }, { sharesOut: true });

  test.each([
    [
      'en',
      [
        'Leaves and twigs move all the time (6.5 to 9.6 km/h)',
        'Leaves and twigs move all the time (6.5 to 9.6 km/h), up to 8 km/h',
        'Leaves and twigs move all the time (6.5 to 9.6 km/h), over 8 km/h',
      ],
    ],
    [
      'de',
      [
        'Blätter und Zweige bewegen sich ständig (6,5 bis 9,6 km/h)',
        'Blätter und Zweige bewegen sich ständig (6,5 bis 9,6 km/h), bis 8 km/h',
        'Blätter und Zweige bewegen sich ständig (6,5 bis 9,6 km/h), über 8 km/h',
      ],
    ],
  ])('say so in %s', (language, said) => {
    expect(labels(wheat, draft, language)).toEqual([said]);
  });

  test('follow the limit when it is moved on, and are gone with it', () => {
    expect(labels(wheat, { ...draft, limits: { windMaxKmh: 7.5 } }, 'en')[0]?.[1]).toMatch(/, up to 7\.5 km\/h$/);
    expect(sharedIn(beside, { ...draft, limits: {} })).toEqual([]);
    expect(sharedIn(beside, { ...draft, sharesOut: false })).toEqual([]);
  });

  test('follow the limit also where their file is opened again; a question of the overlay’s own stays as it is', () => {
    const file = parseOverlay('own.json', JSON.stringify(fileOf(wheat, beside, named(draft), 'en'))).overlay;
    const again = openDraft(file!, wheat.shipped, 'en', null);
    expect(again.sharesOut).toBe(true);
    expect(fileOf(wheat, beside, again, 'en')).toEqual(fileOf(wheat, beside, named(draft), 'en'));
    expect(labels(wheat, { ...again, limits: { windMaxKmh: 7.5 } }, 'en')[0]?.[1]).toMatch(/, up to 7\.5 km\/h$/);

    const content = structuredClone(file!.content);
    content.questions![0]!.effortSeconds = 9;
    const own = parseOverlay('own.json', JSON.stringify({ ...content, hash: undefined })).overlay;
    const opened = openDraft(own!, wheat.shipped, 'en', null);
    expect([opened.sharesOut, opened.opened?.questions?.length]).toEqual([undefined, 1]);
    expect(tryDraft(wheat, opened, 'en').kind).toBe('sound');
  });
});

function named(draft: Draft): Draft {
  const title = 'Calmer, invented';
  return { ...draft, head: { ...draft.head, id: 'calmer', title, author: 'A', place: 'B', reason: 'C' } };
}
