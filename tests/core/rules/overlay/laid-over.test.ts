import { describe, expect, test } from 'vitest';
import { applyOverlays } from '../../../../src/core/rules/overlay/apply-overlays.ts';
import { parseOverlay } from '../../../../src/core/rules/overlay/parse-overlay.ts';
import type { Pack } from '../../../../src/core/rules/pack-types.ts';
import { newRule, overlayOf, type Parts, parameter, question, rule, shipped } from './overlay-of.ts';

const term = (id: string, word: string) => ({
  id,
  words: { en: [word], de: [word] },
  text: { en: `What ${word} is.`, de: `Was ${word} ist.` },
  source: 'a test',
});
const caution = (id: string, words: string) => ({ id, authority: 'practice', text: { en: words, de: words } });

/** An overlay that gives or takes away something of every kind. */
const ofEverything = (): Parts => {
  const [feel] = shipped.questions.filter(({ facts }) => facts.includes('soil.feel'));
  const [boom] = shipped.glossary;
  return {
    overlay: { reason: { en: 'Light land.', de: 'Leichter Boden.' }, validTo: '2027-03-31', fixed: ['local-hold'] },
    parameters: [
      parameter('soilTemperatureMaxC', 9, { validFrom: '2026-12-01' }),
      parameter('bestLastDay', '12-01'),
      parameter('localMostKmh', 6.5, { unit: 'km/h', tighter: 'lower' }),
    ],
    rules: [
      rule('soil-too-warm', { lifts: 'season' }),
      newRule('local-hold', { fact: 'wind.boomKmh', above: 'localMostKmh' }),
      newRule('local-day', { fact: 'soil.surface', has: 'sticky' }, { topic: 'season' }),
    ],
    questions: [question(feel!.id, { effortSeconds: 99 })],
    cautions: [caution('local-caution', 'Ring first.')],
    glossary: [{ ...term(boom!.id, 'anew'), source: 'a test' }, term('local-term', 'local')],
    cases: [
      {
        name: 'sticky',
        facts: { 'soil.surface': ['sticky'], date: '2026-11-06' },
        expect: { verdict: 'wait', met: ['local-day'] },
      },
    ],
    removes: { rules: ['dark'] },
  };
};
const laid = (parts: Parts = ofEverything()) => {
  const applied = applyOverlays(shipped, [overlayOf(parts)]);
  if (!applied.ok) throw new TypeError(JSON.stringify(applied.findings));
  return applied;
};
const ids = (list: readonly { readonly id: string }[]) => list.map(({ id }) => id);
const byId = <One extends { readonly id: string }>(list: readonly One[], id: string) =>
  list.filter((one) => one.id === id);

