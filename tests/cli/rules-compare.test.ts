import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import * as z from 'zod';
import { type ComparisonReport, reportSchema } from '../../src/cli/compare/report-schema.ts';
import { runCommandLine } from '../../src/cli/main.ts';
import { fakeIo, root } from './fake-io.ts';
import { irishTable } from './irish-table.ts';

const pack = 'propyzamide-winter-oilseed-rape';
const overlay = {
  overlay: {
    id: 'long-ing-catchment',
    title: { en: 'Long Ing catchment (invented)', de: 'Einzugsgebiet Long Ing (erfunden)' },
    author: 'A. Adviser',
    place: 'Long Ing catchment',
    reason: 'An invented example.',
    layer: 'area',
    pack: { id: pack },
    validFrom: '2026-01-01',
  },
  parameters: [
    {
      id: 'soilTemperatureMaxC',
      value: 8,
      source: 'invented example',
      why: { en: 'Colder soil keeps it longer.', de: 'Kälterer Boden hält es länger.' },
    },
  ],
};

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'loamward-compare-'));
  await mkdir(join(folder, 'weather'));
  await writeFile(join(folder, 'overlay.json'), JSON.stringify(overlay));
  await writeFile(join(folder, 'weather', 'station.csv'), irishTable(5, 2016, 2));
});
afterAll(() => rm(folder, { recursive: true }));

