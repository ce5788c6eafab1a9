/** The verdict, what stands behind it and what lifts it. */
export const verdictWords = {
  names: { 'spray-today': 'spray today', wait: 'wait', 'do-not-spray': 'do not spray' },
  sprayToday: 'Spray today: nothing that was checked speaks against it.',
  wait: {
    hours: 'Wait: the weather is against it for now. Look again in some hours.',
    days: 'Wait: it will take days, not hours.',
    season: 'Wait: it will not come right on this field this season.',
    jobs: (count: number) => `Wait until the ${count === 1 ? 'job' : 'jobs'} below ${count === 1 ? 'is' : 'are'} done.`,
    findOut: 'Wait: something that matters is not known. Find it out first.',
  },
  doNotSpray: {
    hours: 'Do not spray now: look again in some hours, when the weather has changed.',
    days: 'Do not spray now: it will take days before this lifts.',
    season: 'Do not spray this field this season.',
    jobs: (count: number) =>
      `Do not spray before the ${count === 1 ? 'job' : 'jobs'} below ${count === 1 ? 'is' : 'are'} done.`,
  },
  allClear: (count: number) => `None of the ${count} reasons to stop or wait applies.`,
  nearest: (label: string, margin: string) => `Nearest to its limit: ${label}, ${margin}.`,
  more: (count: number) => `${count} more`,
  notKnown: (titles: string) => `Cannot be judged yet: ${titles}.`,
  stillUnknown: (titles: string) => `Not judged, since the answer is sure without it: ${titles}.`,
  nothingRead: 'No rule speaks for or against it.',
  outcomes: {
    stop: { met: 'stops it', 'not-met': 'does not apply', unknown: 'not known' },
    hold: { met: 'holds it', 'not-met': 'does not apply', unknown: 'not known' },
    advise: { met: 'worth knowing', 'not-met': 'does not apply', unknown: 'not known' },
  },
  /** What kind of rule it is, and who stands behind it, in a word. */
  kinds: {
    stop: 'stop',
    hold: 'hold',
    advise: 'advise',
    law: 'law',
    label: 'label',
    water: 'water',
    practice: 'practice',
  },
  authorities: {
    law: 'law: ask the local regulator',
    label: 'label: check the label in hand',
    water: 'protection of water',
    practice: 'common practice, no source',
  },
  safety:
    'The label in hand, the local regulator and a qualified adviser come before this answer. If any of them says no, do not spray.',
  change: {
    same: (verdict: string) => `As before: ${verdict}.`,
    sameBut: (verdict: string, what: string) => `Still ${verdict}; ${what}.`,
    now: (before: string, after: string) => `It was ${before}; now ${after}.`,
    nowBecause: (before: string, after: string, what: string) => `It was ${before}; now ${after}, because ${what}.`,
    gone: (titles: string) => `no longer in the way: ${titles}`,
    cleared: (titles: string) => `checked and not in the way: ${titles}`,
    come: (titles: string) => `new in the way: ${titles}`,
    lost: (titles: string) => `no longer known: ${titles}`,
  },
};
