import { askedVariables } from '../../adapters/openmeteo/variables.ts';
import type { ReplyDescription } from './build-forecast.ts';

/** What kind of weather to invent; `seasonal` follows place and date, the others suit one verdict each. */
export type Scenario = 'seasonal' | 'fit' | 'wet' | 'windy';

/** All scenarios. */
export const scenarios: readonly Scenario[] = ['seasonal', 'fit', 'wet', 'windy'];

interface Moment {
  readonly latitude: number;
  readonly longitude: number;
  /** Epoch seconds UTC. */
  readonly time: number;
  /** Hours from now. */
  readonly ahead: number;
}

/** Hours from now at which the rain of `wet` begins and ends. */
const rainSpell = [6, 18] as const;

/** Smooth invented weather for any place and time: whole columns by the service's names. No model of anything real. */
export function inventWeather(
  scenario: Scenario,
  at: { readonly latitude: number; readonly longitude: number; readonly start: number; readonly hours: number },
  now: number,
): ReplyDescription {
  const rows = Array.from({ length: at.hours }, (_, index) => {
    const time = at.start + index * 3600;
    return hourOf(scenario, { latitude: at.latitude, longitude: at.longitude, time, ahead: (time - now) / 3600 });
  });
  const variables = Object.fromEntries(
    askedVariables.map(({ service }) => [service, rows.map((row) => round(row[service] ?? 0))]),
  );
  return { ...at, elevation: 120, variables };
}

function hourOf(scenario: Scenario, moment: Moment): Record<string, number> {
  const season = seasonOf(moment);
  const mean = scenario === 'seasonal' ? 24 - Math.abs(moment.latitude) / 6 - 12 * (1 - season) : 5;
  const sun = Math.max(0, Math.sin(((localHour(moment) - 7) / 10) * Math.PI));
  const swing = scenario === 'seasonal' ? 4 : 2;
  const temperature = mean + swing * Math.sin(((localHour(moment) - 9) / 24) * 2 * Math.PI);
  const humidity = 84 - 10 * sun;
  const wind = windOf(scenario, moment);
  const rain = rainOf(scenario, moment);
  return {
    temperature_2m: temperature,
    relative_humidity_2m: humidity,
    dew_point_2m: temperature - (100 - humidity) / 5,
    precipitation: rain,
    wind_speed_10m: wind,
    wind_gusts_10m: wind * 1.5,
    wind_direction_10m: (240 + 40 * wave(moment.time, 60)) % 360,
    cloud_cover: Math.min(100, scenario === 'seasonal' ? 60 + 30 * wave(moment.time, 37) : 85 + rain),
    shortwave_radiation: 260 * sun * (0.4 + season),
    et0_fao_evapotranspiration: 0.08 * sun * (0.4 + season),
    soil_temperature_6cm: mean + 1 + 0.5 * (temperature - mean),
    soil_temperature_18cm: mean + 2 + 0.2 * (temperature - mean),
    soil_temperature_54cm: mean + 4,
    soil_moisture_3_to_9cm: 0.31 + 0.02 * wave(moment.time, 90),
    soil_moisture_9_to_27cm: 0.32,
  };
}

function windOf(scenario: Scenario, { time }: Moment): number {
  const levels: Readonly<Record<Scenario, readonly [number, number]>> = {
    seasonal: [16, 9],
    fit: [8, 1.5],
    wet: [10, 2],
    windy: [38, 6],
  };
  const [level, swing] = levels[scenario];
  return level + swing * wave(time, 31);
}

function rainOf(scenario: Scenario, { time, ahead }: Moment): number {
  if (scenario === 'wet') return ahead > rainSpell[0] && ahead <= rainSpell[1] ? 2.4 : 0;
  if (scenario === 'seasonal') return Math.max(0, 1.6 * wave(time, 43) - 0.9);
  return 0;
}

/** 0 in midwinter, 1 in midsummer, turned round south of the equator. */
function seasonOf({ latitude, time }: Moment): number {
  const year = 365.2425 * 86_400;
  const summer = 0.5 - 0.5 * Math.cos((2 * Math.PI * (time + 10 * 86_400)) / year);
  return latitude < 0 ? 1 - summer : summer;
}

function localHour({ longitude, time }: Moment): number {
  return (((time / 3600 + longitude / 15) % 24) + 24) % 24;
}

function wave(time: number, hours: number): number {
  return Math.sin((2 * Math.PI * time) / (hours * 3600));
}

function round(value: number): number {
  return Math.round(value * 1000) / 1000;
}
