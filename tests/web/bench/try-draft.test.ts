import { describe, expect, test } from 'vitest';
import { parseOverlay } from '../../../src/core/rules/overlay/parse-overlay.ts';
import { benchWordsOf } from '../../../src/core/words/bench-words.ts';
import { contentOf, type Draft, emptyDraft, keepDraft, openDraft, readDraft } from '../../../web/bench/draft.ts';
import { benchRules } from '../../../web/bench/limits.ts';
import { daysByVerdict, inventedSeason, lastSeason, parseWeatherFile } from '../../../web/bench/season.ts';
import { besideDraft, faultsOf, type Tried, tryDraft } from '../../../web/bench/try-draft.ts';
import { overlayOf, parameter } from '../../core/rules/overlay/overlay-of.ts';
import { benchWith, secondBenchWith } from './bench-at-hand.ts';

const bench = benchWith();
const blank = emptyDraft('2026-11-25');
const head = {
  id: 'hollin-bank',
  title: 'Hollin Bank Farm, invented',
  author: 'A. N. Adviser',
  place: 'Hollin Bank Farm, invented',
  reason: 'colder soil is wanted here',
  layer: 'farm',
  validFrom: '2026-12-01',
} as const;
const draftWith = (limits: Draft['limits'], more: Partial<Draft> = {}): Draft => ({ ...blank, limits, ...more });
const sound = (tried: Tried) => {
  expect(tried.kind).toBe('sound');
  return tried as Extract<Tried, { kind: 'sound' }>;
};

describe('a draft that is tried', () => {
  test('without a change is unchanged', () => {
    expect(tryDraft(bench, blank, 'en').kind).toBe('unchanged');
  });

  test('with a tighter limit names the cases that change, each by the rule that reads it, before any head is filled in', () => {
    const { cases } = sound(tryDraft(bench, draftWith({ soilTemperatureMaxC: 8 }), 'en'));
    const changed = cases.differing.filter(({ way }) => way !== 'same');
    expect(changed.length).toBeGreaterThan(0);
    for (const { way, a, by } of changed)
      expect([way, a.verdict, by]).toEqual(['stricter', 'spray-today', ['soil-too-warm']]);
  });

  test('that begins later is tried on the cases as if it held on their days', () => {
    const later = draftWith({ soilTemperatureMaxC: 8 }, { head: { ...head, validFrom: '2027-06-01' } });
    const now = draftWith({ soilTemperatureMaxC: 8 });
    expect(sound(tryDraft(bench, later, 'en')).cases.transitions).toEqual(
      sound(tryDraft(bench, now, 'en')).cases.transitions,
    );
  });

  test('that would loosen a protected rule is refused with the facts that show it', () => {
    const tried = tryDraft(bench, draftWith({ windMostKmh: 14.5 }), 'en');
    expect(tried).toMatchObject({ kind: 'refused', findings: [{ code: 'OVERLAY_PARAMETER_LOOSENED' }] });
    expect(tried.kind === 'refused' && tried.findings[0]?.came).toMatch(/wind\.boomKmh/);
  });

  test('is laid over the other overlays of the server, and takes the place of the one that it goes on with', () => {
    const area = overlayOf({
      overlay: { id: 'area', layer: 'area' },
      parameters: [parameter('soilTemperatureMaxC', 9)],
    });
    const withArea = benchWith(area);
    const limitOf = (draft: Draft) =>
      besideDraft(withArea, draft).pack.parameters.find(({ id }) => id === 'soilTemperatureMaxC')?.value;
    expect(limitOf(blank)).toBe(9);
    expect(limitOf(openDraft(area, withArea.shipped, 'en', area.hash))).toBe(10);
  });
});

