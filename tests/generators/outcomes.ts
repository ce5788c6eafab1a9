import fc from 'fast-check';
import type { Outcome, Trace } from '../../src/core/rules/trace-types.ts';
import type { Authority, Effect, Lifts } from '../../src/core/rules/types.ts';

/** A rule's trace with nothing but what the verdict reads. */
export function traceOf(
  rule: string,
  effect: Effect,
  outcome: Outcome,
  more: { lifts?: Lifts; authority?: Authority } = {},
) {
  const condition = { kind: 'all', outcome, members: [] } as const;
  const lifts = effect === 'advise' ? null : (more.lifts ?? 'hours');
  const authority = more.authority ?? 'practice';
  return {
    rule,
    effect,
    authority,
    lifts,
    outcome,
    facts: [],
    parameters: [],
    margins: [],
    condition,
  } as Trace[number];
}

/** Traces of up to eight rules of any effect and outcome, in id order. */
export const outcomes: fc.Arbitrary<Trace> = fc
  .array(
    fc.tuple(
      fc.constantFrom<Effect>('stop', 'hold', 'advise'),
      fc.constantFrom<Outcome>('met', 'not-met', 'unknown'),
      fc.constantFrom<Lifts>('hours', 'days', 'person', 'season'),
      fc.constantFrom<Authority>('law', 'label', 'water', 'practice'),
    ),
    { maxLength: 8 },
  )
  .map((rules) =>
    rules.map(([effect, outcome, lifts, authority], index) =>
      traceOf(`r${index}`, effect, outcome, { lifts, authority }),
    ),
  );
