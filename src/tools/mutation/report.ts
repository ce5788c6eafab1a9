import { wilson } from './sample.ts';

/** One change as the tool of mutation testing reports it. */
export interface Mutant {
  readonly mutatorName: string;
  readonly replacement?: string;
  readonly status: string;
  readonly location: { readonly start: { readonly line: number; readonly column: number } };
}

/** The report of a run, by file (schema of mutation testing reports, version 2). */
export interface MutationReport {
  readonly files: Readonly<Record<string, { readonly mutants: readonly Mutant[] }>>;
}

/** Changes noticed, those judged, those left out as they change only what stands while loading, and a line for each not noticed. */
export interface MutationSummary {
  readonly noticed: number;
  readonly judged: number;
  readonly leftOut: number;
  readonly survivors: readonly string[];
}

/** How much code was there and how many lines of it were changed. */
export interface Extent {
  readonly files: number;
  readonly lines: number;
  readonly changed: number;
}

/** Counts the changes of a run: noticed are those that failed a test or never ended; changes that cannot run are not judged. */
export function summaryOf({ files }: MutationReport): MutationSummary {
  const all = Object.entries(files).flatMap(([file, { mutants }]) => mutants.map((mutant) => ({ file, mutant })));
  const ofStatus = (...statuses: string[]) => all.filter(({ mutant }) => statuses.includes(mutant.status));
  const noticed = ofStatus('Killed', 'Timeout').length;
  const missed = ofStatus('Survived', 'NoCoverage');
  const survivors = missed.map(({ file, mutant }) => lineOf(file, mutant)).sort();
  return { noticed, judged: noticed + missed.length, leftOut: ofStatus('Ignored').length, survivors };
}

function lineOf(file: string, { location: { start }, mutatorName, replacement = '', status }: Mutant): string {
  const what = replacement.replaceAll(/\s+/g, ' ').slice(0, 80);
  const unseen = status === 'NoCoverage' ? ' (no test runs it)' : '';
  return `${file}:${start.line}:${start.column} ${mutatorName}: ${what}${unseen}`;
}

/** What a run found, as text: extent, share with its 95 % interval, and what was not noticed. */
export function reportText({ noticed, judged, leftOut, survivors }: MutationSummary, extent: Extent): string {
  const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;
  const [low, high] = wilson(noticed, judged);
  const share =
    judged === 0 ? 'nothing to judge' : `${percent(noticed / judged)} (95 %: ${percent(low)} to ${percent(high)})`;
  return [
    '',
    `${extent.lines} lines of code in ${extent.files} files, ${extent.changed} of them changed.`,
    `${noticed} of ${judged} changes noticed: ${share}; ${leftOut} more stand only while a file loads and are not judged.`,
    '',
    'Not noticed:',
    ...survivors,
    '',
  ].join('\n');
}
