import { basename, join } from 'node:path';
import { findPacks, readPackFolder } from '../../adapters/pack-files/read-pack-folder.ts';
import { codedError } from '../../core/errors/coded-error.ts';
import { isCalendarDay, localDate } from '../../core/facts/local-day.ts';
import { checkPack } from '../../core/rules/pack/load-pack.ts';
import { epochSeconds } from '../../core/units/brands.ts';
import { type CheckedFolder, checkFolder, isSound } from '../check/check-folder.ts';
import { checkOverlays } from '../check/check-overlays.ts';
import { asAnnotations, asJson, asText, type PrintChecked } from '../check/print-checked.ts';
import { checkOnChange, type Run } from '../check/watch.ts';
import { type Command, type Parsed, textOption } from '../command.ts';
import type { Io } from '../io.ts';
import { languageOption, wordsFor } from '../language.ts';
import { overlayOption } from '../overlay-option.ts';
import { firstPack, packFolder } from '../packs.ts';

/** `loamward rules check`: every fault of a pack's files, or of all packs under rules/, and what its rules say together. */
export const rulesCheck: Command = {
  name: 'rules check',
  summary: 'Checks the files of a treatment pack and says what is wrong where, why, and how to mend it.',
  words: '[PACK ...]',
  options: {
    day: { type: 'string', value: 'YYYY-MM-DD', help: 'day on which the limits must hold; today (UTC) without it' },
    overlay: overlayOption,
    watch: { type: 'boolean', help: 'check again on every change' },
    annotations: { type: 'boolean', help: 'print the findings as GitHub-style annotations' },
    json: { type: 'boolean', help: 'print the findings as JSON' },
    language: languageOption,
  },
  examples: [
    'npx loamward rules check',
    'npx loamward rules check my-packs/spring-treatment --watch',
    'npx loamward rules check --overlay our-farm.json',
    'npx loamward rules check --day 2027-10-01 --json',
  ],
  run: async (parsed, io) => {
    const words = wordsFor(parsed, io);
    const day = dayOf(parsed, io);
    const print = printerOf(parsed);
    const folders = await named(parsed.words, io);
    const overlays = parsed.lists['overlay'] ?? [];
    const check = async (): Promise<Run> => {
      const packs = await Promise.all(folders.map((folder) => checkFolder(folder, day)));
      const checked = [...packs, ...(await checkLocal(folders, overlays, day))];
      return { text: print(checked, words, io.root), status: checked.every(isSound) ? 0 : 1 };
    };
    if (parsed.options['watch']) return checkOnChange(check, [...folders, ...overlays], io, words);
    const { text, status } = await check();
    io.write(text);
    return status;
  },
};

async function named(words: readonly string[], io: Io): Promise<readonly string[]> {
  if (words.length > 0) return Promise.all(words.map((word) => packFolder(io, word)));
  return (await findPacks(join(io.root, 'rules'))).map((pack) => pack.folder);
}

/** The overlays over the pack named; over the first pack where none is. */
async function checkLocal(
  folders: readonly string[],
  overlays: readonly string[],
  day: string,
): Promise<CheckedFolder[]> {
  if (overlays.length === 0) return [];
  const folder = folders.length === 1 ? folders[0] : folders.find((each) => basename(each) === firstPack);
  const checked = checkPack(await readPackFolder(folder ?? ''));
  return checked.ok ? [await checkOverlays(checked, overlays, day)] : [];
}

function dayOf(parsed: Parsed, io: Io): string {
  const day = textOption(parsed, 'day');
  if (day === undefined) return localDate(epochSeconds(io.now()), 'UTC');
  if (isCalendarDay(day)) return day;
  throw codedError('OPTION_VALUE', { expected: '--day with a day as YYYY-MM-DD', came: day });
}

function printerOf({ options }: Parsed): PrintChecked {
  if (options['json'] && options['annotations']) {
    throw codedError('OPTION_VALUE', { expected: '--json or --annotations', came: 'both' });
  }
  if (options['json']) return asJson;
  return options['annotations'] ? asAnnotations : asText;
}
