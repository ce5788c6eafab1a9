/** What the assistant says in a conversation beside questions and verdicts. */
export const dialogueWords = {
  hello: 'Choose an answer or say it in your own words; "don\'t know" is an answer too.',
  packInEnglish: 'Questions, rules and jobs are in English: these rules are not translated into this language yet.',
  readAsEnglish: 'What is typed or spoken is read as English; the buttons work as always.',
  field: (name: string, invented: boolean, day: string | null) => {
    if (!invented) return `${name}.`;
    return day === null ? `${name}, an invented field.` : `${name}, an invented field on ${day}.`;
  },
  person: {
    'why-asked': 'Why do you ask?',
    'what-said': 'What have I told you?',
    'check-the-rest': 'Check the rest too.',
    'look-again': 'Look again.',
    dose: 'What is the dose?',
    'verdict-now': 'What is the verdict now?',
    confirm: 'Yes, that is right.',
    deny: 'No, that is wrong.',
    'why-not': 'Why not?',
    when: 'When?',
    needs: 'What would you need?',
    fields: 'How do the fields stand?',
    change: 'Change an answer.',
    keep: 'Leave it as it is.',
    'same-for': 'The same for the next field.',
    language: 'In another language.',
    doesNotKnow: "I don't know.",
    nothing: 'None of these.',
  },
  understood: (phrases: string) => `Understood: ${phrases}.`,
  corrected: (phrases: string) => `Corrected: ${phrases}.`,
  notUnderstood: (pieces: string) => `I did not understand ${pieces}. Nothing was taken from it.`,
  quote: (text: string) => `"${text}"`,
  undone: (phrases: string) => `Taken back: ${phrases}.`,
  undoneNothing: 'Taken back.',
  declined: (label: string) => `Noted as not known: ${label}.`,
  declinedDose: (label: string) => `Noted as not known: ${label}. The dose is told without it where that can be done.`,
  whyAsked: (why: string, rules: string) => `${why} With your answer I can check for: ${rules}.`,
  whyNow: 'Until this is known the answer can still change.',
  saidSoFar: (list: string) => `So far: ${list}.`,
  saidNothing: 'You have told me nothing yet.',
  saidItem: (label: string, value: string, from: string) => `${label}: ${value} (${from})`,
  confirmUnusual: (what: string) => `${what} is far outside what is usual. Is it right?`,
  confirmDoubtful: (quote: string, what: string) => `From "${quote}" I took: ${what}. Is that right?`,
  confirmConflict: (label: string, values: string) => `Two devices gave different answers for ${label}: ${values}.`,
  confirmWhyUnusual: 'A slip of the finger here would change the answer.',
  confirmWhyDoubtful: 'The answer rests on it, so it is read back first.',
  confirmHow: 'Answer yes or no, or give the right value.',
  yes: 'Yes',
  no: 'No',
  confirmed: (what: string) => `Taken: ${what}.`,
  denied: (what: string) => `Not taken: ${what}.`,
  clamped: (time: string) => `The clock of this device is ahead; this counts as said at ${time}.`,
  forecastCame: (time: string, attribution: string) => `Forecast fetched at ${time}. ${attribution}`.trim(),
  doseAsked: 'For the dose I ask two things from the label in hand, once nothing else is open.',
  doseNone: 'No dose while the answer is do not spray.',
  doseOnLabel: 'These rules tell no dose: it stands on the label in hand.',
  earlierVerdict: (headline: string) => `The answer then: ${headline}`,
  withdrawnOld: (time: string) =>
    `"Spray today" was good until ${time} and is withdrawn: something that it rested on is too old. Look again.`,
  withdrawnStale: '"Spray today" is withdrawn: what came in since may change it.',
  failed: (says: string, expected: string, came: string, next: string) =>
    `${says} Expected: ${expected}. Came: ${came}. ${next}`,
  supposed: {
    met: (what: string, verdict: string, because: string) =>
      `Supposing ${what}: ${verdict}${because === '' ? '' : `, because of ${because}`}. This is no answer; what you told stays as it is.`,
    unknown: (what: string, verdict: string, open: string) =>
      open === ''
        ? `Supposing ${what}: ${verdict}, as far as what you told and the forecast go. This is no answer; what you told stays as it is.`
        : `Supposing ${what}: ${verdict}, since this would still not be known: ${open}. This is no answer; what you told stays as it is.`,
  },
  remarks: {
    'readings-differ': (quote: string) =>
      `"${quote}" differs from what you said within the last hour, so I reckon with all between the two. If one was a slip, say "no, it was" and the right one; else read again.`,
  } as Readonly<Record<string, (quote: string) => string>>,
  remark: (quote: string) => `Noticed, but not used: "${quote}".`,
  help: (term: string | null) =>
    `Say what you see, several things at once if you like: "wind 6 km/h, gusts 11 km/h". You can also say: why do you ask, what have I told you, no it was 11, what if it were 9, why not, when, what would you need, ${term === null ? '' : `what does ${term} mean, `}the same for the next field, undo, don't know, verdict, check the rest, look again, dose, start again, another field.`,
  plain: {
    'nothing-found': 'I found nothing to take from that. Say it in other words, or choose an answer.',
    'nothing-to-undo': 'There is nothing to take back.',
    'nothing-to-confirm': 'There is nothing to say yes or no to just now.',
    'no-question': 'No question is open just now. Say what has changed, or "look again".',
    'start-again': 'Starting again: what you told is put aside.',
    'another-field': 'Choose the field.',
    'forecast-failed': 'Until there is a forecast, I ask for the weather.',
    'look-again': 'Looking again with what is still good.',
    'checking-rest': 'The rest is asked too; the answer so far stays.',
    'verdict-asked': 'The answer is given on what is known now.',
    kept: 'Left as it is.',
    'nothing-to-change': 'There is no answer of that kind to change.',
  },
};
