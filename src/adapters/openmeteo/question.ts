import { ensembleBaseOf, type ForecastSettings } from './settings.ts';
import { askedVariables } from './variables.ts';

/** A point on the ground, degrees north and east. */
export interface Point {
  readonly latitude: number;
  readonly longitude: number;
}

/** What is asked of the service: a point, and how many whole UTC days back and on, today among the latter. */
export interface Question extends Point {
  readonly pastDays: number;
  readonly forecastDays: number;
}

/**
 * The address that asks the question: hourly values in GMT, every unit named, binary reply. The key, where there is one,
 * is part of it, so it must never be shown or logged.
 */
export function addressOf(question: Question, settings: Pick<ForecastSettings, 'baseUrl' | 'key'>): string {
  const hourly = askedVariables.map((variable) => variable.service).join(',');
  return addressWith(settings.baseUrl, '/v1/forecast', question, { hourly }, settings.key);
}

/** The global ensemble that is asked: 51 runs, about 15 days ahead. */
export const ensembleModel = 'ecmwf_ifs025';

/** The address that asks for the rain of every run of the ensemble, from the start of today on; secret like `addressOf`. */
export function ensembleAddressOf(
  question: Question,
  settings: Pick<ForecastSettings, 'baseUrl' | 'ensembleUrl' | 'key'>,
): string {
  const asked = { hourly: 'precipitation', models: ensembleModel };
  return addressWith(ensembleBaseOf(settings), '/v1/ensemble', { ...question, pastDays: 0 }, asked, settings.key);
}

function addressWith(
  base: string,
  path: string,
  question: Question,
  asked: Readonly<Record<string, string>>,
  key: string | null,
): string {
  const address = new URL(`${base.replace(/\/+$/, '')}${path}`);
  const parameters: Record<string, string> = {
    latitude: String(question.latitude),
    longitude: String(question.longitude),
    ...asked,
    past_days: String(question.pastDays),
    forecast_days: String(question.forecastDays),
    timezone: 'GMT',
    temperature_unit: 'celsius',
    wind_speed_unit: 'kmh',
    precipitation_unit: 'mm',
    format: 'flatbuffers',
    ...(key === null ? {} : { apikey: key }),
  };
  for (const [name, value] of Object.entries(parameters)) address.searchParams.set(name, value);
  return address.href;
}
