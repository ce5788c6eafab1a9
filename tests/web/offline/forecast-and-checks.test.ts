import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lastGoodHours as lastGoodHoursOfServer } from '../../../src/adapters/openmeteo/forecast-service.ts';
import { parseServerMessage } from '../../../src/core/protocol/parse-message.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { inventedForecast } from '../../../src/demo/invented-weather.ts';
import { lateChecks, welcomeIn } from '../../../web/chat/checks.ts';
import { createMemory } from '../../../web/chat/memory.ts';
import { lastGoodHours, pageForecasts, placeKey } from '../../../web/offline/forecast-source.ts';
import { safeVault } from '../../../web/offline/safe-vault.ts';
import { saidOnline } from '../../../web/offline/said-online.ts';
import type { SyncServer } from '../../../web/offline/sync-server.ts';
import { mapStorage } from '../fake-means.ts';
import { memoryVault } from './memory-vault.ts';

const point = { latitude: 54.101, longitude: -2.199 };
const at = epochSeconds(1_795_600_000);
const forecast = inventedForecast(at);

function source(answer: Awaited<ReturnType<SyncServer['forecast']>>, hours = 0) {
  const vault = memoryVault();
  const safe = safeVault(
    vault,
    () => {},
    () => () => {},
  );
  const now = () => at + hours * 3600;
  return { vault, forecasts: pageForecasts({ server: { forecast: async () => answer }, vault: safe, now }) };
}

describe('the forecast of a page that answers by itself', () => {
  test('is good for as long as on the server', () => expect(lastGoodHours).toBe(lastGoodHoursOfServer));

  test('comes from the server where that is reached, and is kept for later', async () => {
    const { vault, forecasts } = source({ ok: { forecast } });
    expect(await forecasts.forecastFor(point)).toEqual({ forecast });
    expect(await vault.readForecast(placeKey({ latitude: 54.1, longitude: -2.2 }))).toEqual(forecast);
  });

  test.each([
    [0, 'forecast'],
    [47, 'forecast'],
    [48, 'error'],
    [400, 'error'],
  ] as const)('is the last good one at an age of %d h: %s', async (hours, kind) => {
    const { vault, forecasts } = source({ error: null }, hours);
    await vault.keepForecast(placeKey(point), forecast);
    const came = await forecasts.forecastFor(point);
    if (kind === 'forecast') {
      expect(came).toMatchObject({ forecast, warning: { code: 'FORECAST_UNREACHABLE' } });
    } else {
      expect(came).toMatchObject({ error: { code: 'FORECAST_TOO_OLD', came: expect.stringContaining(`${hours} h`) } });
    }
  });

  test('is none at all for another place: the weather is asked by hand', async () => {
    const { vault, forecasts } = source({ error: null });
    await vault.keepForecast(placeKey({ latitude: 54.12, longitude: -2.2 }), forecast);
    expect(await forecasts.forecastFor(point)).toMatchObject({ error: { code: 'FORECAST_UNREACHABLE' } });
  });
});

const welcome = {
  type: 'welcome',
  protocol: 2,
  token: 'a'.repeat(64),
  resumed: false,
  fields: [{ id: 'mill-piece', name: 'Mill Piece', invented: true, note: '' }],
  serverTime: 1_795_600_000.5,
  packTitle: 'A pack',
  treatments: [{ id: 'pack', title: 'A pack', note: 'For a test', fields: ['mill-piece'] }],
};

describe('frames before the checks are there', () => {
  test('a welcome passes by hand', () => expect(welcomeIn(JSON.stringify(welcome))).toEqual(welcome));

  test('what passes by hand passes by the schema too, whatever is changed in it', () => {
    const broken = fc.oneof(fc.constant(undefined), fc.jsonValue());
    const keys = fc.constantFrom(...Object.keys(welcome), 'more');
    fc.assert(
      fc.property(keys, broken, fc.boolean(), (key, value, inField) => {
        const changed = inField
          ? { ...welcome, fields: [{ ...welcome.fields[0], [key]: value }] }
          : { ...welcome, [key]: value };
        const frame = JSON.stringify(changed);
        if (welcomeIn(frame) !== null) expect(parseServerMessage(frame)).toMatchObject({ ok: true });
      }),
    );
  });

  test('all else waits its turn and is told in order', async () => {
    let give: (parse: typeof parseServerMessage) => void = () => {};
    const loading = new Promise<typeof parseServerMessage>((resolve) => {
      give = resolve;
    });
    const check = lateChecks(() => loading);
    const heard: string[] = [];
    const hear = (frame: object) =>
      check(JSON.stringify(frame), (parsed) => heard.push(parsed.ok ? parsed.message.type : parsed.error.code));
    hear(welcome);
    hear({ type: 'alive' });
    hear(welcome);
    hear({ type: 'nonsense' });
    expect(heard).toEqual(['welcome']);
    give(parseServerMessage);
    await loading;
    await Promise.resolve();
    expect(heard).toEqual(['welcome', 'alive', 'welcome', 'MESSAGE_TYPE_UNKNOWN']);
  });
});

test('what the server confirmed is said again to the page only for its own conversation, until it is fetched', () => {
  const storage = mapStorage();
  const said = saidOnline(createMemory(() => storage));
  const message = (id: string) => ({ type: 'say', id, at: 1, device: 'd', count: 1, text: id }) as const;
  said.add('token-a', [message('one')]);
  said.add('token-a', [message('one'), message('two')]);
  expect(said.of('token-a').map(({ id }) => id)).toEqual(['one', 'two']);
  expect(said.of('token-b')).toEqual([]);
  expect(said.of(null)).toEqual([]);
  said.drop('token-a', new Set(['one']));
  expect(said.of('token-a').map(({ id }) => id)).toEqual(['two']);
});
