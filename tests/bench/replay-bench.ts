import { join } from 'node:path';
import { readPackFolder } from '../../src/adapters/pack-files/read-pack-folder.ts';
import type { StationRecord } from '../../src/adapters/weather-records/stations.ts';
import { type ReplayDay, type ReplayInput, replay, seasonDatesOf } from '../../src/core/outlook/replay/index.ts';
import { compileRules } from '../../src/core/rules/compile.ts';
import { evaluateWithEngine } from '../../src/core/rules/engine.ts';
import { outcomeOf } from '../../src/core/rules/outcome.ts';
import { loadPack } from '../../src/core/rules/pack/load-pack.ts';
import type { Outcome } from '../../src/core/rules/trace-types.ts';
import type { CompiledRules } from '../../src/core/rules/types.ts';
import { inventedStations } from '../../src/demo/invented-seasons.ts';
import { replayField } from '../generators/replay-field.ts';
import { recordedStations } from './replay-records.ts';

/** Every so manieth day of a replay is judged by the engine too. */
const sampleEvery = 20;
const megabyte = 1024 * 1024;

/**
 * Seasons replayed at all stations: seconds, days a second, what stays in memory, and the same days judged by json-rules-engine on a
 * sample. Invented weather; with a folder of recorded weather that too. Throws where an outcome differs.
 */
export async function benchReplay(root: string, folder: string | null): Promise<string[]> {
  const { pack } = loadPack(await readPackFolder(join(root, 'rules', 'propyzamide-winter-oilseed-rape')));
  const compiled = compileRules(pack, '2026-11-06');
  return [
    ...(await benchStations('invented weather', inventedStations(), compiled)),
    ...(folder === null ? [] : await benchStations('recorded weather', recordedStations(folder), compiled)),
  ];
}

async function benchStations(
  name: string,
  stations: readonly StationRecord[],
  compiled: CompiledRules,
): Promise<string[]> {
  if (stations.length === 0) return [`  ${name}: no station with rain found`];
  const inputs = stations.map((station) => inputOf(station, compiled));
  for (const _ of replay(inputs[0]!));
  const before = heapUsed();
  const first = replayAll(inputs);
  const afterOne = heapUsed();
  const second = replayAll(inputs);
  const afterTwo = heapUsed();
  const perDay = Math.min(first.seconds, second.seconds) / first.days;
  const sample = inputs.flatMap((input) => sampleOf(input));
  const engineMs = await engineOn(sample, compiled);
  const oursMs = oursOn(sample, compiled);
  const asEngine = 1000 * perDay - oursMs + engineMs;
  return [
    `  ${name}: ${stations.length} stations, ${first.seasons} seasons, ${first.days} days judged, twice`,
    `    ${first.seconds.toFixed(2)} s and ${second.seconds.toFixed(2)} s, ${Math.round(1 / perDay)} days a second`,
    `    spray-today ${first.spray} days, wait ${first.wait}, do-not-spray ${first.stop}`,
    `    heap after the first run ${growth(before, afterOne)} MB, after the second ${growth(afterOne, afterTwo)} MB more`,
    `    ${sample.length} days by json-rules-engine, equal outcomes: ${engineMs.toFixed(3)} ms a day to judge, ours ${oursMs.toFixed(4)} ms (${(engineMs / oursMs).toFixed(0)} times)`,
    `    whole replay by json-rules-engine / ours   ${(asEngine / (1000 * perDay)).toFixed(1)}`,
  ];
}

function inputOf({ place, days }: StationRecord, compiled: CompiledRules): ReplayInput {
  const season = seasonDatesOf(compiled.parameters);
  return { compiled, season, place, record: days, given: replayField(), readingEveryDays: 7 };
}

function replayAll(inputs: readonly ReplayInput[]) {
  const counts = { 'spray-today': 0, wait: 0, 'do-not-spray': 0 };
  const started = performance.now();
  let seasons = 0;
  for (const input of inputs) {
    let last: number | null = null;
    for (const { verdict, season } of replay(input)) {
      counts[verdict] += 1;
      if (season !== last) seasons += 1;
      last = season;
    }
  }
  const { 'spray-today': spray, wait, 'do-not-spray': stop } = counts;
  return { seconds: (performance.now() - started) / 1000, days: spray + wait + stop, seasons, spray, wait, stop };
}

function sampleOf(input: ReplayInput): ReplayDay[] {
  return [...replay({ ...input, record: input.record.slice(-500) })].filter((_, index) => index % sampleEvery === 0);
}

async function engineOn(sample: readonly ReplayDay[], compiled: CompiledRules): Promise<number> {
  const started = performance.now();
  const judged: ReadonlyMap<string, Outcome>[] = [];
  for (const { facts } of sample) judged.push(await evaluateWithEngine(compiled, facts));
  const ms = (performance.now() - started) / sample.length;
  for (const [index, { iso, outcomes }] of sample.entries()) {
    const other = compiled.rules.find(({ rule }, at) => judged[index]?.get(rule.id) !== outcomes[at]);
    if (other) throw new Error(`${other.rule.id} differs on ${iso}`);
  }
  return ms;
}

function oursOn(sample: readonly ReplayDay[], { rules }: CompiledRules): number {
  const rounds = 20;
  const started = performance.now();
  for (let round = 0; round < rounds; round += 1) {
    for (const { facts } of sample) for (const { condition } of rules) outcomeOf(condition, facts);
  }
  return (performance.now() - started) / (rounds * sample.length);
}

function heapUsed(): number {
  globalThis.gc?.();
  return process.memoryUsage().heapUsed;
}

function growth(from: number, to: number): string {
  return ((to - from) / megabyte).toFixed(1);
}
