import type { WhatIf } from '../core/dialogue/what-if.ts';
import { workedOutNote } from '../core/facts/depth-reading.ts';
import { definitionsOf, type FactRegistry } from '../core/facts/registry/index.ts';
import { sayReading } from '../core/facts/say-reading.ts';
import type { Reading } from '../core/facts/types.ts';
import type { Catalogue } from '../core/words/catalogue.ts';
import { labelOf } from '../core/words/facts.ts';

/** What would be if some facts were otherwise, as it stands below an answer in a terminal. */
export function whatIfText({ changes, headline, change }: WhatIf, facts: FactRegistry, words: Catalogue): string {
  const definitionOf = definitionsOf(facts);
  const supposed = changes.map(
    ({ fact, reading }) =>
      `${labelOf(fact, definitionOf, words)} ${sayReading(definitionOf(fact), reading)}${howWorkedOut(reading)}`,
  );
  return [
    '',
    words.terminal.whatIf(supposed.join('; ')),
    `  ${headline} ${change}`,
    `  ${words.terminal.supposed}`,
    '',
  ].join('\n');
}

function howWorkedOut(reading: Reading): string {
  const note = reading.type === 'number' ? workedOutNote(reading) : null;
  return note === null ? '' : ` (${note})`;
}
