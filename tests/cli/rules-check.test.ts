import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { annotationOf } from '../../src/cli/check/annotations.ts';
import type { Io } from '../../src/cli/io.ts';
import { runCommandLine } from '../../src/cli/main.ts';
import { type ParsedFiles, put, thoroughPack, writtenOut } from '../fixtures/thorough-pack.ts';
import { fakeIo } from './fake-io.ts';

let folder = '';

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'loamward-check-'));
  await write(thoroughPack());
});
afterEach(() => rm(folder, { recursive: true }));

async function write(files: ParsedFiles): Promise<void> {
  for (const [file, text] of writtenOut(files)) {
    await mkdir(dirname(join(folder, file)), { recursive: true });
    await writeFile(join(folder, file), text);
  }
}

/** Line and column of the first condition of the rules, as an editor counts them. */
function firstCondition(): { readonly line: number; readonly column: number } {
  const text = writtenOut(thoroughPack()).get('a.rules.json')!;
  const before = text.slice(0, text.indexOf('"when"')).split('\n');
  return { line: before.length, column: before.at(-1)!.length + 1 };
}

function withLimit(value: unknown): ParsedFiles {
  const files = thoroughPack();
  put(files, 'parameters.json', '/parameters/0/value', value);
  return files;
}

async function check(...args: string[]) {
  const io = fakeIo();
  const status = await runCommandLine(['rules', 'check', folder, ...args], io);
  return { status, out: io.out(), err: io.err() };
}

describe('rules check', () => {
  test('of a sound pack ends with 0 and says as of which day', async () => {
    expect(await check()).toEqual({
      status: 0,
      out: `${folder} (2026-11-06): sound: 5 rules, 12 cases\n`,
      err: '',
    });
    expect((await check('--day', '2027-01-02')).out).toContain('(2027-01-02): sound');
  });

  test('gives file, line, column, pointer, what, why and how to mend it, and ends with 1', async () => {
    await write(withLimit(150));
    const { status, out } = await check();
    const { line, column } = firstCondition();
    expect(status).toBe(1);
    expect(out.split('\n').slice(0, 6)).toEqual([
      `${folder} (2026-11-06): 1 to mend; 1 to look at`,
      '',
      `${folder}/a.rules.json:${line}:${column} error RULE_NEVER_MET /rules/0/when`,
      '  What: A rule can never be met, whatever the facts.',
      '  Why:  Expected a condition that some values meet; came wind.boomKmh above windMostKmh = 150.',
      '  Fix:  Mend the condition or its limits: as it stands it protects nobody.',
    ]);
  });

  test('ends with 0 where there is only something to look at', async () => {
    const files = thoroughPack();
    put(files, 'cases/b.json', '/cases/0/facts/wind.boomKmh', 9);
    await write(files);
    const { status, out } = await check();
    expect(status).toBe(0);
    expect(out).toContain('sound: 5 rules, 12 cases; 1 to look at\n');
  });

  test('says it in the language of the reader', async () => {
    await write(withLimit(150));
    const { out } = await check('--language', 'de');
    expect(out).toContain('1 zu berichtigen; 1 anzusehen');
    expect(out).toContain('Fehler RULE_NEVER_MET /rules/0/when\n  Was:     Eine Regel kann nie erfüllt sein');
  });

  test('gives a program all of it as one line of JSON', async () => {
    await write(withLimit('9.6'));
    const { status, out } = await check('--json');
    expect(status).toBe(1);
    expect(out.trim().split('\n')).toHaveLength(1);
    const [first] = JSON.parse(out);
    expect(first).toMatchObject({ folder, day: '2026-11-06', loads: false, sound: false });
    const found = first.findings.find(({ code }: { code: string }) => code === 'PARAMETER_VALUE_WRONG');
    expect(found).toMatchObject({
      code: 'PARAMETER_VALUE_WRONG',
      severity: 'error',
      file: 'parameters.json',
      line: 5,
      column: 7,
      pointer: '/parameters/0/value',
      what: 'A parameter has a value that does not fit its unit.',
      why: 'Expected a finite number; came "9.6" with unit km/h.',
    });
    expect(found.fix).toMatch(/^Give a finite number/);
  });

  test('annotates the lines of a change', async () => {
    await write(withLimit(150));
    const { status, out } = await check('--annotations');
    const { line, column } = firstCondition();
    expect(status).toBe(1);
    const [note, , last] = out.split('\n');
    expect(note).toBe(
      `::error file=${folder}/a.rules.json,line=${line},col=${column},title=RULE_NEVER_MET::A rule can never be met, whatever the facts.` +
        '%0AExpected a condition that some values meet; came wind.boomKmh above windMostKmh = 150.' +
        '%0AMend the condition or its limits: as it stands it protects nobody.',
    );
    expect(last).toBe(`${folder} (2026-11-06): 1 to mend; 1 to look at`);
  });

  test.each([
    [['--day', '2026-02-30'], 'OPTION_VALUE'],
    [['--json', '--annotations'], 'OPTION_VALUE'],
    [['--strict'], 'OPTION_UNKNOWN'],
    [['./no-such-folder'], 'RULES_FILE_UNREADABLE'],
  ])('%j is bad use: 2', async (args, code) => {
    const { status, out, err } = await check(...args);
    expect(status).toBe(2);
    expect(out).toBe('');
    expect(err).toContain(code);
  });
});

