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
  span: (from: string, to: string | null) => (to === null ? `from ${from}` : `from ${from} to ${to}`),
};
