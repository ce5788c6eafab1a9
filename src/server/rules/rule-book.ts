import { firstFault } from '../../adapters/pack-files/read-overlays.ts';
import type { RulesOfFiles } from '../../adapters/pack-files/read-rules.ts';
import type { Pack } from '../../core/rules/pack-types.ts';
import { faultName } from '../log.ts';
import {
  type FollowedPack,
  type FollowMeans,
  followPack,
  lookEveryMs,
  type PackSource,
  type RefusedRules,
} from './follow-pack.ts';

/**
 * Rules that the server has, those in force first, one for each treatment; the first serves who names none. A conversation stays with
 * those that it was begun under.
 */
export type Packs = readonly [Pack, ...Pack[]];

/** How another treatment than the first stands. */
export interface OtherTreatment {
  readonly id: string;
  /** The rules in force; null where nothing sound has been in its files yet. */
  readonly pack: Pack | null;
  readonly refused: RefusedRules | null;
}

/** The rules of a running server. */
export interface RuleBook {
  readonly packs: () => Packs;
  /** What the files of the first treatment held when they were last taken. */
  readonly files: () => RulesOfFiles;
  /** The same of a treatment by the id of its pack; null where there is none, or nothing sound has been in its files yet. */
  readonly filesOf: (pack: string) => RulesOfFiles | null;
  /** Why the files of the first as they are now were not taken; null where they were. */
  readonly refused: () => RefusedRules | null;
  readonly others: () => readonly OtherTreatment[];
  /** Calls back when others have come into force; returns how to stop. */
  readonly listen: (call: () => void) => () => void;
  /** Looks at the files; resolves once what they hold is in force, or refused. */
  readonly look: () => Promise<void>;
  readonly close: () => void;
}

/** The files of a pack, with the pack's id. */
type NamedSource = PackSource & { readonly id: string };

/** Where the packs of other treatments lie. */
export interface OtherPacks {
  /** The packs that lie there now, each with its id, those found before among them. */
  readonly find: () => Promise<readonly NamedSource[]>;
  /** Calls back when there may be another one; returns what ends it. */
  readonly watch: (onChange: () => void) => () => void;
}

/** What a rule book that follows its files needs: those of the first treatment, and of others. */
export interface RuleBookMeans extends PackSource, FollowMeans {
  readonly others?: OtherPacks;
}

/** Rules that never change. */
export function fixedRules(packs: Packs): RuleBook {
  const files = { pack: packs[0], shipped: packs[0], cases: [], overlays: [] };
  return {
    packs: () => packs,
    files: () => files,
    filesOf: (pack) => (pack === files.pack.id ? files : null),
    refused: () => null,
    others: () => [],
    listen: () => () => {},
    look: async () => {},
    close: () => {},
  };
}

/**
 * Rules that follow their files: what is found there is taken where it is sound, and refused otherwise, the old ones staying in force.
 * Whatever was in force once is kept. Throws the first fault where nothing sound is there of the first treatment at the start; another
 * treatment, one that is added while it runs too, is offered once its files are sound.
 */
export async function openRuleBook(means: RuleBookMeans): Promise<RuleBook> {
  const there = (await means.others?.find()) ?? [];
  const found = await means.read();
  if (!found.ok) throw firstFault(found.findings);
  const { rules } = found;
  const listeners = new Set<() => void>();
  let packs: Packs = [rules.pack];
  let hasBegun = false;
  const onTaken = (): void => {
    packs = allOf([first, ...others], packs);
    if (hasBegun) for (const call of [...listeners]) call();
  };
  const following: FollowMeans & { readonly onTaken: () => void } = { ...means, onTaken };
  const first: FollowedPack = followPack(rules.pack.id, means, rules, following);
  const others: FollowedPack[] = [];
  const all = () => [first, ...others];
  const lookAtAll = async (): Promise<void> => {
    await Promise.all(all().map((one) => one.look()));
  };
  const takeUp = async (packsThere: readonly NamedSource[]): Promise<void> => {
    const more = packsThere.filter(({ id }) => all().every((one) => one.id !== id));
    for (const one of more) others.push(followPack(one.id, one, null, following));
    if (more.length > 0) await lookAtAll();
  };
  await takeUp(there);
  const finder = followFolder(means, takeUp);
  hasBegun = true;

  return {
    packs: () => packs,
    files: () => first.files() ?? rules,
    filesOf: (pack) =>
      all()
        .find(({ id }) => id === pack)
        ?.files() ?? null,
    refused: first.refused,
    others: () => others.map((one) => ({ id: one.id, pack: one.packs()[0] ?? null, refused: one.refused() })),
    listen: (call) => {
      listeners.add(call);
      return () => void listeners.delete(call);
    },
    look: async () => {
      await finder.find();
      await lookAtAll();
    },
    close: () => {
      finder.close();
      for (const one of all()) one.close();
    },
  };
}

/** Looks for packs when there may be others, one look after the other, and hands on what lies there until it is closed. */
function followFolder(
  { others, timers, log }: RuleBookMeans,
  take: (found: readonly NamedSource[]) => Promise<void>,
): Pick<RuleBook, 'close'> & { readonly find: () => Promise<void> } {
  if (others === undefined) return { find: async () => {}, close: () => {} };
  let isClosed = false;
  let running: Promise<void> = Promise.resolve();
  const findOnce = async (): Promise<void> => {
    try {
      const found = await others.find();
      if (!isClosed) await take(found);
    } catch (error) {
      log({ event: 'fault', code: 'SERVER_FAULT', fault: faultName(error) });
    }
  };
  const find = (): Promise<void> => {
    running = running.then(findOnce);
    return running;
  };
  const stopWatching = others.watch(() => void find());
  const stopTimer = timers.every(lookEveryMs, () => void find());
  return {
    find,
    close: () => {
      isClosed = true;
      stopWatching();
      stopTimer();
    },
  };
}

/** The rules of all treatments: those in force, then those that were. */
function allOf(all: readonly FollowedPack[], before: Packs): Packs {
  const [first = before[0], ...inForce] = all.flatMap((one) => one.packs().slice(0, 1));
  return [first, ...inForce, ...all.flatMap((one) => one.packs().slice(1))];
}
