import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { type Setting, serverSettingTable } from '../../src/server/setting-table.ts';
import { serverSettingsFrom, standardServerSettings } from '../../src/server/settings.ts';

const page = readFileSync(join(import.meta.dirname, '../../docs/operator.md'), 'utf8');
const table: [string, Setting][] = Object.entries(serverSettingTable);

describe('settings', () => {
  test('those of docs/operator.md are those of the code, word for word', () => {
    const body = /^```server-settings\n(.*?)^```/ms.exec(page)?.[1] ?? '';
    const rows = body.trim().split('\n').slice(2);
    expect(rows).toEqual(
      table.map(
        ([name, { standard, range, meaning }]) =>
          `| ${name} | ${standard || '(none)'} | ${range?.join(' to ') ?? ''} | ${meaning} |`,
      ),
    );
  });

  test('without any the server listens on this machine only', () => {
    expect(standardServerSettings).toMatchObject({ host: '127.0.0.1', port: 8080, origins: [], behindProxy: false });
  });

  test('an empty variable counts as not set, and blanks around a value do not matter', () => {
    expect(serverSettingsFrom({ LOAMWARD_PORT: '', LOAMWARD_HOST: ' ::1 ' })).toMatchObject({
      port: 8080,
      host: '::1',
    });
  });

  test('origins are read as browsers send them', () => {
    const origins = 'https://Farm.example:443, http://10.0.0.5:8080/,';
    expect(serverSettingsFrom({ LOAMWARD_ORIGINS: origins }).origins).toEqual([
      'https://farm.example',
      'http://10.0.0.5:8080',
    ]);
  });

  test.each([
    ['LOAMWARD_PORT', '65536', 'a whole number from 0 to 65535'],
    ['LOAMWARD_PORT', '80a', 'a whole number from 0 to 65535'],
    ['LOAMWARD_PORT', '-1', 'a whole number from 0 to 65535'],
    ['LOAMWARD_PORT', '8080.5', 'a whole number from 0 to 65535'],
    ['LOAMWARD_KEPT_HOURS', '0', 'a whole number from 1 to 2400'],
    ['LOAMWARD_BEHIND_PROXY', 'true', 'yes or no'],
    ['LOAMWARD_ORIGINS', 'farm.example', /^origins such as/],
    ['LOAMWARD_ORIGINS', 'https://farm.example/page', /^origins such as/],
    ['LOAMWARD_ORIGINS', 'ftp://farm.example', /^origins such as/],
    ['LOAMWARD_ORIGINS', '*', /^origins such as/],
  ])('%s=%s is refused by name', (name, came, expected) => {
    expect(() => serverSettingsFrom({ [name]: came })).toThrow(
      expect.objectContaining({
        code: 'SETTING_WRONG',
        details: expect.objectContaining({
          parameter: name,
          came,
          expected: typeof expected === 'string' ? expected : expect.stringMatching(expected),
        }),
      }),
    );
  });
});
