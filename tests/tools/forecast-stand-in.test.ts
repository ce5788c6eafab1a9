import { afterEach, describe, expect, test, vi } from 'vitest';
import { createForecastService } from '../../src/adapters/openmeteo/forecast-service.ts';
import { epochSeconds } from '../../src/core/units/brands.ts';
import type { Forecast } from '../../src/core/weather/forecast.ts';
import { valueAt } from '../../src/core/weather/series.ts';
import { sumAhead } from '../../src/core/weather/sums.ts';
import { main } from '../../src/tools/forecast-stand-in.ts';
import { type StandIn, startStandIn } from '../../src/tools/stand-in/server.ts';
import { fakeTime, hollinBank, settingsFor } from '../adapters/openmeteo/means.ts';

let standIn: StandIn | undefined;
afterEach(async () => {
  await standIn?.close();
  standIn = undefined;
});

async function forecastOf(path: string, iso = '2026-11-06T09:10:00Z', point = hollinBank) {
  const { means, time } = fakeTime(iso);
  standIn = await startStandIn({ clock: means.clock });
  const service = createForecastService({ settings: settingsFor(standIn.url + path), fetch, ...means });
  const answer = await service.forecastFor(point);
  if (!('forecast' in answer)) throw new Error(answer.error.code);
  expect(answer).not.toHaveProperty('warning');
  return { forecast: answer.forecast, now: epochSeconds(time.now) };
}

const rain = ({ forecast, now }: { forecast: Forecast; now: ReturnType<typeof epochSeconds> }) =>
  sumAhead(forecast, 'precipitationMm', now, 48);

describe('the stand-in of the forecast service', () => {
  test.each(['2026-11-06T09:10:00Z', '2027-01-15T23:50:00Z', '2026-07-01T00:00:00Z'])(
    'fit at %s is cold, dry and fit for a boom for two days',
    async (iso) => {
      const answer = await forecastOf('/scenario/fit', iso);
      expect(rain(answer)).toMatchObject({ total: 0, complete: true });
      for (let hour = 0; hour < 48; hour += 1) {
        const moment = epochSeconds(answer.now + hour * 3600);
        expect(valueAt(answer.forecast, 'windSpeed10mKmh', moment)).toBeLessThan(12);
        expect(valueAt(answer.forecast, 'temperature2mC', moment)).toBeGreaterThan(0);
        expect(valueAt(answer.forecast, 'temperature2mC', moment)).toBeLessThan(10);
      }
    },
  );

  test('wet brings more than 10 mm within 48 h, dry until then', async () => {
    const answer = await forecastOf('/scenario/wet');
    expect(rain(answer).total).toBeGreaterThan(10);
    expect(sumAhead(answer.forecast, 'precipitationMm', answer.now, 5).total).toBe(0);
  });

  test('windy is above 25 km/h', async () => {
    const { forecast, now } = await forecastOf('/scenario/windy');
    expect(valueAt(forecast, 'windSpeed10mKmh', now)).toBeGreaterThan(25);
  });

  test('the seasons follow the half of the earth', async () => {
    const mean = async (iso: string, latitude: number) => {
      const { forecast } = await forecastOf('', iso, { latitude, longitude: 0 });
      await standIn?.close();
      const column = forecast.values.temperature2mC ?? [];
      return column.reduce<number>((sum, value) => sum + (value ?? 0), 0) / column.length;
    };
    expect(await mean('2026-07-10T12:00:00Z', 53)).toBeGreaterThan((await mean('2026-01-10T12:00:00Z', 53)) + 8);
    expect(await mean('2026-07-10T12:00:00Z', -53)).toBeLessThan((await mean('2026-01-10T12:00:00Z', -53)) - 8);
  });

  test.each([
    '/',
    '/v1/forecast',
    '/fail/nothing/v1/forecast?latitude=1&longitude=1&past_days=1&forecast_days=4',
    '/v1/forecast?latitude=x',
  ])('%s is not found', async (path) => {
    standIn = await startStandIn({ clock: () => 1_800_000_000 });
    expect((await fetch(standIn.url + path)).status).toBe(404);
  });

  test.each([['--port', 'x'], ['--scenario', 'sunny'], ['--fail', 'toString'], ['--prot', '1'], ['--port']])(
    'option %j %j is refused with the usage',
    async (...options) => {
      const said = vi.spyOn(process.stderr, 'write').mockReturnValue(true);
      expect(await main(options)).toBe(2);
      expect(said.mock.calls.join('')).toContain('--scenario');
      said.mockRestore();
    },
  );
});
