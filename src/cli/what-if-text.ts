import type { WhatIf } from '../core/dialogue/what-if.ts';
import { workedOutNote } from '../core/facts/depth-reading.ts';
import { factDefinition } from '../core/facts/registry/index.ts';
import { sayReading } from '../core/facts/say-reading.ts';
import type { Reading } from '../core/facts/types.ts';

/** What would be if some facts were otherwise, as it stands below an answer in a terminal. */
export function whatIfText({ changes, headline, change }: WhatIf): string {
  const supposed = changes.map(
    ({ fact, reading }) => `${factDefinition(fact).label} ${sayReading(fact, reading)}${howWorkedOut(reading)}`,
  );
  return [
    '',
    `What if: ${supposed.join('; ')}`,
    `  ${headline} ${change}`,
    '  Supposed, not seen: the answer above stands.',
    '',
  ].join('\n');
}

function howWorkedOut(reading: Reading): string {
  const note = reading.type === 'number' ? workedOutNote(reading) : null;
  return note === null ? '' : ` (${note})`;
}
