import { dataFiles, numberOf } from '../../src/adapters/weather-records/folder.ts';
import { soilConstants30cm } from '../../src/core/science/soil/temperature/constants.ts';
import { remembered } from '../../src/core/science/soil/temperature/memories.ts';
import { figuresOf, type Score, sayScore, score } from './score.ts';
import { hold, nothingToCheck, runChecks, type ValidationResult } from './validator.ts';

const months = 'January February March April May June July August September October November December'.split(' ');
const middles = months.map((_, month) => 15 + month * 30.44);

interface Means {
  readonly title: string;
  readonly airC: readonly number[];
  readonly soilC: readonly number[];
}

/**
 * The model without any reading, run through a year of usual air, against monthly means of soil at 30 cm: what a field gets
 * beyond the forecast before its own readings correct it.
 */
export function validateSoilClimatology(folder: string): ValidationResult {
  const tables = dataFiles(folder, ['.csv']).flatMap(({ text }) => tableOf(text) ?? []);
  if (tables.length === 0) return nothingToCheck('monthly means of air and of soil at 30 cm');
  const found = tables.map((table) => ({ table, ...scored(table) }));
  const lines = found.map(
    ({ table, autumn, year }) =>
      `${table.title}: 30 cm from usual air alone, September to December ${sayScore(autumn, 2, 'C')}, all year ${sayScore(year, 2, 'C')}`,
  );
  const checks = runChecks(
    found.map(({ table, autumn }) => [
      `${table.title}: within 1.5 C in autumn`,
      () => hold(autumn.rmse <= 1.5, () => `${autumn.rmse} C`),
    ]),
  );
  const figures = Object.fromEntries(found.map(({ table, autumn }) => [table.title, figuresOf(autumn)]));
  return { ...checks, lines: [...lines, ...checks.lines], figures };
}

function scored({ airC, soilC }: Means): { readonly autumn: Score; readonly year: Score } {
  const days = Array.from({ length: 730 }, (_, index) => {
    const dayOfYear = (index % 365) + 1;
    return { dayOfYear, airC: between(airC, dayOfYear) };
  });
  const course = remembered(soilConstants30cm, { quickC: airC[0]!, slowC: airC[0]! }, days).slice(365);
  const pairs = soilC.map((measured, month): [number, number] => {
    const own = course.filter((_, index) => Math.floor(index / 30.42) === month).map(({ middleC }) => middleC);
    return [own.reduce((sum, one) => sum + one, 0) / own.length, measured];
  });
  return { autumn: score(pairs.slice(8)), year: score(pairs) };
}

function between(monthly: readonly number[], dayOfYear: number): number {
  const at = (dayOfYear - middles[0]!) / 30.44;
  const low = Math.floor(at);
  const value = (month: number) => monthly[(month + 12) % 12]!;
  return value(low) + (value(low + 1) - value(low)) * (at - low);
}

function tableOf(text: string): Means | null {
  const lines = text.split(/\r?\n/).map((line) => line.split(',').map((cell) => cell.trim()));
  const heading = lines.find(
    (cells) => cells[0] === 'Month' && cells.some((cell) => /soil temperature 30 cm/i.test(cell)),
  );
  if (heading === undefined) return null;
  const column = (name: RegExp) => heading.findIndex((cell) => name.test(cell));
  const [air, soil] = [column(/mean average temperature/i), column(/soil temperature 30 cm/i)];
  const rows = months.map((month) => lines.find(([name]) => name === month));
  const values = (at: number) => rows.flatMap((row) => numberOf(row?.[at]) ?? []);
  const [airC, soilC] = [values(air), values(soil)];
  if (airC.length !== 12 || soilC.length !== 12) return null;
  return { title: lines[0]?.[0] ?? 'monthly means', airC, soilC };
}