describe('an annotation', () => {
  // GitHub Docs, "Workflow commands for GitHub Actions": ::error file={name},line={line},col={col},title={title}::{message}; the
  // characters escaped are those that the runner's own library (actions/toolkit, command.ts) escapes and the runner reads back.
  test('escapes percent signs and line ends everywhere, colons and commas in its properties', () => {
    const made = annotationOf({
      severity: 'warning',
      file: 'a,b:c%.json',
      line: 3,
      column: 7,
      title: 'T',
      message: '100 %, at: once\r\nnext',
    });
    expect(made).toBe('::warning file=a%2Cb%3Ac%25.json,line=3,col=7,title=T::100 %25, at: once%0D%0Anext');
  });
});

/** An Io whose watcher and end the test holds in hand, and that gives each output as it comes. */
function watchedIo() {
  const written: string[] = [];
  const waiting: ((text: string) => void)[] = [];
  let change = (): void => {};
  let end = (): void => {};
  let watched: readonly string[] | null = null;
  const stopped = new Promise<void>((resolve) => {
    end = resolve;
  });
  const io: Io = {
    ...fakeIo(),
    env: { TZ: 'Europe/London' },
    write: (text) => {
      const next = waiting.shift();
      if (next) next(text);
      else written.push(text);
    },
    watch: (folders, onChange) => {
      watched = folders;
      change = onChange;
      return () => {
        watched = null;
      };
    },
    untilStopped: () => stopped,
  };
  const next = (): Promise<string> => {
    const text = written.shift();
    return text === undefined ? new Promise((resolve) => waiting.push(resolve)) : Promise.resolve(text);
  };
  return { io, next, change: () => change(), end: () => end(), watched: () => watched, left: () => written };
}

describe('rules check --watch', () => {
  test('checks at once and after each change, says the time and the result, and ends with the last status', async () => {
    const { io, next, change, end, watched, left } = watchedIo();
    const status = runCommandLine(['rules', 'check', folder, '--watch'], io);
    expect(await next()).toMatch(/^\d\d:00:\d\d .*sound: 5 rules/);
    expect(watched()).toEqual([folder]);

    await write(withLimit(150));
    change();
    expect(await next()).toMatch(/^09:00:\d\d .*1 to mend/);

    await rm(join(folder, 'pack.json'));
    change();
    expect(await next()).toContain('PACK_FILE_MISSING');

    await write(thoroughPack());
    change();
    expect(await next()).toContain('sound: 5 rules');
    end();
    expect(await status).toBe(0);
    expect(watched()).toBe(null);
    expect(left()).toEqual([]);
  });

  test('a change while a check runs is checked after it, and several of them once', async () => {
    const { io, next, change, end, left } = watchedIo();
    const status = runCommandLine(['rules', 'check', folder, '--watch'], io);
    await next();
    await write(withLimit(150));
    change();
    change();
    change();
    await next();
    expect(await next()).toContain('1 to mend');
    end();
    expect(await status).toBe(1);
    expect(left()).toEqual([]);
  });

  test('a folder that cannot be read for a while is said, and checked again once it can', async () => {
    const { io, next, change, end } = watchedIo();
    const status = runCommandLine(['rules', 'check', folder, '--watch'], io);
    await next();
    await rm(folder, { recursive: true });
    change();
    expect(await next()).toContain('RULES_FILE_UNREADABLE');
    await mkdir(folder);
    await write(thoroughPack());
    change();
    expect(await next()).toContain('sound: 5 rules');
    end();
    expect(await status).toBe(0);
  });
});
