import { cp, mkdir, mkdtemp, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, onTestFinished, test } from 'vitest';
import { runCommandLine } from '../../src/cli/main.ts';
import { springPack } from '../fixtures/spring-pack.ts';
import { overlayWith, writePack } from '../server/support/rule-files.ts';
import { fakeIo, root } from './fake-io.ts';

const rape = 'propyzamide-winter-oilseed-rape';

/** A folder with rules/ of its own: the shipped pack and, where given, another. */
async function rulesWith(second: Readonly<Record<string, unknown>> | null): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'treatments-'));
  onTestFinished(() => rm(folder, { recursive: true }));
  await cp(join(root, 'rules', rape), join(folder, 'rules', rape), { recursive: true });
  await symlink(join(root, 'package.json'), join(folder, 'package.json'));
  if (second !== null) await writePack(join(folder, 'rules', 'spring-pack'), second);
  return folder;
}

async function ask(folder: string, lines: readonly string[], ...options: string[]) {
  const io = { ...fakeIo({}, lines), root: folder };
  const status = await runCommandLine(['ask', ...options], io);
  return { status, out: io.out(), err: io.err() };
}

const question = 'Which treatment? Enter alone takes Propyzamide on winter oilseed rape.';

describe('loamward ask with several treatments', () => {
  test.each([
    ['a number', '2', 'Spring, invented.'],
    ['a word of it', 'spring', 'Spring, invented.'],
    ['its id', 'spring-pack', 'Spring, invented.'],
    ['Enter alone', '', 'Propyzamide on winter oilseed rape.'],
    ['a word that only the other has', 'oilseed', 'Propyzamide on winter oilseed rape.'],
  ])('asks which, and takes %s', async (_, line, title) => {
    const { out, err } = await ask(await rulesWith(springPack()), [line, 'own']);
    expect(out.split('\n').slice(0, 3)).toEqual([
      question,
      '  1) Propyzamide on winter oilseed rape',
      '  2) Spring, invented',
    ]);
    expect(out.split('\n')).toContain(title);
    expect(err).toBe('');
  });

  test('asks again where that is none, and ends with the input', async () => {
    const { status, out } = await ask(await rulesWith(springPack()), ['9', 'invented pack', 'v']);
    expect([status, out.match(/Type a number from 1 to 2\./g)?.length]).toEqual([0, 3]);
    expect(out).not.toContain('Which field?');
  });

  test('offers only the fields of the treatment', async () => {
    const folder = await rulesWith(springPack());
    expect((await ask(folder, ['2'])).out).toMatch(/Which field\?\n {2}1\) My own field\n$/);
    expect((await ask(folder, ['1'])).out).toContain('  1) Mill Piece (invented)');
  });

  test.each([
    ['it is named', ['--pack', 'spring-pack'], ['own'], 'Spring, invented.'],
    ['the field is for one alone', ['--field', 'mill-piece'], [], 'Propyzamide on winter oilseed rape.'],
  ])('does not ask where %s', async (_, options, lines, title) => {
    const { out } = await ask(await rulesWith(springPack()), lines, ...options);
    expect(out).not.toContain('Which treatment?');
    expect(out).toContain(title);
  });

  test('does not ask where there is one, and asks in German', async () => {
    expect((await ask(await rulesWith(null), [])).out).toMatch(/^Which field\?/);
    const { out } = await ask(await rulesWith(springPack()), ['frühjahr', 'eigenes'], '--language', 'de');
    expect(out).toMatch(/^Welche Behandlung\? Die Eingabetaste allein nimmt: Propyzamid in Winterraps\.\n/);
    expect(out).toContain('Frühjahr, erfunden.');
  });

  test('a second pack that is not sound is told and not offered; the first is talked about', async () => {
    const { status, out, err } = await ask(await rulesWith({ ...springPack(), 'cautions.json': '{' }), ['own']);
    expect(err).toContain('RULES_NOT_JSON');
    expect([status, out.includes('Which treatment?')]).toEqual([0, false]);
    expect(out).toContain('Propyzamide on winter oilseed rape.');
  });

  test('a pack that is not there is refused with the nearest', async () => {
    const { status, err } = await ask(await rulesWith(springPack()), [], '--pack', 'spring-pak');
    expect([status, err]).toEqual([2, expect.stringMatching(/^PACK_UNKNOWN: .*spring-pack/)]);
  });

  test('comes to a verdict in the second', async () => {
    const lines = ['2', 'own', 'growth stage 8', ...Array.from({ length: 12 }, () => "don't know")];
    const { out } = await ask(await rulesWith(springPack()), lines);
    expect(out).toMatch(/\nWAIT/);
  });
});

describe('overlays where there are several treatments', () => {
  const forSpring = {
    id: 'spring-farm',
    title: { en: 'Barn Bank Farm, invented', de: 'Barn Bank Farm, erfunden' },
    place: 'Barn Bank Farm, invented',
    pack: { id: 'spring-pack' },
    validFrom: '2026-01-01',
  };
  const withOverlays = async () => {
    const folder = await rulesWith(springPack());
    await mkdir(join(folder, 'local'));
    await writeFile(join(folder, 'local', 'a.json'), JSON.stringify(overlayWith('soilTemperatureMaxC', 9)));
    await writeFile(join(folder, 'local', 'b.json'), JSON.stringify(overlayWith('windMostKmh', 12, forSpring)));
    return folder;
  };

  test.each([
    ['1', /Propyzamide on winter oilseed rape.*Hollin Bank Farm, invented/],
    ['2', /Spring, invented.*Barn Bank Farm, invented/],
  ])('of a folder, that which names treatment %s is laid over it, and no other', async (line, stamp) => {
    const folder = await withOverlays();
    const lines = [line, 'own', ...Array.from({ length: 40 }, () => "don't know")];
    const { status, out, err } = await ask(folder, lines, '--overlay', join(folder, 'local'), '--json');
    expect([status, err]).toEqual([0, '']);
    expect(JSON.parse(out).verdict.packText).toMatch(stamp);
  });

  test('a file of another treatment that is named by itself is refused', async () => {
    const folder = await withOverlays();
    const { status, err } = await ask(folder, ['1'], '--overlay', join(folder, 'local', 'b.json'));
    expect([status, err]).toEqual([2, expect.stringMatching(/^OVERLAY_PACK_MISFIT: /)]);
  });
});
