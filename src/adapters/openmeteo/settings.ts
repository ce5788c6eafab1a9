import * as z from 'zod';
import { codedError } from '../../core/errors/coded-error.ts';

/** How the forecast is fetched. */
export interface ForecastSettings {
  readonly off: boolean;
  /** Base address of the service, without /v1/forecast. */
  readonly baseUrl: string;
  /** Whether the ensemble is asked for beside the forecast. */
  readonly ensemble: boolean;
  /** Base address of the ensemble, without /v1/ensemble; null for the one that goes with `baseUrl` (`ensembleBaseOf`). */
  readonly ensembleUrl: string | null;
  /** Whether the usual air of the place is asked for, from an archive of past years. */
  readonly archive: boolean;
  /** Base address of the archive, without /v1/archive; null for the one that goes with `baseUrl` (`archiveBaseOf`). */
  readonly archiveUrl: string | null;
  readonly key: string | null;
  readonly userAgent: string;
  /** Time limit of one try, s. */
  readonly timeoutS: number;
  /** Time limit of all tries and waits together, s. */
  readonly budgetS: number;
  /** Whole days asked for before today and from today on. */
  readonly pastDays: number;
  readonly forecastDays: number;
}

/** Settings when the environment says nothing. */
export const defaultSettings: ForecastSettings = {
  off: false,
  baseUrl: 'https://api.open-meteo.com',
  ensemble: true,
  ensembleUrl: null,
  archive: true,
  archiveUrl: null,
  key: null,
  userAgent: 'loamward/0.1.0',
  timeoutS: 8,
  budgetS: 20,
  pastDays: 31,
  forecastDays: 16,
};

const publicEnsemble = 'https://ensemble-api.open-meteo.com';
const publicArchive = 'https://archive-api.open-meteo.com';

/** Where the ensemble is asked: as set; else the public host beside the public service, and the same server beside any other. */
export function ensembleBaseOf(settings: Pick<ForecastSettings, 'baseUrl' | 'ensembleUrl'>): string {
  if (settings.ensembleUrl !== null) return settings.ensembleUrl;
  return settings.baseUrl === defaultSettings.baseUrl ? publicEnsemble : settings.baseUrl;
}

/** Where the archive is asked: as set; else the public host beside the public service, and the same server beside any other. */
export function archiveBaseOf(settings: Pick<ForecastSettings, 'baseUrl' | 'archiveUrl'>): string {
  if (settings.archiveUrl !== null) return settings.archiveUrl;
  return settings.baseUrl === defaultSettings.baseUrl ? publicArchive : settings.baseUrl;
}

const seconds = (most: number) => z.coerce.number().gt(0).lte(most);
const days = (least: number, most: number) => z.coerce.number().int().gte(least).lte(most);

const address = z.url({ protocol: /^https?$/ }).refine((text) => !/[?#]/.test(text));

/** Every setting: its variable, the form that it takes and where it goes. */
const forms = {
  LOAMWARD_FORECAST: { form: z.enum(['on', 'off']), expected: 'on or off' },
  LOAMWARD_FORECAST_URL: {
    form: address,
    expected: 'an http or https address without ? or #, for example https://api.open-meteo.com',
  },
  LOAMWARD_FORECAST_ENSEMBLE: { form: z.enum(['on', 'off']), expected: 'on or off' },
  LOAMWARD_FORECAST_ENSEMBLE_URL: {
    form: address,
    expected: `an http or https address without ? or #, for example ${publicEnsemble}`,
  },
  LOAMWARD_FORECAST_ARCHIVE: { form: z.enum(['on', 'off']), expected: 'on or off' },
  LOAMWARD_FORECAST_ARCHIVE_URL: {
    form: address,
    expected: `an http or https address without ? or #, for example ${publicArchive}`,
  },
  LOAMWARD_FORECAST_KEY: { form: z.string().regex(/^[\x21-\x7e]{1,200}$/), expected: 'a key without spaces' },
  LOAMWARD_FORECAST_USER_AGENT: {
    form: z.string().regex(/^[\x20-\x7e]{1,200}$/),
    expected: 'up to 200 plain characters',
  },
  LOAMWARD_FORECAST_TIMEOUT_S: { form: seconds(60), expected: 'seconds above 0, at most 60' },
  LOAMWARD_FORECAST_BUDGET_S: { form: seconds(120), expected: 'seconds above 0, at most 120' },
  LOAMWARD_FORECAST_PAST_DAYS: { form: days(0, 92), expected: 'whole days from 0 to 92' },
  LOAMWARD_FORECAST_DAYS: { form: days(4, 16), expected: 'whole days from 4 to 16' },
} as const;

type Name = keyof typeof forms;

/** Names of all settings, as documented in docs/forecast.md. */
export const settingNames = Object.keys(forms) as readonly Name[];

/**
 * Settings from environment variables; an empty one counts as not given. Throws FORECAST_SETTING_WRONG naming the variable;
 * the value of the key is never repeated.
 */
export function settingsFromEnvironment(env: Readonly<Record<string, string | undefined>>): ForecastSettings {
  return {
    off: read(env, 'LOAMWARD_FORECAST', 'on') === 'off',
    baseUrl: read(env, 'LOAMWARD_FORECAST_URL', defaultSettings.baseUrl),
    ensemble: read(env, 'LOAMWARD_FORECAST_ENSEMBLE', 'on') === 'on',
    ensembleUrl: read(env, 'LOAMWARD_FORECAST_ENSEMBLE_URL', null),
    archive: read(env, 'LOAMWARD_FORECAST_ARCHIVE', 'on') === 'on',
    archiveUrl: read(env, 'LOAMWARD_FORECAST_ARCHIVE_URL', null),
    key: read(env, 'LOAMWARD_FORECAST_KEY', null),
    userAgent: read(env, 'LOAMWARD_FORECAST_USER_AGENT', defaultSettings.userAgent),
    timeoutS: read(env, 'LOAMWARD_FORECAST_TIMEOUT_S', defaultSettings.timeoutS),
    budgetS: read(env, 'LOAMWARD_FORECAST_BUDGET_S', defaultSettings.budgetS),
    pastDays: read(env, 'LOAMWARD_FORECAST_PAST_DAYS', defaultSettings.pastDays),
    forecastDays: read(env, 'LOAMWARD_FORECAST_DAYS', defaultSettings.forecastDays),
  };
}

function read<N extends Name, D>(
  env: Readonly<Record<string, string | undefined>>,
  name: N,
  otherwise: D,
): z.infer<(typeof forms)[N]['form']> | D {
  const text = env[name]?.trim();
  if (!text) return otherwise;
  const { form, expected } = forms[name];
  const parsed = form.safeParse(text);
  if (parsed.success) return parsed.data as z.infer<(typeof forms)[N]['form']>;
  throw codedError('FORECAST_SETTING_WRONG', {
    expected: `${name} to be ${expected}`,
    came: name === 'LOAMWARD_FORECAST_KEY' ? `a text of ${text.length} characters` : text.slice(0, 200),
  });
}
