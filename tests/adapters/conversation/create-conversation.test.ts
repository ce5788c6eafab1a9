import { setImmediate } from 'node:timers/promises';
import { describe, expect, test } from 'vitest';
import { createConversation } from '../../../src/adapters/conversation/create-conversation.ts';
import type { ConversationMeans } from '../../../src/adapters/conversation/types.ts';
import type { ConversationEvent } from '../../../src/core/dialogue/events.ts';
import { codedError } from '../../../src/core/errors/coded-error.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { hollinBankFarm } from '../../../src/demo/hollin-bank-farm.ts';
import { inventedForecast } from '../../../src/demo/invented-weather.ts';
import { emptyPack } from '../../server/support/pack.ts';
import { type PlainState, plainDialogue } from '../../server/support/plain-dialogue.ts';

const at = epochSeconds(1_795_600_000);
let ids = 0;
const stamp = (count = ++ids) => ({ id: `event-${count}`, at, device: 'test', count });
const forecast = inventedForecast(at);

function means(more: Partial<ConversationMeans<PlainState>> = {}): ConversationMeans<PlainState> {
  return {
    dialogue: plainDialogue(),
    clock: { now: () => at },
    newId: () => `made-${++ids}`,
    nextTurn: setImmediate,
    fields: hollinBankFarm,
    packs: [{ id: 'propyzamide-winter-oilseed-rape', hash: emptyPack.hash }],
    forecastService: { forecastFor: async () => ({ forecast }) },
    ...more,
  };
}
const kinds = (events: readonly ConversationEvent[]) => events.map(({ kind }) => kind);

