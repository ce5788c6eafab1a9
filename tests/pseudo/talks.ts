import { createConversation } from '../../src/adapters/conversation/create-conversation.ts';
import { dialogueOver } from '../../src/adapters/conversation/dialogue-over.ts';
import { createForecastService } from '../../src/adapters/openmeteo/forecast-service.ts';
import { settingsFromEnvironment } from '../../src/adapters/openmeteo/settings.ts';
import { systemMeans } from '../../src/adapters/openmeteo/system-means.ts';
import { converse } from '../../src/cli/terminal/converse.ts';
import { createScreen } from '../../src/cli/terminal/screen.ts';
import { fieldChoices } from '../../src/cli/terminal/treatments.ts';
import type { ConversationView } from '../../src/core/dialogue/view-types.ts';
import type { Pack } from '../../src/core/rules/pack-types.ts';
import { epochSeconds } from '../../src/core/units/brands.ts';
import { catalogueOf } from '../../src/core/words/catalogue.ts';
import { hollinBankFarm } from '../../src/demo/hollin-bank-farm.ts';
import { fakeIo } from '../cli/fake-io.ts';

/** What a person saw of a conversation: the terminal's text, and every view in between. */
export interface Seen {
  readonly text: string;
  readonly views: readonly ConversationView[];
}

/** Types lines into a conversation about a field of the invented farm, or an own one, in the made-up language. */
export async function talkIn(pack: Pack, field: string | null | undefined, lines: readonly string[]): Promise<Seen> {
  const io = fakeIo({}, lines);
  const words = catalogueOf('zz');
  const conversation = createConversation({
    dialogue: dialogueOver(() => [pack]),
    clock: { now: () => epochSeconds(io.now()) },
    newId: io.newId,
    forecastService: createForecastService({ ...systemMeans, settings: settingsFromEnvironment(io.env) }),
    fields: hollinBankFarm,
    packs: [pack],
  });
  const views: ConversationView[] = [];
  conversation.listen({ onView: (view) => void views.push(view), onNotice: () => {}, onError: () => {} });
  let count = 0;
  await converse({
    conversation,
    io,
    lines: io.lines()[Symbol.asyncIterator](),
    screen: createScreen(io, false, words),
    json: false,
    field,
    offers: fieldChoices(pack, words),
    words,
    stamp: () => {
      count += 1;
      return { id: io.newId(), at: io.now(), device: 'terminal', count };
    },
  });
  return { text: io.out() + io.err(), views };
}
