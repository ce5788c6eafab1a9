import { join } from 'node:path';
import { readPackFolder } from '../../src/adapters/pack-files/read-pack-folder.ts';
import { type Conversation, emptyConversation } from '../../src/core/dialogue/conversation.ts';
import type { ConversationEvent, FieldProfile } from '../../src/core/dialogue/events.ts';
import { openQuestion } from '../../src/core/dialogue/open-question.ts';
import { standingOf } from '../../src/core/dialogue/standing.ts';
import { step } from '../../src/core/dialogue/step.ts';
import { loadPack } from '../../src/core/rules/pack/load-pack.ts';
import type { Pack } from '../../src/core/rules/pack-types.ts';
import { epochSeconds } from '../../src/core/units/brands.ts';
import type { Forecast } from '../../src/core/weather/forecast.ts';
import { answerFor, drawsOf, fieldOfFarm, isKind, morningOf, weatherOf } from './asking-farms.ts';

/** How much was asked for one verdict. */
export interface Asked {
  /** Ids of the questions in the order of asking; those on one card share a list. */
  readonly cards: readonly (readonly string[])[];
}

const mostCards = 40;

/** A made-up farm on a made-up day, each question with the answer that it gets there whenever it is put, to its verdict. `isKnown`: a usual day on a known field; else a first day. */
export function askFor(pack: Pack, seed: number, isKnown: boolean): Asked {
  const draw = drawsOf(seed);
  const at = morningOf(draw);
  const forecast = weatherOf(draw, at, isKind(seed));
  const field = fieldOfFarm(draw, at, isKind(seed));
  const cards: string[][] = [];
  let conversation = emptyConversation;
  let count = 0;
  const tell = (make: (stamp: { id: string; at: typeof at; device: string; count: number }) => ConversationEvent) => {
    count += 1;
    conversation = takeAll(
      conversation,
      make({ id: `${count}`, at: epochSeconds(at + count), device: 'phone', count }),
      pack,
      forecast,
    );
  };
  tell((stamp) => begin(stamp, pack, isKnown ? field : null));
  while (cards.length < mostCards) {
    const open = openQuestion(conversation.state, pack);
    if (open?.kind !== 'pack') break;
    const asked = [open.question, ...open.together];
    cards.push(asked.map(({ id }) => id));
    for (const question of asked) {
      const own = drawsOf(seed * 100 + pack.questions.findIndex(({ id }) => id === question.id));
      tell((stamp) => answerFor(own, question, stamp));
    }
  }
  return { cards };
}

function begin(stamp: Parameters<typeof answerFor>[2], pack: Pack, field: FieldProfile | null): ConversationEvent {
  return { kind: 'started', ...stamp, packId: pack.id, packHash: pack.hash, field, shiftSeconds: 0 };
}

/** Takes an event with what comes of it: the forecast at once, and the evaluation as the synchronous evaluator gives it. */
function takeAll(before: Conversation, event: ConversationEvent, pack: Pack, forecast: Forecast): Conversation {
  const { conversation, effects } = step(before, event, { pack });
  const stamp = { at: event.at, device: 'server', count: event.count };
  return effects.reduce((now, effect, index) => {
    const id = `${event.id}+${index}`;
    if (effect.kind === 'fetch-forecast') {
      return takeAll(now, { kind: 'forecast-attached', id, ...stamp, forecast }, pack, forecast);
    }
    if (effect.kind !== 'evaluate') return now;
    const trace = standingOf(now.state, pack)?.trace ?? [];
    const outcomes = Object.fromEntries(trace.map(({ rule, outcome }) => [rule, outcome]));
    return takeAll(now, { kind: 'evaluated', id, ...stamp, tag: effect.tag, outcomes }, pack, forecast);
  }, conversation);
}

/** How many questions a verdict takes over farms, days and answers drawn from seeds 1 to `farms`. */
export async function benchAsking(root: string, farms = 300): Promise<string[]> {
  const { pack } = loadPack(await readPackFolder(join(root, 'rules', 'propyzamide-winter-oilseed-rape')));
  const line = (name: string, isKnown: boolean, goal: number) => {
    const all = Array.from({ length: farms }, (_, index) => askFor(pack, index + 1, isKnown).cards);
    const turns = all.map((cards) => cards.length).sort((a, b) => a - b);
    const questions = all.map((cards) => cards.flat().length).sort((a, b) => a - b);
    const told = (sorted: readonly number[]) =>
      `median ${sorted[Math.floor(sorted.length / 2)]}, of a hundred ninety-five at most ${sorted[Math.floor(sorted.length * 0.95)]}, worst ${sorted.at(-1)}`;
    return [`  ${name}: ${told(turns)} times asked (goal at most ${goal}); ${told(questions)} questions on them`];
  };
  return [`${farms} made-up farms`, ...line('usual day', true, 3), ...line('first day', false, 12)];
}
