import { describe, expect, test } from 'vitest';
import { forecastToJson } from '../../src/adapters/openmeteo/json-own.ts';
import { runCommandLine } from '../../src/cli/main.ts';
import { outlookLines, tableLines } from '../../src/cli/terminal/outlook-text.ts';
import { epochSeconds } from '../../src/core/units/brands.ts';
import { catalogueOf } from '../../src/core/words/catalogue.ts';
import { shipped } from '../cases/shipped-pack.ts';
import { buildForecast } from '../generators/forecast.ts';
import { fullView } from '../web/outlook-views.ts';
import { fakeIo } from './fake-io.ts';

const at = epochSeconds(Date.UTC(2026, 10, 12, 10) / 1000);

async function decided(facts: object, ...options: string[]): Promise<string> {
  const forecast = buildForecast({ from: epochSeconds(at - 3600), fetchedAt: at, hours: 150 });
  const io = fakeIo({ 'facts.json': JSON.stringify(facts), 'forecast.json': forecastToJson(forecast) });
  await runCommandLine(['decide', '--facts', 'facts.json', '--at', '2026-11-12T10:00Z', ...options], io);
  expect(io.err()).toBe('');
  return io.out();
}

describe('the coming days in a terminal', () => {
  test('stand in columns, a row a day', () => {
    const columns = ['Day', 'Rain, mm', 'Sum'];
    const rows = [
      ['Thu 12', '0.0', '5.9'],
      ['Fri 13', '14.4', 'beyond the forecast'],
    ];
    expect(tableLines({ columns, rows })).toEqual([
      '  Day     Rain, mm  Sum',
      '  Thu 12  0.0       5.9',
      '  Fri 13  14.4      beyond the forecast',
    ]);
  });

  test('say in the chat what the page says, the days themselves on request', () => {
    const view = fullView(shipped.pack);
    const lines = outlookLines(view, catalogueOf('en'));
    expect(lines).toContain(view.paragraph);
    expect(lines.filter((line) => line.startsWith('  - '))).toHaveLength(view.windows.length + view.changes.length);
    expect(lines.at(-1)).toBe('Type "days" for each day.');
  });

  test('follow an answer that stands on a forecast, with a table behind each figure', async () => {
    const text = await decided({ 'soil.surface': ['cracked'] }, '--forecast', 'forecast.json');
    for (const part of [
      'WHEN WILL IT COME RIGHT?',
      'The coming days, hour by hour:',
      'Rain, and the sum',
      '  Fri 13 ',
    ]) {
      expect(text).toContain(part);
    }
  });

  test('are left out without a forecast, and where the season is over for the field', async () => {
    expect(await decided({ 'soil.surface': ['cracked'] })).not.toContain('WHEN WILL');
    expect(await decided({ 'treatment.alreadyApplied': 'yes' }, '--forecast', 'forecast.json')).not.toContain(
      'WHEN WILL',
    );
  });
});
