import {
  compareNearLimits,
  compareOnCases,
  compareOnVerdicts,
  differencesOf,
  type Side,
  type Sides,
} from '../../core/compare/index.ts';
import { definitionIn } from '../../core/facts/registry/index.ts';
import { compileRules } from '../../core/rules/compile.ts';
import { inLanguage } from '../../core/units/texts.ts';
import type { Catalogue } from '../../core/words/catalogue.ts';
import { type CompareWords, compareWordsOf } from '../../core/words/compare-words.ts';
import { sayDifference } from '../../core/words/say-difference.ts';
import type { Progress } from './progress.ts';
import type { ReadVerdicts } from './read-verdicts.ts';
import { type ComparisonReport, reportSchema } from './report-schema.ts';
import { runSeasons, type SeasonsRun } from './run-seasons.ts';
import { seasonsReport } from './seasons-report.ts';

/** What both rule sets are judged on beside their cases and limits. */
export interface CompareOn {
  /** Day whose limits hold, YYYY-MM-DD. */
  readonly day: string;
  readonly saved: ReadVerdicts | null;
  /** Folder of recorded weather; null for invented weather. */
  readonly folder: string | null;
  /** A facts file's content; null for the plain field. */
  readonly facts: unknown;
}

/** A whole comparison: as plain data, and its seasons for the picture. */
export interface Compared {
  readonly report: ComparisonReport;
  readonly run: SeasonsRun;
}

/** Pairs of facts near the limits that are judged. */
const pairsNearLimits = 20_000;
const seed = 1;

/** Compares two rule sets on everything. */
export function compareAll(sides: Sides, on: CompareOn, progress: Progress, words: Catalogue): Compared {
  const { a, b } = sides;
  const told = compareWordsOf(words.language);
  const { heading } = told;
  const options = {
    seed,
    pairs: pairsNearLimits,
    onProgress: (done: number, all: number) => progress(heading.limits, done, all),
  };
  const limits = compareNearLimits(sides, options);
  const run = runSeasons(sides, { ...on, what: heading.seasons }, progress);
  const report = {
    format: 'loamward-comparison',
    day: on.day,
    a: sideReport(a, words),
    b: sideReport(b, words),
    differences: differencesIn(sides, on.day, words),
    cases: compareOnCases(sides),
    limits,
    verdicts: on.saved && {
      events: on.saved.events,
      unread: on.saved.unread,
      ...compareOnVerdicts(sides, on.saved.verdicts),
    },
    seasons: seasonsReport(run),
  };
  return { report: reportSchema.parse(report), run };
}

function differencesIn({ a, b }: Sides, day: string, words: Catalogue) {
  const registry = { ...b.pack.facts, ...a.pack.facts };
  const world = {
    a: compileRules(a.pack, day),
    b: compileRules(b.pack, day),
    definitionOf: (id: string) => definitionIn(registry, id),
  };
  return differencesOf(a.pack, b.pack).map((one) => sayDifference(one, world, words));
}

function sideReport({ pack }: Side, { language }: Catalogue): ComparisonReport['a'] {
  const { id, version, hash, title, overlays = [] } = pack;
  return {
    pack: id,
    version,
    hash,
    title: inLanguage(title, language),
    overlays: overlays.map((one) => ({
      id: one.id,
      title: inLanguage(one.title, language),
      author: one.author,
      place: one.place,
      hash: one.hash,
    })),
  };
}

/** A rule set in one line: title, version, hash, and the overlays laid over it. */
export function sideLine({ title, version, hash, overlays }: ComparisonReport['a'], told: CompareWords): string {
  return overlays.reduce(
    (line, overlay) => told.withOverlay(line, overlay.title, overlay.author),
    told.side(title, version, hash.slice(0, 12)),
  );
}