/** Every tag of a text that is well-formed XML, with its attributes, the names around it and its text. Throws where one is not closed. */
function tagsOf(xml: string) {
  const open: string[] = [];
  const found: { name: string; within: string; attributes: Record<string, string>; text: string }[] = [];
  const tags = [...xml.matchAll(/<(\/?)([a-z]+)((?: [a-zA-Z-]+="[^"<]*")*)(\/?)>([^<]*)/g)];
  expect(tags.map(([whole]) => whole).join('')).toBe(xml);
  for (const [, closing, name = '', attributes = '', alone, text = ''] of tags) {
    expect(text).not.toMatch(/&(?!amp;|lt;|gt;|quot;)|>/);
    if (closing) expect(open.pop()).toBe(name);
    else {
      const pairs = [...attributes.matchAll(/ ([a-zA-Z-]+)="([^"]*)"/g)].map(([, key = '', value = '']) => [
        key,
        value,
      ]);
      found.push({ name, within: open.join('/'), attributes: Object.fromEntries(pairs), text });
      if (!alone) open.push(name);
    }
  }
  expect(open).toEqual([]);
  return found;
}

async function run(...options: string[]) {
  const io = fakeIo({});
  const status = await runCommandLine(['rules', 'compare', ...options], io);
  return { status, out: io.out(), err: io.err() };
}

const overlaid = () => [pack, '--overlay', join(folder, 'overlay.json'), '--data', join(folder, 'weather')];

describe('loamward rules compare', () => {
  test('shipped against overlaid: what differs, cases, limits, seasons of recorded weather, with progress on standard error', async () => {
    const { status, out, err } = await run(...overlaid(), '--language', 'en');
    expect(status).toBe(0);
    expect(out).toContain('with “Long Ing catchment (invented)” by A. Adviser\n');
    expect(out).toContain('  soilTemperatureMaxC: 10 C → 8 C, from ');
    expect(out).toMatch(/; tighter; read by soil-too-warm\n/);
    expect(out).toMatch(/\n {2}\d+ of \d+ verdicts change\.\n {2}\d+ from spray today to wait \(stricter\)\n/);
    expect(out).toContain('Recorded weather of TOP BROW (INVENTED).');
    expect(out).toMatch(/TOP BROW \(INVENTED\): 2 seasons, spray today on \d+ days under A, \d+ under B/);
    expect(out).not.toContain('looser)');
    expect(err).toMatch(/^Near the limits of both: \d+ of \d+\n/);
  });

  test('in German, and as JSON that its schema holds, read by another validator too', async () => {
    const { out } = await run(...overlaid(), '--language', 'de');
    expect(out).toMatch(
      /soilTemperatureMaxC: 10 (?:°|Grad )?C → 8 (?:°|Grad )?C, ab dem .*; strenger; gelesen von soil-too-warm/,
    );
    const report = JSON.parse((await run(...overlaid(), '--json')).out) as ComparisonReport;
    expect(reportSchema.parse(report)).toEqual(report);
    const ajv = new Ajv2020({ strict: false });
    (addFormats as unknown as (to: Ajv2020) => void)(ajv);
    const valid = ajv.compile(z.toJSONSchema(reportSchema));
    expect([valid(report), valid.errors]).toEqual([true, null]);
    expect(valid({ ...report, format: 'another' })).toBe(false);
    const { seasons, transitions } = report.seasons;
    const letters = { 'spray-today': 's', wait: 'w', 'do-not-spray': 'n' };
    for (const { a, b, count } of transitions) {
      const days = seasons.flatMap((one) =>
        [...one.a].filter((letter, at) => letter === letters[a] && one.b[at] === letters[b]),
      );
      expect(days).toHaveLength(count);
    }
  });

  test('a pack with itself: nothing changes', async () => {
    const report = JSON.parse(
      (await run(pack, pack, '--data', join(folder, 'weather'), '--json')).out,
    ) as ComparisonReport;
    expect(report.differences).toEqual([]);
    expect(report.cases.differing).toEqual([]);
    expect(report.limits.transitions).toEqual([]);
    expect(report.seasons.seasons.flatMap(({ changed, windows }) => [...changed, ...windows])).toEqual([]);
  });

  test('the picture is an SVG with title and description and a table beside it that counts the same', async () => {
    const file = join(folder, 'seasons.svg');
    const report = JSON.parse((await run(...overlaid(), '--picture', file, '--json')).out) as ComparisonReport;
    const tags = tagsOf(await readFile(file, 'utf8'));
    expect(tags[0]).toMatchObject({ name: 'svg', within: '' });
    expect(tags.find(({ name }) => name === 'title')?.text).toBe('Seasons under A and B');
    const changed = report.seasons.seasons.flatMap((one) => one.changed);
    expect(tags.find(({ name }) => name === 'desc')?.text).toContain(`${changed.length} of `);
    const drawn = tags.filter(({ name, attributes }) => name === 'rect' && attributes['class'] === 'stricter').slice(1);
    const days = drawn.reduce((sum, { attributes }) => sum + Number(attributes['width']) / 5, 0);
    expect(days).toBe(changed.filter(({ way }) => way === 'stricter').length);
    expect(days).toBeGreaterThan(0);
    const table = await readFile(join(folder, 'seasons.txt'), 'utf8');
    for (const { season } of report.seasons.seasons) expect(table).toContain(`      ${season}`);
  });

  test('events of earlier conversations: verdicts are judged, what cannot be is counted with the reason', async () => {
    const events = join(folder, 'events.jsonl');
    await writeFile(
      events,
      '{"kind":"undone","id":"e1","at":1793955600,"device":"d","count":1,"of":"e0"}\n{"kind":"odd"}\n{"kind":"odd"}\n',
    );
    const report = JSON.parse((await run(...overlaid(), '--events', events, '--json')).out) as ComparisonReport;
    expect(report.verdicts).toMatchObject({
      events: 3,
      verdicts: 0,
      unread: [{ count: 2, error: { code: 'EVENTS_UNREADABLE' } }],
    });
  });

  test('a verdict that was saved is judged under both; told twice it counts once', async () => {
    const { facts } = JSON.parse(await readFile(join(root, 'rules', pack, 'cases', 'whole-days.json'), 'utf8'))
      .cases[0];
    const io = fakeIo({ 'facts.json': JSON.stringify(facts) });
    expect(await runCommandLine(['decide', '--facts', 'facts.json', '--json'], io)).toBe(0);
    const decision = JSON.parse(io.out());
    const event = {
      kind: 'verdict-given',
      id: 'v1',
      at: 1_793_955_600,
      device: 'd',
      count: 1,
      tag: 't',
      saw: [],
      decision,
    };
    const file = join(folder, 'verdicts.json');
    await writeFile(file, JSON.stringify({ events: [event, event, { ...event, id: 'v2' }] }));
    const { verdicts } = JSON.parse((await run(...overlaid(), '--events', file, '--json')).out) as ComparisonReport;
    expect(verdicts).toMatchObject({ events: 3, verdicts: 2, asThen: 2, unread: [], unjudged: [] });
    expect(verdicts?.transitions).toMatchObject([{ a: decision.verdict, count: 2 }]);
  });

  test.each([
    [[], 'two packs, or one with --overlay FILE'],
    [[pack], 'a second pack, or --overlay FILE'],
    [[pack, pack, pack], 'two packs'],
    [[pack, pack, '--overlay', 'x.json'], 'two packs, or one with --overlay FILE'],
    [[pack, pack, '--day', '2026-13-01'], '--day with a day as YYYY-MM-DD'],
  ])('%j is refused: %s', async (options, expected) => {
    const { status, err } = await run(...options, '--language', 'en');
    expect(status).toBe(2);
    expect(err).toContain('OPTION_VALUE');
    expect(err).toContain(expected);
  });
});
