import { codedError } from '../../core/errors/coded-error.ts';
import { isCalendarDay } from '../../core/facts/local-day.ts';
import { compareWordsOf } from '../../core/words/compare-words.ts';
import { type Command, type Parsed, textOption } from '../command.ts';
import { loadSides } from '../compare/load-sides.ts';
import { progressOn } from '../compare/progress.ts';
import { readVerdicts } from '../compare/read-verdicts.ts';
import { compareAll } from '../compare/report.ts';
import { reportText } from '../compare/report-text.ts';
import { writePicture } from '../compare/write-picture.ts';
import type { Io } from '../io.ts';
import { readJsonFile } from '../json-file.ts';
import { languageOption, wordsFor } from '../language.ts';
import { overlayOption } from '../overlay-option.ts';
import { firstPack, today } from '../packs.ts';

/** `loamward rules compare`: in what two rule sets differ, and what comes of it. */
export const rulesCompare: Command = {
  name: 'rules compare',
  summary: 'Says in what two rule sets differ, and which verdicts change on cases, near limits, and through seasons.',
  words: 'A [B]',
  options: {
    overlay: overlayOption,
    'overlay-a': { type: 'string', value: 'FILE', repeats: true, help: 'local rules laid over A; may be repeated' },
    'overlay-b': { type: 'string', value: 'FILE', repeats: true, help: 'local rules laid over B; may be repeated' },
    events: { type: 'string', value: 'FILE', help: 'events of earlier conversations, as page or server save them' },
    data: { type: 'string', value: 'FOLDER', help: 'folder of daily tables of weather stations' },
    facts: { type: 'string', value: 'FILE', help: 'flat JSON object of what holds on the field all season' },
    day: { type: 'string', value: 'YYYY-MM-DD', help: 'day whose limits hold through all seasons; today without it' },
    picture: { type: 'string', value: 'FILE', help: 'draws the seasons into this file as SVG, with a table beside it' },
    language: languageOption,
    json: { type: 'boolean', help: 'print one JSON object' },
  },
  examples: [
    `npx loamward rules compare ${firstPack} --overlay overlays/my-area.json`,
    `npx loamward rules compare ${firstPack} my-packs/next --data weather/ --picture next.svg`,
    `npx loamward rules compare ${firstPack} --overlay farm.json --events events.json --json`,
  ],
  run: async (parsed, io) => {
    const words = wordsFor(parsed, io);
    const day = dayOf(parsed, io);
    const sides = await loadSides(parsed, io, day);
    const [events, facts, picture] = ['events', 'facts', 'picture'].map((name) => textOption(parsed, name));
    const on = {
      day,
      saved: events === undefined ? null : await readVerdicts(io, events),
      folder: textOption(parsed, 'data') ?? null,
      facts: facts === undefined ? null : await readJsonFile(io, facts),
    };
    const compared = compareAll(sides, on, progressOn(io, compareWordsOf(words.language)), words);
    const { report } = compared;
    const drawn = picture === undefined ? null : await writePicture(picture, compared, words);
    if (parsed.options['json']) io.write(`${JSON.stringify(report)}\n`);
    else io.write(`${reportText(report, sides, words)}${drawn === null ? '' : `\n${drawn}\n`}`);
    return 0;
  },
};

function dayOf(parsed: Parsed, io: Io): string {
  const day = textOption(parsed, 'day') ?? today(io)('UTC');
  if (isCalendarDay(day)) return day;
  throw codedError('OPTION_VALUE', { expected: '--day with a day as YYYY-MM-DD', came: day });
}
