import { newTally, type Run, type SeasonCompared, type WindowChange } from '../../core/compare/index.ts';
import { isoDayAfter } from './iso-day.ts';
import type { ComparisonReport } from './report-schema.ts';
import type { SeasonsRun } from './run-seasons.ts';

/** Seasons as plain data, with what they come to together. */
export function seasonsReport({ weather, stations, field, seasons }: SeasonsRun): ComparisonReport['seasons'] {
  const tally = newTally();
  for (const { verdicts } of seasons) for (const pair of verdicts) tally.add(pair);
  const windows: Record<WindowChange, number> = { appears: 0, vanishes: 0, grows: 0, shrinks: 0, moves: 0 };
  for (const { windows: differing } of seasons) for (const { change } of differing) windows[change] += 1;
  return {
    weather,
    stations: [...stations],
    field: { from: field.from, facts: { ...field.facts } },
    transitions: [...tally.transitions()],
    windows,
    deciding: decidingIn(seasons),
    held: [...new Set(seasons.flatMap(({ held }) => held))],
    seasons: seasons.map(seasonReport),
  };
}

/** How many days each rule made stricter or looser, the most first. */
function decidingIn(seasons: readonly SeasonCompared[]): ComparisonReport['seasons']['deciding'] {
  const counts = new Map<string, { rule: string; stricter: number; looser: number }>();
  for (const { by, way } of seasons.flatMap(({ changed }) => changed)) {
    for (const rule of by) {
      const count = counts.get(rule) ?? { rule, stricter: 0, looser: 0 };
      count[way] += 1;
      counts.set(rule, count);
    }
  }
  return [...counts.values()].sort((a, b) => b.stricter + b.looser - a.stricter - a.looser);
}

const letters = { 'spray-today': 's', wait: 'w', 'do-not-spray': 'n' } as const;

function seasonReport({ station, season, first, verdicts, changed, windows, held }: SeasonCompared) {
  const named = (runs: readonly Run[]) =>
    runs.map(({ first: from, last }) => ({ first: isoDayAfter(first, from), last: isoDayAfter(first, last) }));
  return {
    station,
    season,
    first,
    a: verdicts.map(({ a }) => letters[a]).join(''),
    b: verdicts.map(({ b }) => letters[b]).join(''),
    changed: changed.map((one) => ({ ...one, by: [...one.by] })),
    windows: windows.map(({ change, a, b }) => ({ change, a: named(a), b: named(b) })),
    held: [...held],
  };
}
