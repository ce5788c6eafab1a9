import { describe, expect, test } from 'vitest';
import { applyOverlays } from '../../../../src/core/rules/overlay/apply-overlays.ts';
import { overlayOf, type Parts, parameter, shipped } from './overlay-of.ts';

const said = ({ findings }: Pick<ReturnType<typeof applyOverlays>, 'findings'>) =>
  findings.map(
    ({ severity, code, file, pointer, expected, came }) =>
      `${severity} ${code} at ${file}${pointer}: ${expected}; ${came}`,
  );
const of = (id: string, layer: 'area' | 'farm', parts: Parts = {}, head: object = {}) =>
  overlayOf({ ...parts, overlay: { id, layer, ...head } }, `${id}.json`);

describe('the versions of a pack that an overlay is for', () => {
  test.each<readonly [version: string, range: { from?: string; before?: string }, fits: boolean]>([
    ['1.2.3', {}, true],
    ['1.2.3', { from: '1.2.3' }, true],
    ['1.2.3', { from: '1.2.4' }, false],
    ['1.2.3', { from: '1.10.0' }, false],
    ['1.10.0', { from: '1.9.9' }, true],
    ['2.0.0', { from: '1.9.9', before: '2.0.1' }, true],
    ['1.2.3', { before: '1.2.3' }, false],
    ['1.2.3', { before: '1.2.4' }, true],
    ['1.2.3', { before: '0.9.9' }, false],
    ['1.2.3-beta', { from: '1.2.3' }, false],
    ['1.2.3', { from: '1.2.3-beta' }, true],
    ['1.2.3-beta', { before: '1.2.3' }, true],
    ['1.2.3-alpha', { from: '1.2.3-beta' }, false],
    ['1.2.3-beta', { from: '1.2.3-alpha' }, true],
    ['1.2.3-beta', { from: '1.2.3-beta', before: '1.2.3-beta' }, false],
    ['1.2.4-beta', { from: '1.2.3' }, true],
    ['1.2.3-beta-2', { from: '1.2.3-beta-1' }, true],
  ])('%s is one of %j: %s', (version, range, fits) => {
    const overlay = of('farm', 'farm', {}, { pack: { id: shipped.id, ...range } });
    const applied = applyOverlays({ ...shipped, version }, [overlay]);
    const { from, before } = range;
    const asked = [shipped.id, ...(from ? [`from ${from}`] : []), ...(before ? [`before ${before}`] : [])].join(' ');
    expect(said(applied)).toEqual(
      fits ? [] : [`error OVERLAY_PACK_MISFIT at farm.json/overlay/pack: ${asked}; ${shipped.id} ${version}`],
    );
  });

  test('one for another pack is refused, whatever the version', () => {
    const overlay = of('farm', 'farm', {}, { pack: { id: 'oats' } });
    expect(said(applyOverlays(shipped, [overlay]))).toEqual([
      `error OVERLAY_PACK_MISFIT at farm.json/overlay/pack: oats; ${shipped.id} ${shipped.version}`,
    ]);
  });
});

test('the title and reason of an overlay are in every language of the pack; a reason may be one text', () => {
  const overlay = of('farm', 'farm', {}, { title: { en: 'Farm' }, reason: { de: 'So.', fr: 'Ainsi.' } });
  const expected = `a text for each of ${shipped.languages.join(', ')}`;
  expect(said(applyOverlays(shipped, [overlay])).toSorted()).toEqual(
    [
      `error PACK_LANGUAGE_MISSING at farm.json/overlay/reason/en: ${expected}; nothing`,
      `error PACK_LANGUAGE_MISSING at farm.json/overlay/reason/fr: ${expected}; "fr"`,
      `error PACK_LANGUAGE_MISSING at farm.json/overlay/title/de: ${expected}; nothing`,
    ].toSorted(),
  );
});

