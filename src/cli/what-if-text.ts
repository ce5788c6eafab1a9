import type { WhatIf } from '../core/dialogue/what-if.ts';
import { factDefinition } from '../core/facts/registry/index.ts';
import { sayReading } from '../core/facts/say-reading.ts';

/** What would be if some facts were otherwise, as it stands below an answer in a terminal. */
export function whatIfText({ changes, headline, change }: WhatIf): string {
  const supposed = changes.map(({ fact, reading }) => `${factDefinition(fact).label} ${sayReading(fact, reading)}`);
  return [
    '',
    `What if: ${supposed.join('; ')}`,
    `  ${headline} ${change}`,
    '  Supposed, not seen: the answer above stands.',
    '',
  ].join('\n');
}
