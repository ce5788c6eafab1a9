import type { WordedReason } from '../../../src/core/dialogue/decision-types.ts';

/** A reason named by one letter: a hold of practice that is met and that hours lift, unless said otherwise. */
export function reason(rule: string, more: Partial<WordedReason> = {}): WordedReason {
  return {
    rule,
    effect: 'hold',
    authority: 'practice',
    lifts: 'hours',
    outcome: 'met',
    margin: null,
    marginUnit: null,
    title: `Title ${rule}`,
    text: `Text ${rule}.`,
    lift: `Lift ${rule}.`,
    margins: [],
    marginText: null,
    ...more,
  };
}
