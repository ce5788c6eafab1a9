import { nearestName } from '../../errors/nearest.ts';
import { cameAs, type GivenFact, isJsonObject, refuse } from './given.ts';

/**
 * The members of a given value by name: a plain value stands for `{ "value": it }`. Throws FACT_WRONG_TYPE for an
 * object that lacks `value` or holds a member that this kind of fact does not take.
 */
export function membersOf(fact: GivenFact, further: readonly string[]): Readonly<Record<string, unknown>> {
  if (!isJsonObject(fact.given)) return { value: fact.given };
  const allowed = ['value', ...further];
  const stranger = Object.keys(fact.given).find((key) => !allowed.includes(key));
  if (stranger !== undefined) {
    const nearest = nearestName(stranger, allowed);
    throw refuse(fact, 'FACT_WRONG_TYPE', {
      expected: `only ${allowed.map((key) => `"${key}"`).join(', ')}`,
      came: cameAs(stranger),
      ...(nearest === undefined ? {} : { nearest }),
    });
  }
  if (!Object.hasOwn(fact.given, 'value')) {
    throw refuse(fact, 'FACT_WRONG_TYPE', { expected: 'a member "value"', came: cameAs(fact.given) });
  }
  return fact.given;
}

/** The steps of a JSON Pointer from a fact to a member of its value, or to one of a list; undefined for the plain value itself. */
export function memberStep(fact: GivenFact, member: string, index?: number): string | undefined {
  const steps = [...(isJsonObject(fact.given) ? [member] : []), ...(index === undefined ? [] : [String(index)])];
  return steps.length === 0 ? undefined : steps.join('/');
}
