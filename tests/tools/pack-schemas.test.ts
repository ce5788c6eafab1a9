import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { Ajv, type ValidateFunction } from 'ajv';
import addFormats from 'ajv-formats';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkPack } from '../../src/core/rules/pack/load-pack.ts';
import { fileSchemas } from '../../src/tools/docs/schemas/file-schemas.ts';
import { keyDescriptions } from '../../src/tools/docs/schemas/key-descriptions.ts';
import { type JsonSchema, jsonSchemaOf } from '../../src/tools/docs/schemas/write-schema.ts';
import { filesOf, miniPack } from '../fixtures/mini-pack.ts';
import { projectFiles, root, textOf } from '../repo/files.ts';

// Ajv, a JSON Schema validator that is not ours (JSON Schema draft 7), judges beside our own loader.
const ajv = new Ajv({ allErrors: true, strict: true, strictRequired: false, allowUnionTypes: true });
(addFormats as unknown as (to: Ajv) => void)(ajv);
const validators = new Map<string, ValidateFunction>(
  fileSchemas.map((file) => [file.kind, ajv.compile(jsonSchemaOf(file))]),
);

function kindOf(file: string): string {
  if (file.startsWith('cases/')) return 'cases';
  if (file.startsWith('overlays/')) return 'overlay';
  return file.endsWith('.rules.json') ? 'rules' : file.slice(0, -'.json'.length);
}

const shipped = projectFiles(/^rules\/(?!schemas\/)[^/]+\/.*\.json$/);

describe('the JSON Schemas of a pack', () => {
  test.each(shipped)('%s names its schema, and is valid by it', (path) => {
    const content = JSON.parse(textOf(path));
    const kind = kindOf(path.split('/').slice(2).join('/'));
    const named = join(dirname(path), content.$schema);
    expect(named).toBe(`rules/schemas/${kind}.schema.json`);
    expect(existsSync(join(root, named))).toBe(true);
    const validate = validators.get(kind)!;
    expect(validate(content), JSON.stringify(validate.errors)).toBe(true);
  });

  test.each(fileSchemas.map((file) => [file.kind, file] as const))(
    'of %s explain every key, and no other',
    (_, file) => {
      const said = keysOf(jsonSchemaOf(file), '').filter(([path]) => path !== '$schema');
      expect(said.filter(([, description]) => !description).map(([path]) => path)).toEqual([]);
      const paths = new Set(said.map(([path]) => path));
      const told = Object.keys(keyDescriptions[file.kind] ?? {}).filter((path) => !path.endsWith('.*'));
      expect(told.filter((path) => !paths.has(path))).toEqual([]);
    },
  );
});

/** Every named key of a schema by its path, with its description; what a reference leads to explains itself. */
function keysOf(schema: JsonSchema, path: string): (readonly [string, unknown])[] {
  const parts = schema as {
    properties?: Record<string, JsonSchema>;
    items?: JsonSchema;
    additionalProperties?: unknown;
  };
  const own = Object.entries(parts.properties ?? {})
    .filter(([key]) => !key.includes('.') && key !== 'date')
    .flatMap(([key, member]) => {
      const at = path === '' ? key : `${path}.${key}`;
      return [[at, member['description']] as const, ...keysOf(member, at)];
    });
  const members = parts.items ? keysOf(parts.items, `${path}[]`) : [];
  const any =
    typeof parts.additionalProperties === 'object' ? keysOf(parts.additionalProperties as JsonSchema, `${path}.*`) : [];
  return [...own, ...members, ...any];
}

type Steps = readonly (string | number)[];

function changed(root: unknown, steps: Steps, value: unknown): void {
  let target = root as Record<string | number, unknown>;
  for (const step of steps.slice(0, -1)) target = target[step] as Record<string | number, unknown>;
  const last = steps.at(-1) ?? '';
  if (value === undefined) delete target[last];
  else target[last] = value;
}

