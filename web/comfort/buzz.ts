import type { VerdictWord } from '../../src/core/verdict/types.ts';

/** A pattern of its own for each verdict, ms on and off in turn: one long, two short, three long. */
export const buzzes: Readonly<Record<VerdictWord, readonly number[]>> = {
  'spray-today': [320],
  wait: [90, 110, 90],
  'do-not-spray': [320, 140, 320, 140, 320],
};

/** Lets the device buzz for a verdict where it can and the person has not asked for less motion. */
export function buzzFor(verdict: VerdictWord): void {
  if (matchMedia('(prefers-reduced-motion: reduce)').matches) return;
  navigator.vibrate?.([...buzzes[verdict]]);
}
