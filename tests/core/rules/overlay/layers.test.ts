import { describe, expect, test } from 'vitest';
import { compileRules } from '../../../../src/core/rules/compile.ts';
import { outcomeOf } from '../../../../src/core/rules/outcome.ts';
import { applyOverlays } from '../../../../src/core/rules/overlay/apply-overlays.ts';
import { parseOverlay } from '../../../../src/core/rules/overlay/parse-overlay.ts';
import { choice, number, signsSeen } from '../../../generators/small.ts';
import { newRule, overlayOf, type Parts, parameter, rule, shipped, split } from './overlay-of.ts';

const slower = (value: number): Parts => ({
  parameters: [parameter('windMostKmh', value)],
  questions: [split('wind', 'gentle-breeze', 'wind.boomKmh', value, value + 0.01)],
});
const of = (id: string, layer: 'area' | 'farm', parts: Parts, head: object = {}) =>
  overlayOf({ ...parts, overlay: { id, layer, ...head } }, `${id}.json`);
const codes = (findings: readonly { code: string; file: string }[]) =>
  findings.map(({ code, file }) => `${code} ${file}`);

describe('overlays in layers', () => {
  test('the area comes first and the farm over it, however they are given', () => {
    const area = of('z-area', 'area', { parameters: [parameter('soilTemperatureMaxC', 9)] });
    const farm = of('a-farm', 'farm', { parameters: [parameter('soilTemperatureMaxC', 11)] });
    const applied = applyOverlays(shipped, [farm, area]);
    expect(applied.ok && applied.pack.overlays?.map(({ id }) => id)).toEqual(['z-area', 'a-farm']);
    expect(applied.ok && applied.pack.parameters.find(({ id }) => id === 'soilTemperatureMaxC')?.value).toBe(11);
  });

  test('a farm may tighten further what the area tightened', () => {
    const applied = applyOverlays(shipped, [
      of('area', 'area', { parameters: [parameter('drainsSurplusMm', 4)] }),
      of('farm', 'farm', { parameters: [parameter('drainsSurplusMm', 3)] }),
    ]);
    expect(applied.findings).toEqual([]);
  });

  test('a farm may not take back what the area tightened, though the pack alone would allow it', () => {
    const farm = of('farm', 'farm', { parameters: [parameter('windMostKmh', 9.6)] });
    expect(applyOverlays(shipped, [farm]).ok).toBe(true);
    const applied = applyOverlays(shipped, [of('area', 'area', slower(8)), farm]);
    expect(applied.ok).toBe(false);
    expect(codes(applied.findings)).toContain('OVERLAY_PARAMETER_LOOSENED farm.json');
  });

  test('a rule that the area adds under water is protected from the farm', () => {
    const local = newRule('local-water', { fact: 'soil.surface', has: 'sticky' }, { authority: 'water' });
    const area = of('area', 'area', { rules: [local] });
    const farm = of('farm', 'farm', { removes: { rules: ['local-water'] } });
    expect(codes(applyOverlays(shipped, [area, farm]).findings)).toEqual(['OVERLAY_RULE_REMOVED farm.json']);
  });

  test('a farm may not change what the area says is fixed, and may change its other practice', () => {
    const parts = { parameters: [parameter('soilTemperatureMaxC', 9), parameter('bestLastDay', '12-01')] };
    const area = of('area', 'area', parts, { fixed: ['soilTemperatureMaxC'] });
    const farm = (id: string, value: unknown) => of('farm', 'farm', { parameters: [parameter(id, value)] });
    expect(codes(applyOverlays(shipped, [area, farm('soilTemperatureMaxC', 11)]).findings)).toEqual([
      'OVERLAY_ENTRY_FIXED farm.json',
    ]);
    expect(applyOverlays(shipped, [area, farm('bestLastDay', '12-20')]).ok).toBe(true);
  });

  test('two of one layer may not change the same entry', () => {
    const both = ['one', 'two'].map((id) => of(id, 'area', { parameters: [parameter('soilTemperatureMaxC', 9)] }));
    expect(codes(applyOverlays(shipped, both).findings)).toEqual(['OVERLAY_CONFLICT two.json']);
  });

  test('two of one layer may change different entries', () => {
    const both = [
      of('one', 'area', { parameters: [parameter('soilTemperatureMaxC', 9)] }),
      of('two', 'area', { removes: { rules: ['dark'] } }),
    ];
    expect(applyOverlays(shipped, both).ok).toBe(true);
  });
});

