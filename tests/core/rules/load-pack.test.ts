import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { hashPackFiles } from '../../../src/core/rules/pack/hash-pack.ts';
import { checkPack, loadPack } from '../../../src/core/rules/pack/load-pack.ts';
import { repeatedKeys } from '../../../src/core/rules/pack/parse-json.ts';
import { filesOf, miniPack } from '../../fixtures/mini-pack.ts';

function hashWith(change: (files: Map<string, string>) => void): string {
  const files = filesOf(miniPack());
  change(files);
  return loadPack(files).pack.hash;
}

const plain = () => hashWith(() => {});

test('the hash is SHA-256 over canonical JSON: keys sorted, numbers and texts as RFC 8785 writes them', () => {
  // The members of the example of RFC 8785 section 3.2.3, whose canonical form is written out there; hashed by Node's own SHA-256.
  const example = {
    '\u20ac': 'Euro Sign',
    '\r': 'Carriage Return',
    '\ufb33': 'Hebrew Letter Dalet With Dagesh',
    '1': 'One',
    '\ud83d\ude00': 'Emoji: Grinning Face',
    '\u0080': 'Control',
    '\u00f6': 'Latin Small Letter O With Diaeresis',
  };
  const canonical =
    '{"\\r":"Carriage Return","1":"One","\u0080":"Control","\u00f6":"Latin Small Letter O With Diaeresis",' +
    '"\u20ac":"Euro Sign","\ud83d\ude00":"Emoji: Grinning Face","\ufb33":"Hebrew Letter Dalet With Dagesh"}';
  const expected = createHash('sha256').update(canonical, 'utf8').digest('hex');
  expect(hashPackFiles(new Map(Object.entries(example)))).toBe(expected);
  expect(plain()).toMatch(/^[0-9a-f]{64}$/);
});

test('the order of files and keys, and blank space, do not change the hash', () => {
  const reordered = hashWith((files) => {
    const entries = [...files].reverse();
    files.clear();
    for (const [name, text] of entries) files.set(name, JSON.stringify(JSON.parse(text), null, 4));
    const pack = JSON.parse(files.get('pack.json')!);
    files.set('pack.json', JSON.stringify(Object.fromEntries(Object.entries(pack).reverse())));
  });
  expect(reordered).toBe(plain());
});

test('a mark of byte order before the text, and the name of a schema, do not change the hash', () => {
  const marked = hashWith((files) => {
    for (const [name, text] of files) files.set(name, `\uFEFF${text.replace('{', '{"$schema":"../x.json",')}`);
  });
  expect(marked).toBe(plain());
});

test('where a file is no JSON is told by line and column', () => {
  const files = filesOf(miniPack());
  files.set('cautions.json', '{\n  "cautions": [],\n  "x" 1\n}');
  const [found] = checkPack(files).findings;
  expect([found?.code, found?.file, found?.pointer, found?.expected]).toEqual([
    'RULES_NOT_JSON',
    'cautions.json',
    '',
    'JSON',
  ]);
  expect(found?.came).toMatch(/\(line 3, column 7\)$/);
  expect(() => loadPack(files)).toThrow(/RULES_NOT_JSON.*cautions\.json/);
});

test('cases, overlays that only lie there and the change log do not count', () => {
  const more = hashWith((files) => {
    files.set('CHANGELOG.md', '# Changes');
    files.set('overlays/a.json', 'not read');
    files.delete('cases/a.json');
  });
  expect(more).toBe(plain());
});

test.each(['pack.json', 'parameters.json', 'a.rules.json', 'questions.json', 'cautions.json'])(
  'a change in %s counts',
  (file) => {
    const changed = hashWith((files) => {
      files.set(file, files.get(file)!.replace(/"(invented for tests|Mini|A\?|Read the label\.)"/, '"changed"'));
    });
    expect(changed).not.toBe(plain());
  },
);

test('a parameter that nothing reads is a warning, and the pack loads', () => {
  const parsed = miniPack() as { 'parameters.json': { parameters: object[] } } & Record<string, unknown>;
  const spare = { ...parsed['parameters.json'].parameters[0], id: 'spare' };
  parsed['parameters.json'].parameters.push(spare);
  const checked = checkPack(filesOf(parsed));
  expect(checked.ok).toBe(true);
  expect(checked.findings).toMatchObject([{ code: 'PARAMETER_UNUSED', severity: 'warning', came: 'spare' }]);
});

test.each<[string, (string | number)[][]]>([
  ['{"a": 1, "b": {"a": 2}}', []],
  ['{"a": 1, "a": 2}', [['a']]],
  ['{"x": [0, {"k": "}", "k": "{"}]}', [['x', 1, 'k']]],
  ['{"a\\"": "a\\"", "a\\"": 1}', [['a"']]],
  ['[{"a": [1, "a"]}, {"b": "a:", "a": {"a": 1}, "b": 2}]', [[1, 'b']]],
])('repeated keys of %s are found with their path', (text, paths) => {
  expect(repeatedKeys(text)).toEqual(paths);
});

test.each(['2026-11-06T09:00Z', '2026-11-06T09:00:30Z', '2026-11-06T09:00+01:00'])('a case may hold at %s', (at) => {
  const parsed = miniPack() as { 'cases/a.json': { cases: { at: string }[] } } & Record<string, unknown>;
  parsed['cases/a.json'].cases[0]!.at = at;
  expect(loadPack(filesOf(parsed)).cases[0]!.at).toBe(at);
});
