import { cp, mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { copyEnglish } from '../../src/tools/languages/copy-english.ts';
import { findingsOf } from '../../src/tools/languages/findings.ts';
import { generatedLists, languagesIn, listsFolder, pageFolder, wordsFolder } from '../../src/tools/languages/lists.ts';
import { loadWords } from '../../src/tools/languages/load-words.ts';
import { recordAfter } from '../../src/tools/languages/record.ts';
import { findingsIn } from '../../src/tools/languages/records.ts';
import { sentencesOf } from '../../src/tools/languages/sentences.ts';
import { root } from '../repo/files.ts';

const english = sentencesOf({
  a: 'Yes.',
  b: (count: number) => `${count} ${count === 1 ? 'job' : 'jobs'}`,
  c: '30 cm',
});
const german = sentencesOf({
  a: 'Ja.',
  b: (count: number) => `${count} ${count === 1 ? 'Arbeit' : 'Arbeiten'}`,
  c: '30 cm',
});
const nothing = { missing: [], stale: [], same: [], extra: [] };

describe('what is to be done in a language', () => {
  const record = recordAfter({}, english, german);

  test('is nothing where every sentence was translated from the English there is', () => {
    expect(
      findingsOf(
        english,
        german,
        recordAfter(record, english, german, (place) => place === 'c'),
      ),
    ).toEqual(nothing);
  });

  test('is each sentence that is missing, too many, or as in English', () => {
    const half = sentencesOf({ a: 'Yes.', d: 'Mehr.' });
    expect(findingsOf(english, half, {})).toEqual({ ...nothing, missing: ['b', 'c'], same: ['a'], extra: ['d'] });
  });

  test('is what was translated from other English, until it is translated anew or said to be right', () => {
    const changed = new Map([...english, ...sentencesOf({ b: (count: number) => `${count} things` })]);
    const stale = recordAfter(record, changed, german);
    expect(findingsOf(changed, german, stale).stale).toEqual(['b']);
    const anew = new Map([...german, ...sentencesOf({ b: (count: number) => `${count} Dinge` })]);
    expect(findingsOf(changed, anew, recordAfter(stale, changed, anew)).stale).toEqual([]);
    expect(
      findingsOf(
        changed,
        german,
        recordAfter(stale, changed, german, (place) => place === 'b'),
      ).stale,
    ).toEqual([]);
  });

  test('does not hang on how a function is written, only on what it says', () => {
    const other = sentencesOf({ b: (n: number) => (n === 1 ? `${n} job` : `${n} jobs`) });
    expect(other.get('b')).toBe(english.get('b'));
  });
});

describe('a language that is begun', () => {
  let project = '';
  beforeAll(async () => {
    project = await mkdtemp(join(tmpdir(), 'loamward-languages-'));
    for (const folder of ['src/core', 'web/words'])
      await cp(join(root, folder), join(project, folder), { recursive: true });
  });
  afterAll(() => rm(project, { recursive: true }));

  test('has every sentence, all still in English, and is in the lists; no file is too long', async () => {
    const before = languagesIn(project, wordsFolder);
    expect(await copyEnglish(project, 'zz', true)).toEqual(
      [wordsFolder, pageFolder, listsFolder].map((one) => `${one}/zz`),
    );
    expect(languagesIn(project, wordsFolder)).toEqual([...before, 'zz']);
    for (const text of generatedLists(project).values())
      expect(text).toContain("import { words as zz } from './zz/index.ts';");
    const words = await loadWords(project, 'zz');
    expect(words.core).toMatchObject({
      language: 'zz',
      errors: { PORT_TAKEN: {} },
      facts: { date: expect.any(String) },
    });
    const { missing, extra, stale, same } = await findingsIn(project, 'zz', (code) => loadWords(project, code));
    expect({ missing, extra, stale }).toEqual({ missing: [], extra: [], stale: [] });
    expect(same.length).toBeGreaterThan(1000);
    for (const name of await readdir(join(project, wordsFolder, 'zz'))) {
      expect((await readFile(join(project, wordsFolder, 'zz', name), 'utf8')).split('\n').length).toBeLessThan(251);
    }
  });

  test('may do without lists of typed words', async () => {
    await copyEnglish(project, 'zy', false);
    expect(languagesIn(project, wordsFolder)).toContain('zy');
    expect(languagesIn(project, listsFolder)).not.toContain('zy');
  });
});
