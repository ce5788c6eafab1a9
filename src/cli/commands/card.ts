import { writeText } from '../../adapters/practice/progress-file.ts';
import { localDate } from '../../core/facts/local-day.ts';
import { definitionsOf } from '../../core/facts/registry/index.ts';
import { openCard, openTour } from '../../core/tour/open-tour.ts';
import { epochSeconds } from '../../core/units/brands.ts';
import { cardWordsOf } from '../../core/words/card-words.ts';
import { cardText, sayCard } from '../../core/words/say-card.ts';
import { cardHtml } from '../card-html.ts';
import { type Command, textOption } from '../command.ts';
import { languageOption, wordsFor } from '../language.ts';
import { packOf, packOption } from '../pack-option.ts';

/** `loamward card`: the one-page card for the cab, as text or as a page to print. */
export const card: Command = {
  name: 'card',
  summary: 'Prints a one-page card for the cab: limits, hand test, cautions.',
  options: {
    pack: packOption,
    language: languageOption,
    html: { type: 'string', value: 'FILE', help: 'file to write' },
  },
  examples: ['npx loamward card', 'npx loamward card --language de --html card.html'],
  run: async (parsed, io) => {
    const { pack } = await packOf(parsed, io);
    const words = wordsFor(parsed, io);
    const now = epochSeconds(io.now());
    const today = localDate(now, pack.zone);
    const said = sayCard(
      openCard(openTour(pack, now)),
      pack,
      { limits: today, printed: today },
      { catalogue: words, card: cardWordsOf(words.language), definitionOf: definitionsOf(pack.facts) },
    );
    const file = textOption(parsed, 'html');
    if (file === undefined) io.write(cardText(said));
    else await writeText(file, cardHtml(said, words.language));
    return 0;
  },
};
