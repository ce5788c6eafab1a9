import { describe, expect, test } from 'vitest';
import { reportOf } from '../../../src/core/errors/coded-error.ts';
import { type ErrorCode, errorTable } from '../../../src/core/errors/table.ts';
import { catalogueOf, languageCodes } from '../../../src/core/words/catalogue.ts';
import { errorIn } from '../../../src/core/words/errors.ts';
import { labelOf } from '../../../src/core/words/facts.ts';
import { factDefinition } from '../../fixtures/core-facts.ts';

const others = languageCodes.filter((language) => language !== 'en');
const codes = Object.keys(errorTable) as ErrorCode[];

describe.each(others)('in %s', (language) => {
  const words = catalogueOf(language);

  test('each error says and advises in whole sentences', () => {
    const left = codes.filter((code) => {
      const { says, next } = errorIn(reportOf(code, { expected: 'x', came: 'y' }), words);
      return !/[.?)]$/.test(says) || !/[.?)]$/.test(next);
    });
    expect(left).toEqual([]);
  });

  test('the usual advice of an error is the one of the language, not a phrase put together from pieces of the English', () => {
    const mixed = codes.filter((code) => {
      const { next } = errorIn(reportOf(code, { expected: 'x', came: 'y' }), words);
      return words.errors[code] !== undefined && next !== words.errors[code]?.next;
    });
    expect(mixed).toEqual([]);
  });
});

describe('in English', () => {
  test('errors and facts are told by table and registry', () => {
    const report = reportOf('HELLO_TWICE', { expected: 'x', came: 'y' });
    expect(errorIn(report, catalogueOf('en'))).toEqual(report);
    expect(labelOf('soil.feel', factDefinition, catalogueOf('en'))).toBe(factDefinition('soil.feel').label);
  });
});

test('what was expected and what came is told in the language; code, place, values, keys and ids stay', () => {
  const report = reportOf('ANSWER_MISFIT', { expected: 'one of a, b', came: 'nothing', pointer: '/choices/0' });
  expect(errorIn(report, catalogueOf('de'))).toMatchObject({
    code: 'ANSWER_MISFIT',
    expected: 'eines von a, b',
    came: 'nichts',
    pointer: '/choices/0',
  });
  expect(errorIn({ ...report, came: 'a lot of rain' }, catalogueOf('de')).came).toBe('a lot of rain');
});

test('advice that one error gives of its own is told in the language too', () => {
  const own = reportOf('OPTION_UNKNOWN', { expected: '--json', came: '--jsn', next: 'See loamward ask --help.' });
  expect(errorIn(own, catalogueOf('de')).next).toBe('Siehe loamward ask --help.');
  expect(errorIn(own, catalogueOf('en')).next).toBe('See loamward ask --help.');
});
