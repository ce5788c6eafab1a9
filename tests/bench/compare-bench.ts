import { join } from 'node:path';
import { readPackFolder } from '../../src/adapters/pack-files/read-pack-folder.ts';
import {
  compareSeasons,
  plainField,
  type SeasonCompared,
  type Side,
  type StationRecord,
  seasonRules,
} from '../../src/core/compare/index.ts';
import { replayFacts } from '../../src/core/outlook/replay/index.ts';
import { evaluateWithEngine } from '../../src/core/rules/engine.ts';
import { loadPack } from '../../src/core/rules/pack/load-pack.ts';
import type { CompiledRules } from '../../src/core/rules/types.ts';
import { verdictWord } from '../../src/core/verdict/verdict-of.ts';
import { inventedStations } from '../../src/demo/invented-seasons.ts';
import { recordedStations } from './replay-records.ts';

/** Every so manieth day is judged by the engine too; it has the same facts given, and the time for the rest is taken as the same. */
const sampleEvery = 10;
const day = '2026-11-06';
const readingEveryDays = 7;

/**
 * Two rule sets compared through all seasons at all stations, against json-rules-engine judging both on the same days. Invented
 * weather; with a folder of recorded weather that too. Throws where a verdict differs.
 */
export async function benchCompare(root: string, folder: string | null): Promise<string[]> {
  const { pack, cases } = loadPack(await readPackFolder(join(root, 'rules', 'propyzamide-winter-oilseed-rape')));
  const moved = pack.parameters.map((one) => (one.id === 'soilTemperatureMaxC' ? { ...one, value: 8 } : one));
  const [a, b]: readonly [Side, Side] = [
    { pack, cases },
    { pack: { ...pack, parameters: moved }, cases },
  ];
  return [
    ...(await benchStations('invented weather', inventedStations(), a, b)),
    ...(folder === null ? [] : await benchStations('recorded weather', recordedStations(folder), a, b)),
  ];
}

async function benchStations(name: string, stations: readonly StationRecord[], a: Side, b: Side): Promise<string[]> {
  if (stations.length === 0) return [`  ${name}: no station with rain found`];
  const given = plainField(a).resolved;
  const { rules, season } = seasonRules({ a, b }, day);
  const inputs = stations.map((station) => ({ rules, season, station, given, readingEveryDays }));
  for (const _ of compareSeasons(inputs[0]!));
  let seconds = 0;
  let judging = 0;
  let facts = 0;
  let sampled = 0;
  const seasons: SeasonCompared[] = [];
  for (const input of inputs) {
    const started = performance.now();
    const own = [...compareSeasons(input)];
    seconds += (performance.now() - started) / 1000;
    seasons.push(...own);
    const sample = await sampleOf(input, own);
    judging += sample.seconds;
    facts += sample.factsSeconds;
    sampled += sample.days;
  }
  const days = seasons.reduce((sum, { verdicts }) => sum + verdicts.length, 0);
  const changed = seasons.reduce((sum, one) => sum + one.changed.length, 0);
  const engine = (judging / sampled) * days;
  return [
    `  ${name}: ${stations.length} stations, ${seasons.length} seasons, ${days} days under two rule sets, ${changed} verdicts change`,
    `    ${seconds.toFixed(2)} s with the facts of each day worked out, ${Math.round(days / seconds)} days a second`,
    `    json-rules-engine on the same facts, without working them out: ${engine.toFixed(1)} s (from ${sampled} days, equal verdicts)`,
    `    json-rules-engine judging both / the whole comparison   ${(engine / seconds).toFixed(1)}   (goal at least 10)`,
    `    the same with the facts worked out for the engine too     ${((engine + facts) / seconds).toFixed(1)}`,
  ];
}

type Outcomes = Awaited<ReturnType<typeof evaluateWithEngine>>;

/** Seconds that the engine takes for both rule sets on a sample of the days; throws where it comes to another verdict. */
async function sampleOf(
  { rules, season, station, given }: Parameters<typeof compareSeasons>[0],
  own: readonly SeasonCompared[],
) {
  const { a, b } = rules;
  const wanted = [...new Set([...a.rules, ...b.rules].flatMap(({ facts }) => facts))];
  const { place, days: record } = station;
  const { parameters, registry } = a;
  const begun = performance.now();
  const all = [...replayFacts({ parameters, registry, wanted, season, place, record, given, readingEveryDays })];
  const factsSeconds = (performance.now() - begun) / 1000;
  const verdicts = own.flatMap((one) => one.verdicts);
  const sample = all.map((one, at) => ({ ...one, at })).filter((_, at) => at % sampleEvery === 0);
  const started = performance.now();
  const judged: (readonly [Outcomes, Outcomes])[] = [];
  for (const { facts } of sample)
    judged.push([await evaluateWithEngine(a, facts), await evaluateWithEngine(b, facts)] as const);
  const seconds = (performance.now() - started) / 1000;
  for (const [index, { iso, at }] of sample.entries()) {
    const told = [a, b].map((set, side) => wordOf(set, judged[index]![side as 0 | 1]));
    if (told[0] !== verdicts[at]?.a || told[1] !== verdicts[at]?.b) throw new Error(`${station.name}, ${iso} differs`);
  }
  return { seconds, factsSeconds, days: sample.length };
}

function wordOf({ rules }: CompiledRules, outcomes: Outcomes) {
  return verdictWord(rules.map(({ rule: { id, effect } }) => ({ effect, outcome: outcomes.get(id)! })));
}
