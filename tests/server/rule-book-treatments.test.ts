import { describe, expect, test } from 'vitest';
import { dialogueOver } from '../../src/adapters/conversation/dialogue-over.ts';
import { quietMs } from '../../src/adapters/folder-watcher.ts';
import { springPack } from '../fixtures/spring-pack.ts';
import { openChat } from './support/chat-client.ts';
import { openRuleFiles, overlayWith, type RuleFiles, writePack } from './support/rule-files.ts';
import { startTestServer } from './support/test-server.ts';

const rape = 'propyzamide-winter-oilseed-rape';

/** Files of the second pack, ours and invented. */
const springFiles = springPack();

const forSpring = { id: 'spring-farm', pack: { id: 'spring-pack' }, validFrom: '2026-01-01' };

function serverOver({ rules, time }: RuleFiles) {
  const { clock, timers } = time;
  return startTestServer({ packs: rules.packs(), rules, clock, timers, dialogue: dialogueOver(rules.packs) });
}

async function offeredAt(url: string): Promise<readonly string[]> {
  const client = await openChat(url);
  client.send({ type: 'hello', protocol: 2, resume: null, treatments: true });
  const { treatments = [] } = await client.next('welcome');
  return treatments.map(({ id }) => id);
}

const inForce = ({ rules }: RuleFiles) =>
  rules.packs().map(({ id, overlays = [] }) => [id, overlays.map((one) => one.id)]);
const healthOf = async (url: string) => (await (await fetch(`${url}/health`)).json()) as { others: object[] };

describe('the bench of two treatments', () => {
  const benchOf = async (url: string, query = '') => {
    const reply = await fetch(`${url}/bench${query}`);
    return { status: reply.status, body: (await reply.json()) as Record<string, unknown> };
  };

  test('tells the first where none is named, and of each its own pack, cases, overlays and what was not taken', async () => {
    const files = await openRuleFiles(
      { 'farm.json': overlayWith('soilTemperatureMaxC', 9), 'spring.json': overlayWith('windMostKmh', 8, forSpring) },
      springFiles,
    );
    const { url } = await serverOver(files);
    const [{ body: first }, { body: second }] = [await benchOf(url), await benchOf(url, '?pack=spring-pack')];
    const ids = (body: Record<string, unknown>) => (body['treatments'] as { id: string }[]).map(({ id }) => id);
    expect([ids(first), ids(second)]).toEqual([
      [rape, 'spring-pack'],
      [rape, 'spring-pack'],
    ]);
    expect(first).toMatchObject({ shipped: { id: rape }, overlays: [{ file: 'farm.json' }], refused: null });
    expect(second).toMatchObject({ shipped: { id: 'spring-pack' }, overlays: [{ file: 'spring.json' }] });
    expect((second['inForce'] as unknown[]).length).toBe(1);
    await writePack(files.secondFolder, { 'cautions.json': '{' });
    await files.settle();
    expect((await benchOf(url)).body).toMatchObject({ refused: null });
    expect((await benchOf(url, '?pack=spring-pack')).body).toMatchObject({
      refused: { error: { code: 'RULES_NOT_JSON', file: 'cautions.json' } },
    });
  });

  test('refuses a treatment that it does not have, and names those that it has', async () => {
    const { url } = await serverOver(await openRuleFiles({}, springFiles));
    const { status, body } = await benchOf(url, '?pack=autumn-pack');
    expect(status).toBe(400);
    expect(body).toMatchObject({
      error: { code: 'PACK_UNKNOWN', expected: `one of ${rape}, spring-pack`, came: 'autumn-pack' },
    });
  });
});

