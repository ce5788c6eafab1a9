import { createConversation } from '../../adapters/conversation/create-conversation.ts';
import { dialogueOver } from '../../adapters/conversation/dialogue-over.ts';
import type { OfferedField, RunningConversation } from '../../adapters/conversation/types.ts';
import { createForecastService } from '../../adapters/openmeteo/forecast-service.ts';
import { settingsFromEnvironment } from '../../adapters/openmeteo/settings.ts';
import { systemMeans } from '../../adapters/openmeteo/system-means.ts';
import type { EventMessage } from '../../core/protocol/messages.ts';
import type { Pack } from '../../core/rules/pack-types.ts';
import { epochSeconds } from '../../core/units/brands.ts';
import { hollinBankFarm } from '../../demo/hollin-bank-farm.ts';
import type { Command, Parsed } from '../command.ts';
import { textOption } from '../command.ts';
import type { Io } from '../io.ts';
import { languageOption, wordsFor } from '../language.ts';
import { overlayOption } from '../overlay-option.ts';
import { converse } from '../terminal/converse.ts';
import { createScreen } from '../terminal/screen.ts';
import { fieldChoices, settleTreatment } from '../terminal/treatments.ts';

/** `loamward ask`: the conversation in a terminal or through a pipe. */
export const ask: Command = {
  name: 'ask',
  summary: 'Asks about one field in the terminal; answers may come from a pipe.',
  options: {
    field: { type: 'string', value: 'FIELD', help: `${fieldIds().join(', ')} (invented), or own` },
    pack: { type: 'string', value: 'PACK', help: 'treatment pack, by id or path; asked for where there are several' },
    overlay: overlayOption,
    language: languageOption,
    json: { type: 'boolean', help: 'print the last state of the conversation as JSON' },
  },
  examples: ['npx loamward ask', "printf '9.2 at 30 cm\\nmoist\\n' | npx loamward ask --field mill-piece"],
  run: async (parsed, io) => {
    const words = wordsFor(parsed, io);
    const json = parsed.options['json'] === true;
    const field = namedField(parsed);
    const screen = createScreen(io, json, words);
    const lines = io.lines()[Symbol.asyncIterator]();
    const wish = { pack: textOption(parsed, 'pack'), field, overlays: parsed.lists['overlay'] ?? [] };
    const pack = await settleTreatment(wish, { io, lines, screen, words });
    if (pack === undefined) return 0;
    return converse({
      conversation: newConversation(io, pack),
      io,
      lines,
      screen,
      json,
      field,
      offers: fieldChoices(pack, words),
      words,
      stamp: stamps(io),
    });
  },
};

function fieldIds(): string[] {
  return hollinBankFarm.map(({ profile }: OfferedField) => profile.id);
}

/** The field named by --field: an id, null for an own one, undefined where the person is to choose. */
function namedField(parsed: Parsed): string | null | undefined {
  const field = textOption(parsed, 'field');
  return field === 'own' ? null : field;
}

function newConversation(io: Io, pack: Pack): RunningConversation {
  return createConversation({
    dialogue: dialogueOver(() => [pack]),
    clock: { now: () => epochSeconds(io.now()) },
    newId: io.newId,
    forecastService: createForecastService({ ...systemMeans, settings: settingsFromEnvironment(io.env) }),
    fields: hollinBankFarm,
    packs: [pack],
  });
}

/** Stamps of the terminal's events: rising count, one device. */
function stamps(io: Io): () => Pick<EventMessage, 'id' | 'at' | 'device' | 'count'> {
  let count = 0;
  return () => {
    count += 1;
    return { id: io.newId(), at: io.now(), device: 'terminal', count };
  };
}