describe('the file of a draft', () => {
  test('is an overlay that parses, with every text in each language of the pack', () => {
    const draft = draftWith({ soilTemperatureMaxC: 9, seasonLastDay: '01-20' }, { head });
    expect(faultsOf(bench, besideDraft(bench, draft), draft, 'en')).toEqual([]);
    const content = contentOf(draft, bench.shipped, 'en');
    expect(content).toMatchObject({
      overlay: { ...head, title: { en: head.title, de: head.title }, pack: { id: 'propyzamide-winter-oilseed-rape' } },
      parameters: [
        { id: 'soilTemperatureMaxC', value: 9, source: head.reason, why: { en: head.reason, de: head.reason } },
        { id: 'seasonLastDay', value: '01-20' },
      ],
    });
  });

  test('of an overlay that was opened and left as it was is the very same, to its hash', () => {
    const opened = overlayOf({
      overlay: { validTo: '2027-01-31', fixed: ['soil-too-warm'] },
      parameters: [parameter('soilTemperatureMaxC', 9), parameter('windMostKmh', 9, { validFrom: '2027-01-01' })],
      cautions: [{ id: 'own', authority: 'practice', text: { en: 'Own.', de: 'Eigene.' } }],
    });
    const text = JSON.stringify(contentOf(openDraft(opened, bench.shipped, 'en', opened.hash), bench.shipped, 'en'));
    expect(parseOverlay('again.json', text).overlay?.hash).not.toBeUndefined();
    const again = parseOverlay('again.json', text).overlay?.content;
    const byId = (list: readonly { readonly id: string }[] = []) => list.toSorted((a, b) => (a.id < b.id ? -1 : 1));
    expect({ ...again, parameters: byId(again?.parameters) }).toEqual({
      ...opened.content,
      parameters: byId(opened.content.parameters),
    });
  });

  test('without a reason or with a day that is none is faulty', () => {
    const codes = (part: object) =>
      faultsOf(
        bench,
        besideDraft(bench, blank),
        draftWith({ soilTemperatureMaxC: 9 }, { head: { ...head, ...part } }),
        'en',
      ).map(({ pointer }) => pointer);
    expect(codes({ reason: ' ' })).toContain('/overlay/reason');
    expect(codes({ validFrom: '2026-13-01' })).toEqual(['/overlay/validFrom']);
    expect(codes({ id: 'Hollin Bank' })).toEqual(['/overlay/id']);
  });

  test('is kept on the device until it is forgotten', () => {
    const kept = new Map<string, string>();
    const memory = {
      read: (key: string) => kept.get(key) ?? null,
      write: (key: string, value: string | null) => void (value === null ? kept.delete(key) : kept.set(key, value)),
    };
    const draft = draftWith({ soilTemperatureMaxC: 9 }, { head, typed: { gustMostKmh: '1o' } });
    keepDraft(memory, bench, draft);
    expect(readDraft(memory, bench)).toEqual(draft);
    keepDraft(memory, bench, null);
    expect(readDraft(memory, bench)).toBeNull();
    memory.write('loamward.bench', '{"head":');
    expect(readDraft(memory, bench)).toBeNull();
  });

  test('is kept for each treatment by itself; that of the first lies where it lay when there was but one', () => {
    const kept = new Map([['loamward.bench', JSON.stringify(draftWith({ soilTemperatureMaxC: 9 }))]]);
    const memory = {
      read: (key: string) => kept.get(key) ?? null,
      write: (key: string, value: string | null) => void (value === null ? kept.delete(key) : kept.set(key, value)),
    };
    const other = { id: 'spring-pack', title: { en: 'Spring, invented' } };
    const treatments = [...bench.treatments, other];
    const ofOther = { ...bench, treatments, shipped: { ...bench.shipped, id: 'spring-pack' } };
    expect(readDraft(memory, ofOther)).toBeNull();
    const draft = draftWith({ windMostKmh: 8 });
    keepDraft(memory, ofOther, draft);
    expect(readDraft(memory, ofOther)).toEqual(draft);
    expect(readDraft(memory, { ...bench, treatments })?.limits).toEqual({ soilTemperatureMaxC: 9 });
  });
});

