import type { ForecastSource } from '../../src/adapters/conversation/types.ts';
import { type ErrorReport, reportOf } from '../../src/core/errors/coded-error.ts';
import type { Forecast } from '../../src/core/weather/forecast.ts';
import type { SafeVault } from './safe-vault.ts';
import type { SyncServer } from './sync-server.ts';

/** The last good forecast serves in place of a failed one up to this age, hours: the same as on the server. */
export const lastGoodHours = 48;

/** The key of a place: degrees to two decimals, about a kilometre, as the server rounds them. */
export function placeKey({ latitude, longitude }: { readonly latitude: number; readonly longitude: number }): string {
  return `${latitude.toFixed(2)},${longitude.toFixed(2)}`;
}

/** Forecasts for a page that answers by itself: from the server where it is reached, else the last good one with its age. */
export function pageForecasts(means: {
  readonly server: Pick<SyncServer, 'forecast'>;
  readonly vault: SafeVault;
  /** Epoch seconds UTC by the server's clock. */
  readonly now: () => number;
}): ForecastSource {
  return {
    forecastFor: async (point) => {
      const key = placeKey(point);
      const asked = await means.server.forecast(point);
      if ('ok' in asked) {
        await keepForecast(means.vault, key, asked.ok.forecast);
        return asked.ok;
      }
      const error = asked.error ?? reportOf('FORECAST_UNREACHABLE', { expected: 'a connection', came: 'none' });
      const last = await means.vault.attempt((vault) => vault.readForecast(key), null);
      return last === null ? { error } : lastGood(last, error, means.now());
    },
  };
}

/** Keeps a forecast unless a newer one of the place is there. */
export async function keepForecast(vault: SafeVault, key: string, forecast: Forecast): Promise<void> {
  const before = await vault.attempt((one) => one.readForecast(key), null);
  if (before === null || before.fetchedAt < forecast.fetchedAt)
    await vault.write((one) => one.keepForecast(key, forecast));
}

function lastGood(
  forecast: Forecast,
  report: ErrorReport,
  now: number,
): { readonly forecast: Forecast; readonly warning: ErrorReport } | { readonly error: ErrorReport } {
  const hours = Math.floor((now - forecast.fetchedAt) / 3600);
  if (hours >= lastGoodHours) {
    return {
      error: reportOf('FORECAST_TOO_OLD', {
        expected: `a forecast younger than ${lastGoodHours} h`,
        came: `${report.came}; the last one on this device is ${hours} h old`,
      }),
    };
  }
  return {
    forecast,
    warning: { ...report, came: `${report.came}; the last one on this device is ${hours} h old and serves instead` },
  };
}
