import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { defaultSettings, settingNames, settingsFromEnvironment } from '../../../src/adapters/openmeteo/settings.ts';
import { forecastErrors } from '../../../src/core/errors/groups/forecast.ts';

describe('settings of the forecast', () => {
  test('nothing set, or set to nothing, gives the defaults', () => {
    expect(settingsFromEnvironment({})).toEqual(defaultSettings);
    expect(settingsFromEnvironment(Object.fromEntries(settingNames.map((name) => [name, ' '])))).toEqual(
      defaultSettings,
    );
  });

  test('every setting is read', () => {
    const settings = settingsFromEnvironment({
      LOAMWARD_FORECAST: 'off',
      LOAMWARD_FORECAST_URL: 'http://10.0.0.5:8080/weather',
      LOAMWARD_FORECAST_ENSEMBLE: 'off',
      LOAMWARD_FORECAST_ENSEMBLE_URL: 'http://10.0.0.6:8080',
      LOAMWARD_FORECAST_ARCHIVE: 'off',
      LOAMWARD_FORECAST_ARCHIVE_URL: 'http://10.0.0.7:8080',
      LOAMWARD_FORECAST_KEY: 'abc',
      LOAMWARD_FORECAST_USER_AGENT: 'hollin-bank/1',
      LOAMWARD_FORECAST_TIMEOUT_S: '2.5',
      LOAMWARD_FORECAST_BUDGET_S: '9',
      LOAMWARD_FORECAST_PAST_DAYS: '0',
      LOAMWARD_FORECAST_DAYS: '16',
    });
    expect(settings).toEqual({
      off: true,
      baseUrl: 'http://10.0.0.5:8080/weather',
      ensemble: false,
      ensembleUrl: 'http://10.0.0.6:8080',
      archive: false,
      archiveUrl: 'http://10.0.0.7:8080',
      key: 'abc',
      userAgent: 'hollin-bank/1',
      timeoutS: 2.5,
      budgetS: 9,
      pastDays: 0,
      forecastDays: 16,
    });
  });

  test.each([
    ['LOAMWARD_FORECAST', 'maybe'],
    ['LOAMWARD_FORECAST_URL', 'weather'],
    ['LOAMWARD_FORECAST_URL', 'file:///etc/passwd'],
    ['LOAMWARD_FORECAST_URL', 'https://weather.example/?key=1'],
    ['LOAMWARD_FORECAST_KEY', 'two words'],
    ['LOAMWARD_FORECAST_USER_AGENT', 'a\nb'],
    ['LOAMWARD_FORECAST_TIMEOUT_S', '0'],
    ['LOAMWARD_FORECAST_TIMEOUT_S', 'soon'],
    ['LOAMWARD_FORECAST_BUDGET_S', '121'],
    ['LOAMWARD_FORECAST_PAST_DAYS', '1.5'],
    ['LOAMWARD_FORECAST_DAYS', '3'],
  ])('%s=%j is refused by name', (name, value) => {
    expect(() => settingsFromEnvironment({ [name]: value })).toThrow(new RegExp(`FORECAST_SETTING_WRONG.*${name}`));
  });

  test('a key that is refused is not repeated', () => {
    expect(() => settingsFromEnvironment({ LOAMWARD_FORECAST_KEY: 'top secret' })).toThrow(/a text of 10 characters/);
  });

  test('the document names every setting and no other', () => {
    const text = readFileSync('docs/forecast.md', 'utf8');
    const named = new Set(text.match(/LOAMWARD_FORECAST[A-Z_]*/g));
    expect([...named].sort()).toEqual([...settingNames].sort());
  });
});

describe('codes of the forecast', () => {
  test('the document names every code and no other', () => {
    const codes = readFileSync('docs/forecast.md', 'utf8').match(/\bFORECAST_[A-Z_]+/g);
    expect([...new Set(codes)].sort()).toEqual(Object.keys(forecastErrors).sort());
  });
});
