import type { ForecastSettings } from './settings.ts';
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
  const address = new URL(`${settings.baseUrl.replace(/\/+$/, '')}/v1/forecast`);
  const parameters: Record<string, string> = {
    latitude: String(question.latitude),
    longitude: String(question.longitude),
    hourly: askedVariables.map((variable) => variable.service).join(','),
    past_days: String(question.pastDays),
    forecast_days: String(question.forecastDays),
    timezone: 'GMT',
    temperature_unit: 'celsius',
    wind_speed_unit: 'kmh',
    precipitation_unit: 'mm',
    format: 'flatbuffers',
    ...(settings.key === null ? {} : { apikey: settings.key }),
  };
  for (const [name, value] of Object.entries(parameters)) address.searchParams.set(name, value);
  return address.href;
}
