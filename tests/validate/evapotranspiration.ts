import { basename } from 'node:path';
import { dataFiles } from '../../src/adapters/weather-records/folder.ts';
import { irishStation } from '../../src/adapters/weather-records/irish-days.ts';
import { computeEvapotranspiration } from '../../src/core/weather/reference-evapotranspiration.ts';
import { irishReference, type Seen } from './irish-reference.ts';
import { publishedDays } from './published-evapotranspiration.ts';
import { figuresOf, groupBy, sayScore, score } from './score.ts';
import { archiveReferences, forecastsWithReference } from './service-evapotranspiration.ts';
import { type Figures, hold, nothingToCheck, runChecks, type ValidationResult } from './validator.ts';

type Pair = readonly [estimate: number, told: number];
const seasons = {
  'September to December': [9, 10, 11, 12],
  'all year': [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12],
} as const;
const seenWords: Readonly<Record<Seen, string>> = {
  all: 'radiation or sunshine and wind known, humidity from the lowest temperature',
  'no-radiation': 'radiation from the range of temperature',
  'temperature-only': 'temperature alone',
};

/** Scores reference evapotranspiration against published examples, against a forecast service's own value and a weather service's. */
export function validateEvapotranspiration(folder: string): ValidationResult {
  const published = runChecks(
    publishedDays.map(([name, expected, tolerance, value]) => [
      name,
      () => hold(Math.abs(value() - expected) <= tolerance, () => `${value().toFixed(3)} for ${expected}`),
    ]),
  );
  const parts = [scoreIrish(folder), scoreService(folder)];
  return {
    passed: published.passed + parts.reduce((sum, { passed }) => sum + passed, 0),
    failed: published.failed + parts.reduce((sum, { failed }) => sum + failed, 0),
    lines: [...published.lines, ...parts.flatMap(({ lines }) => lines)],
    figures: Object.assign({}, ...parts.map(({ figures }) => figures ?? {})) as Figures,
  };
}

function scoreIrish(folder: string): ValidationResult {
  const stations = dataFiles(folder, ['.csv']).flatMap((file) => irishStation(file) ?? []);
  if (stations.length === 0) return nothingToCheck('a daily table with potential evapotranspiration (pe)');
  const lines: string[] = [];
  const figures: Record<string, Figures> = {};
  const autumn: Pair[] = [];
  for (const station of stations) {
    for (const seen of Object.keys(seenWords) as Seen[]) {
      const found = station.days.flatMap((day) => {
        const ours = irishReference(station, day, seen);
        return ours === null || day.potentialMm === null
          ? []
          : [{ month: day.month, pair: [ours, day.potentialMm] as Pair }];
      });
      for (const [season, months] of Object.entries(seasons)) {
        const pairs = found
          .filter(({ month }) => (months as readonly number[]).includes(month))
          .map(({ pair }) => pair);
        lines.push(`${station.name}, ${season}, ${seenWords[seen]}: ${sayScore(score(pairs), 2, 'mm/day')}`);
        figures[`${station.name} ${season} ${seen}`] = figuresOf(score(pairs));
        if (seen === 'all' && season !== 'all year') autumn.push(...pairs);
      }
    }
  }
  const checks = runChecks([
    [
      'within 0.5 mm/day RMSE of the weather service from September to December',
      () => {
        const { rmse } = score(autumn);
        hold(rmse <= 0.5, () => `${rmse.toFixed(2)} mm/day`);
      },
    ],
  ]);
  return { ...checks, lines: [...lines, ...checks.lines], figures };
}

function scoreService(folder: string): ValidationResult {
  const lines: string[] = [];
  const figures: Record<string, Figures> = {};
  for (const { path, forecast } of forecastsWithReference(folder)) {
    const ours = computeEvapotranspiration(forecast);
    const compared = ours.flatMap((hour, index) => {
      const told = forecast.values.et0Mm?.[index] ?? null;
      return hour === null || told === null ? [] : [{ from: hour.from, pair: [hour.mm, told] as Pair }];
    });
    if (compared.length === 0) {
      lines.push(
        `${basename(path)}: ${forecast.times.length} hours of the service's own value, too little beside it to work one out`,
      );
    }
    for (const [from, members] of groupBy(compared, (one) => one.from)) {
      const found = score(members.map(({ pair }) => pair));
      lines.push(`${basename(path)}, worked out ${from}: ${sayScore(found, 3, 'mm/h')}`);
      figures[`${basename(path)} ${from}`] = figuresOf(found);
    }
  }
  for (const { path, pairs } of archiveReferences(folder)) {
    lines.push(`${basename(path)}, daily table: ${sayScore(score(pairs), 2, 'mm/day')}`);
    figures[`${basename(path)} days`] = figuresOf(score(pairs));
  }
  if (lines.length === 0) return nothingToCheck("a forecast service's own reference evapotranspiration");
  return { passed: 0, failed: 0, lines, figures };
}
