/** What is said of questions, of other fields, and to those who ask back. */
export const askingWords = {
  settles: (rules: string) => `What hangs on it now: ${rules}.`,
  more: (count: number) => `${count} more`,
  answerNow: (value: string) => `So far: ${value}.`,
  changing: (label: string) => `Change ${label}: answer anew, or leave it as it is.`,
  carried: (field: string, list: string) =>
    `Carried over from ${field}, since it holds here too: ${list}. Change what does not hold.`,
  carriedFrom: (field: string, from: string) => `${from}, for ${field}`,
  nextField: (name: string) => `Next: ${name}, with what holds for the whole farm.`,
  nextUnknown: 'Choose the next field. What holds for the whole farm is not asked again.',
  explained: (text: string, source: string) => `${text} (${source})`,
  notExplained: (words: string) => `I have no explanation of "${words}".`,
  whyNot: {
    nothing: 'Nothing that is known stands in the way: spray today.',
    inTheWay: (sentences: string) => sentences,
    notKnown: (titles: string) => `Not known yet, and unknown is never approval: ${titles}.`,
  },
  when: {
    today: (until: string | null) => (until === null ? 'Today, now.' : `Today, until ${until}.`),
    over: 'Not this season on this field.',
    lifts: (sentences: string) => `When that has lifted: ${sentences}`,
    openFirst: 'That cannot be told before the open questions are answered.',
  },
  needs: {
    nothing: 'Nothing more: the answer is sure.',
    wait: 'There is no job for you in it: time and weather decide.',
    list: (jobs: string) => jobs,
  },
  hour: {
    now: 'just now',
    at: (hour: number): string => (hour === 12 ? 'noon' : hour < 12 ? `${hour} am` : `${hour - 12} pm`),
  },
  stopped: (fields: string) =>
    `Here we stop. All that you told is kept, and a question that is open waits for you. ${fields} Say anything to go on.`,
  wordsHere: (terms: string) => `Words used here that can be explained: ${terms}. Ask "what does … mean?".`,
  fields: {
    line: (name: string, verdict: string) => `${name}: ${verdict}`,
    until: (verdict: string, time: string) => `${verdict} until ${time}`,
    wasUntil: (verdict: string, time: string) => `was ${verdict} until ${time}, look again`,
    slow: (verdict: string, slowness: string) => `${verdict}, ${slowness}`,
    none: 'no answer yet',
    own: 'This field',
    unseen: 'not looked at today',
    only: 'No field has been looked at today.',
    list: (lines: string) => `Today: ${lines}.`,
    slowness: { hours: 'hours', days: 'days', season: 'not this season' },
  },
};
