import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { decodePlace } from '../../src/adapters/openmeteo/decode.ts';
import { splitFrames } from '../../src/adapters/openmeteo/frames.ts';
import { parseForecastJson } from '../../src/adapters/openmeteo/json-reply.ts';
import { askedVariables } from '../../src/adapters/openmeteo/variables.ts';
import { isLoamwardError } from '../../src/core/errors/coded-error.ts';
import type { Forecast } from '../../src/core/weather/forecast.ts';
import { ensembleChecks } from './recorded-ensemble.ts';
import { hold, nothingToCheck, runChecks, type ValidationResult } from './validator.ts';

type Check = readonly [name: string, check: () => void];

/** A recorded reply's own words, as far as a check reads them. */
export interface RecordedJson {
  readonly utc_offset_seconds?: number;
  readonly hourly_units?: Readonly<Record<string, string>>;
  readonly hourly?: Readonly<Record<string, readonly (string | number | null)[]>>;
}

/** Each unit's plain definition, written here a second time so that the reader's own table is not its own witness. */
const toOurs: Readonly<Record<string, (value: number) => number>> = {
  '°F': (fahrenheit) => (fahrenheit - 32) / 1.8,
  'mp/h': (miles) => (miles * 1_609_344) / 1_000_000,
  'm/s': (metres) => (metres * 3600) / 1000,
  kn: (knots) => knots * 1.852,
  inch: (inches) => inches * 25.4,
};

/** Where the recorded binary reply's two places are, from the note that came with the recording, degrees. */
const recordedPlaces = [
  [52.5, 13.4],
  [48.1, 9.3],
] as const;

/** Checks every recorded reply of the forecast service in `<folder>/open-meteo-responses/open`, by its form. */
export function validateRecordedReplies(folder: string): ValidationResult {
  const open = join(folder, 'open-meteo-responses', 'open');
  if (!existsSync(open)) return nothingToCheck('open-meteo-responses/open');
  const files = readdirSync(open, { recursive: true, encoding: 'utf8' }).sort();
  const checks = files.flatMap((file): Check[] => {
    const path = join(open, file);
    if (file.endsWith('.bin')) return binaryChecks(path);
    return file.endsWith('.json') ? jsonChecks(path) : [];
  });
  return checks.length > 0 ? runChecks(checks) : nothingToCheck('replies in open-meteo-responses/open');
}

function binaryChecks(path: string): Check[] {
  const bytes = new Uint8Array(readFileSync(path));
  const asked = askedVariables.filter(({ service }) => service === 'temperature_2m' || service === 'precipitation');
  const name = basename(path);
  const places = () => splitFrames(bytes).map((frame) => decodePlace(frame, asked));
  return [
    [
      `${name} holds the two places recorded`,
      () => {
        const found = places().map(({ latitude, longitude }) => [latitude, longitude]);
        const near = recordedPlaces.every(([latitude, longitude], index) => {
          const [north = Number.NaN, east = Number.NaN] = found[index] ?? [];
          return Math.abs(north - latitude) < 0.05 && Math.abs(east - longitude) < 0.05;
        });
        hold(found.length === 2 && near, () => JSON.stringify(found));
      },
    ],
    [
      `${name} holds a day of finite temperature and rain in each`,
      () => {
        for (const { times, values } of places()) {
          hold(times.length === 24, () => `${times.length} stamps`);
          hold(times[0] === Date.UTC(2023, 7, 1) / 1000, () => `first stamp ${times[0]}`);
          for (const column of [values.temperature2mC, values.precipitationMm]) {
            hold(column?.length === 24 && column.every((value) => value !== null), () => 'a gap');
          }
          hold(
            (values.temperature2mC ?? []).every((value) => value! > 0 && value! < 40),
            () => 'no summer day',
          );
        }
      },
    ],
    [
      `${name} cut short or longer is refused`,
      () => {
        for (const wrong of [bytes.slice(0, -1), Uint8Array.of(...bytes, 60)]) {
          hold(refuses(() => splitFrames(wrong)) === 'FORECAST_GARBLED', () => 'it was read');
        }
      },
    ],
  ];
}

function jsonChecks(path: string): Check[] {
  const text = readFileSync(path, 'utf8');
  const recorded = JSON.parse(text) as RecordedJson;
  const name = basename(path);
  if (!recorded.hourly) {
    return [
      [
        `${name} has no hourly values and is refused`,
        () => {
          const code = refuses(() => parseForecastJson(text));
          hold(code === 'FORECAST_FILE_UNREADABLE', () => `it ended in ${code}`);
        },
      ],
    ];
  }
  return [
    [`${name}: stamps`, () => checkStamps(parseForecastJson(text), recorded)],
    [`${name}: values and units`, () => checkValues(parseForecastJson(text), recorded)],
    ...ensembleChecks(name, recorded),
  ];
}

function checkStamps(forecast: Forecast, recorded: RecordedJson): void {
  const stamps = recorded.hourly?.['time'] ?? [];
  hold(forecast.times.length === stamps.length, () => `${forecast.times.length} of ${stamps.length}`);
  stamps.forEach((stamp, index) => {
    const utc = Date.parse(`${stamp}:00Z`) / 1000 - (recorded.utc_offset_seconds ?? 0);
    hold(forecast.times[index] === utc, () => `${stamp} became ${forecast.times[index]}`);
  });
}

/** Every value read must be the one recorded, in our unit and to our decimals; what was missing must stay missing. */
function checkValues(forecast: Forecast, recorded: RecordedJson): void {
  let compared = 0;
  for (const { service, column } of askedVariables) {
    const said = recorded.hourly?.[service];
    const unit = recorded.hourly_units?.[service] ?? '';
    if (!said || said.every((value) => value === null)) {
      hold(forecast.values[column] === undefined, () => `${service} from nowhere`);
      continue;
    }
    said.forEach((value, index) => {
      const read = forecast.values[column]?.[index] ?? null;
      const wanted = typeof value === 'number' ? (toOurs[unit]?.(value) ?? value) : null;
      if (read === null && wanted === 0 && column === 'precipitationMm') return;
      const same = read === null || wanted === null ? read === wanted : Math.abs(read - wanted) <= 0.0051;
      hold(same, () => `${service} ${value} ${unit} became ${read} at hour ${index}`);
      compared += 1;
    });
  }
  hold(compared > 0, () => 'nothing was compared');
}

function refuses(read: () => unknown): string {
  try {
    read();
    return 'no refusal';
  } catch (error) {
    return isLoamwardError(error) ? error.code : String(error);
  }
}
