import { readdir, readFile } from 'node:fs/promises';
import { request } from 'node:http';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { dialogueOver } from '../../src/adapters/conversation/dialogue-over.ts';
import type { ServerSettings } from '../../src/server/settings.ts';
import { springPack } from '../fixtures/spring-pack.ts';
import { openRuleFiles, overlayWith, type RuleFiles } from './support/rule-files.ts';
import { startTestServer } from './support/test-server.ts';

async function benchOver(files: RuleFiles, settings: Partial<ServerSettings> = {}) {
  const { rules, time, overlayFolder } = files;
  const server = await startTestServer({
    packs: rules.packs(),
    rules,
    clock: time.clock,
    timers: time.timers,
    dialogue: dialogueOver(rules.packs),
    settings: { overlays: overlayFolder, benchWrites: true, ...settings },
  });
  const post = async (overlay: unknown, replaces: string | null = null, headers: Record<string, string> = {}) => {
    const reply = await fetch(`${server.url}/overlays`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', origin: server.url, ...headers },
      body: JSON.stringify({ overlay, replaces }),
    });
    return {
      status: reply.status,
      body: (await reply.json()) as { error?: { code: string } } & Record<string, unknown>,
    };
  };
  const look = async () => (await (await fetch(`${server.url}/bench`)).json()) as Record<string, unknown>;
  return { server, post, look };
}

describe('GET /bench', () => {
  test('tells the pack as shipped, its cases, the overlays of the folder and that the page may write', async () => {
    const files = await openRuleFiles({ 'farm.json': overlayWith('soilTemperatureMaxC', 9.5) });
    const { look } = await benchOver(files);
    const bench = await look();
    expect(bench).toMatchObject({
      shipped: { hash: files.rules.files().shipped.hash },
      overlays: [{ file: 'farm.json', content: overlayWith('soilTemperatureMaxC', 9.5) }],
      today: '2026-11-25',
      whyNoWrites: null,
      refused: null,
    });
    expect((bench['cases'] as unknown[]).length).toBeGreaterThan(100);
  });

  test('says why files found since were not taken', async () => {
    const files = await openRuleFiles();
    const { look } = await benchOver(files);
    await files.put('farm.json', '{');
    await files.settle();
    expect(await look()).toMatchObject({ refused: { error: { code: 'RULES_NOT_JSON', file: 'farm.json' } } });
  });
});