describe('the day on which an overlay does not hold is told', () => {
  const warm = { parameters: [parameter('soilTemperatureMaxC', 9)] };
  test.each([
    ['2026-09-30', { validTo: '2027-01-31' }, 'validFrom: a day from 2026-10-01 to 2027-01-31; 2026-09-30'],
    ['2026-09-30', {}, 'validFrom: a day from 2026-10-01; 2026-09-30'],
    ['2027-02-01', { validTo: '2027-01-31' }, 'validTo: a day from 2026-10-01 to 2027-01-31; 2027-02-01'],
  ])('%s, of one with %j', (day, head, words) => {
    const applied = applyOverlays(shipped, [of('farm', 'farm', warm, head)], day);
    expect([applied.ok, ...said(applied)]).toEqual([
      true,
      `warning OVERLAY_NOT_IN_FORCE at farm.json/overlay/${words}`,
    ]);
  });

  test('while one beside it that holds is applied, and no day means all days', () => {
    const [over, farm] = [of('area', 'area', {}, { validTo: '2026-10-31' }), of('farm', 'farm', warm)];
    const ids = (day?: string) => {
      const applied = applyOverlays(shipped, [farm, over], day);
      return applied.ok && applied.pack.overlays?.map(({ id }) => id);
    };
    expect(ids('2026-11-06')).toEqual(['farm']);
    expect(ids('2026-10-31')).toEqual(['area', 'farm']);
    expect(ids()).toEqual(['area', 'farm']);
  });
});

describe('two overlays that meet in one entry', () => {
  const warm = (value = 9) => ({ parameters: [parameter('soilTemperatureMaxC', value)] });
  const conflict = (file: string, path: string, id: string, layer = 'area') =>
    `error OVERLAY_CONFLICT at ${file}.json/${path}: ${id} in one overlay of the layer ${layer}; `;

  test('of one layer are refused, at the later one by id, whichever way they come', () => {
    const both = [of('two', 'area', warm()), of('one', 'area', warm())];
    const expected = [`${conflict('two', 'parameters/0/id', 'soilTemperatureMaxC')}one and two`];
    expect(said(applyOverlays(shipped, both))).toEqual(expected);
    expect(said(applyOverlays(shipped, both.toReversed()))).toEqual(expected);
    expect(applyOverlays(shipped, both).ok).toBe(false);
  });

  test('by taking away what the other changes, or takes away too', () => {
    const removes = { removes: { rules: ['frost', 'dark'] } };
    expect(said(applyOverlays(shipped, [of('one', 'farm', removes), of('two', 'farm', removes)]))).toEqual([
      `${conflict('two', 'removes/rules/0', 'frost', 'farm')}one and two`,
      `${conflict('two', 'removes/rules/1', 'dark', 'farm')}one and two`,
    ]);
  });

  test('by having one id', () => {
    const twice = [of('one', 'area'), overlayOf({ overlay: { id: 'one', layer: 'area' } }, 'again.json')];
    expect(said(applyOverlays(shipped, twice))).toEqual([`${conflict('again', 'overlay/id', 'one')}one and one`]);
  });

  test('of two layers may, and one may give two values of one parameter', () => {
    const area = of('one', 'area', warm());
    expect(said(applyOverlays(shipped, [area, of('two', 'farm', warm(8))]))).toEqual([]);
    expect(applyOverlays(shipped, [area, of('one', 'farm')]).ok).toBe(true);
    const later = parameter('soilTemperatureMaxC', 8, { validFrom: '2027-01-01' });
    expect(said(applyOverlays(shipped, [of('one', 'area', { parameters: [...warm().parameters, later] })]))).toEqual(
      [],
    );
  });

  test('what the area fixed is named with who fixed it, at each place where the farm changes it', () => {
    const area = of('brook', 'area', warm(), { fixed: ['soilTemperatureMaxC', 'dark'] });
    const farm = of('farm', 'farm', {
      parameters: [parameter('bestLastDay', '12-01'), ...warm(8).parameters],
      removes: { rules: ['dark'] },
    });
    expect(said(applyOverlays(shipped, [area, farm]))).toEqual([
      'error OVERLAY_ENTRY_FIXED at farm.json/parameters/1/id: soilTemperatureMaxC as brook has it; soilTemperatureMaxC changed',
      'error OVERLAY_ENTRY_FIXED at farm.json/removes/rules/0: dark as brook has it; dark changed',
    ]);
  });
});
