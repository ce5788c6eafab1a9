import type { Pack } from '../../core/rules/pack-types.ts';
import type { Rule } from '../../core/rules/types.ts';
import { type Parameters, parametersOn } from '../../core/units/parameter.ts';
import { inLanguage, sourceIn } from '../../core/units/texts.ts';
import { conditionText } from './condition-text.ts';
import { markdownTable } from './table.ts';

/** docs/rules.md: every pack under rules/ with the page that prints its rules. */
export function packsPage(packs: readonly Pack[]): string {
  const rows = packs.map(({ id, version, title, scope, rules }) => [
    `[${title['en'] ?? id}](rules/${id}.md)`,
    scope['en'] ?? '',
    String(rules.length),
    version,
  ]);
  return [
    '# Rules',
    '',
    'Made from the packs under `rules/` by `npm run docs`; a test keeps it fresh. Each page prints rules, questions, cautions and',
    'limits of one treatment, in English. Local conditions are not in it: `npx loamward rules say --overlay FILE` prints them.',
    '',
    markdownTable(['Treatment', 'What for', 'Rules', 'Version'], rows),
    '',
  ].join('\n');
}

/** docs/rules/ID.md: rules and parameters of a pack as they stand on a day. */
export function rulesPage(pack: Pack, isoDate: string): string {
  const parameters = parametersOn(pack.parameters, isoDate);
  const topics = [...new Set(pack.rules.map((rule) => rule.topic))];
  return [
    `# Rules: ${pack.title['en'] ?? pack.id}`,
    '',
    `Made from \`rules/${pack.id}/\` (version ${pack.version}) by \`npm run docs\`; a test keeps it fresh.`,
    '',
    'A *stop* that is met means do not spray; a *hold* means wait; *advice* changes nothing. What is not known never counts as',
    'fit. The label in hand, local law and a qualified adviser outrank every line here.',
    '',
    ...topics.flatMap((topic) => [
      `## ${topic}`,
      '',
      ...pack.rules.filter((rule) => rule.topic === topic).flatMap((rule) => [ruleSection(rule, parameters), '']),
    ]),
    '## Questions',
    '',
    'Asked only where the answer can still change the verdict, cheapest first.',
    '',
    questionTable(pack),
    '',
    '## Cautions',
    '',
    ...pack.cautions.map(({ id, authority, text }) => `- **${id}** (${authority}): ${text['en'] ?? ''}`),
    '',
    '## Parameters',
    '',
    parameterTable(parameters),
    '',
  ].join('\n');
}

function ruleSection(rule: Rule, parameters: Parameters): string {
  const text = rule.text['en'];
  const lifts = rule.lifts ? `, lifted by: ${rule.lifts}` : '';
  const tighten = rule.protectedByPractice || rule.authority !== 'practice' ? ' An overlay may only tighten it.' : '';
  return [
    `### ${rule.id}`,
    '',
    `**${text?.title ?? rule.id}.** ${rule.effect}, ${rule.authority}${lifts}.${tighten}`,
    '',
    `Met when ${conditionText(rule.when, parameters)}.`,
    '',
    `Why: ${inLanguage(rule.why, 'en')}`,
    '',
    `Source: ${sourceIn(rule.source, 'en')}`,
  ].join('\n');
}

function questionTable(pack: Pack): string {
  const rows = pack.questions.map(({ id, facts, text, effortSeconds, forDose }) => [
    `\`${id}\``,
    text['en']?.ask ?? '',
    facts.map((fact) => `\`${fact}\``).join(', '),
    `${effortSeconds} s${forDose ? ', for the dose only' : ''}`,
  ]);
  return markdownTable(['Question', 'Asks', 'Settles', 'Effort'], rows);
}

function parameterTable(parameters: Parameters): string {
  const rows = [...parameters.values()]
    .sort((a, b) => (a.id < b.id ? -1 : 1))
    .map((parameter) => [
      `\`${parameter.id}\``,
      `${Array.isArray(parameter.value) ? parameter.value.join(', ') : parameter.value} ${parameter.unit}`,
      inLanguage(parameter.why, 'en'),
      sourceIn(parameter.source, 'en'),
      parameter.tighter,
    ]);
  return markdownTable(['Parameter', 'Value', 'Why', 'Source', 'Tighter is'], rows);
}
