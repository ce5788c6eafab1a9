import { codedError } from '../core/errors/coded-error.ts';
import { type Catalogue, catalogueOf, languageCodes } from '../core/words/catalogue.ts';
import { type OptionSpec, type Parsed, textOption } from './command.ts';
import type { Io } from './io.ts';

const known = languageCodes;

/** The option by which a command is told its language. */
export const languageOption: OptionSpec = {
  type: 'string',
  value: 'CODE',
  help: `language of what is said: ${known.join(', ')}; that of the system without it`,
};

/** Words of the language that the option names, else LOAMWARD_LANGUAGE, else the system's, else English. Throws OPTION_VALUE. */
export function wordsFor(parsed: Parsed, io: Pick<Io, 'env'>): Catalogue {
  const named = textOption(parsed, 'language');
  if (named === undefined) return wordsOfSystem(io);
  if (!known.includes(named)) {
    throw codedError('OPTION_VALUE', { expected: `--language with one of ${known.join(', ')}`, came: named });
  }
  return catalogueOf(named);
}

/** Words to tell errors of a command line in: of the language that it names, readable or not, else of the system's. */
export function wordsOfArguments(args: readonly string[], io: Pick<Io, 'env'>): Catalogue {
  const named = args[args.indexOf('--language') + 1] ?? '';
  return args.includes('--language') && known.includes(named) ? catalogueOf(named) : wordsOfSystem(io);
}

/** Words of the language of the system: LOAMWARD_LANGUAGE, then the locale by POSIX's order; English where there is none of them. */
function wordsOfSystem({ env }: Pick<Io, 'env'>): Catalogue {
  const wished = ['LOAMWARD_LANGUAGE', 'LC_ALL', 'LC_MESSAGES', 'LANG'].map((name) => env[name] ?? '');
  const first = wished.find((locale) => locale !== '') ?? 'en';
  return catalogueOf(first.slice(0, 2).toLowerCase());
}
