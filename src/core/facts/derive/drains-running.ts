import type { FactSource } from '../context.ts';
import { asChoice, derivedChoice, isSurely } from './derived.ts';

/** No drains run where the field has none. */
export const deriveDrainsRunning: FactSource = (context) => {
  const drained = asChoice(context.fact('field.drained'));
  if (drained === null || !isSurely(drained, 'no')) return null;
  return derivedChoice(context, ['no'], drained.goodUntil, 'the field is not drained');
};
