import { describe, expect, test } from 'vitest';
import { ensembleChecks } from './recorded-ensemble.ts';
import { runDates, runDatesProblem } from './soil-run-dates.ts';
import { runChecks } from './validator.ts';

const time = ['2026-10-03T00:00', '2026-10-03T01:00', '2026-10-03T02:00'];
const members = Object.fromEntries(
  Array.from({ length: 12 }, (_, index) => [
    `temperature_2m_member${String(index + 1).padStart(2, '0')}`,
    [8 + index / 10, 9, 10],
  ]),
);
const whole = { time, temperature_2m: [8, 9, 10], ...members };
const failed = (hourly: Record<string, (string | number | null)[]>) =>
  runChecks(ensembleChecks('reply', { hourly, hourly_units: { temperature_2m: '°C' } })).failed;

describe('an ensemble in a recorded reply', () => {
  test('passes where control run and members are whole, and a reply without members is none', () => {
    expect(failed(whole)).toBe(0);
    expect(ensembleChecks('reply', { hourly: { time, temperature_2m: [1, 2, 3] } })).toEqual([]);
  });

  test.each<[string, Record<string, (string | number | null)[]>]>([
    ['no control run', { time, ...members }],
    ['too few members', { time, temperature_2m: [8, 9, 10], temperature_2m_member01: [8, 9, 10] }],
    ['a member cut short', { ...whole, temperature_2m_member03: [8, 9] }],
    ['a member without values', { ...whole, temperature_2m_member03: [null, null, null] }],
    ['a temperature not of Earth', { ...whole, temperature_2m_member03: [850, 9, 10] }],
    ['stamps that jump', { ...whole, time: ['2026-10-03T00:00', '2026-10-03T01:00', '2026-10-03T03:00'] }],
    [
      'every run the same',
      Object.fromEntries(Object.keys(whole).map((name) => [name, name === 'time' ? time : [1, 2, 3]])),
    ],
  ])('fails with %s', (_, hourly) => {
    expect(failed(hourly)).toBe(1);
  });
});

describe('dates of the first week below 10 C', () => {
  const autumn = (at: (day: number, depth: number) => number | null) =>
    Array.from({ length: 122 }, (_, day) => ({
      iso: new Date(Date.UTC(2026, 8, 1 + day)).toISOString().slice(0, 10),
      byDepth: Object.fromEntries([20, 30, 50].map((depth) => [depth, at(day, depth)])),
    }));

  test('a dip of six days is no week, and deeper soil comes later', () => {
    const [one] = runDates(autumn((day, depth) => (day >= 20 && day < 26 ? 9 : 16 - day / 10 + depth / 50)));
    expect(one?.scored).toEqual({ 20: '2026-11-05', 30: '2026-11-07', 50: '2026-11-11' });
    expect(one && runDatesProblem(one)).toBeNull();
  });

  test('a day not known ends a week by both counts, and an autumn begun late is not told', () => {
    const [one] = runDates(autumn((day) => (day % 5 === 0 ? null : 5)));
    expect([one?.scored[30], one?.counted[30]]).toEqual([null, null]);
    expect(runDates(autumn(() => 5).slice(1))).toEqual([]);
  });

  test('counts that differ, and 30 cm before 20 cm, are problems', () => {
    expect(runDatesProblem({ year: '2026', scored: { 20: 'b', 30: 'b', 50: 'b' }, counted: { 20: 'c' } })).toContain(
      '20',
    );
    const dates = { 20: '2026-11-05', 30: '2026-11-01', 50: '2026-11-06' };
    expect(runDatesProblem({ year: '2026', scored: dates, counted: dates })).toContain('30 cm');
  });
});