describe('the days of an overlay', () => {
  const parts = { parameters: [parameter('soilTemperatureMaxC', 9)] };
  test.each([
    ['2026-09-30', false],
    ['2026-10-01', true],
    ['2027-01-31', true],
    ['2027-02-01', false],
  ])('on %s it is applied: %s', (day, holds) => {
    const overlay = of('season', 'farm', parts, { validFrom: '2026-10-01', validTo: '2027-01-31' });
    const applied = applyOverlays(shipped, [overlay], day);
    expect(applied.ok && applied.pack.overlays !== undefined).toBe(holds);
    expect(codes(applied.findings)).toEqual(holds ? [] : ['OVERLAY_NOT_IN_FORCE season.json']);
    if (!holds) expect(applied.ok && applied.pack).toBe(shipped);
  });
});

describe('a rule of practice that a protected rule names', () => {
  const loosened = () =>
    of('farm', 'farm', {
      parameters: [parameter('localDriestPercent', 70, { unit: '% of field capacity', tighter: 'higher' })],
      rules: [
        rule('soil-too-dry', {
          when: { fact: 'soil.fieldCapacityPercent', below: 'localDriestPercent' },
          text: newRule('x', {}).text,
        }),
      ],
    });
  const facts = {
    'soil.fieldCapacityPercent': number(75),
    'soil.feel': choice('moist'),
    'soil.surface': signsSeen(['friable']),
    'soil.drainsRunning': choice('no'),
    'rain.next48hMm': number(20),
    'rain.next48hMaxMmPerH': number(5),
  };
  test('is changed for itself, while the protected rule goes on holding by the shipped one', () => {
    const applied = applyOverlays(shipped, [loosened()]);
    const rules = applied.ok ? compileRules(applied.pack, '2026-11-06').rules : [];
    const outcome = (id: string) => {
      const found = rules.find((one) => one.rule.id === id);
      return found && outcomeOf(found.condition, facts);
    };
    expect(outcome('soil-too-dry')).toBe('not-met');
    expect(outcome('rain-on-unfit-soil')).toBe('met');
  });
});

describe('the hash', () => {
  const file = (parts: object) => JSON.stringify({ $schema: 'x', ...JSON.parse(JSON.stringify(parts)) });
  const hashOf = (text: string) => parseOverlay('a.json', text).overlay?.hash;

  test('of an overlay is over what it says: neither the order of keys, the schema nor its cases count', () => {
    const { content } = overlayOf({ parameters: [parameter('soilTemperatureMaxC', 9)] });
    const { overlay, ...rest } = content;
    expect(hashOf(file({ ...rest, overlay, cases: [] }))).toBe(hashOf(JSON.stringify(content)));
    expect(hashOf(file({ ...content, parameters: [parameter('soilTemperatureMaxC', 8)] }))).not.toBe(
      hashOf(JSON.stringify(content)),
    );
  });

  test('of a pack with overlays is another with each overlay, and the same every time', () => {
    const one = of('one', 'farm', { parameters: [parameter('soilTemperatureMaxC', 9)] });
    const two = of('two', 'farm', { parameters: [parameter('bestLastDay', '12-01')] });
    const hashes = [[], [one], [two], [one, two]].map((overlays) => {
      const applied = applyOverlays(shipped, overlays);
      return applied.ok ? applied.pack.hash : '';
    });
    expect(new Set(hashes).size).toBe(4);
    const again = applyOverlays(shipped, [two, one]);
    expect(again.ok && again.pack.hash).toBe(hashes[3]);
  });
});
