import { describe, expect, test } from 'vitest';
import type { ConversationEvent } from '../../../src/core/dialogue/events.ts';
import { reportOf } from '../../../src/core/errors/coded-error.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { handOverAll } from '../../../web/offline/hand-over.ts';
import { type StorageState, safeVault } from '../../../web/offline/safe-vault.ts';
import { openShelf } from '../../../web/offline/shelf.ts';
import type { Answered, TakenEvents } from '../../../web/offline/sync-server.ts';
import { memoryVault } from './memory-vault.ts';

const token = 'a'.repeat(64);
const said = (id: string, at = 1000, text = id): ConversationEvent => ({
  kind: 'said',
  id,
  at: epochSeconds(at),
  device: 'phone',
  count: at,
  text,
  asked: null,
});
const never = () => () => {};

async function opened(vault = memoryVault()) {
  const states: StorageState[] = [];
  const safe = safeVault(vault, (state) => states.push(state), never);
  return { vault, states, safe, shelf: await openShelf(safe, token) };
}

describe('what is kept on the device', () => {
  test('is there again when it is opened anew, with what the server has and has not', async () => {
    const { safe, shelf } = await opened();
    await shelf.add([said('one')], true, 1);
    await shelf.add([said('two', 1001)], false);
    const again = await openShelf(safe, token);
    expect(again.events().map(({ id }) => id)).toEqual(['one', 'two']);
    expect(again.unsent().map(({ id }) => id)).toEqual(['two']);
    expect(again.serverCount()).toBe(1);
    expect(await safe.attempt((vault) => vault.notes(), [])).toMatchObject([{ token, usedAt: 1001, unsent: 1 }]);
  });

  test('counts as handed over for good once it was, and all of it as not where the server has lost it', async () => {
    const { shelf } = await opened();
    await shelf.add([said('one'), said('two')], false);
    await shelf.markHanded(['one', 'two']);
    await shelf.add([said('one')], false);
    expect(shelf.unsent()).toEqual([]);
    await shelf.forgetServer();
    expect(shelf.unsent()).toHaveLength(2);
    expect(shelf.serverCount()).toBe(0);
  });

  test('goes on in memory on a full disk, says so, and is written whole once there is room', async () => {
    const { vault, states, safe, shelf } = await opened();
    vault.fail = 'QuotaExceededError';
    await shelf.add([said('one')], false);
    expect(states.at(-1)).toBe('full');
    expect(shelf.events()).toHaveLength(1);
    vault.fail = null;
    await shelf.add([said('two')], false);
    expect(states.at(-1)).toBe('kept');
    expect((await openShelf(safe, token)).events()).toHaveLength(2);
  });

  test('a browser that refuses or never answers counts as keeping nothing', async () => {
    const { vault, states, safe } = await opened();
    vault.fail = 'SecurityError';
    expect(await safe.attempt((one) => one.notes(), [])).toEqual([]);
    expect(states).toEqual(['none']);
    const hung = safeVault(
      vault,
      (state) => states.push(state),
      (_ms, call) => {
        queueMicrotask(call);
        return () => {};
      },
    );
    expect(await hung.attempt(() => new Promise<number>(() => {}), 7)).toBe(7);
    expect(states).toEqual(['none', 'none']);
  });
});

describe('handing over', () => {
  const over = async (answers: readonly Answered<TakenEvents>[], events = [said('one'), said('two', 1001)]) => {
    const { shelf } = await opened();
    await shelf.add(events, false);
    const asked: string[][] = [];
    const progress: number[] = [];
    const end = await handOverAll({
      shelf,
      settled: async () => {},
      onProgress: (left) => progress.push(left),
      server: {
        handOver: async (_token, part) => {
          asked.push(part.map(({ id }) => id));
          return answers[asked.length - 1] ?? { error: null };
        },
      },
    });
    return { end, asked, progress, unsent: shelf.unsent().length };
  };
  const taken = (count: number, refused: TakenEvents['refused'] = []): Answered<TakenEvents> => ({
    ok: { taken: [], already: [], refused, count },
  });
  const report = (code: Parameters<typeof reportOf>[0]) => reportOf(code, { expected: 'a', came: 'b' });

  test('ends when the server has everything', async () => {
    expect(await over([taken(5)])).toEqual({
      end: { kind: 'done', kept: 5, said: 2, refused: null },
      asked: [['one', 'two']],
      progress: [2, 0],
      unsent: 0,
    });
  });

  test('goes in parts where it is much', async () => {
    const long = 'x'.repeat(200_000);
    const { asked, unsent } = await over([taken(1), taken(2)], [said('one', 1000, long), said('two', 1001, long)]);
    expect(asked).toEqual([['one'], ['two']]);
    expect(unsent).toBe(0);
  });

  test.each([
    ['the server is not reached', { error: null }, { kind: 'unreached' }, 2],
    ['the server asks for patience', { error: report('REQUESTS_TOO_FAST') }, { kind: 'unreached' }, 2],
    ['the server refuses', { error: report('CONVERSATION_FULL') }, { kind: 'refused' }, 2],
    [
      'the server judges by other rules',
      taken(0, [{ id: 'one', error: report('CONVERSATION_OTHER_RULES') }]),
      { kind: 'other-rules' },
      2,
    ],
    [
      'the server has it in other words',
      taken(2, [{ id: 'one', error: report('EVENT_CHANGED') }]),
      { kind: 'done', refused: null },
      0,
    ],
    [
      'a verdict does not follow',
      taken(2, [{ id: 'one', error: report('VERDICT_NOT_REPEATED') }]),
      { kind: 'done', refused: { code: 'VERDICT_NOT_REPEATED' } },
      0,
    ],
  ] as const)('where %s nothing is lost', async (_what, answer, end, unsent) => {
    const came = await over([answer]);
    expect(came.end).toMatchObject(end);
    expect(came.unsent).toBe(unsent);
  });
});
