import { describe, expect, test } from 'vitest';
import { numberParameter, type Parameter, parametersOn } from '../../../src/core/units/parameter.ts';
import { inLanguage, sourceIn } from '../../../src/core/units/texts.ts';

function parameter(id: string, value: Parameter['value'], validFrom: string, validTo?: string): Parameter {
  const text = { unit: 'mm', source: 'test', why: { en: 'test' }, tighter: 'lower' } as const;
  return { id, value, validFrom, ...text, ...(validTo === undefined ? {} : { validTo }) };
}

describe('parameters in force on a day', () => {
  const early = parameter('rain', 10, '2020-01-01');
  const late = parameter('rain', 5, '2026-10-01');

  test.each([
    ['2019-12-31', undefined],
    ['2020-01-01', 10],
    ['2026-09-30', 10],
    ['2026-10-01', 5],
    ['2030-01-01', 5],
  ])('on %s rain is %s, whichever version stands first', (day, value) => {
    for (const all of [
      [early, late],
      [late, early],
    ]) {
      expect(parametersOn(all, day).get('rain')?.value).toBe(value);
    }
  });

  test('the last day is in force, the day after is not, and an older version comes back then', () => {
    const short = parameter('rain', 1, '2026-01-01', '2026-03-31');
    const value = (day: string) => parametersOn([short, early], day).get('rain')?.value;
    expect([value('2025-12-31'), value('2026-01-01'), value('2026-03-31'), value('2026-04-01')]).toEqual([
      10, 1, 1, 10,
    ]);
    expect(parametersOn([short], '2026-04-01').size).toBe(0);
  });

  test('of two of the same first day the one that stands first holds, and each id has its own', () => {
    const found = parametersOn(
      [early, parameter('rain', 7, '2020-01-01'), parameter('wind', 3, '2020-01-01')],
      '2026-01-01',
    );
    expect([...found].map(([id, one]) => [id, one.value])).toEqual([
      ['rain', 10],
      ['wind', 3],
    ]);
  });
});

test.each([
  ['absent', undefined, 'undefined'],
  ['a text', '10-01', '10-01'],
  ['no finite number', Number.NaN, 'NaN'],
])('a number is wanted of a parameter: %s is refused with its name', (_, value, came) => {
  const all = value === undefined ? [] : [parameter('rain', value, '2020-01-01')];
  expect(() => numberParameter(parametersOn(all, '2026-01-01'), 'rain')).toThrow(
    expect.objectContaining({
      code: 'PARAMETER_MISSING',
      details: { expected: 'a number in force on this day', came, parameter: 'rain' },
    }),
  );
  expect(numberParameter(parametersOn([parameter('rain', 0, '2020-01-01')], '2026-01-01'), 'rain')).toBe(0);
});

test('a text is told in the language, else in English, else not at all; a title as it stands', () => {
  const both = { en: 'rain', de: 'Regen' };
  expect([inLanguage(both, 'de'), inLanguage(both, 'fr'), inLanguage({ de: 'Regen' }, 'fr')]).toEqual([
    'Regen',
    'rain',
    '',
  ]);
  expect([sourceIn(both, 'de'), sourceIn('FAO-56', 'de')]).toEqual(['Regen', 'FAO-56']);
});
