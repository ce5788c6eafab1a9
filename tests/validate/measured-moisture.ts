import { type DataFile, dataFiles, numberOf, rowsWith } from '../../src/adapters/weather-records/folder.ts';
import { isLoamwardError } from '../../src/core/errors/coded-error.ts';
import { referenceEvapotranspirationOfDay } from '../../src/core/science/evapotranspiration/day.ts';
import { deficitOfState, startState, stepWater, type WaterFlow } from '../../src/core/science/water/balance.ts';
import { type Cover, soilStoreOf } from '../../src/core/science/water/soil-store.ts';
import { figuresOf, groupBy, sayScore, score } from './score.ts';
import { type Figures, nothingToCheck, type ValidationResult } from './validator.ts';

/** A day with the water measured in the top 30 cm, and what the weather brought; null where missing. */
interface MoistureDay {
  readonly station: string;
  readonly day: number;
  readonly month: number;
  readonly heldMm: number | null;
  readonly flow: WaterFlow | null;
}

const columns = [
  'WBANNO',
  'LST_DATE',
  'P_DAILY_CALC',
  'SOLARAD_DAILY',
  'SOIL_MOISTURE_5_DAILY',
  'SOIL_MOISTURE_20_DAILY',
];
const missing = [-9999, -99];
const covers: readonly (readonly [string, Cover])[] = [
  ['as grass', { kind: 'crop', coefficient: 1 }],
  ['as bare soil', { kind: 'bare' }],
];

/**
 * Scores the balance against water measured in the top 30 cm, September to December: each day anchored on the measurement,
 * then run ahead on the rain that fell. Texture is not told, so field capacity is the 95th percentile of the site's own past.
 */
export function validateMeasuredMoisture(folder: string): ValidationResult {
  const days = dataFiles(folder, ['.csv']).flatMap(moistureDays);
  const lines: string[] = [];
  const figures: Record<string, Figures> = {};
  for (const [station, series] of groupBy(days, (day) => day.station)) {
    for (const [words, cover] of covers) {
      for (const lead of [1, 3, 7]) {
        const { ours, persistence } = runAhead(series, cover, lead);
        if (ours.length === 0) continue;
        const name = `station ${station}, ${words}, ${lead} d ahead`;
        const still = score(persistence);
        lines.push(`${name}: ${sayScore(score(ours), 1, 'mm')}; persistence RMSE ${still.rmse.toFixed(1)} mm`);
        figures[name] = { ours: figuresOf(score(ours)), persistence: figuresOf(still) };
      }
    }
  }
  if (lines.length === 0)
    return nothingToCheck('a daily table with soil moisture at 5, 10 and 20 cm over more than a year');
  return { passed: 0, failed: 0, lines, figures };
}

function runAhead(series: readonly MoistureDay[], cover: Cover, lead: number) {
  const store = soilStoreOf('loam', 0.3, cover);
  const ours: [number, number][] = [];
  const persistence: [number, number][] = [];
  const past: number[] = [];
  for (const [index, { month, heldMm, day }] of series.entries()) {
    if (heldMm === null) continue;
    past.push(heldMm);
    const target = series[index + lead];
    const ahead = series.slice(index + 1, index + 1 + lead).map(({ flow }) => flow);
    if (month < 9 || past.length < 365 || target?.heldMm == null || target.day !== day + lead) continue;
    const capacityMm = past.toSorted((one, other) => one - other)[Math.floor(0.95 * past.length)] ?? heldMm;
    let state = startState(Math.max(0, capacityMm - heldMm), store);
    if (ahead.some((flow) => flow === null)) continue;
    for (const flow of ahead) state = flow === null ? state : stepWater(state, flow, store.drying).state;
    ours.push([capacityMm - deficitOfState(state), target.heldMm]);
    persistence.push([heldMm, target.heldMm]);
  }
  return { ours, persistence };
}

function moistureDays(file: DataFile): MoistureDay[] {
  return rowsWith(file, columns).map((row) => {
    const number = (name: string) => numberOf(row[name], missing);
    const date = row['LST_DATE'] ?? '';
    const [year, month] = [Number(date.slice(0, 4)), Number(date.slice(4, 6))];
    const day = Date.UTC(year, month - 1, Number(date.slice(6, 8))) / 86_400_000;
    const [at5, at10, at20] = [5, 10, 20].map((depth) => number(`SOIL_MOISTURE_${depth}_DAILY`));
    const heldMm = at5 == null || at10 == null || at20 == null ? null : 75 * at5 + 75 * at10 + 150 * at20;
    const dayOfYear = day - Date.UTC(year, 0, 1) / 86_400_000 + 1;
    return { station: row['WBANNO'] ?? '', day, month, heldMm, flow: flowOf(number, dayOfYear) };
  });
}

function flowOf(number: (name: string) => number | null, dayOfYear: number): WaterFlow | null {
  const [rainMm, highestC, lowestC] = ['P_DAILY_CALC', 'T_DAILY_MAX', 'T_DAILY_MIN'].map(number);
  const [latitude, solarRadiation] = ['LATITUDE', 'SOLARAD_DAILY'].map(number);
  const [highestPercent, lowestPercent] = ['RH_DAILY_MAX', 'RH_DAILY_MIN'].map(number);
  if (rainMm == null || highestC == null || lowestC == null || latitude == null || highestC < lowestC) return null;
  try {
    const referenceMm = referenceEvapotranspirationOfDay({
      latitude,
      elevationM: 0,
      dayOfYear,
      highestC,
      lowestC,
      humidity: highestPercent == null || lowestPercent == null ? { unknown: true } : { highestPercent, lowestPercent },
      wind: null,
      windHeightM: 10,
      sun: solarRadiation == null ? { unknown: 'inland' } : { solarRadiation },
    });
    return { rainMm, referenceMm };
  } catch (error) {
    if (isLoamwardError(error)) return null;
    throw error;
  }
}
