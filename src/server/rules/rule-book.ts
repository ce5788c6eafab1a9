import { basename, isAbsolute } from 'node:path';
import type { Timers } from '../../adapters/clock.ts';
import { firstFault } from '../../adapters/pack-files/read-overlays.ts';
import type { RulesOfFiles, RulesRead } from '../../adapters/pack-files/read-rules.ts';
import { type ErrorReport, isLoamwardError } from '../../core/errors/coded-error.ts';
import type { Pack } from '../../core/rules/pack-types.ts';
import { faultName, type Log } from '../log.ts';

/** Rules that the server has, those in force first: a conversation stays with those that it was begun under. */
export type Packs = readonly [Pack, ...Pack[]];

/** What was found in the files when they were last looked at and not taken. */
export interface RefusedRules {
  /** Epoch seconds UTC at which it was found. */
  readonly at: number;
  readonly error: ErrorReport;
}

/** The rules of a running server. */
export interface RuleBook {
  readonly packs: () => Packs;
  /** What the files held when they were last taken. */
  readonly files: () => RulesOfFiles;
  /** Why the files as they are now were not taken; null where they were. */
  readonly refused: () => RefusedRules | null;
  /** Calls back when others have come into force; returns how to stop. */
  readonly listen: (call: () => void) => () => void;
  /** Looks at the files; resolves once what they hold is in force, or refused. Looks follow one another; those asked for meanwhile are one. */
  readonly look: () => Promise<void>;
  readonly close: () => void;
}

/** What a rule book that follows its files needs. */
export interface RuleBookMeans {
  /** Reads and checks the files. Rejects with a coded error where one cannot be read. */
  readonly read: () => Promise<RulesRead>;
  /** Watches the files; a burst of changes counts as one. */
  readonly watch: (onChange: () => void) => () => void;
  readonly now: () => number;
  readonly timers: Pick<Timers, 'every'>;
  readonly log: Log;
}

/** How often the files are looked at though nothing was heard, ms: an overlay begins or ends with a day. */
export const lookEveryMs = 600_000;

/** Rules that never change. */
export function fixedRules(packs: Packs): RuleBook {
  const files = { pack: packs[0], shipped: packs[0], cases: [], overlays: [] };
  return {
    packs: () => packs,
    files: () => files,
    refused: () => null,
    listen: () => () => {},
    look: async () => {},
    close: () => {},
  };
}

/**
 * Rules that follow their files: what is found there is taken where it is sound, and refused otherwise, the old ones staying in force.
 * Whatever was in force once is kept. Throws the first fault where nothing sound is there at the start.
 */
export async function openRuleBook(means: RuleBookMeans): Promise<RuleBook> {
  const { read, now, timers, log } = means;
  const first = await read();
  if (!first.ok) throw firstFault(first.findings);
  let files = first.rules;
  let packs: Packs = [files.pack];
  let refused: RefusedRules | null = null;
  const listeners = new Set<() => void>();

  const take = (rules: RulesOfFiles): void => {
    const isOther = rules.pack.hash !== packs[0].hash;
    files = rules;
    refused = null;
    if (!isOther) return;
    packs = [rules.pack, ...packs.filter(({ hash }) => hash !== rules.pack.hash)];
    log({ event: 'rules-taken' });
    for (const call of [...listeners]) call();
  };
  const refuse = (found: ErrorReport): void => {
    const { file } = found;
    const error = file !== undefined && isAbsolute(file) ? { ...found, file: basename(file) } : found;
    if (refused === null || JSON.stringify(refused.error) !== JSON.stringify(error)) {
      log({ event: 'rules-refused', code: error.code });
    }
    refused = { at: now(), error };
  };
  const lookOnce = async (): Promise<void> => {
    try {
      const found = await read();
      if (found.ok) take(found.rules);
      else refuse(firstFault(found.findings).toJSON());
    } catch (error) {
      if (isLoamwardError(error)) refuse(error.toJSON());
      else log({ event: 'fault', code: 'SERVER_FAULT', fault: faultName(error) });
    }
  };
  let running: Promise<void> = Promise.resolve();
  let next: Promise<void> | null = null;
  const look = (): Promise<void> => {
    next ??= running.then(() => {
      next = null;
      running = lookOnce();
      return running;
    });
    return next;
  };
  const stopWatching = means.watch(() => void look());
  const stopTimer = timers.every(lookEveryMs, () => void look());

  return {
    packs: () => packs,
    files: () => files,
    refused: () => refused,
    listen: (call) => {
      listeners.add(call);
      return () => void listeners.delete(call);
    },
    look,
    close: () => {
      stopWatching();
      stopTimer();
    },
  };
}
