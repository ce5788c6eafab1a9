import { codedError } from '../../core/errors/coded-error.ts';
import { nearestName } from '../../core/errors/nearest.ts';
import { localDate } from '../../core/facts/local-day.ts';
import { definitionsOf } from '../../core/facts/registry/index.ts';
import { compileRules } from '../../core/rules/compile.ts';
import type { Pack } from '../../core/rules/pack-types.ts';
import { epochSeconds } from '../../core/units/brands.ts';
import type { Catalogue } from '../../core/words/catalogue.ts';
import { describeAuthority } from '../../core/words/labels.ts';
import type { SaidLine } from '../../core/words/say-condition.ts';
import { sayParameter, sayRule, titlesOf } from '../../core/words/say-rule.ts';
import type { Command } from '../command.ts';
import { languageOption, wordsFor } from '../language.ts';
import { overlayOption } from '../overlay-option.ts';
import { firstPack, loadLocalPack, today } from '../packs.ts';

/** `loamward rules say`: each rule of a pack as a sentence made from its structure, by topic. */
export const rulesSay: Command = {
  name: 'rules say',
  summary: 'Prints what each rule of a treatment pack says, made from its structure and not from its own words.',
  words: '[PACK] [RULE]',
  options: {
    overlay: overlayOption,
    language: languageOption,
    json: { type: 'boolean', help: 'print one JSON object' },
  },
  examples: [
    'npx loamward rules say',
    `npx loamward rules say ${firstPack} rain-on-unfit-soil`,
    'npx loamward rules say --language de --json',
  ],
  run: async ({ words: named, ...parsed }, io) => {
    const [name = firstPack, rule = null, ...more] = named;
    if (more.length > 0) {
      throw codedError('OPTION_UNKNOWN', { expected: 'at most a pack and a rule', came: named.join(' ') });
    }
    const { pack } = await loadLocalPack(io, name, parsed.lists['overlay'] ?? [], today(io));
    const words = wordsFor({ words: named, ...parsed }, io);
    const said = sayPack(pack, rule, localDate(epochSeconds(io.now()), pack.zone), words);
    io.write(parsed.options['json'] ? `${JSON.stringify(said)}\n` : asText(said, words));
    return 0;
  },
};

/** What the rules of a pack say on a day, by topic in the order of the files; only one rule where it is named. Throws OPTION_VALUE. */
function sayPack(pack: Pack, only: string | null, isoDate: string, words: Catalogue) {
  const compiled = compileRules(pack, isoDate);
  const ids = pack.rules.map(({ id }) => id);
  if (only !== null && !ids.includes(only)) {
    const nearest = nearestName(only, ids);
    const expected = `a rule of the pack: ${ids.join(', ')}`;
    throw codedError('OPTION_VALUE', { expected, came: only, ...(nearest ? { nearest } : {}) });
  }
  const world = { definitionOf: definitionsOf(pack.facts), titleOf: titlesOf(pack.rules, words) };
  const byId = new Map(compiled.rules.map((rule) => [rule.rule.id, rule]));
  const rules = pack.rules.flatMap(({ id, topic, authority }) => {
    const rule = byId.get(id);
    if (!rule || (only !== null && id !== only)) return [];
    const parameters = rule.parameters.flatMap((name) => {
      const parameter = compiled.parameters.get(name);
      return parameter ? [sayParameter(parameter, words)] : [];
    });
    return [{ topic, title: world.titleOf(id), authority, ...sayRule(rule, world, words), parameters }];
  });
  return { pack: pack.id, version: pack.version, day: isoDate, rules };
}

function asText({ rules }: ReturnType<typeof sayPack>, words: Catalogue): string {
  const topics = [...new Set(rules.map(({ topic }) => topic))];
  const lines = topics.flatMap((topic) => [
    topic,
    ...rules
      .filter((rule) => rule.topic === topic)
      .flatMap((rule) => [
        `  ${rule.title} (${rule.rule}; ${describeAuthority(rule.authority, words)})`,
        ...rule.lines.map(bulleted),
      ]),
    '',
  ]);
  return `${lines.join('\n').trimEnd()}\n`;
}

function bulleted({ depth, text }: SaidLine): string {
  return `    ${depth === 0 ? '' : `${'  '.repeat(depth - 1)}- `}${text}`;
}
