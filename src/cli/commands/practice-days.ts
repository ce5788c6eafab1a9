import { writeText } from '../../adapters/practice/progress-file.ts';
import { reasonOf } from '../../adapters/system-reason.ts';
import { type StationRecord, stationRecords } from '../../adapters/weather-records/stations.ts';
import { datesOf } from '../../core/compare/both-seasons.ts';
import { codedError } from '../../core/errors/coded-error.ts';
import { noonOf } from '../../core/facts/local-day.ts';
import { parseFacts } from '../../core/facts/parse/index.ts';
import { definitionsOf } from '../../core/facts/registry/index.ts';
import { resolveFacts } from '../../core/facts/resolve.ts';
import { type ReplayDay, replay, type SeasonDates } from '../../core/outlook/replay/index.ts';
import type { DaySet } from '../../core/practice/files.ts';
import { daysOfWeather } from '../../core/practice/weather-days.ts';
import { compileRules } from '../../core/rules/compile.ts';
import type { Pack } from '../../core/rules/pack-types.ts';
import { practiceWordsOf } from '../../core/words/practice-words.ts';
import { type Command, type Parsed, textOption } from '../command.ts';
import { readJsonFile } from '../json-file.ts';
import { languageOption, wordsFor } from '../language.ts';
import { packOf, packOption } from '../pack-option.ts';

/** Days that a set holds at most. */
const mostDays = 30;
/** Days before a season in which soil and water settle. */
const settlingDays = 120;
/** Days between readings of the soil at 30 cm. */
const readingEveryDays = 7;
/** Longest that a season lasts. */
const seasonDays = 366;

/** `loamward practice days`: a set of practice days from recorded weather, for learners to open. */
export const practiceDays: Command = {
  name: 'practice days',
  summary: 'Writes a set of practice days from one season of recorded weather.',
  options: {
    data: { type: 'string', value: 'FOLDER', help: 'folder of daily tables of weather stations' },
    station: { type: 'string', value: 'NAME', help: 'station to take; the first that has the season without it' },
    season: { type: 'string', value: 'YEAR', help: 'year in which the season opened' },
    facts: { type: 'string', value: 'FILE', help: 'flat JSON object of what holds on the field all season' },
    out: { type: 'string', value: 'FILE', help: 'file to write' },
    pack: packOption,
    language: languageOption,
  },
  examples: ['npx loamward practice days --data weather/ --season 2024 --facts field.json --out days.json'],
  run: async (parsed, io) => {
    const [folder, year, facts, out] = ['data', 'season', 'facts', 'out'].map((name) => needed(parsed, name));
    const season = Number(year);
    if (!Number.isInteger(season) || season < 1000) {
      throw codedError('OPTION_VALUE', { expected: '--season with a year', came: year ?? '' });
    }
    const { pack } = await packOf(parsed, io);
    const given = await readJsonFile(io, facts ?? '');
    const rules = rulesFor(season, pack);
    const station = stationWith(readStations(folder ?? ''), textOption(parsed, 'station'), season, rules.dates);
    const set = setOf(station, season, given, pack, rules);
    await writeText(out ?? '', `${JSON.stringify(set, null, 2)}\n`);
    io.write(`${practiceWordsOf(wordsFor(parsed, io).language).made(set.days.length, out ?? '')}\n`);
    return 0;
  },
};

function needed(parsed: Parsed, name: string): string {
  const value = textOption(parsed, name);
  const wanted = practiceDays.options[name]?.value ?? 'VALUE';
  if (value === undefined) throw codedError('OPTION_VALUE', { expected: `--${name} ${wanted}`, came: `no --${name}` });
  return value;
}

function readStations(folder: string): readonly StationRecord[] {
  try {
    return stationRecords(folder);
  } catch (error) {
    throw codedError('FILE_UNREADABLE', { file: folder, expected: 'a file that can be read', came: reasonOf(error) });
  }
}

/** The station named, else the first whose record holds rain of the season in the year in which it opened. Throws OPTION_VALUE. */
function stationWith(
  stations: readonly StationRecord[],
  name: string | undefined,
  season: number,
  { opens }: SeasonDates,
): StationRecord {
  const named = name === undefined ? stations : stations.filter((one) => one.name === name);
  const found = named.find(({ days }) =>
    days.some(({ iso, rainMm }) => rainMm !== null && iso.startsWith(`${season}-`) && iso.slice(5) >= opens),
  );
  if (found) return found;
  const names = [...new Set(stations.map((one) => one.name))].join(', ');
  throw codedError('OPTION_VALUE', { expected: 'a station that has rain in that season', came: names || 'no station' });
}

/** The rules that judge a season, on a day of the year whose limits do, and its first and last day: a pack without a season has the year. */
function rulesFor(season: number, pack: Pack) {
  const year = yearInForce(pack, season);
  const day = `${year}-11-01`;
  const compiled = compileRules(pack, day);
  return { year, day, compiled, dates: datesOf(compiled.parameters) };
}

/**
 * The season of a station as a set of days on a field, dated as if it opened in the year whose limits judge it. Throws the FACT_
 * error of what holds on the field.
 */
function setOf(
  { name, place, days }: StationRecord,
  season: number,
  json: unknown,
  pack: Pack,
  { year, day, compiled, dates }: ReturnType<typeof rulesFor>,
): DaySet {
  const at = noonOf(day, pack.zone);
  const { parameters, registry } = compiled;
  const observations = parseFacts(json, at, pack.zone, pack.facts);
  const given = resolveFacts({ observations, forecast: null, at, zone: pack.zone, parameters, registry });
  const opens = days.findIndex(({ iso }) => iso === `${season}-${dates.opens}`);
  const record = days.slice(Math.max(0, opens - settlingDays), opens < 0 ? undefined : opens + seasonDays);
  const replayed = [...replay({ compiled, season: dates, place, record, given, readingEveryDays })];
  const own = replayed.filter((one) => one.season === season).map((one) => inYear(one, year - season));
  const world = { pack, definitionOf: definitionsOf(pack.facts) };
  const { id, hash } = pack;
  return {
    format: 'loamward-practice-days',
    pack: { id, hash },
    place: name,
    season,
    days: daysOfWeather(own, world, mostDays),
  };
}

/** The year of the season itself where the pack's limits were in force, else the first year after all of them began. */
function yearInForce({ parameters }: Pack, season: number): number {
  const begins = parameters
    .map(({ validFrom }) => validFrom)
    .filter((from) => parameters.every(({ validTo }) => validTo === undefined || validTo >= from));
  const last = begins.toSorted().at(-1) ?? `${season}-01-01`;
  const year = Number(last.slice(0, 4));
  return season > year || last <= `${season}-10-01` ? season : year + (last.slice(5) <= '10-01' ? 0 : 1);
}

/** A replayed day some years later. */
function inYear(day: ReplayDay, years: number): ReplayDay {
  return { ...day, iso: `${Number(day.iso.slice(0, 4)) + years}${day.iso.slice(4)}` };
}
