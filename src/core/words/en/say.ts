/** Rules, conditions and parameters as sentences made from their structure, for who writes or checks them. */
export const sayWords = {
  effects: { stop: 'Stops', hold: 'Holds', advise: 'Advises' },
  lifts: {
    hours: 'lifts in hours',
    days: 'lifts in days',
    person: 'lifts once a person has seen to it',
    season: 'does not lift this season',
  },
  sentence: (head: string, condition: string) => `${head}: when ${condition}.`,
  /** The same, where the condition follows as lines. */
  opening: (head: string, lead: string) => `${head}: when ${lead}`,
  /** Facts whose names are plurals. */
  plural: ['crop.trueLeaves', 'weed.plantsPerM2', 'weed.tillers', 'wind.gustKmh'] as readonly string[],
  is: 'is',
  are: 'are',
  number: {
    below: (subject: string, limit: string, name: string) => `${subject} below ${limit} (${name})`,
    atMost: (subject: string, limit: string, name: string) => `${subject} ${limit} or less (${name})`,
    above: (subject: string, limit: string, name: string) => `${subject} above ${limit} (${name})`,
    atLeast: (subject: string, limit: string, name: string) => `${subject} ${limit} or more (${name})`,
  },
  day: {
    below: (subject: string, limit: string, name: string) => `${subject} before ${limit} (${name})`,
    atMost: (subject: string, limit: string, name: string) => `${subject} ${limit} (${name}) or before`,
    above: (subject: string, limit: string, name: string) => `${subject} after ${limit} (${name})`,
    atLeast: (subject: string, limit: string, name: string) => `${subject} ${limit} (${name}) or after`,
  },
  choice: {
    is: (label: string, choice: string) => `${label}: ${choice}`,
    isNot: (label: string, choice: string) => `${label}: not ${choice}`,
    oneOf: (label: string, choices: string) => `${label}: one of ${choices}`,
    noneOf: (label: string, choices: string) => `${label}: none of ${choices}`,
    has: (label: string, sign: string) => `${label} shows “${sign}”`,
  },
  named: (choices: string, name: string) => `${choices} (${name})`,
  all: { joiner: ', and ', one: (member: string) => `all of (${member})`, lead: 'all of these hold:' },
  any: { joiner: ', or ', one: (member: string) => `any of (${member})`, lead: 'any of these holds:' },
  eitherOf: {
    joiner: ', or ',
    whole: (members: string) => `whichever is known of (${members})`,
    lead: 'any of these holds, as far as each is known:',
  },
  not: { whole: (member: string) => `it is not so that (${member})`, lead: 'it is not so that:' },
  rule: {
    whole: (title: string, id: string, member: string) => `“${title}” (${id}) applies, that is (${member})`,
    lead: (title: string, id: string) => `“${title}” (${id}) applies, that is:`,
  },
  acrossNewYear: (text: string) => `across the new year: ${text}`,
  parameter: (id: string, value: string, tighter: string, span: string) => `${id} is ${value} ${span}; ${tighter}.`,
  tighter: {
    lower: 'lower is tighter',
    higher: 'higher is tighter',
    fewer: 'fewer are tighter',
    more: 'more are tighter',
    neither: 'neither way is tighter',
  },
  tried: {
    sum: (cases: number, changes: number, noticed: number, equal: number, survivors: number) =>
      `${cases} cases, ${changes} changes: ${noticed} noticed, ${equal} that no facts can tell apart, ${survivors} that no case notices.`,
    failing: 'Nothing was changed, since these cases do not come out as they say:',
    unjudged: 'Left out, since a limit does not hold on their day; give your own cases a day on which it does:',
    leftOut: (cases: number, day: string, parameter: string) =>
      `${cases} ${cases === 1 ? 'case' : 'cases'} of ${day}: ${parameter} does not hold then`,
    failed: (expected: string, given: string) => `It says: ${expected}. It comes to: ${given}.`,
    made: (id: string, before: string, after: string) => `${id}: ${before} made ${after}`,
    equal: 'No facts can tell these from the rules as they are:',
    survivors: 'No case notices these:',
    was: (sentence: string) => `is:      ${sentence}`,
    now: (sentence: string) => `changed: ${sentence}`,
    kill: (facts: string, expected: string) => `A case that would: ${facts}. Expect ${expected}.`,
    expected: (verdict: string, met: string) => (met === '' ? verdict : `${verdict}, with ${met} met`),
    notMet: (rule: string) => `${rule} not met`,
    unknown: (rule: string) => `${rule} not known`,
    missing: (facts: string) =>
      facts === '' ? 'nothing that is missing could change it' : `missing that could change it: ${facts}`,
    over: (name: string, file: string) => `All else as on the day of “${name}” in ${file}.`,
    factNotKnown: (label: string) => `${label}: not known`,
    noKill: (facts: string) => `No plain day was found that shows it; the rule comes out otherwise with ${facts}.`,
  },
  span: (from: string, to: string | null) => (to === null ? `from ${from}` : `from ${from} to ${to}`),
};
