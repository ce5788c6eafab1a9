import { parseArgs } from 'node:util';
import { codedError } from '../core/errors/coded-error.ts';
import { nearestName } from '../core/errors/nearest.ts';
import type { Catalogue } from '../core/words/catalogue.ts';
import { phraseIn } from '../core/words/phrase-table.ts';
import type { Io } from './io.ts';

/** One option of a command. */
export interface OptionSpec {
  readonly type: 'string' | 'boolean';
  /** What follows the option in the usage line, for example FILE. */
  readonly value?: string;
  readonly help: string;
  /** True where it may be given several times. */
  readonly repeats?: true;
}

/** Values of options and the words that are no option. */
export interface Parsed {
  readonly options: Readonly<Record<string, string | boolean | undefined>>;
  readonly words: readonly string[];
  /** Every value of options that may be given several times, in order. */
  readonly lists: Readonly<Record<string, readonly string[]>>;
}

/** One subcommand: name, help and what it does; `run` returns the exit status. */
export interface Command {
  /** Words that call it: `rules check`. */
  readonly name: string;
  readonly summary: string;
  /** Words after the name in the usage line. */
  readonly words?: string;
  readonly options: Readonly<Record<string, OptionSpec>>;
  readonly examples: readonly string[];
  readonly run: (parsed: Parsed, io: Io) => Promise<number>;
}

/** Options of a command line. Throws OPTION_UNKNOWN or OPTION_VALUE. */
export function parseOptions(command: Command, args: readonly string[]): Parsed {
  const options = Object.fromEntries(
    Object.entries(command.options).map(([name, spec]) => [name, { type: spec.type } as const]),
  );
  const { tokens } = parseArgs({ args: [...args], options, strict: false, allowPositionals: true, tokens: true });
  const values: Record<string, string | boolean> = {};
  const words: string[] = [];
  const lists: Record<string, string[]> = {};
  for (const token of tokens ?? []) {
    if (token.kind === 'positional') words.push(token.value);
    if (token.kind !== 'option') continue;
    const spec = command.options[token.name];
    if (!spec) throw unknownOption(command, token.rawName, token.name);
    if (spec.type === 'string' && token.value === undefined) {
      throw codedError('OPTION_VALUE', { expected: `${token.rawName} ${spec.value ?? 'VALUE'}`, came: token.rawName });
    }
    if (spec.type === 'boolean' && token.value !== undefined) {
      throw codedError('OPTION_VALUE', { expected: token.rawName, came: `${token.rawName}=${token.value}` });
    }
    values[token.name] = token.value ?? true;
    if (spec.repeats && token.value !== undefined) lists[token.name] = [...(lists[token.name] ?? []), token.value];
  }
  if (words.length > 0 && !command.words) {
    throw codedError('OPTION_UNKNOWN', { expected: `no words after ${command.name}`, came: words.join(' ') });
  }
  return { options: values, words, lists };
}

/** The text of an option, or undefined. */
export function textOption(parsed: Parsed, name: string): string | undefined {
  const value = parsed.options[name];
  return typeof value === 'string' ? value : undefined;
}

/** What the help says, in the language of the words. */
export function helpIn(text: string, words: Catalogue): string {
  return phraseIn(text, words.help) ?? text;
}

/** The `--help` of a command. */
export function helpOf(command: Command, spoken: Catalogue): string {
  const told = (text: string) => helpIn(text, spoken);
  const rows = Object.entries(command.options).map(
    ([name, spec]) => [`--${name}${spec.value ? ` ${spec.value}` : ''}`, told(spec.help)] as const,
  );
  const width = Math.max(...rows.map(([left]) => left.length)) + 2;
  const lines = rows.map(([left, right]) => `  ${left.padEnd(width)}${right}`);
  const words = command.words ? ` ${command.words}` : '';
  return [
    `loamward ${command.name}${words} ${told('[options]')}`,
    '',
    told(command.summary),
    '',
    ...lines,
    '',
    told('For example:'),
    ...command.examples.map((example) => `  ${told(example)}`),
    '',
  ].join('\n');
}

function unknownOption(command: Command, came: string, name: string) {
  const known = Object.keys(command.options);
  const nearest = nearestName(name, known);
  return codedError('OPTION_UNKNOWN', {
    expected: `one of ${known.map((option) => `--${option}`).join(', ')}`,
    came,
    ...(nearest ? { nearest: `--${nearest}` } : {}),
    next: `See loamward ${command.name} --help.`,
  });
}
