import type { Loosened } from './compare-conditions.ts';

/** The facts of a breach and how both conditions come out on them: "with soil.surface cracked the shipped rule is met, the changed one not met". */
export function sayBreach({ cells, shipped, changed }: Loosened): string {
  const facts = Object.entries(cells).map(([fact, cell]) => `${fact} ${sayGiven(cell?.given)}`);
  return `with ${facts.join(', ')} the shipped rule is ${say(shipped)}, the changed one ${say(changed)}`;
}

function say(outcome: Loosened['shipped']): string {
  return outcome === 'not-met' ? 'not met' : outcome;
}

function sayGiven(given: unknown): string {
  if (given === null || given === undefined) return 'unknown';
  if (Array.isArray(given)) return given.length === 0 ? 'none' : given.join('/');
  if (typeof given !== 'object') return String(given);
  const { low, high, value, possible } = given as Readonly<Record<string, unknown>>;
  if (low !== undefined) return `${low} to ${high}`;
  return `${sayGiven(value)}, perhaps ${sayGiven(possible)}`;
}
