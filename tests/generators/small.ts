import type { Known } from '../../src/core/facts/types.ts';
import type { Condition, Rule } from '../../src/core/rules/types.ts';
import { type EpochSeconds, epochSeconds } from '../../src/core/units/brands.ts';

const said = { known: true, source: 'said', at: epochSeconds(0), goodUntil: null } as const;

/** A known number, with a band where ends are given. */
export function number(value: number, low = value, high = value, goodUntil: EpochSeconds | null = null): Known {
  return { ...said, goodUntil, type: 'number', value, low, high };
}

/** A known choice, or one of several. */
export function choice(...possible: string[]): Known {
  return { ...said, type: 'choice', possible };
}

/** Signs, the second list those that may be there besides. */
export function signsSeen(present: readonly string[], maybe: readonly string[] = []): Known {
  return { ...said, type: 'signs', present, possible: [...present, ...maybe] };
}

/** A known day, YYYY-MM-DD. */
export function day(iso: string): Known {
  return { ...said, type: 'date', iso };
}

/** A hold of practice that hours lift. */
export function holdRule(id: string, when: Condition): Rule {
  return {
    id,
    topic: 'test',
    effect: 'hold',
    authority: 'practice',
    lifts: 'hours',
    protectedByPractice: false,
    source: 'invented',
    why: { en: 'test' },
    when,
    text: {},
  };
}

/** Ten facts that are yes or no. */
export const tenSigns = [
  'field.drained',
  'field.organicSoil',
  'field.bufferMarked',
  'field.loosenedThisSeason',
  'field.waterPlanAgreed',
  'treatment.alreadyApplied',
  'treatment.partnerInTank',
  'crop.frostOnLeaves',
  'weed.present',
  'sun.daylight',
] as const;
