import { readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { dataFiles } from '../../src/adapters/weather-records/folder.ts';
import { canopyWindShare } from '../../src/core/science/wind/over-canopy.ts';
import { grassProfile } from '../../src/core/science/wind/over-grass.ts';
import { differenceByDay, type InversionScore, scoreInversions } from './inversion-score.ts';
import { figuresOf, sayScore, score } from './score.ts';
import { readTwoHeights, type TwoHeightRecord, type TwoHeights } from './two-height-rows.ts';
import { type Figures, hold, nothingToCheck, runChecks, type ValidationResult } from './validator.ts';

/** Height of the grass of a weather station, m (FAO-56 eq. 47). */
const grassM = 0.12;
/** Below this wind at 10 m an anemometer hardly turns, m/s; below the other the air is seldom neutral. */
const winds = [0.5, 2] as const;
const packFile = join('rules', 'propyzamide-winter-oilseed-rape', 'parameters.json');

/** Scores the wind profile and the inversion signs against every record of wind and temperature at 2 and 10 m. */
export function validateTwoHeights(folder: string): ValidationResult {
  const parts = dataFiles(folder, ['.csv']).flatMap((file) => {
    const record = readTwoHeights(file);
    return record === null ? [] : [scoreRecord(basename(file.path), record)];
  });
  if (parts.length === 0) return nothingToCheck('a record of wind and temperature at 2 and 10 m');
  return {
    passed: parts.reduce((sum, { passed }) => sum + passed, 0),
    failed: parts.reduce((sum, { failed }) => sum + failed, 0),
    lines: parts.flatMap(({ lines }) => lines),
    figures: Object.assign({}, ...parts.map(({ figures }) => figures)) as Figures,
  };
}

function scoreRecord(name: string, record: TwoHeightRecord): ValidationResult & { figures: Figures } {
  const lines: string[] = [`${name}: ${record.rows.length} moments`];
  const figures: Record<string, Figures> = {};
  const isDay = ({ solarWPerM2 }: TwoHeights) => solarWPerM2 > 20;
  for (const least of winds) {
    for (const [when, keep] of [
      ['all', () => true],
      ['by day', isDay],
      ['by night', (row: TwoHeights) => !isDay(row)],
    ] as const) {
      const rows = record.rows.filter((row) => row.wind10mMPerS >= least && keep(row));
      if (rows.length === 0) {
        lines.push(`wind at 10 m from ${least} m/s, ${when}: none`);
        continue;
      }
      const { text, figure } = scoreWind(rows);
      lines.push(`wind at 10 m from ${least} m/s, ${when}: ${text}`);
      figures[`wind from ${least} m/s ${when}`] = figure;
    }
  }
  const signs = record.place === null ? null : signsOf(record, record.place);
  lines.push(...(signs?.lines ?? ['no note beside it says where it stands, so the inversion signs are not scored']));
  if (signs) figures['inversion'] = signs.figures;
  const checks = runChecks([
    [
      `${name}: every share of wind is finite and below 1`,
      () => hold(grassShare < 1 && canopyShare < 1, () => 'it is not'),
    ],
  ]);
  return { ...checks, lines: [...lines, ...checks.lines], figures: { [name]: figures } };
}

const grassShare = grassProfile(2) / grassProfile(10);
const canopyShare = canopyWindShare({ boomHeightM: 2, canopyHeightM: grassM });

function scoreWind(rows: readonly TwoHeights[]) {
  const measured =
    rows.reduce((sum, row) => sum + row.wind2mMPerS, 0) / rows.reduce((sum, row) => sum + row.wind10mMPerS, 0);
  const wind = (share: number) =>
    score(rows.map((row) => [share * row.wind10mMPerS * 3.6, row.wind2mMPerS * 3.6] as const));
  const ratio = (share: number) => score(rows.map((row) => [share, row.wind2mMPerS / row.wind10mMPerS] as const));
  const text =
    `2 m to 10 m measured ${measured.toFixed(2)} (${rows.length}), over grass (FAO-56 eq. 47) ${grassShare.toFixed(2)}, ` +
    `by the profile used ${canopyShare.toFixed(2)}: wind at 2 m ${sayScore(wind(canopyShare), 2, 'km/h')}, ` +
    `ratio RMSE ${ratio(canopyShare).rmse.toFixed(2)}`;
  const figure: Figures = {
    measuredRatio: Number(measured.toFixed(4)),
    grassRatio: Number(grassShare.toFixed(4)),
    profileRatio: Number(canopyShare.toFixed(4)),
    wind2mKmh: figuresOf(wind(canopyShare)),
    wind2mKmhOverGrass: figuresOf(wind(grassShare)),
    ratio: figuresOf(ratio(canopyShare)),
  };
  return { text, figure };
}

function signsOf({ rows, clockAheadH }: TwoHeightRecord, place: { latitude: number; longitude: number }) {
  const number = parameterNumbers();
  const canopyHeightM = number('cropHeightM');
  const lines = [`its clock is taken as UTC${clockAheadH >= 0 ? '+' : ''}${clockAheadH}, from its sun`];
  const figures: Record<string, Figures> = {};
  const byDayC = differenceByDay(rows);
  lines.push(`mean difference from 2 to 10 m by day, when it cannot be above 0: ${byDayC.toFixed(2)} C`);
  for (const [aboveC, offsetC, cloud] of [
    [0, 0, 'from-sun'],
    [0.5, 0, 'from-sun'],
    [0, byDayC, 'from-sun'],
    [0.5, 0, 'unknown'],
    [0, byDayC, 'unknown'],
  ] as const) {
    const found = scoreInversions(rows, {
      place,
      limits: {
        calmBelowKmh: number('inversionWindBelowKmh'),
        clearAtMostPercent: number('inversionCloudAtMostPercent'),
        hoursBeforeSunset: number('inversionBeforeSunsetHours'),
        hoursAfterSunrise: number('inversionAfterSunriseHours'),
      },
      boomHeightM: canopyHeightM + number('boomHeightAboveCropM'),
      canopyHeightM,
      aboveC,
      offsetC,
      cloud,
    });
    const words = `${offsetC === 0 ? 'as measured' : 'less the difference by day'}, cloud ${cloud === 'unknown' ? 'not known' : 'from the sun'}`;
    lines.push(`${words}: ${sayInversions(found, aboveC)}`);
    figures[`above ${aboveC} C, ${words}`] = { ...found };
  }
  return { lines, figures };
}

function sayInversions(found: InversionScore, aboveC: number): string {
  const percent = (share: number) => (Number.isFinite(share) ? `${Math.round(100 * share)} %` : 'none');
  return (
    `warmer at 10 m by more than ${aboveC} C at ${found.inversions} moments, not at ${found.others}: signs say yes at ` +
    `${percent(found.hitYes)} of them (false alarms ${percent(found.falseYes)}), yes or possible at ` +
    `${percent(found.hitPossible)} (false alarms ${percent(found.falsePossible)})`
  );
}

function parameterNumbers(): (id: string) => number {
  const { parameters } = JSON.parse(readFileSync(packFile, 'utf8')) as { parameters: { id: string; value: unknown }[] };
  return (id) => Number(parameters.find((one) => one.id === id)?.value);
}
