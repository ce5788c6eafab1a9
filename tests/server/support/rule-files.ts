import { cp, mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { onTestFinished } from 'vitest';
import { type FolderWatcher, onceQuiet, quietMs } from '../../../src/adapters/folder-watcher.ts';
import { findPacks } from '../../../src/adapters/pack-files/read-pack-folder.ts';
import { rulesReader } from '../../../src/adapters/pack-files/read-rules.ts';
import { localDate } from '../../../src/core/facts/local-day.ts';
import type { LogLine } from '../../../src/server/log.ts';
import { openRuleBook, type RuleBook } from '../../../src/server/rules/rule-book.ts';
import { type FakeTime, fakeTime } from './fake-time.ts';

const shippedFolder = new URL('../../../rules/propyzamide-winter-oilseed-rape', import.meta.url);

/** A pack and a folder of overlays in real files of their own, followed by a rule book under fake time. */
export interface RuleFiles {
  readonly rules: RuleBook;
  readonly time: FakeTime;
  readonly log: readonly LogLine[];
  readonly packFolder: string;
  readonly secondFolder: string;
  readonly overlayFolder: string;
  /** Writes an overlay's file. */
  readonly put: (name: string, content: unknown) => Promise<void>;
  /** What the watchers of the machine would do at a change of a file. */
  readonly stir: () => void;
  /** Stirs, lets the quiet pass, and waits until the rule book has looked. */
  readonly settle: () => Promise<void>;
}

/**
 * Copies the pack as shipped, puts overlays beside it and opens a rule book on both; with `second`, the files of another pack, on that
 * too.
 */
export async function openRuleFiles(
  overlays: Readonly<Record<string, unknown>> = {},
  second: Readonly<Record<string, unknown>> | null = null,
): Promise<RuleFiles> {
  const root = await mkdtemp(join(tmpdir(), 'rules-'));
  onTestFinished(() => rm(root, { recursive: true }));
  const [packFolder, overlayFolder] = [join(root, 'pack'), join(root, 'overlays')];
  await cp(shippedFolder, packFolder, { recursive: true });
  await mkdir(overlayFolder);
  const put = (name: string, content: unknown) =>
    writeFile(join(overlayFolder, name), typeof content === 'string' ? content : JSON.stringify(content));
  for (const [name, content] of Object.entries(overlays)) await put(name, content);
  const secondFolder = join(root, secondId);
  if (second !== null) await writePack(secondFolder, second);
  const time = fakeTime();
  const log: LogLine[] = [];
  const stirred = new Set<() => void>();
  const watcher: FolderWatcher = (_folders, onChange) => {
    stirred.add(onChange);
    return () => void stirred.delete(onChange);
  };
  const stir = (): void => {
    for (const call of [...stirred]) call();
  };
  const known = new Set([firstId]);
  const source = (id: string, pack: string) => {
    const sources = { pack, overlays: [overlayFolder], otherPacks: () => [...known].filter((other) => other !== id) };
    return {
      id,
      read: rulesReader(sources, (zone) => localDate(time.clock.now(), zone)),
      watch: (onChange: () => void) => onceQuiet(watcher, time.timers)([pack, overlayFolder], onChange),
    };
  };
  const find = async () => {
    const found = (await findPacks(root)).filter(({ folder }) => folder !== packFolder);
    for (const { id } of found) known.add(id);
    return found.map(({ id, folder }) => source(id, folder));
  };
  const rules = await openRuleBook({
    ...source(firstId, packFolder),
    others: { find, watch: (onChange) => onceQuiet(watcher, time.timers)([root], onChange) },
    now: time.clock.now,
    timers: time.timers,
    log: (line) => log.push(line),
  });
  const settle = async () => {
    stir();
    time.advance(quietMs);
    await rules.look();
  };
  return { rules, time, log, packFolder, secondFolder, overlayFolder, put, stir, settle };
}

const firstId = 'propyzamide-winter-oilseed-rape';
const secondId = 'spring-pack';

/** Writes parsed files of a pack into a folder. */
export async function writePack(folder: string, files: Readonly<Record<string, unknown>>): Promise<void> {
  for (const [name, content] of Object.entries(files)) {
    const path = join(folder, name);
    await mkdir(dirname(path), { recursive: true });
    await writeFile(path, typeof content === 'string' ? content : JSON.stringify(content));
  }
}

/** The file of an overlay of the layer farm that moves one limit. */
export function overlayWith(parameter: string, value: unknown, head: object = {}): object {
  return {
    overlay: {
      id: 'hollin-bank',
      title: { en: 'Hollin Bank Farm, invented', de: 'Hollin Bank Farm, erfunden' },
      author: 'A. N. Adviser',
      place: 'Hollin Bank Farm, invented',
      reason: 'a test needs it',
      layer: 'farm',
      pack: { id: 'propyzamide-winter-oilseed-rape' },
      validFrom: '2026-10-01',
      ...head,
    },
    parameters: [{ id: parameter, value, source: 'a test', why: { en: 'a test needs it', de: 'ein Test braucht es' } }],
  };
}
