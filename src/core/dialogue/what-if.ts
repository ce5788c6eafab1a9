import { codedError } from '../errors/coded-error.ts';
import { factIdOf, parseFacts } from '../facts/parse/index.ts';
import { definitionIn, type FactId } from '../facts/registry/index.ts';
import type { Reading } from '../facts/types.ts';
import type { Pack } from '../rules/pack-types.ts';
import type { EpochSeconds } from '../units/brands.ts';
import type { VerdictWord } from '../verdict/types.ts';
import { catalogueOf } from '../words/catalogue.ts';
import { describeChange } from '../words/change.ts';
import { type DecideRequest, decideFacts } from './decide.ts';
import type { Decision } from './decision-types.ts';

/** A fact as it would be. */
export interface WhatIfChange {
  readonly fact: FactId;
  readonly reading: Reading;
  /** When it would have been read: the moment asked about, unless it says its own. */
  readonly at: EpochSeconds;
}

/** What the rules would say if some facts were otherwise; the answer itself stays as it is. */
export interface WhatIf {
  readonly changes: readonly WhatIfChange[];
  readonly verdict: VerdictWord;
  readonly headline: string;
  /** How it differs from the answer, in a sentence. */
  readonly change: string;
}

/**
 * Reads `soil.temperature30cmC=9`, `soil.surface=cracked,sticky`, `crop.trueLeaves={"value":3,"low":2,"high":4}` or whatever else
 * a facts file takes for one fact, at the moment asked about in the field's zone. Throws OPTION_VALUE, or the coded error of a
 * facts file. A day is asked about by its moment, never so.
 */
export function parseWhatIf(
  text: string,
  moment: EpochSeconds,
  { zone, facts }: Pick<Pack, 'zone' | 'facts'>,
): WhatIfChange {
  const cut = text.indexOf('=');
  const name = text.slice(0, Math.max(0, cut)).trim();
  const given = text.slice(cut + 1).trim();
  if (name === '' || given === '') {
    throw codedError('OPTION_VALUE', { expected: 'a fact and its value, as soil.temperature30cmC=9', came: text });
  }
  const fact = factIdOf(name, facts);
  const { type } = definitionIn(facts, fact);
  if (type === 'date') {
    throw codedError('OPTION_VALUE', {
      expected: 'a fact other than the date: ask about another day with --at',
      came: text,
    });
  }
  const isPlain = type === 'signs' && !given.startsWith('[') && !given.startsWith('{');
  const signs = given === 'none' ? [] : given.split(',').map((sign) => sign.trim());
  const [read] = parseFacts({ [fact]: isPlain ? signs : jsonOrText(given) }, moment, zone, facts).slice(-1);
  if (read === undefined) throw codedError('OPTION_VALUE', { expected: 'a value of the fact', came: text });
  return { fact, reading: read.reading, at: read.at };
}

/** The answer that the same facts would get with some of them changed, beside the one they get. Throws as `decideFacts`. */
export async function decideWhatIf(
  request: DecideRequest,
  real: Decision,
  changes: readonly WhatIfChange[],
): Promise<WhatIf> {
  const changed = await decideFacts({ ...request, instead: changes });
  return {
    changes,
    verdict: changed.verdict,
    headline: changed.headline,
    change: describeChange(real, changed, catalogueOf(request.language)),
  };
}

function jsonOrText(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return text;
  }
}
