import { progressFile } from '../../adapters/practice/progress-file.ts';
import { definitionsOf } from '../../core/facts/registry/index.ts';
import { parseDaySet } from '../../core/practice/files.ts';
import type { PracticeWorld } from '../../core/practice/types.ts';
import { practiceWordsOf } from '../../core/words/practice-words.ts';
import { type Command, textOption } from '../command.ts';
import { readJsonFile } from '../json-file.ts';
import { languageOption, wordsFor } from '../language.ts';
import { packOf, packOption } from '../pack-option.ts';
import { practise } from '../terminal/practise.ts';

/** `loamward practice`: days to decide on, made from the rules or from a file, in the terminal. */
export const practice: Command = {
  name: 'practice',
  summary: 'Puts practice days, one by one: decide first, then see what the rules say and by how much.',
  options: {
    pack: packOption,
    days: { type: 'string', value: 'FILE', help: 'days of real weather, as loamward practice days writes them' },
    progress: { type: 'string', value: 'FILE', help: 'file to which every answer is added; it is read first' },
    seed: { type: 'string', value: 'N', help: 'other days for another number' },
    once: { type: 'boolean', help: 'one day only' },
    language: languageOption,
  },
  examples: [
    'npx loamward practice --progress my-practice.jsonl',
    'npx loamward practice --days season-2024.json --language de',
  ],
  run: async (parsed, io) => {
    const { pack } = await packOf(parsed, io);
    const words = wordsFor(parsed, io);
    const speech = { words, practice: practiceWordsOf(words.language) };
    const world: PracticeWorld = { pack, plain: pack.plainDay ?? null, definitionOf: definitionsOf(pack.facts) };
    const file = textOption(parsed, 'days');
    const set = file === undefined ? null : parseDaySet(await readJsonFile(io, file), pack, file);
    const kept = textOption(parsed, 'progress');
    io.write(
      `${speech.practice.heading}\n${set ? speech.practice.leadSet(set.place, String(set.season)) : speech.practice.lead}\n`,
    );
    if (set && set.pack.hash !== pack.hash) io.write(`${speech.practice.otherRules}\n`);
    return practise({
      io,
      world,
      days: set?.days ?? null,
      seed: textOption(parsed, 'seed') ?? '1',
      speech,
      progress: kept === undefined ? null : progressFile(kept),
      once: parsed.options['once'] === true,
    });
  },
};
