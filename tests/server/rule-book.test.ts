import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { dialogueOver } from '../../src/adapters/conversation/dialogue-over.ts';
import { createMemoryStore } from '../../src/adapters/store/memory-store.ts';
import type { Pack } from '../../src/core/rules/pack-types.ts';
import { lookEveryMs } from '../../src/server/rules/follow-pack.ts';
import { greet, stampAt } from './support/chat-client.ts';
import { openRuleFiles, overlayWith, type RuleFiles } from './support/rule-files.ts';
import { startTestServer } from './support/test-server.ts';

/** A server over rule files, with the core's own conversation. */
function serverOver({ rules, time }: RuleFiles, store = createMemoryStore()) {
  return startTestServer({
    packs: rules.packs(),
    rules,
    clock: time.clock,
    timers: time.timers,
    dialogue: dialogueOver(rules.packs),
    store,
  });
}

const limitIn = (pack: Pack, id = 'soilTemperatureMaxC') => pack.parameters.find((one) => one.id === id)?.value;

async function healthOf(url: string) {
  const reply = await fetch(`${url}/health`);
  return (await reply.json()) as {
    pack: { hash: string };
    rules: { overlays: { id: string }[]; refused: { at: string; error: { code: string; file?: string } } | null };
  };
}

describe('rules that follow their files', () => {
  test('an overlay that comes into the folder is taken; the rules before it are kept, and handed out after those in force', async () => {
    const files = await openRuleFiles();
    const { url } = await serverOver(files);
    const [shipped] = files.rules.packs();
    await files.put('farm.json', overlayWith('soilTemperatureMaxC', 9));
    await files.settle();
    const packs = ((await (await fetch(`${url}/packs`)).json()) as { packs: Pack[] }).packs;
    expect(packs.map((pack) => limitIn(pack))).toEqual([9, limitIn(shipped)]);
    expect((await healthOf(url)).rules).toEqual({
      overlays: [{ id: 'hollin-bank', hash: packs[0]?.overlays?.[0]?.hash }],
      refused: null,
    });
    expect(files.log).toEqual([{ event: 'rules-taken', pack: 'propyzamide-winter-oilseed-rape' }]);
  });

  test('a burst of changes is looked at once, when it has gone quiet', async () => {
    const files = await openRuleFiles();
    const [shipped] = files.rules.packs();
    await files.put('farm.json', overlayWith('soilTemperatureMaxC', 9));
    files.stir();
    files.time.advance(60);
    files.stir();
    files.time.advance(60);
    expect(files.rules.packs()).toEqual([shipped]);
    files.time.advance(40);
    await files.rules.look();
    expect(files.rules.packs()).toHaveLength(2);
  });

  test.each([
    ['no JSON', '{', 'RULES_NOT_JSON'],
    ['a protected rule loosened', overlayWith('windMostKmh', 14.5), 'OVERLAY_PARAMETER_LOOSENED'],
    ['an unknown parameter', overlayWith('noSuchLimit', 1), 'PACK_KEY_MISSING'],
  ])('an overlay with %s is not taken: the old rules stay, and health says why', async (_, content, code) => {
    const files = await openRuleFiles({ 'farm.json': overlayWith('soilTemperatureMaxC', 9) });
    const { url } = await serverOver(files);
    const before = files.rules.packs();
    await files.put('farm.json', content);
    await files.settle();
    expect(files.rules.packs()).toEqual(before);
    const { refused } = (await healthOf(url)).rules;
    expect(refused).toMatchObject({ at: '2026-11-25T09:46:40.100Z', error: { file: 'farm.json' } });
    expect([refused?.error.code, files.log.at(-1)]).toMatchObject([code, { event: 'rules-refused', code }]);
    await files.put('farm.json', overlayWith('soilTemperatureMaxC', 9.5));
    await files.settle();
    expect([limitIn(files.rules.packs()[0]), (await healthOf(url)).rules.refused]).toEqual([9.5, null]);
  });

  test('a changed pack is checked thoroughly: one with a limit that no case notices is not taken, one without a fault is', async () => {
    const files = await openRuleFiles();
    const [shipped] = files.rules.packs();
    const path = join(files.packFolder, 'parameters.json');
    const text = await readFile(path, 'utf8');
    await writeFile(path, text.replace('"validFrom": "2026-01-01"', '"validFrom": "2031-01-01"'));
    await files.settle();
    expect(files.rules.packs()).toEqual([shipped]);
    expect(files.rules.refused()?.error).toMatchObject({ code: 'PARAMETER_NOT_IN_FORCE' });
    await writeFile(path, text.replace('labels and water rules of Great Britain', 'labels of Great Britain'));
    await files.settle();
    expect([files.rules.packs().length, files.rules.refused()]).toEqual([2, null]);
  });

  test('a file that cannot be read keeps the old rules', async () => {
    const files = await openRuleFiles();
    await writeFile(join(files.packFolder, 'cautions.json'), Buffer.from([0xff, 0xfe, 0x00]));
    await files.settle();
    expect(files.rules.refused()?.error.code).toBe('RULES_FILE_UNREADABLE');
    expect(files.rules.packs()).toHaveLength(1);
  });

  test('an overlay that begins on a later day comes into force when that day has come, without any change of a file', async () => {
    const files = await openRuleFiles({
      'farm.json': overlayWith('soilTemperatureMaxC', 9, { validFrom: '2026-11-26' }),
    });
    expect(files.rules.packs()[0].overlays).toBeUndefined();
    files.time.advance(24 * 3_600_000 + lookEveryMs);
    await files.rules.look();
    expect(limitIn(files.rules.packs()[0])).toBe(9);
  });

  test('rules that are faulty at the start keep the server from starting', async () => {
    await expect(openRuleFiles({ 'farm.json': overlayWith('windMostKmh', 14.5) })).rejects.toMatchObject({
      code: 'OVERLAY_PARAMETER_LOOSENED',
    });
  });

  test('a conversation keeps the rules it began with and hears of newer ones; the next one begins under those', async () => {
    const files = await openRuleFiles();
    const store = createMemoryStore();
    const { url } = await serverOver(files, store);
    const { client, welcome } = await greet(url);
    const start = (field: string) => client.send({ type: 'start', ...stampAt(files.time.clock.now()), field });
    start('mill-piece');
    await client.next('view');
    await files.put('farm.json', overlayWith('soilTemperatureMaxC', 9));
    await files.settle();
    expect(await client.next('rules')).toEqual({ type: 'rules' });
    client.send({ type: 'say', ...stampAt(files.time.clock.now()), text: 'hello' });
    await client.next('view');
    start('top-brow');
    await client.next('view');
    client.socket.terminate();
    const [now, before] = files.rules.packs().map(({ hash }) => hash);
    const { events = [] } = (await store.read(welcome.token, files.time.clock.now())) ?? {};
    expect(events.flatMap((event) => (event.kind === 'started' ? [event.packHash] : []))).toEqual([before, now]);
  });
});