describe('an overlay laid over a pack', () => {
  test('tells who changed what, where, why and from when until when', () => {
    const { hash } = overlayOf(ofEverything());
    expect(laid().pack.overlays).toEqual([
      {
        id: 'invented-farm',
        title: { en: 'Invented farm', de: 'Erfundener Hof' },
        author: 'A. N. Adviser',
        place: 'an invented farm',
        reason: { en: 'Light land.', de: 'Leichter Boden.' },
        layer: 'farm',
        validFrom: '2026-10-01',
        validTo: '2027-03-31',
        hash,
        changed: {
          parameters: ['soilTemperatureMaxC', 'bestLastDay', 'localMostKmh'],
          rules: ['soil-too-warm', 'local-hold', 'local-day', 'dark'],
          questions: [shipped.questions.find(({ facts }) => facts.includes('soil.feel'))!.id],
          cautions: ['local-caution'],
          glossary: [shipped.glossary[0]!.id, 'local-term'],
        },
        fixed: ['local-hold'],
      },
    ]);
    expect(laid({}).pack.overlays).toMatchObject([{ reason: 'a test needs it', fixed: [] }]);
    expect(laid({}).pack.overlays?.[0]).not.toHaveProperty('validTo');
  });

  test('puts each entry where the one stood whose place it takes, and what is new behind the others of its kind', () => {
    const { pack } = laid();
    expect(ids(pack.cautions)).toEqual([...ids(shipped.cautions), 'local-caution']);
    expect(ids(pack.glossary)).toEqual([...ids(shipped.glossary), 'local-term']);
    expect(ids(pack.questions)).toEqual(ids(shipped.questions));
    expect(new Set(ids(pack.rules))).toEqual(
      new Set([...ids(shipped.rules).filter((id) => id !== 'dark'), 'local-hold', 'local-day']),
    );
    const at = ids(shipped.parameters).indexOf('soilTemperatureMaxC');
    expect(ids(pack.parameters).filter((id, index, all) => all.indexOf(id) === index)).toEqual([
      ...new Set(ids(shipped.parameters)),
      'localMostKmh',
    ]);
    expect(at).toBeGreaterThanOrEqual(0);
  });

  test('leaves all else of the pack as it was, its plain day and head too', () => {
    const { pack } = laid();
    const { parameters, rules, questions, cautions, glossary, overlays, hash, ...rest } = pack;
    const plainParts = ['parameters', 'rules', 'questions', 'cautions', 'glossary', 'hash'] as const;
    expect(rest).toEqual(
      Object.fromEntries(Object.entries(shipped).filter(([key]) => !plainParts.some((one) => one === key))),
    );
    expect(pack.plainDay).toEqual(shipped.plainDay);
    for (const list of ['parameters', 'rules', 'questions', 'cautions', 'glossary'] as const) {
      const touched = overlays?.[0]?.changed[list] ?? [];
      const kept = (from: Pack) => (from[list] as readonly { id: string }[]).filter(({ id }) => !touched.includes(id));
      const sorted = (from: Pack) => kept(from).toSorted((a, b) => (a.id < b.id ? -1 : 1));
      expect(sorted(pack), list).toEqual(sorted(shipped));
    }
    expect([parameters.length, rules.length, questions.length, cautions.length, glossary.length]).toEqual([
      shipped.parameters.length + 2,
      shipped.rules.length + 1,
      shipped.questions.length,
      shipped.cautions.length + 1,
      shipped.glossary.length + 1,
    ]);
    expect(hash).toMatch(/^[0-9a-f]{64}$/);
  });

  test('a value that begins later stands beside the one before it, with its unit and direction; one from the first day takes its place', () => {
    const { pack } = laid();
    const [was] = byId(shipped.parameters, 'soilTemperatureMaxC');
    const { unit, tighter } = was!;
    expect(byId(pack.parameters, 'soilTemperatureMaxC')).toEqual([
      was,
      { ...parameter('soilTemperatureMaxC', 9), unit, tighter, validFrom: '2026-12-01' },
    ]);
    const earliest = shipped.parameters.map(({ validFrom }) => validFrom).toSorted()[0];
    const [day] = byId(shipped.parameters, 'bestLastDay');
    expect(byId(pack.parameters, 'bestLastDay')).toEqual([
      { ...parameter('bestLastDay', '12-01'), unit: 'month-day', tighter: day!.tighter, validFrom: earliest },
    ]);
    expect(byId(pack.parameters, 'localMostKmh')).toEqual([
      { ...parameter('localMostKmh', 6.5), unit: 'km/h', tighter: 'lower', validFrom: earliest },
    ]);
  });

  test('a rule keeps its topic, a new one is local unless it names one; only a changed condition of practice keeps the earlier one', () => {
    const { pack } = laid();
    const topic = (id: string) => pack.rules.find((one) => one.id === id)?.topic;
    const was = shipped.rules.find(({ id }) => id === 'soil-too-warm')!;
    expect(byId(pack.rules, 'soil-too-warm')).toEqual([{ ...was, lifts: 'season' }]);
    expect([topic('local-hold'), topic('local-day')]).toEqual(['local', 'season']);
    const when = { fact: 'soil.temperature30cmC', atLeast: 'soilTemperatureMaxC' };
    const one = laid({ rules: [rule('soil-too-warm', { when })] }).pack;
    expect(byId(one.rules, 'soil-too-warm')).toEqual([{ ...was, when, earlier: [was.when] }]);
    const other = { not: { fact: 'soil.temperature30cmC', below: 'soilTemperatureMaxC' } };
    const more = overlayOf({ rules: [rule('soil-too-warm', { when: other })], overlay: { id: 'second' } });
    const twice = applyOverlays(one, [more]);
    expect(twice.ok && byId(twice.pack.rules, 'soil-too-warm')[0]?.earlier).toEqual([was.when, when]);
    expect(twice.ok && twice.pack.overlays?.map(({ id }) => id)).toEqual(['invented-farm', 'second']);
  });

  test('gives its own cases, each from its file', () => {
    const { cases, findings } = laid();
    expect(findings).toEqual([]);
    expect(cases).toEqual([{ ...(ofEverything().cases?.[0] as object), file: 'farm.overlay.json' }]);
  });
});

describe('the file of an overlay', () => {
  const file = (change: (content: Record<string, Record<string, unknown>>) => void) => {
    const content = JSON.parse(JSON.stringify(overlayOf({}).content));
    change(content);
    const { overlay, findings } = parseOverlay('farm.json', JSON.stringify(content));
    return [
      overlay !== null,
      ...findings.map(({ code, file: of, pointer, expected, came }) => `${code} ${of}${pointer}: ${expected}; ${came}`),
    ];
  };

  test.each<readonly [string, (content: Record<string, Record<string, unknown>>) => void, readonly unknown[]]>([
    ['is taken', () => {}, [true]],
    ['is taken with a schema named', (content) => Object.assign(content, { $schema: '../overlay.json' }), [true]],
    [
      'is taken where it holds for one day',
      ({ overlay }) => Object.assign(overlay!, { validTo: '2026-10-01' }),
      [true],
    ],
    [
      'is refused where it ends before it begins',
      ({ overlay }) => Object.assign(overlay!, { validTo: '2026-09-30' }),
      [false, 'PACK_VALUE_WRONG farm.json/overlay/validTo: validTo not before validFrom; 2026-10-01 to 2026-09-30'],
    ],
    [
      'is refused with a schema that is no text',
      (content) => Object.assign(content, { $schema: 7 }),
      [false, 'PACK_VALUE_WRONG farm.json/$schema: the path of a JSON Schema; 7'],
    ],
    [
      'is refused with a key that there is none of',
      (content) => Object.assign(content, { rule: [] }),
      [
        false,
        'PACK_KEY_UNKNOWN farm.json/rule: one of overlay, parameters, rules, questions, cautions, glossary, cases, hash, removes; "rule"',
      ],
    ],
    [
      'is refused with another hash than its own',
      (content) => Object.assign(content, { hash: 'abc' }),
      [false, `OVERLAY_HASH_MISFIT farm.json/hash: abc; ${overlayOf({}).hash}`],
    ],
  ])('%s', (_, change, found) => {
    expect(file(change)).toEqual(found);
  });

  test('is refused where it is not JSON', () => {
    const { overlay, findings } = parseOverlay('farm.json', '{');
    expect([overlay, findings.map(({ code }) => code)]).toEqual([null, ['RULES_NOT_JSON']]);
  });
});
