import { archiveBaseOf, ensembleBaseOf, type ForecastSettings } from './settings.ts';
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
  return addressWith(settings.baseUrl, '/v1/forecast', question, { hourly, ...spanOf(question) }, settings.key);
}

/** The global ensemble that is asked: 51 runs, about 15 days ahead. */
const ensembleModel = 'ecmwf_ifs025';

/** The address that asks for the rain of every run of the ensemble, from the start of today on; secret like `addressOf`. */
export function ensembleAddressOf(
  question: Question,
  settings: Pick<ForecastSettings, 'baseUrl' | 'ensembleUrl' | 'key'>,
): string {
  const span = spanOf({ ...question, pastDays: 0 });
  const asked = { hourly: 'precipitation', models: ensembleModel, ...span };
  return addressWith(ensembleBaseOf(settings), '/v1/ensemble', question, asked, settings.key);
}

/** The address that asks for the mean air temperature of every day of whole years, both ends included; secret like `addressOf`. */
export function archiveAddressOf(
  point: Point,
  years: { readonly first: number; readonly last: number },
  settings: Pick<ForecastSettings, 'baseUrl' | 'archiveUrl' | 'key'>,
): string {
  const span = { start_date: `${years.first}-01-01`, end_date: `${years.last}-12-31` };
  const asked = { daily: 'temperature_2m_mean', ...span };
  return addressWith(archiveBaseOf(settings), '/v1/archive', point, asked, settings.key);
}

function spanOf({ pastDays, forecastDays }: Pick<Question, 'pastDays' | 'forecastDays'>) {
  return { past_days: String(pastDays), forecast_days: String(forecastDays) };
}

function addressWith(
  base: string,
  path: string,
  point: Point,
  asked: Readonly<Record<string, string>>,
  key: string | null,
): string {
  const address = new URL(`${base.replace(/\/+$/, '')}${path}`);
  const parameters: Record<string, string> = {
    latitude: String(point.latitude),
    longitude: String(point.longitude),
    ...asked,
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
