import type { ErrorEntry } from '../entry.ts';

/** What the rules of a pack that loads say together: findings of an analysis. */
export const analysisErrors = {
  PARAMETER_NOT_IN_FORCE: {
    says: 'A parameter that is needed has no value in force on this day: it has ended or not begun.',
    next: 'Add a value that holds on the day, or move validFrom or validTo.',
  },
  PARAMETER_VALIDITY_OVERLAPS: {
    says: 'A value of a parameter says that it holds on although the next one has begun; the next one counts.',
    next: 'End it on the day before the next begins, or leave validTo away.',
  },
  RULE_NEVER_MET: {
    says: 'A rule can never be met, whatever the facts.',
    next: 'Mend the condition or its limits: as it stands it protects nobody.',
  },
  RULE_ALWAYS_MET: {
    says: 'A rule is always met, whatever the facts.',
    next: 'Mend the condition or its limits: as it stands it decides nothing.',
  },
  RULE_BOUNDS_CONTRADICT: {
    says: 'Bounds of one fact contradict each other: no value lies within all of them.',
    next: 'Turn or move one of the bounds, or join them with any.',
  },
  RULE_HIDDEN: {
    says: 'A rule is hidden by another, which is met whenever it is and weighs as much or more.',
    next: 'Take it out, or change it so that it says something of its own.',
  },
  RULE_SAID_TWICE: {
    says: 'Two rules say the same.',
    next: 'Keep one of them.',
  },
  RULE_TOO_BIG: {
    says: 'A rule reads too many facts to be looked at whole, and was not analysed.',
    next: 'Put a part of it into a rule of its own, or look at it by hand.',
  },
  RULE_LIMIT_WITHOUT_CASE: {
    says: 'No cases hold a limit of a rule from both sides.',
    next: 'Add a case just inside the limit and one just outside.',
  },
  QUESTION_NEVER_ASKED: {
    says: 'A question can never be asked: no rule needs what it settles.',
    next: 'Take it out, or write the rule that reads its fact.',
  },
} as const satisfies Record<string, ErrorEntry>;