describe('a running conversation', () => {
  test('moves a demo field to its invented day and takes its weather from there, asking no service', async () => {
    const conversation = createConversation(
      means({ forecastService: { forecastFor: () => Promise.reject(new TypeError('asked')) } }),
    );
    await conversation.receive({ type: 'start', ...stamp(), field: 'mill-piece' });
    await conversation.settled();
    const [started, weather] = conversation.events();
    const [field] = hollinBankFarm;
    expect(started).toMatchObject({ kind: 'started', shiftSeconds: field!.inventedNow - at, packHash: emptyPack.hash });
    expect(weather).toMatchObject({ kind: 'forecast-attached', forecast: { fetchedAt: field!.inventedNow } });
  });

  test.each([
    ['a forecast', async () => ({ forecast }), { kind: 'forecast-attached', forecast }],
    [
      'a forecast with a warning',
      async () => ({ forecast, warning: codedError('FORECAST_DOWN', { expected: 'a', came: 'b' }).toJSON() }),
      { kind: 'forecast-attached', warning: { code: 'FORECAST_DOWN' } },
    ],
    [
      'a coded failure',
      async () => ({ error: codedError('FORECAST_SLOW', { expected: 'a', came: 'b' }).toJSON() }),
      { kind: 'forecast-failed', error: { code: 'FORECAST_SLOW' } },
    ],
    [
      'a fault',
      () => Promise.reject(new RangeError('planted')),
      { kind: 'forecast-failed', error: { code: 'UNEXPECTED' } },
    ],
  ])('for an own field feeds %s back as an event', async (_what, forecastFor, event) => {
    const conversation = createConversation(means({ forecastService: { forecastFor } }));
    await conversation.receive({ type: 'start', ...stamp(), field: null });
    await conversation.settled();
    expect(conversation.events()[1]).toMatchObject({ device: 'runner', ...event });
  });

  test('keeps every event before it counts, and one that cannot be kept does not count', async () => {
    const kept: ConversationEvent[] = [];
    const conversation = createConversation(
      means({
        keep: async (events) => {
          if (events.some((event) => event.kind === 'said' && event.text === 'too much')) {
            throw codedError('CONVERSATION_FULL', { expected: 'less', came: 'more' });
          }
          kept.push(...events);
        },
      }),
    );
    await conversation.receive({ type: 'start', ...stamp(), field: null });
    await conversation.settled();
    expect(await conversation.receive({ type: 'say', ...stamp(), text: 'too much' })).toMatchObject({
      code: 'CONVERSATION_FULL',
    });
    expect(kinds(kept)).toEqual(['started', 'forecast-attached']);
    expect(conversation.events()).toEqual(kept);
  });

  test('an effect whose result cannot be kept is told to whoever listens', async () => {
    let count = 0;
    const conversation = createConversation(
      means({
        keep: async () => {
          count += 1;
          if (count > 1) throw codedError('CONVERSATION_GONE', { expected: 'a', came: 'b' });
        },
      }),
    );
    const errors: string[] = [];
    conversation.listen({ onView: () => {}, onNotice: () => {}, onError: ({ code }) => errors.push(code) });
    await conversation.receive({ type: 'start', ...stamp(), field: null });
    await conversation.settled();
    expect(errors).toEqual(['CONVERSATION_GONE']);
  });

  test('takes messages strictly one after another, however slow keeping is', async () => {
    const waiting: (() => void)[] = [];
    const conversation = createConversation(
      means({ keep: () => new Promise((resolve) => void waiting.push(resolve)) }),
    );
    const all = ['start', 'a', 'b', 'c'].map((text) =>
      conversation.receive(
        text === 'start' ? { type: 'start', ...stamp(), field: 'top-brow' } : { type: 'say', ...stamp(), text },
      ),
    );
    const done = Promise.all(all).then(() => true);
    while (!(await Promise.race([done, new Promise((resolve) => globalThis.setImmediate(resolve, false))])))
      waiting.shift()?.();
    const said = conversation.events().flatMap((event) => (event.kind === 'said' ? [event.text] : []));
    expect(said).toEqual(['a', 'b', 'c']);
    waiting.shift()?.();
    await conversation.settled();
  });

  test('names its own events after the device that it is given, and goes on counting from kept ones', async () => {
    const { nextTurn: _ours, ...others } = means({ device: 'phone-7' });
    const first = createConversation(others);
    await first.receive({ type: 'start', ...stamp(), field: 'mill-piece' });
    await first.settled();
    const again = createConversation(others, first.events());
    await again.receive({ type: 'start', ...stamp(), field: 'top-brow' });
    await again.settled();
    const own = again.events().filter(({ kind }) => kind === 'forecast-attached');
    expect(own.map(({ device, count }) => [device, count])).toEqual([
      ['phone-7', 1],
      ['phone-7', 2],
    ]);
  });

  test('an evaluation that fails or breaks comes back as a coded event', async () => {
    const conversation = createConversation(means());
    await conversation.receive({ type: 'start', ...stamp(), field: null });
    for (const text of ['judge fine', 'judge fail', 'judge break']) {
      await conversation.receive({ type: 'say', ...stamp(), text });
      await conversation.settled();
    }
    expect(kinds(conversation.events()).filter((kind) => kind.startsWith('eval'))).toEqual([
      'evaluated',
      'evaluation-failed',
      'evaluation-failed',
    ]);
  });

  test('goes on from kept events, asks again for what was under way, and counts on', async () => {
    const before = createConversation(means());
    await before.receive({ type: 'start', ...stamp(), field: 'top-brow' });
    await before.settled();
    const pending = plainDialogue();
    const after = createConversation(
      means({
        dialogue: {
          ...pending,
          open: (events) => ({
            conversation: { events },
            effects: [{ kind: 'evaluate', tag: 'left' }],
            refused: null,
          }),
        },
      }),
      before.events(),
    );
    await after.settled();
    expect(kinds(after.events())).toEqual(['started', 'forecast-attached', 'evaluated']);
    expect(after.events().at(-1)).toMatchObject({ tag: 'left', device: 'runner', count: 2 });
  });

  test.each(['a-device-before-runner', 'z-device-after-runner'])(
    'what it adds comes after the message of %s',
    async (device) => {
      const conversation = createConversation(means());
      for (const ahead of [0, 100]) {
        const message = { ...stamp(), at: at + ahead, device };
        await conversation.receive({ type: 'start', ...message, field: null });
        await conversation.settled();
        expect(conversation.events().at(-1)!.at).toBeGreaterThan(message.at);
      }
    },
  );

  test('a view goes out for each change and none for a message that came twice', async () => {
    const conversation = createConversation(means());
    const views: number[] = [];
    conversation.listen({ onView: ({ entries }) => views.push(entries.length), onNotice: () => {}, onError: () => {} });
    const start = { type: 'start', ...stamp(), field: null } as const;
    await conversation.receive(start);
    await conversation.settled();
    expect(await conversation.receive(start)).toBeNull();
    expect(views).toEqual([1, 2]);
  });

  test('nothing is shown before a field is chosen', () => {
    expect(createConversation(means()).view()).toBeNull();
  });
});
