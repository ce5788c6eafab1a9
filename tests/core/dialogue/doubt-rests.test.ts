import { describe, expect, test } from 'vitest';
import { shipped } from '../../cases/shipped-pack.ts';
import { heard, listener } from './listener.ts';
import { fieldLess, fitMorning } from './ready-field.ts';
import { filled, look, pressed, requested, said, started, type Told, talk } from './talk.ts';

const { pack } = shipped;
const soil = 'soil.temperature30cmC';
const wind = 'wind.boomKmh';
const doubtfulSoil = heard(soil, 8, { doubtful: true, quote: 'soil maybe 8' }).readings;
const doubtfulWind = heard(wind, 6, { doubtful: true, quote: 'wind maybe 6' }).readings;
const understand = listener({
  'no, maybe 8': { readings: doubtfulSoil, correction: true },
  'soil maybe 8': { readings: doubtfulSoil },
  'wind 6, soil maybe 8': { readings: [...heard(wind, 6).readings, ...doubtfulSoil] },
  'wind maybe 6, soil maybe 8': { readings: [...doubtfulWind, ...doubtfulSoil] },
  'no, 31': { ...heard(soil, 31), correction: true },
  '8.2': heard(soil, 8.2),
  yes: { intents: ['yes'] },
  no: { intents: ['no'] },
});
const world = { pack, forecast: null, understand };
const begin = started(pack, fieldLess(fitMorning, soil));
const beginBoth = started(pack, fieldLess(fitMorning, soil, wind));
const change: Told = { kind: 'requested', request: 'change', fact: soil };
const told = (value: number) => filled('soil-temperature', { [soil]: value });
const at = (...events: readonly Told[]) => look(talk(events, world), pack);

describe('a doubted answer in place of an earlier one', () => {
  test.each([
    ['that held the spraying up, said as a correction', [told(12), said('no, maybe 8')]],
    ['that held the spraying up, changed from the list', [told(12), change, said('soil maybe 8')]],
    ['under which spraying was fit, said as a correction', [told(7), said('no, maybe 8')]],
    ['under which spraying was fit, changed from the list', [told(7), change, said('soil maybe 8')]],
  ] as const)('%s, is read back before a spray-today rests on it', (_, events) => {
    const asked = at(begin, ...events);
    expect(asked.question).toMatchObject({ id: `confirm:${soil}` });
    expect(asked.verdict).toBeNull();
    const taken = at(begin, ...events, said('yes', `confirm:${soil}`));
    expect(taken.question).toBeNull();
    expect(taken.verdict?.verdict).toBe('spray-today');
    expect(taken.said.find(({ fact }) => fact === soil)?.value).toBe('8.0 C');
  });

  test('once denied, the question opens again with the earlier answer, which can be left as it is', () => {
    const denied = [begin, told(7), said('no, maybe 8'), said('no', `confirm:${soil}`)] as const;
    expect(at(...denied).question).toMatchObject({ id: 'soil-temperature', before: 'So far: 7.0 C.' });
    expect(at(...denied, requested('keep')).verdict?.verdict).toBe('spray-today');
    const right = at(...denied, told(12));
    expect(right.verdict?.verdict).toBe('wait');
  });

  test('once denied after a change from the list, the question is put again and nothing stands', () => {
    const denied = at(begin, told(7), change, said('soil maybe 8'), pressed(`confirm:${soil}`, 'no'));
    expect(denied.question).toMatchObject({ id: 'soil-temperature', before: null });
    expect(denied.verdict).toBeNull();
  });

  test('is not read back once a sure one has come after it', () => {
    const view = at(begin, told(7), said('no, maybe 8'), said('8.2', `confirm:${soil}`));
    expect(view.question).toBeNull();
    expect(view.verdict?.verdict).toBe('spray-today');
  });

  test('far outside what is usual and denied, opens the question again with the earlier answer', () => {
    const denied = at(begin, told(7), said('no, 31'), said('no', `confirm:${soil}`));
    expect(denied.question).toMatchObject({ id: 'soil-temperature', before: 'So far: 7.0 C.' });
  });
});

describe('two answers in one message', () => {
  test('the doubted one is read back; denied, only its own question is put again', () => {
    const both = [beginBoth, said('wind 6, soil maybe 8', 'wind')] as const;
    expect(at(...both).question).toMatchObject({ id: `confirm:${soil}` });
    expect(at(...both).verdict).toBeNull();
    expect(at(...both, said('yes')).verdict?.verdict).toBe('spray-today');
    const denied = at(...both, said('no'));
    expect(denied.question).toMatchObject({ id: 'soil-temperature' });
    expect(denied.said.map(({ fact }) => fact)).toContain(wind);
    expect(at(...both, said('no'), told(8)).verdict?.verdict).toBe('spray-today');
  });

  test('two doubted ones are read back one after the other', () => {
    const both = [beginBoth, said('wind maybe 6, soil maybe 8', 'wind')] as const;
    const asked = [at(...both), at(...both, said('yes'))].map(({ question }) => question?.id);
    expect(asked.toSorted()).toEqual([`confirm:${soil}`, `confirm:${wind}`].toSorted());
    expect(at(...both, said('yes')).verdict).toBeNull();
    expect(at(...both, said('yes'), said('yes')).verdict?.verdict).toBe('spray-today');
  });
});
