import { parametersFor } from '../facts/needed-parameters.ts';
import type { CompiledRules } from '../rules/types.ts';

/**
 * True where facts come out the same under both rule sets: those that both reach are defined alike, and every parameter of ageing,
 * derivation and bands has the same value.
 */
export function factsComeOutAlike(a: CompiledRules, b: CompiledRules): boolean {
  const both = Object.keys(a.registry).filter((id) => b.registry[id] !== undefined);
  const alike = (one: unknown, other: unknown) => JSON.stringify(one) === JSON.stringify(other);
  const read = new Set([...parametersFor(a.registry, false), ...parametersFor(b.registry, false)]);
  return (
    both.every((id) => alike(a.registry[id], b.registry[id])) &&
    [...read].every((id) => alike(a.parameters.get(id)?.value, b.parameters.get(id)?.value))
  );
}
