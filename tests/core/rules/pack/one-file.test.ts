import { describe, expect, test } from 'vitest';
import { readPackFolder } from '../../../../src/adapters/pack-files/read-pack-folder.ts';
import { checkPack, loadPack, type PackFiles } from '../../../../src/core/rules/pack/load-pack.ts';
import { fromOneFile, toOneFile } from '../../../../src/core/rules/pack/one-file.ts';

const folder = new URL('../../../../rules/propyzamide-winter-oilseed-rape', import.meta.url).pathname;
const files: PackFiles = await readPackFolder(folder);
const made = () => toOneFile(files);

interface Written {
  format: string;
  hash: string;
  casesHash: string;
  files: Record<string, Record<string, unknown>>;
}
const listIn = (one: Written, file: string, key: string) => (one.files[file]?.[key] ?? []) as object[];
const changed = (change: (one: Written) => void): string => {
  const one = JSON.parse(made().text) as Written;
  change(one);
  return JSON.stringify(one);
};
const refusal = (text: string) => {
  try {
    fromOneFile(text, 'pack.json');
    return null;
  } catch (error) {
    return (error as { toJSON: () => { code: string; expected: string; came: string; pointer?: string } }).toJSON();
  }
};

describe('a pack in one file', () => {
  test('gives the pack of the folder back: hash, rules, cases', () => {
    const [whole, again] = [loadPack(files), loadPack(fromOneFile(made().text, 'pack.json'))];
    expect(made().hash).toBe(whole.pack.hash);
    expect([again.pack, again.cases]).toEqual([whole.pack, whole.cases]);
  });

  test('is the very same made from itself', () => {
    expect(toOneFile(fromOneFile(made().text, 'pack.json'))).toEqual(made());
  });

  test('in other order, spacing and with a schema named is the same pack', () => {
    const one = JSON.parse(made().text) as Written;
    const turned = { $schema: './pack.json', ...Object.fromEntries(Object.entries(one).toReversed()) };
    expect(loadPack(fromOneFile(JSON.stringify(turned), 'pack.json')).pack.hash).toBe(made().hash);
  });

  test.each([
    ['a limit', (one: Written) => Object.assign(listIn(one, 'parameters.json', 'parameters')[5] ?? {}, { value: 99 })],
    ['a file left out', (one: Written) => delete one.files['cautions.json']],
    ['a file put in', (one: Written) => Object.assign(one.files, { 'own.rules.json': { topic: 'own', rules: [] } })],
  ])('with %s changed is refused, naming the hash expected and the one that came', (_, change) => {
    const error = refusal(changed(change));
    expect(error).toMatchObject({ code: 'PACK_HASH_MISFIT', pointer: '/hash', expected: made().hash });
    expect(error?.came).toMatch(/^[0-9a-f]{64}$/);
    expect(error?.came).not.toBe(made().hash);
  });

  test('with a case changed is refused too', () => {
    const change = (one: Written) => {
      const [name = ''] = Object.keys(one.files).filter((each) => each.startsWith('cases/'));
      Object.assign(listIn(one, name, 'cases')[0] ?? {}, { name: 'another' });
    };
    expect(refusal(changed(change))).toMatchObject({ code: 'PACK_HASH_MISFIT', pointer: '/casesHash' });
  });

  test('with a file name that climbs out is a fault of the pack, not a path', () => {
    const text = changed((one) => Object.assign(one.files, { '../../x.rules.json': {} }));
    expect(refusal(text)?.code).toBe('PACK_HASH_MISFIT');
    expect(checkPack(new Map([...files, ['../../x.rules.json', '{}']])).ok).toBe(false);
  });

  test.each([
    ['{', 'RULES_NOT_JSON'],
    ['[]', 'PACK_ONE_FILE_WRONG'],
    ['{"format":"other"}', 'PACK_ONE_FILE_WRONG'],
    ['{"format":"loamward-pack","hash":1,"casesHash":"","files":{}}', 'PACK_ONE_FILE_WRONG'],
    ['{"format":"loamward-pack","hash":"","casesHash":"","files":{},"more":1}', 'PACK_ONE_FILE_WRONG'],
  ])('%s is refused', (text, code) => {
    expect(refusal(text)?.code).toBe(code);
  });

  test.each([
    ['[]', '[]'],
    ['"a pack"', '"a pack"'],
    ['{}', 'nothing'],
    ['{"format":"other"}', '"other"'],
    ['{"format":"loamward-pack","hash":"a","casesHash":1,"files":{}}', 'format, hash, casesHash, files'],
    ['{"format":"loamward-pack","hash":"a","casesHash":"b","files":[]}', 'format, hash, casesHash, files'],
    ['{"format":"loamward-pack","hash":"a","files":{}}', 'format, hash, files'],
    [
      '{"format":"loamward-pack","hash":"a","casesHash":"b","files":{},"more":1}',
      'format, hash, casesHash, files, more',
    ],
  ])('%s is refused with what came', (text, came) => {
    const expected = 'the format of a pack in one file, with hash, casesHash and files';
    expect(refusal(text)).toMatchObject({ code: 'PACK_ONE_FILE_WRONG', file: 'pack.json', expected, came });
  });

  test('holds the files of the pack alone: no overlays, no change log, no names of schemas, whatever stood before them', () => {
    const more = new Map([...files, ['overlays/farm.json', '{}'], ['CHANGELOG.md', '# Changes']]);
    more.set('cautions.json', `\uFEFF${files.get('cautions.json')}`);
    expect(toOneFile(more)).toEqual(made());
    const one = JSON.parse(made().text) as Written;
    expect(Object.keys(one)).toEqual(['format', 'hash', 'casesHash', 'files']);
    expect(Object.keys(one.files)).toEqual(
      [...files.keys()].filter((name) => /^(cases\/)?[^/]+\.json$/.test(name)).sort(),
    );
    expect(Object.values(one.files).some((content) => '$schema' in content)).toBe(false);
    const { id, version } = loadPack(files).pack;
    expect([made().id, made().version, made().text.at(-1)]).toEqual([id, version, '\n']);
  });

  test('is not made of a faulty pack', () => {
    expect(() => toOneFile(new Map([...files, ['cautions.json', '{}']]))).toThrow(
      expect.objectContaining({ code: 'PACK_KEY_MISSING' }),
    );
  });
});
