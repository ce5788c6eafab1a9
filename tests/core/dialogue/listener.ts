import type { Understand, Understanding, UnderstoodReading } from '../../../src/core/dialogue/understand/types.ts';
import type { FactId } from '../../../src/core/facts/registry/index.ts';

const nothing: Understanding = {
  readings: [],
  intents: [],
  correction: false,
  notUnderstood: [],
  refused: [],
  remarks: [],
};

/** An understanding by heart: each text means just what the table says; any other text is not understood. */
export function listener(table: Readonly<Record<string, Partial<Understanding>>>): Understand {
  return (text) => {
    const meant = table[text];
    return meant ? { ...nothing, ...meant } : { ...nothing, notUnderstood: [text] };
  };
}

/** A reading of a number or one choice. */
export function heard(
  fact: FactId,
  value: number | string,
  more: Partial<UnderstoodReading> = {},
): Pick<Understanding, 'readings'> {
  const reading =
    typeof value === 'number' ? ({ type: 'number', value } as const) : ({ type: 'choice', possible: [value] } as const);
  return { readings: [{ fact, reading, quote: String(value), doubtful: false, ...more }] };
}
