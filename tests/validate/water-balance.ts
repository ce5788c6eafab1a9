import { dataFiles } from '../../src/adapters/weather-records/folder.ts';
import {
  type Drainage,
  type IrishDay,
  type IrishStation,
  irishStation,
} from '../../src/adapters/weather-records/irish-days.ts';
import { deficitOfState, startState, stepWater } from '../../src/core/science/water/balance.ts';
import { soilStoreOf } from '../../src/core/science/water/soil-store.ts';
import { irishReference } from './irish-reference.ts';
import { figuresOf, sayScore, score } from './score.ts';
import { type Figures, hold, nothingToCheck, runChecks, type ValidationResult } from './validator.ts';

/** Grass over a loam of 0.8 m, the store nearest to the 110 mm that the service's own deficits count with. */
const store = soilStoreOf('loam', 0.8, { kind: 'crop', coefficient: 1 });
/** Moderately drained soil is the same as well drained to the service wherever water lacks. */
const drainages: readonly Drainage[] = ['well', 'poorly'];
const leads = [1, 3, 7] as const;
const isAutumn = ({ month }: IrishDay) => month >= 9 || month === 1;

type Pair = readonly [estimate: number, told: number];
interface Found {
  readonly ours: Pair[];
  readonly persistence: Pair[];
}

/**
 * Scores the balance against the deficits that the Irish service calculates (its own model, not a measurement), September to
 * January: anchored on each day, then run ahead on the rain that fell and our own evapotranspiration.
 */
export function validateWaterBalance(folder: string): ValidationResult {
  const stations = dataFiles(folder, ['.csv']).flatMap((file) => irishStation(file) ?? []);
  const with0 = stations.filter(({ days }) => days.some(({ deficits }) => deficits.well !== null));
  if (with0.length === 0) return nothingToCheck('a daily table with soil moisture deficits (smd_wd, smd_md, smd_pd)');
  const lines: string[] = [];
  const figures: Record<string, Figures> = {};
  const week: Record<'ours' | 'persistence', Pair[]> = { ours: [], persistence: [] };
  for (const station of with0) {
    const series = seriesOf(station, false);
    const ofStation: Record<string, Figures> = {};
    for (const drainage of drainages) {
      for (const lead of leads) {
        const found = runAhead(series, drainage, lead);
        const [ours, persistence] = [score(found.ours), score(found.persistence)];
        lines.push(
          `${station.name}, ${drainage} drained, ${lead} d ahead: ${sayScore(ours, 2, 'mm')}; persistence RMSE ${persistence.rmse.toFixed(2)} mm`,
        );
        ofStation[`${drainage} ${lead}d`] = { ours: figuresOf(ours), persistence: figuresOf(persistence) };
        if (lead === 7 && drainage === 'well') {
          week.ours.push(...found.ours);
          week.persistence.push(...found.persistence);
        }
      }
    }
    const told = seriesOf(station, true);
    const theirs = score(runAhead(told, 'well', 7).ours);
    const own = "on the service's own evapotranspiration";
    lines.push(`${station.name}, well drained, 7 d ahead ${own}: ${sayScore(theirs, 2, 'mm')}`);
    const [back, backTold] = [returns(series), returns(told)];
    const words = `${station.name}: day of return to field capacity, run free from 1 September`;
    lines.push(`${words}: ${sayScore(back, 1, 'days')}`, `${words} ${own}: ${sayScore(backTold, 1, 'days')}`);
    figures[station.name] = {
      ...ofStation,
      'well 7d on its evapotranspiration': figuresOf(theirs),
      returnToCapacity: figuresOf(back),
      'returnToCapacity on its evapotranspiration': figuresOf(backTold),
    };
  }
  const checks = runChecks([
    [
      'the balance is finite and beats persistence 7 days ahead on well drained soil',
      () => {
        const [ours, persistence] = [score(week.ours).rmse, score(week.persistence).rmse];
        hold(ours < persistence, () => `${ours.toFixed(2)} against ${persistence.toFixed(2)} mm`);
      },
    ],
  ]);
  return { ...checks, lines: [...lines, ...checks.lines], figures };
}

interface SeriesDay extends IrishDay {
  readonly flow: { readonly rainMm: number; readonly referenceMm: number } | null;
}

function seriesOf(station: IrishStation, itsOwn: boolean): SeriesDay[] {
  return station.days.map((day) => {
    const referenceMm = itsOwn ? day.potentialMm : irishReference(station, day, 'all');
    const { rainMm } = day;
    return { ...day, flow: rainMm === null || referenceMm === null ? null : { rainMm, referenceMm } };
  });
}

function runAhead(series: readonly SeriesDay[], drainage: Drainage, lead: number): Found {
  const found: Found = { ours: [], persistence: [] };
  for (const [index, day] of series.entries()) {
    const start = day.deficits[drainage];
    const target = series[index + lead];
    const told = target?.deficits[drainage] ?? null;
    if (!isAutumn(day) || start === null || told === null || target?.day !== day.day + lead) continue;
    let state = startState(Math.max(0, start), store);
    const ahead = series.slice(index + 1, index + 1 + lead).map(({ flow }) => flow);
    if (ahead.some((flow) => flow === null)) continue;
    for (const flow of ahead) state = flow === null ? state : stepWater(state, flow, store.drying).state;
    found.ours.push([deficitOfState(state), Math.max(0, told)]);
    found.persistence.push([Math.max(0, start), Math.max(0, told)]);
  }
  return found;
}

/** First day of 3 mm or less lacking from 1 September on, run free from the deficit told then, against the service's own. */
function returns(series: readonly SeriesDay[]): ReturnType<typeof score> {
  const pairs: Pair[] = [];
  for (const [index, first] of series.entries()) {
    const start = first.deficits.well;
    if (first.month !== 9 || first.day !== Date.UTC(first.year, 8, 1) / 86_400_000 || start === null || start <= 10)
      continue;
    const autumn = series.slice(index + 1, index + 150);
    let state = startState(start, store);
    const run = autumn.map(({ flow }) => {
      state = flow === null ? state : stepWater(state, flow, store.drying).state;
      return deficitOfState(state);
    });
    const ours = run.findIndex((deficit) => deficit <= 3);
    const told = autumn.findIndex(({ deficits }) => deficits.well !== null && deficits.well <= 3);
    const gap = autumn.slice(0, Math.max(ours, told) + 1).some(({ flow }) => flow === null);
    if (ours >= 0 && told >= 0 && !gap) pairs.push([ours, told]);
  }
  return score(pairs);
}