describe('rules of two treatments', () => {
  test('both are offered where both are sound, and each follows its own files', async () => {
    const files = await openRuleFiles({}, springFiles);
    const { url } = await serverOver(files);
    expect(await offeredAt(url)).toEqual([rape, 'spring-pack']);
    const [first, second] = files.rules.packs();
    await writePack(files.secondFolder, { 'pack.json': { ...(springFiles['pack.json'] as object), version: '1.1.0' } });
    await files.settle();
    const packs = files.rules.packs();
    expect(packs.map(({ id, version }) => [id, version])).toEqual([
      [rape, first.version],
      ['spring-pack', '1.1.0'],
      ['spring-pack', '1.0.0'],
    ]);
    expect(packs[2]).toBe(second);
    const taken = { event: 'rules-taken', pack: 'spring-pack' };
    expect(files.log).toEqual([taken, taken]);
    expect(await offeredAt(url)).toEqual([rape, 'spring-pack']);
  });

  test('a broken second pack never stops the first: it is not offered, health and log say why, and it comes once it is mended', async () => {
    const files = await openRuleFiles({}, { ...springFiles, 'cautions.json': '{' });
    const { url } = await serverOver(files);
    expect(await offeredAt(url)).toEqual([rape]);
    expect(await healthOf(url)).toMatchObject({
      pack: { id: rape },
      rules: { refused: null },
      others: [
        {
          id: 'spring-pack',
          pack: null,
          rules: { refused: { error: { code: 'RULES_NOT_JSON', file: 'cautions.json' } } },
        },
      ],
    });
    expect(files.log).toEqual([{ event: 'rules-refused', pack: 'spring-pack', code: 'RULES_NOT_JSON' }]);
    await writePack(files.secondFolder, springFiles);
    await files.settle();
    expect(await offeredAt(url)).toEqual([rape, 'spring-pack']);
    await writePack(files.secondFolder, { 'cautions.json': '{' });
    await files.settle();
    expect(await offeredAt(url)).toEqual([rape, 'spring-pack']);
    expect(await healthOf(url)).toMatchObject({
      others: [
        { pack: { id: 'spring-pack', version: '1.0.0' }, rules: { refused: { error: { code: 'RULES_NOT_JSON' } } } },
      ],
    });
  });

  test('a pack that is added while it runs comes once its files are sound, with the overlays that wait for it', async () => {
    const files = await openRuleFiles();
    const { url } = await serverOver(files);
    expect(await offeredAt(url)).toEqual([rape]);
    await files.put('spring.json', overlayWith('windMostKmh', 12, forSpring));
    await files.settle();
    expect(files.rules.refused()?.error).toMatchObject({ code: 'OVERLAY_PACK_MISFIT', file: 'spring.json' });

    await writePack(files.secondFolder, { ...springFiles, 'cautions.json': '{' });
    await files.settle();
    expect(await offeredAt(url)).toEqual([rape]);
    expect(files.rules.refused()).toBeNull();
    expect(files.rules.others().map(({ id, refused }) => [id, refused?.error.code])).toEqual([
      ['spring-pack', 'RULES_NOT_JSON'],
    ]);

    await writePack(files.secondFolder, springFiles);
    await files.settle();
    expect(inForce(files)).toEqual([
      [rape, []],
      ['spring-pack', ['spring-farm']],
    ]);
    expect(await offeredAt(url)).toEqual([rape, 'spring-pack']);
    expect(files.log.map(({ event, pack }) => [event, pack])).toEqual([
      ['rules-refused', rape],
      ['rules-refused', 'spring-pack'],
      ['rules-taken', 'spring-pack'],
    ]);
  });

  test('a pack is found by what the machine tells of its folder, and no more once the server stops', async () => {
    const files = await openRuleFiles();
    const taken = new Promise<void>((resolve) => files.rules.listen(resolve));
    await writePack(files.secondFolder, springFiles);
    files.stir();
    files.time.advance(quietMs);
    await taken;
    expect(inForce(files)).toEqual([
      [rape, []],
      ['spring-pack', []],
    ]);
    files.rules.close();
    await writePack(files.secondFolder.replace('spring', 'autumn'), springFiles);
    await files.rules.look();
    expect(files.rules.others().map(({ id }) => id)).toEqual(['spring-pack']);
  });

  test('files of the second that say another id are not taken', async () => {
    const files = await openRuleFiles(
      {},
      { ...springFiles, 'pack.json': { ...(springFiles['pack.json'] as object), id: 'other' } },
    );
    expect(inForce(files)).toEqual([[rape, []]]);
    expect(files.rules.others()[0]?.refused?.error).toMatchObject({ code: 'PACK_UNKNOWN', came: 'other' });
  });

  test('each overlay of the folder is laid over the pack that it names, and over no other', async () => {
    const files = await openRuleFiles(
      { 'rape.json': overlayWith('soilTemperatureMaxC', 9), 'spring.json': overlayWith('windMostKmh', 12, forSpring) },
      springFiles,
    );
    expect(inForce(files)).toEqual([
      [rape, ['hollin-bank']],
      ['spring-pack', ['spring-farm']],
    ]);
    const wind = files.rules.packs().map(({ parameters }) => parameters.find(({ id }) => id === 'windMostKmh')?.value);
    expect(wind[1]).toBe(12);
    expect(wind[0]).not.toBe(12);
  });

  test('an overlay that names no pack at hand is refused by all, as it was', async () => {
    const files = await openRuleFiles({}, springFiles);
    const nowhere = { ...forSpring, pack: { id: 'autumn-pack' } };
    await files.put('nowhere.json', overlayWith('windMostKmh', 12, nowhere));
    await files.settle();
    expect(files.rules.refused()?.error).toMatchObject({ code: 'OVERLAY_PACK_MISFIT', file: 'nowhere.json' });
    expect(files.rules.others()[0]?.refused?.error.code).toBe('OVERLAY_PACK_MISFIT');
    expect(inForce(files)).toEqual([
      [rape, []],
      ['spring-pack', []],
    ]);
  });

  test('an overlay of the second that is unsound keeps the second as it was, and not the first', async () => {
    const files = await openRuleFiles({}, springFiles);
    await files.put('spring.json', overlayWith('noSuchLimit', 12, forSpring));
    await files.put('rape.json', overlayWith('soilTemperatureMaxC', 9));
    await files.settle();
    expect(inForce(files).slice(0, 2)).toEqual([
      [rape, ['hollin-bank']],
      ['spring-pack', []],
    ]);
    expect([files.rules.refused(), files.rules.others()[0]?.refused?.error.code]).toEqual([null, 'PACK_KEY_MISSING']);
  });

  test('the bench speaks of the first treatment, and lists its overlays alone', async () => {
    const files = await openRuleFiles({ 'spring.json': overlayWith('windMostKmh', 12, forSpring) }, springFiles);
    const { url } = await serverOver(files);
    const bench = (await (await fetch(`${url}/bench`)).json()) as { shipped: { id: string }; overlays: object[] };
    expect([bench.shipped.id, bench.overlays]).toEqual([rape, []]);
  });
});
