import { type UnderstandingReport, understandingReport } from '../../core/dialogue/understand/report.ts';
import { codedError } from '../../core/errors/coded-error.ts';
import { factIdOf } from '../../core/facts/parse/index.ts';
import type { FactId, FactRegistry } from '../../core/facts/registry/index.ts';
import type { Catalogue } from '../../core/words/catalogue.ts';
import { type Command, type Parsed, textOption } from '../command.ts';
import { languageOption, wordsFor } from '../language.ts';
import { packOf, packOption } from '../pack-option.ts';

/** `loamward understand`: what the chat would take from a text. */
export const understandCommand: Command = {
  name: 'understand',
  summary: 'Says what the chat would take from a text, and what it would ask again.',
  options: {
    text: { type: 'string', value: 'TEXT', help: 'what a person typed or spoke' },
    asked: { type: 'string', value: 'FACT', help: 'the fact that the open question asks for' },
    previous: { type: 'string', value: 'FACT', help: 'the fact spoken of before, which a correction means' },
    pack: packOption,
    language: { ...languageOption, help: 'language of the text; that of the system without it' },
    json: { type: 'boolean', help: 'print one JSON object' },
  },
  examples: [
    'npx loamward understand --text "9.2 at 30 cm, not cracked, drains aren\'t running"',
    'npx loamward understand --text "neun Komma zwei, nicht rissig" --language de',
    'npx loamward understand --text "eight and a half" --asked soil.temperature30cmC --json',
  ],
  run: async (parsed, io) => {
    const text = textOption(parsed, 'text');
    if (text === undefined || text.trim() === '') {
      throw codedError('OPTION_VALUE', { expected: '--text TEXT', came: 'no text' });
    }
    const { pack } = await packOf(parsed, io);
    const asked = factOption(parsed, 'asked', pack.facts);
    const previous = factOption(parsed, 'previous', pack.facts);
    const question = asked === null ? null : (pack.questions.find(({ facts }) => facts.includes(asked)) ?? null);
    if (asked !== null && question === null) {
      const askable = pack.questions.flatMap(({ facts }) => facts);
      throw codedError('OPTION_VALUE', { expected: `a fact that is asked: ${askable.join(', ')}`, came: asked });
    }
    const recent = previous === null ? [] : [previous];
    const words = wordsFor(parsed, io);
    const report = understandingReport(text, { asked: question, pack, recent, language: words.language });
    io.write(parsed.options['json'] ? `${JSON.stringify(report)}\n` : asText(report, words));
    return 0;
  },
};

function factOption(parsed: Parsed, name: string, facts: FactRegistry): FactId | null {
  const came = textOption(parsed, name);
  return came === undefined ? null : factIdOf(came, facts);
}

function asText(report: UnderstandingReport, { terminal }: Catalogue): string {
  const { taken, offered, otherDepths, atDepth, supposed, hoursAgo, wanted, refused, notUnderstood, nothing } =
    terminal.understood;
  const list = (values: object): string[] =>
    Object.entries(values).map(([id, value]) => `  ${id} = ${JSON.stringify(value)}`);
  const part = (title: string, lines: readonly string[]): string[] => (lines.length === 0 ? [] : [title, ...lines]);
  const quoted = (texts: readonly string[]) => texts.map((text) => `  ${text}`);
  const lines = [
    ...part(taken, list(report.facts)),
    ...part(offered, list(report.offered)),
    ...part(
      otherDepths,
      report.otherDepths.map(({ depthCm, value }) => `  ${atDepth(JSON.stringify(value), String(depthCm))}`),
    ),
    ...part(supposed, list(report.supposed)),
    ...part(hoursAgo, list(report.hoursAgo)),
    ...part(wanted, quoted(report.intents)),
    ...part(refused, quoted(report.refused)),
    ...part(notUnderstood, quoted(report.notUnderstood)),
  ];
  return `${(lines.length === 0 ? [nothing] : lines).join('\n')}\n`;
}
