import type { ErrorEntry } from '../entry.ts';

const byHand = 'Tell the weather by hand in a few questions, or look again later.';
const report = 'Tell the weather by hand; if it happens again, report it to whoever runs this program.';

/** Failures of the forecast: the weather is then asked for by hand. */
export const forecastErrors = {
  FORECAST_UNREACHABLE: {
    says: 'The forecast service could not be reached.',
    next: `Check the connection. ${byHand}`,
    httpStatus: 503,
  },
  FORECAST_SLOW: {
    says: 'The forecast service did not answer in time.',
    next: byHand,
    httpStatus: 504,
  },
  FORECAST_BUSY: {
    says: 'The forecast service has had too many questions and asks us to wait.',
    next: 'Wait a while before looking again; until then tell the weather by hand.',
    httpStatus: 503,
  },
  FORECAST_REJECTED: {
    says: 'The forecast service refused the question.',
    next: 'Tell the weather by hand; whoever runs this program should check its forecast settings (docs/forecast.md).',
    httpStatus: 502,
  },
  FORECAST_DOWN: {
    says: 'The forecast service is out of order.',
    next: byHand,
    httpStatus: 503,
  },
  FORECAST_GARBLED: {
    says: 'The forecast came in a form that cannot be trusted, so nothing of it is used.',
    next: byHand,
    httpStatus: 502,
  },
  FORECAST_INCOMPLETE: {
    says: 'The forecast lacks some of the weather that the decision needs.',
    next: 'Tell what is missing by hand; missing weather is never taken as dry or calm.',
    httpStatus: 502,
  },
  FORECAST_WRONG_UNIT: {
    says: 'The forecast gives a value in another unit than was asked for, so it is not used.',
    next: report,
    httpStatus: 502,
  },
  FORECAST_WRONG_PLACE: {
    says: 'The forecast is for a place too far from the field.',
    next: 'Check the latitude and longitude of the field; until then tell the weather by hand.',
    httpStatus: 502,
  },
  FORECAST_TOO_OLD: {
    says: 'The forecast is too old to decide on.',
    next: 'Fetch it again, or tell the weather by hand.',
    httpStatus: 503,
  },
  FORECAST_FETCHED_LATER: {
    says: 'The forecast was fetched after the moment asked about; it counts as new then, and knows more than could be known.',
    next: 'Ask about a moment after it was fetched, or give the forecast that there was then.',
  },
  FORECAST_OUT_OF_HORIZON: {
    says: 'The forecast does not reach the time asked about.',
    next: 'Ask about a time that the forecast covers, or tell the weather by hand.',
    httpStatus: 502,
  },
  FORECAST_OFF: {
    says: 'The forecast is switched off on this machine.',
    next: 'Tell the weather by hand, or have LOAMWARD_FORECAST set to on.',
    httpStatus: 503,
  },
  FORECAST_SETTING_WRONG: {
    says: 'A setting of the forecast is not of the right form.',
    next: 'Mend the setting named; docs/forecast.md lists them all.',
  },
  FORECAST_FILE_UNREADABLE: {
    says: 'The text given is not a forecast that this program can read.',
    next: 'Give the JSON reply of the forecast service unchanged, or a forecast saved by this program (docs/forecast.md).',
    httpStatus: 400,
  },
} as const satisfies Record<string, ErrorEntry>;
