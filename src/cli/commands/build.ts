import type { Command } from '../command.ts';
import { languageOption, wordsFor } from '../language.ts';
import { buildPage } from '../page-build.ts';

/** `loamward build`: makes the page anew. */
export const build: Command = {
  name: 'build',
  summary: 'Builds the page into dist/web.',
  options: { language: languageOption, json: { type: 'boolean', help: 'say it as JSON' } },
  examples: ['npx loamward build'],
  run: async (parsed, io) => {
    await buildPage(io.root, true);
    io.write(
      parsed.options['json'] ? '{"built":"dist/web"}\n' : `${wordsFor(parsed, io).terminal.built('dist/web')}\n`,
    );
    return 0;
  },
};
