import { basename, isAbsolute } from 'node:path';
import type { Timers } from '../../adapters/clock.ts';
import { firstFault } from '../../adapters/pack-files/read-overlays.ts';
import type { RulesOfFiles, RulesRead } from '../../adapters/pack-files/read-rules.ts';
import { type ErrorReport, isLoamwardError, reportOf } from '../../core/errors/coded-error.ts';
import type { Pack } from '../../core/rules/pack-types.ts';
import { faultName, type Log } from '../log.ts';

/** What was found in the files of a pack when they were last looked at and not taken. */
export interface RefusedRules {
  /** Epoch seconds UTC at which it was found. */
  readonly at: number;
  readonly error: ErrorReport;
}

/** The files of one pack. */
export interface PackSource {
  /** Reads and checks the files. Rejects with a coded error where one cannot be read. */
  readonly read: () => Promise<RulesRead>;
  /** Watches the files; a burst of changes counts as one. */
  readonly watch: (onChange: () => void) => () => void;
}

/** What following needs of the world. */
export interface FollowMeans {
  readonly now: () => number;
  readonly timers: Pick<Timers, 'every'>;
  readonly log: Log;
}

/** One pack that follows its files. */
export interface FollowedPack {
  readonly id: string;
  /** Whatever was in force once, that in force first; none where nothing sound has been there yet. */
  readonly packs: () => readonly Pack[];
  /** What the files held when they were last taken; null where they never were. */
  readonly files: () => RulesOfFiles | null;
  /** Why the files as they are now were not taken; null where they were. */
  readonly refused: () => RefusedRules | null;
  /** Looks at the files; resolves once what they hold is in force, or refused. Looks follow one another; those asked for meanwhile are one. */
  readonly look: () => Promise<void>;
  readonly close: () => void;
}

/** How often the files are looked at though nothing was heard, ms: an overlay begins or ends with a day. */
export const lookEveryMs = 600_000;

/** Follows the files of a pack from what they held at first, or from nothing. `onTaken` is called when other rules have come into force. */
export function followPack(
  id: string,
  { read, watch }: PackSource,
  first: RulesOfFiles | null,
  { now, timers, log, onTaken }: FollowMeans & { readonly onTaken: () => void },
): FollowedPack {
  let files = first;
  let packs: readonly Pack[] = first === null ? [] : [first.pack];
  let refused: RefusedRules | null = null;

  const take = (rules: RulesOfFiles): void => {
    const isOther = rules.pack.hash !== packs[0]?.hash;
    files = rules;
    refused = null;
    if (!isOther) return;
    packs = [rules.pack, ...packs.filter(({ hash }) => hash !== rules.pack.hash)];
    log({ event: 'rules-taken', pack: id });
    onTaken();
  };
  const refuse = (found: ErrorReport): void => {
    const { file } = found;
    const error = file !== undefined && isAbsolute(file) ? { ...found, file: basename(file) } : found;
    if (refused === null || JSON.stringify(refused.error) !== JSON.stringify(error)) {
      log({ event: 'rules-refused', pack: id, code: error.code });
    }
    refused = { at: now(), error };
  };
  const lookOnce = async (): Promise<void> => {
    try {
      const found = await read();
      if (!found.ok) refuse(firstFault(found.findings).toJSON());
      else if (found.rules.pack.id === id) take(found.rules);
      else refuse(reportOf('PACK_UNKNOWN', { file: 'pack.json', expected: id, came: found.rules.pack.id }));
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
  const stopWatching = watch(() => void look());
  const stopTimer = timers.every(lookEveryMs, () => void look());

  return {
    id,
    packs: () => packs,
    files: () => files,
    refused: () => refused,
    look,
    close: () => {
      stopWatching();
      stopTimer();
    },
  };
}