describe('both the loader and an independent validator refuse', () => {
  const when = ['rules', 0, 'when'] as const;
  test.each<readonly [string, string, Steps, unknown]>([
    ['a pack without a version', 'pack.json', ['version'], undefined],
    ['a version that is none', 'pack.json', ['version'], 'one'],
    ['a pack without languages', 'pack.json', ['languages'], []],
    ['a language in three letters', 'pack.json', ['languages', 0], 'eng'],
    ['a schema that is named by a number', 'pack.json', ['$schema'], 7],
    ['a key that does not belong', 'parameters.json', ['parameters', 0, 'limit'], 9],
    ['a parameter without a source', 'parameters.json', ['parameters', 0, 'source'], undefined],
    ['a source that is blank', 'parameters.json', ['parameters', 0, 'source'], ' '],
    ['a day that there is not', 'parameters.json', ['parameters', 0, 'validFrom'], '2026-02-30'],
    ['a value that is no value', 'parameters.json', ['parameters', 0, 'value'], { most: 9.6 }],
    ['an effect that there is not', 'a.rules.json', ['rules', 0, 'effect'], 'warn'],
    ['an id with a blank', 'a.rules.json', ['rules', 0, 'id'], 'too windy'],
    ['a rule without a reason', 'a.rules.json', ['rules', 0, 'why'], undefined],
    ['a sentence that does not belong', 'a.rules.json', ['rules', 0, 'text', 'en', 'short'], 'W'],
    ['a condition that is empty', 'a.rules.json', when, {}],
    ['a number inside a rule', 'a.rules.json', [...when, 'above'], 9.6],
    ['an operator that there is not', 'a.rules.json', when, { fact: 'wind.boomKmh', over: 'windMostKmh' }],
    ['two operators', 'a.rules.json', [...when, 'below'], 'windMostKmh'],
    ['a fact without an operator', 'a.rules.json', when, { fact: 'wind.boomKmh' }],
    ['a group without members', 'a.rules.json', when, { all: [] }],
    ['one way of knowing', 'a.rules.json', when, { eitherOf: [{ fact: 'soil.feel', is: 'dry' }] }],
    ['two groups in one', 'a.rules.json', when, { all: [{ rule: 'too-dry' }], any: [{ rule: 'too-dry' }] }],
    ['three levels of groups', 'a.rules.json', when, { not: { not: { not: { rule: 'too-dry' } } } }],
    ['an empty list of choices', 'a.rules.json', when, { fact: 'soil.feel', oneOf: [] }],
    ['a form that there is not', 'questions.json', ['questions', 0, 'form'], 'slider'],
    ['an effort of nothing', 'questions.json', ['questions', 0, 'effortSeconds'], 0],
    [
      'a reading of a type that there is not',
      'questions.json',
      ['questions', 0, 'choices', 0, 'gives', 'wind.boomKmh', 'type'],
      'word',
    ],
    ['a caution without its text', 'cautions.json', ['cautions', 0, 'text'], undefined],
    ['a verdict that there is not', 'cases/a.json', ['cases', 0, 'expect', 'verdict'], 'maybe'],
    ['a dose of nothing', 'cases/a.json', ['cases', 0, 'expect', 'doseGPerHa'], 0],
  ])('%s', (_name, file, steps, value) => {
    const parsed = miniPack();
    const validate = validators.get(kindOf(file))!;
    expect(validate(JSON.parse(JSON.stringify(parsed[file]))), JSON.stringify(validate.errors)).toBe(true);
    changed(parsed[file], steps, value);
    expect(validate(JSON.parse(JSON.stringify(parsed[file])))).toBe(false);
    const checked = checkPack(filesOf(parsed));
    expect(checked.ok).toBe(false);
    expect(checked.findings.some((finding) => finding.file === file)).toBe(true);
  });
});

function pathsOf(value: unknown, path: Steps = []): Steps[] {
  if (typeof value !== 'object' || value === null) return [path];
  return [
    path,
    ...Object.entries(value).flatMap(([key, member]) =>
      pathsOf(member, [...path, Array.isArray(value) ? Number(key) : key]),
    ),
  ];
}

test('whatever the loader takes, an independent validator takes too', () => {
  const places = Object.entries(miniPack()).flatMap(([file, content]) =>
    pathsOf(content)
      .filter((path) => path.length > 0)
      .map((path) => ({ file, path })),
  );
  const texts = [
    'on-dry-soil',
    'soilWarmC',
    'en',
    '2026-10-01',
    '10-01',
    'dry',
    'soil.feel',
    'too-dry',
    'hold',
    'practice',
    'label',
    'km/h',
    'signs',
    '',
  ];
  const value = fc.oneof(
    fc.constant(undefined),
    fc.constantFrom<unknown>(
      ...texts,
      ...Object.values(miniPack()),
      { rule: 'too-dry' },
      { fact: 'soil.feel', is: 'dry' },
    ),
    fc.double({ noNaN: true, noDefaultInfinity: true }),
    fc.jsonValue({ maxDepth: 2 }),
    fc
      .constantFrom(...places)
      .map(({ file, path }) =>
        path.reduce<unknown>((at, step) => (at as Record<string, unknown>)[step], miniPack()[file]),
      ),
  );
  let taken = 0;
  fc.assert(
    fc.property(fc.constantFrom(...places), value, ({ file, path }, instead) => {
      const parsed = miniPack();
      changed(parsed[file], path, instead);
      const files = filesOf(parsed);
      if (!checkPack(files).ok) return;
      taken += 1;
      const validate = validators.get(kindOf(file))!;
      expect(validate(JSON.parse(files.get(file)!)), `${path.join('/')}: ${JSON.stringify(validate.errors)}`).toBe(
        true,
      );
    }),
    { numRuns: 1500 },
  );
  expect(taken).toBeGreaterThan(100);
});

test('the name of the schema does not count for the hash of a pack', () => {
  const plain = checkPack(filesOf(miniPack()));
  const parsed = miniPack();
  for (const [file, content] of Object.entries(parsed))
    parsed[file] = { $schema: '../schemas/x.schema.json', ...(content as object) };
  const named = checkPack(filesOf(parsed));
  expect(plain.ok && named.ok && named.pack.hash === plain.pack.hash).toBe(true);
});
