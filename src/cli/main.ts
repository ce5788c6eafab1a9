import { codedError, isLoamwardError, LoamwardError } from '../core/errors/coded-error.ts';
import { nearestName } from '../core/errors/nearest.ts';
import type { Catalogue } from '../core/words/catalogue.ts';
import { type Command, helpIn, helpOf, parseOptions } from './command.ts';
import { ask } from './commands/ask.ts';
import { build } from './commands/build.ts';
import { card } from './commands/card.ts';
import { decide } from './commands/decide.ts';
import { practice } from './commands/practice.ts';
import { practiceDays } from './commands/practice-days.ts';
import { rulesCheck } from './commands/rules-check.ts';
import { rulesCompare } from './commands/rules-compare.ts';
import { rulesNew } from './commands/rules-new.ts';
import { rulesPack } from './commands/rules-pack.ts';
import { rulesSay } from './commands/rules-say.ts';
import { rulesTry } from './commands/rules-try.ts';
import { serve } from './commands/serve.ts';
import { understandCommand } from './commands/understand.ts';
import { errorLine } from './error-line.ts';
import type { Io } from './io.ts';
import { wordsOfArguments } from './language.ts';
import { versionOf } from './version.ts';

/** Every subcommand, in the order of `--help`. */
export const commands: readonly Command[] = [
  serve,
  ask,
  decide,
  understandCommand,
  practiceDays,
  practice,
  card,
  rulesCheck,
  rulesSay,
  rulesTry,
  rulesCompare,
  rulesPack,
  rulesNew,
  build,
];

/** Exit status for bad input. */
const badInput = 2;

/** Runs one command line; resolves to the exit status: 0 done, 1 findings, 2 bad input. */
export async function runCommandLine(given: readonly string[], io: Io): Promise<number> {
  const args = languageLast(given);
  const json = args.includes('--json');
  const words = wordsOfArguments(args, io);
  try {
    const first = args[0];
    if (first === undefined || first === '--language' || first === '--help' || first === '-h' || first === 'help')
      return say(io, json, overview(words));
    if (first === '--version' || first === '-v') return sayVersion(io, json);
    const command = findCommand(args);
    const rest = args.slice(command.name.split(' ').length);
    if (rest.includes('--help') || rest.includes('-h')) return say(io, json, helpOf(command, words));
    return await command.run(parseOptions(command, rest), io);
  } catch (error) {
    return report(error, json, io, words);
  }
}

/** The language behind the command, also where it was named before it. */
function languageLast(args: readonly string[]): readonly string[] {
  return args[0] === '--language' ? [...args.slice(2), ...args.slice(0, 2)] : args;
}

/** Writes an error as a person or, with `--json`, a program reads it. */
export function report(error: unknown, json: boolean, io: Io, words = wordsOfArguments([], io)): number {
  const coded = isLoamwardError(error) ? error : unexpected(error);
  io.writeError(json ? `${JSON.stringify(coded.toJSON())}\n` : `${errorLine(coded.toJSON(), words)}\n`);
  return badInput;
}

function unexpected(error: unknown): LoamwardError {
  return new LoamwardError('UNEXPECTED', { expected: 'no failure here', came: String(error) });
}

function findCommand(args: readonly string[]): Command {
  const found = commands.find((command) => command.name.split(' ').every((word, index) => args[index] === word));
  if (found) return found;
  const words = args.filter((word) => !word.startsWith('-'));
  const names = commands.map((command) => command.name);
  const nearest = nearestName(words.slice(0, 2).join(' '), names) ?? nearestName(words[0] ?? '', names);
  throw codedError('COMMAND_UNKNOWN', {
    expected: `one of ${names.join(', ')}`,
    came: args.join(' '),
    ...(nearest ? { nearest } : {}),
  });
}

function overview(words: Catalogue): string {
  const told = (text: string) => helpIn(text, words);
  const width = Math.max(...commands.map((command) => command.name.length)) + 2;
  return [
    `loamward: ${told('does today suit this treatment on this field, and if not, when will it?')}`,
    '',
    ...commands.map((command) => `  loamward ${command.name.padEnd(width)}${told(command.summary)}`),
    '',
    `  loamward COMMAND --help   ${told('options and examples')}`,
    `  loamward --version        ${told('the version')}`,
    '',
    told('It advises; the label in hand, local law and a qualified adviser decide.'),
    '',
  ].join('\n');
}

function say(io: Io, json: boolean, text: string): number {
  io.write(json ? `${JSON.stringify({ help: text })}\n` : text);
  return 0;
}

async function sayVersion(io: Io, json: boolean): Promise<number> {
  const version = await versionOf(io);
  io.write(json ? `${JSON.stringify({ version })}\n` : `${version}\n`);
  return 0;
}
