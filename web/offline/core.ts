import { createConversation } from '../../src/adapters/conversation/create-conversation.ts';
import { dialogueOver } from '../../src/adapters/conversation/dialogue-over.ts';
import type { ForecastSource, OfferedField, RunningConversation } from '../../src/adapters/conversation/types.ts';
import type { ConversationEvent } from '../../src/core/dialogue/events.ts';
import type { Pack } from '../../src/core/rules/pack-types.ts';
import { type EpochSeconds, epochSeconds } from '../../src/core/units/brands.ts';
import { inventedForecast } from '../../src/demo/invented-weather.ts';
import type { KeptField } from './vault.ts';

export { parseEvents } from '../../src/core/protocol/events/parse-events.ts';

/** What a conversation in the page needs. */
export interface HereMeans {
  /** The rules, those in force before older ones. */
  readonly packs: readonly [Pack, ...Pack[]];
  /** Those that new conversations are begun under, one for each treatment. */
  readonly inForce: readonly [Pack, ...Pack[]];
  readonly fields: readonly KeptField[];
  readonly restored: readonly ConversationEvent[];
  /** Epoch seconds UTC by the server's clock. */
  readonly now: () => number;
  readonly newId: () => string;
  /** Name of this page in the stamps of what it works out. */
  readonly device: string;
  readonly forecastService: ForecastSource;
  readonly keep: (events: readonly ConversationEvent[]) => Promise<void>;
}

/** Runs a conversation in the page: the same core as on the server, both evaluators, the same rules. */
export function runHere(means: HereMeans): RunningConversation {
  const { packs, inForce, restored, now, newId, device, forecastService, keep } = means;
  return createConversation(
    {
      dialogue: dialogueOver(() => packs),
      clock: { now: (): EpochSeconds => epochSeconds(now()) },
      fields: means.fields.map(offered),
      packs: inForce,
      nextTurn,
      newId,
      device,
      forecastService,
      keep,
    },
    restored,
  );
}

function offered(field: KeptField): OfferedField {
  return { ...field, ...(field.profile.invented ? { forecastAt: inventedForecast } : {}) };
}

/** A turn of the page's loop, in which it draws, without the wait that browsers put on timers. */
function nextTurn(): Promise<void> {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(null);
  });
}
