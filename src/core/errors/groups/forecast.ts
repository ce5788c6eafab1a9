import type { ErrorEntry } from '../entry.ts';

/** Failures of the forecast: the weather is then asked for by hand. */
export const forecastErrors = {
  FORECAST_UNREACHABLE: {
    says: 'The forecast service could not be reached.',
    next: 'Give the weather by hand, or try again later.',
    httpStatus: 503,
  },
} as const satisfies Record<string, ErrorEntry>;
