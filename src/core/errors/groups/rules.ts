import type { ErrorEntry } from '../entry.ts';

/** Failures of pack files. */
export const ruleErrors = {
  RULES_FILE_UNREADABLE: {
    says: 'A pack file could not be read.',
    next: 'Check that the file is there and may be read.',
  },
  RULES_NOT_JSON: { says: 'A pack file is not JSON.', next: 'Mend the place named.' },
  RULES_KEY_REPEATED: {
    says: 'A key stands twice in one object, and only the last would count.',
    next: 'Remove or rename one of them.',
  },
  PACK_ONE_FILE_WRONG: {
    says: 'The file is not a pack in one file.',
    next: 'Take the file that `loamward rules pack` made, or the folder of the pack. An overlay is sent as it is and named by --overlay.',
  },
  PACK_HASH_MISFIT: {
    says: 'The pack in one file was changed after it was made.',
    next: 'Ask for the file again. Whoever means the change makes it in the folder and packs that anew.',
  },
  PACK_FILE_MISSING: { says: 'A pack lacks a file.', next: 'Add the file named.' },
  PACK_FILE_UNEXPECTED: {
    says: 'A file does not belong to a pack.',
    next: 'Rename it, or take it out of the folder.',
  },
  PACK_KEY_UNKNOWN: { says: 'A key does not belong here.', next: 'Remove it or correct its spelling.' },
  PACK_KEY_MISSING: { says: 'A key is missing.', next: 'Add it.' },
  PACK_VALUE_WRONG: { says: 'A value has the wrong form.', next: 'Give it in the form expected.' },
  PACK_ID_REPEATED: { says: 'An id is used twice.', next: 'Give one of the two another id.' },
  PACK_LANGUAGE_MISSING: {
    says: 'A text lacks a language of the pack.',
    next: 'Add the text in every language that pack.json lists, and in no other.',
  },
  CONDITION_MALFORMED: {
    says: 'A condition is not of the condition language.',
    next: 'Write one group, one reference, or one fact with one operator.',
  },
  CONDITION_EMPTY: {
    says: 'A group has too few members; an empty group would always be met.',
    next: 'Add a member or remove the group.',
  },
  CONDITION_TOO_DEEP: {
    says: 'Groups are nested too deeply to be read aloud.',
    next: 'Put the inner part into a rule of its own and name it with "rule".',
  },
  CONDITION_EITHER_OF_MISFIT: {
    says: 'An eitherOf does not list different ways to know the same thing.',
    next: 'List comparisons, each of another fact; use any for everything else.',
  },
  RULE_LIFTS_WRONG: {
    says: 'A rule does not say rightly what lifts it.',
    next: 'Give every stop and hold "lifts" and a "lift" sentence, and advice neither.',
  },
  RULE_FACT_UNKNOWN: { says: 'There is no fact of this name.', next: 'Use an id from docs/facts.md.' },
  RULE_OPERATOR_MISFIT: {
    says: 'This operator cannot be used with this fact.',
    next: 'Use an operator for the type of the fact.',
  },
  RULE_CHOICE_UNKNOWN: {
    says: 'This choice does not exist for the fact.',
    next: 'Use one of the choices that the registry lists.',
  },
  RULE_NUMBER_INSIDE: {
    says: 'A number stands inside a rule.',
    next: 'Put the number into parameters.json, or among the parameters of an overlay, with unit, source and why, and name the parameter here.',
  },
  RULE_PARAMETER_UNKNOWN: {
    says: 'There is no parameter of this name in the pack.',
    next: 'Add it to parameters.json or correct its spelling.',
  },
  RULE_REFERENCE_MISSING: {
    says: 'A condition names a rule that does not exist.',
    next: 'Correct the id or add the rule.',
  },
  RULE_REFERENCE_CYCLE: {
    says: 'Rules name each other in a circle.',
    next: 'Break the circle at one of the rules named.',
  },
  RULE_PLACEHOLDER_UNKNOWN: {
    says: 'A text has a placeholder for something that the rule does not read.',
    next: 'Use a fact or parameter of this rule, or plain words.',
  },
  PARAMETER_MISSING: {
    says: 'A parameter that is needed has no value on this day.',
    next: 'Add it to parameters.json with value, unit, source, why and validFrom.',
  },
  PARAMETER_VALUE_WRONG: {
    says: 'A parameter has a value that does not fit its unit.',
    next: 'Give a finite number, a day of the year as MM-DD with unit month-day, or a list with unit list.',
  },
  PARAMETER_UNIT_MISFIT: {
    says: 'A parameter has another unit than what it is compared with.',
    next: 'Convert the value and state the unit of the fact.',
  },
  PARAMETER_UNUSED: {
    says: 'A parameter is read by no rule and not by the program.',
    next: 'Remove it, or use it in a rule.',
  },
  FACT_TOO_COARSE: {
    says: 'The fact is not kept ten times finer than the last decimal place of this limit.',
    next: 'State the limit with fewer decimals, or have the fact kept finer in the registry.',
  },
  PACK_FACT_BUILT_IN: {
    says: 'A pack gives a fact that is built in.',
    next: 'Take another id, or leave the entry away: the fact built in can be read as it is.',
  },
  PACK_FACT_MISFIT: {
    says: 'The parts of a fact of the pack do not fit each other.',
    next: 'Give the parts that its type needs, as docs/packs.md says.',
  },
  PACK_FACT_UNUSED: {
    says: 'A fact of the pack is read by no rule and no question.',
    next: 'Remove it, or read it.',
  },
  CHOICE_STRADDLES_LIMIT: {
    says: 'An answer offered lies on both sides of a limit, so that it would settle nothing.',
    next: 'Split the answer in two, one on each side of the limit; an overlay copies the question whole to do so.',
  },
  QUESTION_MISFIT: {
    says: 'A question or answer does not fit the facts that it settles.',
    next: 'Make the readings fit the types in docs/facts.md.',
  },
  QUESTION_PICTURE_UNKNOWN: {
    says: 'A question names a drawing that there is none of.',
    next: 'Take one of the drawings listed, or leave the picture away.',
  },
  CASE_MISFIT: {
    says: 'A case names something that does not exist, or no day.',
    next: 'Use fact ids from docs/facts.md and rule ids of this pack, and give each case its day.',
  },
} as const satisfies Record<string, ErrorEntry>;
