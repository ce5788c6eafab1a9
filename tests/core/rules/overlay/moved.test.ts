import { expect, test } from 'vitest';
import { movedParameters, type ProtectWorld, placeOfMoved } from '../../../../src/core/rules/overlay/protect/world.ts';
import { collectFindings } from '../../../../src/core/rules/pack/findings.ts';
import type { Parameter } from '../../../../src/core/units/parameter.ts';
import { factDefinition } from '../../../fixtures/core-facts.ts';
import { overlayOf, parameter, shipped } from './overlay-of.ts';

const version = (id: string, value: Parameter['value'], validFrom = '2020-01-01', validTo?: string): Parameter => ({
  ...{ id, value, unit: 'u', source: 'a test', why: { en: 'w' }, validFrom, tighter: 'lower' },
  ...(validTo === undefined ? {} : { validTo }),
});
const overlay = () =>
  overlayOf({
    parameters: [
      parameter('other', 1),
      parameter('limit', 8, { validFrom: '2026-10-01' }),
      parameter('limit', 7, { validFrom: '2027-01-01' }),
    ],
  });
const world = (before: readonly Parameter[], after: readonly Parameter[], days: readonly string[]): ProtectWorld => ({
  ...{ before: { ...shipped, parameters: before }, after: { ...shipped, parameters: after }, overlay: overlay() },
  ...{ definitionOf: factDefinition, days, report: collectFindings().report },
});
const days = ['2026-10-01', '2027-01-01'];

test('a parameter has moved on each day on which its value is another than before, or is there or gone', () => {
  const before = [
    version('limit', 9),
    version('same', 1),
    version('list', ['a']),
    version('ended', 1, '2020-01-01', '2026-12-31'),
  ];
  const after = [
    version('limit', 9),
    version('limit', 8, '2027-01-01'),
    version('same', 1, '2026-10-01'),
    version('list', ['a', 'b']),
    version('ended', 1),
    version('fresh', 3, '2026-11-01'),
  ];
  const moved = movedParameters(world(before, after, days));
  expect(moved.map(({ id, day, before: was, after: is }) => [day, id, was?.value ?? null, is?.value ?? null])).toEqual([
    ['2026-10-01', 'list', ['a'], ['a', 'b']],
    ['2027-01-01', 'limit', 9, 8],
    ['2027-01-01', 'list', ['a'], ['a', 'b']],
    ['2027-01-01', 'ended', null, 1],
    ['2027-01-01', 'fresh', null, 3],
  ]);
  expect(movedParameters(world(before, before, days))).toEqual([]);
  expect(movedParameters(world(before, [], ['2026-10-01'])).map(({ id, after: is }) => [id, is])).toEqual([
    ['limit', null],
    ['same', null],
    ['list', null],
    ['ended', null],
  ]);
});

test('its place is the version that the overlay gives, else the first that it gives, else the head', () => {
  const place = (id: string, after: Parameter | null) =>
    placeOfMoved(overlay(), { id, day: '2027-01-01', before: null, after }, 'value');
  const file = 'farm.overlay.json';
  expect(place('limit', version('limit', 7, '2027-01-01'))).toEqual({ file, path: ['parameters', 2, 'value'] });
  expect(place('limit', version('limit', 9))).toEqual({ file, path: ['parameters', 1, 'value'] });
  expect(place('limit', null)).toEqual({ file, path: ['parameters', 1, 'value'] });
  expect(place('none', null)).toEqual({ file, path: ['overlay'] });
});
