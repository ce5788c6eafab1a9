import { expect, test } from 'vitest';
import { languagesOf, type NewPack, newPackFiles } from '../../../../src/core/rules/pack/new-pack.ts';

const head = {
  id: '{id}',
  title: { en: '{title}', de: '{title}' },
  scope: { en: '{active} in {crop}, {id}', de: '{active} in {crop} {other}' },
  languages: ['en', 'de'],
};
const rules = {
  topic: 'first',
  rules: [
    { id: 'windy', text: { en: { title: 'Windy' }, de: { title: 'Windig' } }, limits: [1, 2.5], none: null, empty: {} },
  ],
};
const starter = (): ReadonlyMap<string, string> =>
  new Map([
    ['pack.json', JSON.stringify(head)],
    ['first.rules.json', JSON.stringify(rules)],
    ['cases/days.json', JSON.stringify({ cases: [] })],
    ['CHANGELOG.md', '# {id}, left as it is\n'],
  ]);
const begun = (more: Partial<NewPack> = {}) =>
  newPackFiles(starter(), {
    id: 'oats-in-spring',
    title: 'Oats',
    active: 'example',
    crop: 'oats',
    languages: ['en', 'de'],
    schemas: null,
    ...more,
  });

test('a new pack has its names in the place of those of the example, lists in one line, and other files as they are', () => {
  const files = begun();
  expect([...files.keys()]).toEqual([...starter().keys()]);
  expect(files.get('CHANGELOG.md')).toBe('# {id}, left as it is\n');
  expect(files.get('pack.json')).toMatchInlineSnapshot(`
    "{
      "id": "oats-in-spring",
      "title": {
        "en": "Oats",
        "de": "Oats"
      },
      "scope": {
        "en": "example in oats, oats-in-spring",
        "de": "example in oats {other}"
      },
      "languages": ["en", "de"]
    }
    "
  `);
});

test('it has texts in the languages that are wanted alone, and what is no text of languages whole', () => {
  const files = begun({ languages: ['de'] });
  expect(JSON.parse(files.get('pack.json') ?? '')).toEqual({
    id: 'oats-in-spring',
    title: { de: 'Oats' },
    scope: { de: 'example in oats {other}' },
    languages: ['de'],
  });
  const [windy] = rules.rules;
  expect(JSON.parse(files.get('first.rules.json') ?? '')).toEqual({
    topic: 'first',
    rules: [{ ...windy, text: { de: { title: 'Windig' } } }],
  });
});

test('where schemas lie somewhere, each file names its own first, those of cases from one folder further down', () => {
  const files = begun({ schemas: '../schemas' });
  const named = [...files]
    .filter(([file]) => file.endsWith('.json'))
    .map(([, text]) => Object.entries(JSON.parse(text))[0]);
  expect(named).toEqual([
    ['$schema', '../schemas/pack.schema.json'],
    ['$schema', '../schemas/rules.schema.json'],
    ['$schema', '../../schemas/cases.schema.json'],
  ]);
  expect(begun().get('pack.json')).not.toContain('$schema');
});

test('the languages of an example are those that its head lists; one without a head or list has none', () => {
  expect(languagesOf(starter())).toEqual(['en', 'de']);
  expect(languagesOf(new Map())).toEqual([]);
  expect(languagesOf(new Map([['pack.json', '{}']]))).toEqual([]);
});