describe('the bench of another treatment', () => {
  const wheat = secondBenchWith();
  const draft = draftWith({ airTemperatureMinC: 9 }, { head });

  test('tries a limit on its own cases and on its own season, the whole year where it has none', () => {
    const { cases, before, after } = sound(tryDraft(wheat, draft, 'en'));
    const changed = cases.differing.filter(({ way }) => way !== 'same');
    expect(changed.length).toBeGreaterThan(0);
    expect(changed.every(({ by }) => by.includes('too-cold'))).toBe(true);
    const season = lastSeason(before, after, inventedSeason(wheat.today), wheat.today);
    expect([season?.first, season?.verdicts.length]).toEqual(['2025-01-01', 365]);
    expect(season?.changed.length).toBeGreaterThan(0);
  });

  test.each(['en', 'de'])('has a name for each topic of its rules in %s', (language) => {
    const { topics } = benchWordsOf(language);
    const without = wheat.shipped.rules.map(({ topic }) => topic).filter((topic) => topics[topic] === undefined);
    expect(without).toEqual([]);
  });

  test('makes an overlay that names its own pack, which the first refuses', () => {
    const content = contentOf(draft, wheat.shipped, 'en');
    expect(content).toMatchObject({ overlay: { pack: { id: 'fluroxypyr-winter-wheat' } } });
    const { overlay } = parseOverlay('wheat.json', JSON.stringify(content));
    const opened = openDraft(overlay!, bench.shipped, 'en', null);
    expect(tryDraft(bench, opened, 'en')).toMatchObject({
      kind: 'refused',
      findings: [{ code: 'OVERLAY_PACK_MISFIT' }],
    });
  });
});

describe('what the bench shows', () => {
  const shown = benchRules(bench.shipped, bench.cases, bench.today);

  test('is every rule once, under its topic, and every value in force', () => {
    expect(shown.topics.flatMap(({ rules }) => rules.map(({ rule }) => rule.id)).toSorted()).toEqual(
      bench.shipped.rules.map(({ id }) => id).toSorted(),
    );
    const values = [...shown.topics.flatMap(({ rules }) => rules.flatMap(({ limits }) => limits)), ...shown.others];
    expect(new Set(values.map(({ id }) => id)).size).toBe(shown.compiled.parameters.size);
  });

  test('says of the limits of protected rules, and of values that reach one, that they may only get tighter', () => {
    expect(
      ['windMostKmh', 'nearWaterDistanceM', 'fieldCapacityDriestPercent'].filter((id) => !shown.onlyTighter.has(id)),
    ).toEqual([]);
    expect(shown.onlyTighter.has('goodForSeenNowHours')).toBe(true);
    expect(['soilTemperatureMaxC', 'weedTillersMost'].filter((id) => shown.onlyTighter.has(id))).toEqual([]);
  });
});

describe('last season', () => {
  test('of a tighter limit has fewer days of spray today, and each changed day says by which rule', () => {
    const { before, after } = sound(tryDraft(bench, draftWith({ soilTemperatureMaxC: 6 }), 'en'));
    const season = lastSeason(before, after, inventedSeason(bench.today), bench.today);
    const [spray] = season === null ? [] : daysByVerdict(season);
    expect(season?.season).toBe(2025);
    expect(spray?.a).toBeGreaterThan(spray?.b ?? Number.POSITIVE_INFINITY);
    for (const { way, by } of season?.changed ?? []) expect([way, by]).toEqual(['stricter', ['soil-too-warm']]);
  });

  test('is read from a file of daily records', () => {
    const invented = inventedSeason(bench.today);
    const file = JSON.stringify({ name: 'Own station', place: invented.place, days: invented.days });
    expect(parseWeatherFile(file, 'own.json')).toEqual({ ...invented, name: 'Own station', invented: false });
  });

  test.each([
    ['{', 'FILE_NOT_JSON'],
    ['{}', 'WEATHER_FILE_WRONG'],
    [
      '{"name":"a","place":{"latitude":54,"longitude":-2,"elevationM":1},"days":[{"iso":"2025-13-01"}]}',
      'WEATHER_FILE_WRONG',
    ],
  ])('a file %s is refused with a code', (text, code) => {
    expect(() => parseWeatherFile(text, 'own.json')).toThrow(expect.objectContaining({ code }));
  });
});