describe('POST /overlays', () => {
  test('writes a sound overlay whole into the folder and takes it at once', async () => {
    const files = await openRuleFiles();
    const { post, server } = await benchOver(files);
    const { status, body } = await post(overlayWith('soilTemperatureMaxC', 9.5));
    expect([status, body]).toMatchObject([200, { file: 'hollin-bank.json', inForce: true }]);
    expect(await readdir(files.overlayFolder)).toEqual(['hollin-bank.json']);
    const written = await readFile(join(files.overlayFolder, 'hollin-bank.json'), 'utf8');
    expect(JSON.parse(written)).toEqual(overlayWith('soilTemperatureMaxC', 9.5));
    expect(files.rules.packs()).toHaveLength(2);
    expect(server.log).toContainEqual({ event: 'overlay-written' });
  });

  test('an overlay that begins later is written and waits for its day', async () => {
    const files = await openRuleFiles();
    const { post } = await benchOver(files);
    const { body } = await post(overlayWith('soilTemperatureMaxC', 9.5, { validFrom: '2027-01-01' }));
    expect([body['inForce'], files.rules.packs().length]).toEqual([false, 1]);
  });

  test('one of another treatment is laid over that one, whose overlays alone it must agree with', async () => {
    const files = await openRuleFiles({ 'farm.json': overlayWith('soilTemperatureMaxC', 9.5) }, springPack());
    const { post } = await benchOver(files);
    const head = { id: 'spring-farm', pack: { id: 'spring-pack' } };
    expect((await post(overlayWith('soilTemperatureMaxC', 9, head))).body.error?.code).toBe('PACK_KEY_MISSING');
    const { body } = await post(overlayWith('windMostKmh', 8, head));
    expect(body).toMatchObject({ file: 'spring-farm.json', inForce: true });
    const laid = files.rules.packs().map(({ id, overlays = [] }) => [id, overlays.map((one) => one.id)]);
    expect(laid.slice(0, 2)).toEqual([
      ['propyzamide-winter-oilseed-rape', ['hollin-bank']],
      ['spring-pack', ['spring-farm']],
    ]);
    const sameName = { ...head, id: 'farm' };
    expect((await post(overlayWith('windMostKmh', 7, sameName))).body.error?.code).toBe('OVERLAY_FILE_TAKEN');
  });

  test('one that is there is replaced in its own file, by whoever began from it as it is', async () => {
    const files = await openRuleFiles({ 'farm.json': overlayWith('soilTemperatureMaxC', 9.5) });
    const { post } = await benchOver(files);
    const changed = overlayWith('soilTemperatureMaxC', 9);
    const [before] = files.rules.packs()[0].overlays ?? [];
    for (const replaces of [null, 'f'.repeat(64)]) {
      expect(await post(changed, replaces)).toMatchObject({
        status: 409,
        body: { error: { code: 'OVERLAY_CHANGED_MEANWHILE' } },
      });
    }
    expect((await post(changed, before?.hash)).body).toMatchObject({ file: 'farm.json', inForce: true });
    expect(await readdir(files.overlayFolder)).toEqual(['farm.json']);
  });

  test.each([
    ['that loosens a protected rule', overlayWith('windMostKmh', 14.5), 'OVERLAY_PARAMETER_LOOSENED'],
    ['of another shape', { overlay: 1 }, 'PACK_VALUE_WRONG'],
    ['for another pack', overlayWith('soilTemperatureMaxC', 9, { pack: { id: 'other' } }), 'OVERLAY_PACK_MISFIT'],
    ['whose id climbs out', overlayWith('soilTemperatureMaxC', 9, { id: '../../pack/pack' }), 'PACK_VALUE_WRONG'],
  ])('an overlay %s is refused and nothing written', async (_, overlay, code) => {
    const files = await openRuleFiles();
    const { post } = await benchOver(files);
    expect(await post(overlay)).toMatchObject({ status: 400, body: { error: { code } } });
    expect(await readdir(files.overlayFolder)).toEqual([]);
  });

  test('a file of another kind under the name is left alone', async () => {
    const files = await openRuleFiles({ 'hollin-bank.json': overlayWith('soilTemperatureMaxC', 9.5, { id: 'other' }) });
    const { post } = await benchOver(files);
    const { status, body } = await post(overlayWith('rainNowMostMmPerH', 0.1));
    expect([status, body.error?.code]).toEqual([409, 'OVERLAY_FILE_TAKEN']);
  });

  test('a folder that cannot be written to is told so', async () => {
    const files = await openRuleFiles();
    const { post } = await benchOver(files, { overlays: join(files.overlayFolder, 'not-there') });
    const { status, body } = await post(overlayWith('soilTemperatureMaxC', 9.5));
    expect([status, body.error?.code]).toEqual([500, 'OVERLAY_NOT_WRITTEN']);
  });

  test.each([
    ['not started for it', { benchWrites: false }, 'BENCH_WRITES_OFF'],
    ['started without a folder', { overlays: null }, 'BENCH_WRITES_OFF'],
    ['listening beyond loopback', { host: '0.0.0.0' }, 'BENCH_NOT_HERE'],
    ['behind a proxy', { behindProxy: true }, 'BENCH_NOT_HERE'],
  ] as const)('a server %s writes nothing and says so beforehand', async (_, settings, code) => {
    const files = await openRuleFiles();
    const { post, look } = await benchOver(files, settings);
    expect((await look())['whyNoWrites']).toBe(code);
    expect(await post(overlayWith('soilTemperatureMaxC', 9.5))).toMatchObject({
      status: 403,
      body: { error: { code } },
    });
    expect(await readdir(files.overlayFolder)).toEqual([]);
  });

  test.each([
    ['a page elsewhere', { origin: 'https://elsewhere.example' }, 'ORIGIN_REFUSED'],
    ['a page of an origin that may open the chat', { origin: 'https://farm.example' }, 'ORIGIN_REFUSED'],
    ['a proxy', { 'x-forwarded-for': '203.0.113.9' }, 'BENCH_NOT_HERE'],
    ['a name that a page elsewhere points here', { host: 'farm.example' }, 'ORIGIN_REFUSED'],
    ['no page at all', { origin: '' }, 'ORIGIN_REFUSED'],
  ])('nothing is written for %s', async (_, headers, code) => {
    const files = await openRuleFiles();
    const { server } = await benchOver(files, { origins: ['https://farm.example'] });
    const { hostname, port } = new URL(server.url);
    const all: Record<string, string> = { 'content-type': 'application/json', origin: server.url, ...headers };
    if (all['origin'] === '') delete all['origin'];
    const body = JSON.stringify({ overlay: overlayWith('soilTemperatureMaxC', 9.5), replaces: null });
    const status = await new Promise<string>((resolve, reject) => {
      const asked = request({ hostname, port, path: '/overlays', method: 'POST', headers: all }, (reply) => {
        let text = '';
        reply.setEncoding('utf8').on('data', (part: string) => {
          text += part;
        });
        reply.on('end', () => resolve(text));
      });
      asked.on('error', reject).end(body);
    });
    expect((JSON.parse(status) as { error: { code: string } }).error.code).toBe(code);
    expect(await readdir(files.overlayFolder)).toEqual([]);
  });
});
