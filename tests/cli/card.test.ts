import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { runCommandLine } from '../../src/cli/main.ts';
import { shipped } from '../cases/shipped-pack.ts';
import { fakeIo } from './fake-io.ts';

async function run(...options: string[]) {
  const io = fakeIo({});
  const status = await runCommandLine(['card', ...options], io);
  return { status, out: io.out(), err: io.err() };
}

describe.each(['en', 'de'])('loamward card in %s', (language) => {
  test('names every rule once and every caution, with version and hash of the pack', async () => {
    const { status, out } = await run('--language', language);
    expect(status).toBe(0);
    for (const { text } of shipped.pack.rules) expect(out.split(`  ${text[language]!.title}: `)).toHaveLength(2);
    for (const { text } of shipped.pack.cautions) expect(out).toContain(text[language]);
    expect(out).toContain(shipped.pack.hash.slice(0, 12));
    expect(out).toContain(shipped.pack.version);
  });

  test('gives each number limit with its unit, and no name of a parameter', async () => {
    const { out } = await run('--language', language);
    const unit = language === 'de' ? /9,6 km\/h/ : /9\.6 km\/h/;
    expect(out).toMatch(unit);
    for (const { id } of shipped.pack.parameters) expect(out).not.toContain(id);
  });
});

describe('the card', () => {
  test('goes from the season to the weather, and tells what each class of the hand test means', async () => {
    const { out } = await run();
    const headings = ['Before you go', 'The field', 'Crop and weed', 'Soil and drains', 'Weather, now and ahead'];
    const at = headings.map((heading) => out.indexOf(`\n${heading}`));
    expect(at).toEqual([...at].sort((a, b) => a - b));
    expect(Math.min(...at)).toBeGreaterThan(0);
    expect(out).toContain('Dry: soil too dry; Slightly moist: soil too dry; Moist: fine; Wet: fine;');
    expect(out).toContain('Check the label in hand');
    expect(out).toContain('public map of the national regulator');
  });

  test('is written as a page without script that loads nothing', async () => {
    const folder = await mkdtemp(join(tmpdir(), 'loamward-card-'));
    try {
      const file = join(folder, 'card.html');
      expect((await run('--html', file)).status).toBe(0);
      const html = await readFile(file, 'utf8');
      expect(html).toMatch(/^<!doctype html>\n<html lang="en">/);
      expect(html).not.toMatch(/<script|<link|src=/);
      expect(html).toContain('size:A4');
    } finally {
      await rm(folder, { recursive: true });
    }
  });

  test('a pack that is not there is refused with the nearest right name', async () => {
    const { status, err } = await run('--pack', 'propyzamid-winter-oilseed-rape');
    expect(status).toBe(2);
    expect(err).toMatch(/^PACK_UNKNOWN: /);
  });
});
