import { describe, expect, test } from 'vitest';
import { instantText } from '../../../src/core/dialogue/moment.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { fieldLess, fitMorning } from './ready-field.ts';
import { lines, look, said, stamp, started, take, talk, undone } from './talk.ts';

const { pack } = shipped;
const world = { pack, forecast: null };
const begin = started(pack, fieldLess(fitMorning, 'soil.temperature30cmC'));
const tell = (...texts: string[]) => talk([begin, ...texts.map((text) => said(text, 'soil-temperature'))], world);

function taken(...texts: string[]): string[] {
  const { state } = tell(...texts);
  const told = state.observations.filter(({ fact, device }) => fact === 'soil.temperature30cmC' && device !== '');
  return told.map(({ reading, at }) => {
    const from = reading.type === 'number' ? reading.from : undefined;
    const value = reading.type === 'number' ? reading.value : Number.NaN;
    const when = instantText(at).slice(0, 16);
    return from ? `${from.valueC} C at ${from.depthCm} cm ${when}` : `${value} C at 30 cm ${when}`;
  });
}

describe('a temperature told with its depth and hour, at 09:01 on 6 November, is kept at that hour', () => {
  test.each([
    ['7 at 10 cm at 8 am', '7 C at 10 cm 2026-11-06T08:00'],
    ['7 at 10 cm at 8:15', '7 C at 10 cm 2026-11-06T08:15'],
    ['7 at 10 cm yesterday at 3 pm', '7 C at 10 cm 2026-11-05T15:00'],
    ['7.5 at four inches this morning at eight', '7.5 C at 10.16 cm 2026-11-06T08:00'],
    ['10cm probe says 8, half past eight', '8 C at 10 cm 2026-11-06T08:30'],
    ['10cm probe says 8, half past two yesterday', '8 C at 10 cm 2026-11-05T14:30'],
    ['at 20 cm it was 9 yesterday at noon', '9 C at 20 cm 2026-11-05T12:00'],
    ['7 at 10 cm just now', '7 C at 10 cm 2026-11-06T09:01'],
    ["48 F at 10 cm at 7 o'clock", '8.88888888889 C at 10 cm 2026-11-06T07:00'],
    ['9 yesterday at 6 pm', '9 C at 30 cm 2026-11-05T18:00'],
    ['9 yesterday', '9 C at 30 cm 2026-11-05T09:01'],
    ['48 F', '8.88888888889 C at 30 cm 2026-11-06T09:01'],
  ])('%s', (text, expected) => {
    expect(taken(text)).toEqual([expected]);
  });
});

describe('an hour said next belongs to the temperature at another depth that lacked it', () => {
  test.each([
    [['7 at 10 cm', '8 am'], ['7 C at 10 cm 2026-11-06T08:00']],
    [['7 at 10 cm', 'just now'], ['7 C at 10 cm 2026-11-06T09:02']],
    [['7 at 10 cm', 'yesterday at noon'], ['7 C at 10 cm 2026-11-05T12:00']],
    [['7 at 10 cm', 'not cracked', '8 am'], []],
    [['8 am'], []],
    [['7 at 10 cm', '8 am', '7 am'], ['7 C at 10 cm 2026-11-06T08:00']],
  ])('%j', (texts, expected) => {
    expect(taken(...texts)).toEqual(expected);
  });
});

describe('two readings at 30 cm within the hour that differ', () => {
  const standing = (...texts: string[]) => {
    const { state } = tell(...texts);
    const reading = state.observations.findLast(({ fact }) => fact === 'soil.temperature30cmC')?.reading;
    const remarks = state.notes.flatMap((note) => (note.kind === 'remark' ? [note.code] : []));
    return [reading, remarks];
  };
  test.each([
    [['9.2', '10.4'], { value: 9.8, low: 9.2, high: 10.4 }, ['readings-differ']],
    [['9.2', '10.4', '8.8'], { value: 9.6, low: 8.8, high: 10.4 }, ['readings-differ', 'readings-differ']],
    [['9.2', '9.2'], { value: 9.2 }, []],
    [['9.2', 'no, 10.4'], { value: 10.4 }, []],
    [['9.2 yesterday', '10.4'], { value: 10.4 }, []],
  ])('%j', (texts, reading, remarks) => {
    expect(standing(...texts)).toEqual([{ type: 'number', ...reading }, remarks]);
  });

  test('across the limit the question is open again, after the one that stands', () => {
    const talked = tell('9.2', '10.4');
    expect(lines(talked, pack).join('\n')).toContain('between the two');
    const { id } = look(talked, pack).question!;
    const after = take(
      talked,
      { kind: 'answered', question: id, choices: ['colder'], numbers: {}, doesNotKnow: false, ...stamp(9) },
      world,
    );
    expect(look(after, pack).question?.id).toBe('soil-temperature');
  });
});

describe('what cannot be taken is answered with a code and nothing is taken', () => {
  test.each([
    ['7 at 10 cm', 'DEPTH_NEEDS_HOUR'],
    ['7 at 10 cm yesterday', 'DEPTH_NEEDS_HOUR'],
    ['7 at 3 cm at 8 am', 'DEPTH_NOT_30CM'],
    ['7 at 120 cm at 8 am', 'DEPTH_NOT_30CM'],
    ['7 at 10 cm at 3 pm', 'READING_IN_FUTURE'],
    ['9 at 3 pm', 'READING_IN_FUTURE'],
    ['85', 'FACT_OUT_OF_RANGE'],
    ['85 at 10 cm at 8 am', 'FACT_OUT_OF_RANGE'],
    ['-40', 'FACT_OUT_OF_RANGE'],
  ])('%s: %s', (text, code) => {
    expect(taken(text)).toEqual([]);
    const codes = tell(text).state.notes.flatMap((note) => (note.kind === 'error' ? [note.error.code] : []));
    expect(codes).toEqual([code]);
  });
});

test('the person reads what it was worked out from and how wide that is', () => {
  expect(lines(tell('4 at 10 cm at 8 am'), pack).find((line) => line.startsWith('='))).toMatch(
    /soil at 30 cm [\d.]+ C \([\d.]+ to [\d.]+\), worked out from 4 C at 10 cm at 08:00/,
  );
});

test('a band across 10 C settles nothing: the next question asks for 30 cm; a direct reading outranks it', () => {
  const wide = tell('9 at 10 cm at 8 am');
  expect(look(wide, pack).question?.id).toBe('soil-temperature');
  expect(lines(wide, pack).filter((line) => line.startsWith('!'))).toEqual([]);
  const direct = take(wide, { ...said('7.6', 'soil-temperature'), ...stamp(5) }, world);
  expect(lines(direct, pack).at(-1)).toMatch(/^! Spray today/);
  const later = take(direct, { ...said('12 at 10 cm just now', null), ...stamp(6) }, world);
  expect(lines(later, pack).findLast((line) => line.startsWith('!'))).toMatch(/^! Spray today/);
});

test('it is taken back like any other', () => {
  const back = take(tell('4 at 10 cm at 8 am'), { ...undone('phone-1'), ...stamp(2) }, world);
  expect(back.state.observations.some(({ fact }) => fact === 'soil.temperature30cmC')).toBe(false);
});

test('"what have I told you?" says from what it was worked out, in words and in the list', () => {
  const told = tell('4 at 10 cm at 8 am', 'what have I told you?');
  const origin = 'worked out from 4 C at 10 cm at 08:00';
  expect(lines(told, pack).at(-1)).toContain(origin);
  expect(look(told, pack).said.find(({ fact }) => fact === 'soil.temperature30cmC')?.from).toContain(origin);
});
