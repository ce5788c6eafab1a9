import type { Pack } from '../rules/pack-types.ts';
import type { CompiledRule } from '../rules/types.ts';
import type { FieldCard } from '../tour/field-card.ts';
import { inLanguage } from '../units/texts.ts';
import type { CardWords } from './card-words.ts';
import type { Catalogue } from './catalogue.ts';
import type { DefinitionOf } from './phrases.ts';
import { sayCondition } from './say-condition.ts';
import { titlesOf } from './say-rule.ts';
import { showDay } from './times.ts';
import { joinWords } from './units.ts';

/** The card in words: the same for paper, page and terminal. */
export interface SaidCard {
  readonly title: string;
  readonly scope: string;
  readonly lead: string;
  readonly label: string;
  readonly effectsTold: string;
  readonly parts: readonly { readonly heading: string; readonly rows: readonly SaidRow[] }[];
  /** Further headings with a line each: hand test, water areas. */
  readonly lines: readonly { readonly heading: string; readonly text: string }[];
  readonly cautions: { readonly heading: string; readonly lines: readonly string[] };
  readonly safety: string;
  readonly made: string;
}

/** One rule on the card. */
export interface SaidRow {
  readonly rule: string;
  readonly effect: CompiledRule['rule']['effect'];
  /** "WAIT". */
  readonly mark: string;
  readonly title: string;
  /** When it is met, with limits and units, without names of parameters. */
  readonly when: string;
}

/** Days that the card names, ISO 8601: that of its limits and that of printing. */
export interface CardDays {
  readonly limits: string;
  readonly printed: string;
}

/** A card in words of one language. */
export function sayCard(
  card: FieldCard,
  pack: Pack,
  days: CardDays,
  { catalogue: words, card: own, definitionOf }: { catalogue: Catalogue; card: CardWords; definitionOf: DefinitionOf },
): SaidCard {
  const plain = withoutNames(words);
  const world = { definitionOf, titleOf: titlesOf(pack.rules, words) };
  const { language } = words;
  const row = ({ rule, condition }: CompiledRule): SaidRow => ({
    rule: rule.id,
    effect: rule.effect,
    mark: own.effects[rule.effect],
    title: world.titleOf(rule.id),
    when: sayCondition(condition, world, plain),
  });
  return {
    title: own.title(inLanguage(pack.title, language)),
    scope: inLanguage(pack.scope, language),
    lead: own.lead,
    label: own.label,
    effectsTold: own.effectsTold,
    parts: card.parts.map(({ part, rules }) => ({ heading: own.parts[part], rows: rules.map(row) })),
    lines: linesOf(card, words, own, world.titleOf),
    cautions: { heading: own.cautions, lines: pack.cautions.map(({ text }) => inLanguage(text, language)) },
    safety: words.verdict.safety,
    made: own.made(pack.version, pack.hash.slice(0, 12), showDay(days.limits, words), showDay(days.printed, words)),
  };
}

function linesOf(
  { hand, waterArea }: FieldCard,
  words: Catalogue,
  own: CardWords,
  titleOf: (rule: string) => string,
): SaidCard['lines'] {
  const { language } = words;
  const classes = hand?.classes.map(({ choice, met }) => {
    const label = hand.question.choices?.find(({ id }) => id === choice)?.label ?? {};
    const means =
      met.length === 0 ? own.handFine : joinWords(met.map(titleOf).map(words.values.inSentence), words.values.and);
    return `${inLanguage(label, language)}: ${means}`;
  });
  const how = waterArea?.text[language] ?? waterArea?.text['en'];
  return [
    ...(classes ? [{ heading: own.hand, text: `${classes.join('; ')}.` }] : []),
    ...(how ? [{ heading: own.waterArea, text: how.how }] : []),
  ];
}

/** The same words, but rules are told without the names of parameters and the ids of rules, for who only reads limits. */
function withoutNames(words: Catalogue): Catalogue {
  const { say } = words;
  const bare = <Key extends string>(sayers: Readonly<Record<Key, (a: string, b: string, c: string) => string>>) =>
    Object.fromEntries(
      Object.entries<(a: string, b: string, c: string) => string>(sayers).map(([key, sayer]) => [
        key,
        (subject: string, limit: string, name: string) => sayer(subject, limit, name).replace(` (${name})`, ''),
      ]),
    ) as Record<Key, (a: string, b: string, c: string) => string>;
  return {
    ...words,
    say: {
      ...say,
      number: bare(say.number),
      day: bare(say.day),
      named: (choices) => choices,
      rule: { ...say.rule, whole: (title) => words.values.inSentence(title) },
    },
  };
}

/** The card as plain text, for a terminal. */
export function cardText(card: SaidCard): string {
  const width = Math.max(...card.parts.flatMap(({ rows }) => rows.map(({ mark }) => mark.length)));
  return [
    card.title,
    card.scope,
    '',
    card.label,
    card.lead,
    card.effectsTold,
    ...card.parts.flatMap(({ heading, rows }) => [
      '',
      heading,
      ...rows.map(({ mark, title, when }) => `  ${mark.padEnd(width)}  ${title}: ${when}`),
    ]),
    ...card.lines.flatMap(({ heading, text }) => ['', heading, `  ${text}`]),
    '',
    card.cautions.heading,
    ...card.cautions.lines.map((line) => `  - ${line}`),
    '',
    card.safety,
    card.made,
    '',
  ].join('\n');
}
