import { catalogueOf } from '../src/core/words/catalogue.ts';

/** Sentences shared with the server and the terminal. */
export const coreWords = catalogueOf('en');

/** What the page itself says: labels of its parts and states of the connection. */
export const pageWords = {
  name: 'Loamward',
  skip: 'Skip to the question',
  invented: 'Invented',
  inventedNote: 'Invented farm, invented day, invented weather: nothing here is about a real field.',
  ownField: 'My own field',
  ownFieldNote: 'The questions about the field are asked as they matter.',
  start: {
    heading: 'Is today the day?',
    lead: 'A few questions about one field, then a plain answer: spray today, wait, or do not spray, with every reason.',
    which: 'Which field?',
    demo: 'Try it on Hollin Bank Farm. It is invented: three fields, a November and its weather.',
    back: 'Back to the conversation',
  },
  log: 'Conversation so far',
  earlier: (count: number) => `Show ${count} earlier ${count === 1 ? 'line' : 'lines'}`,
  fewer: 'Show fewer lines',
  you: 'You',
  undone: 'taken back',
  notSentYet: 'not sent yet',
  undo: 'Undo',
  undoWhat: (what: string) => `Undo: ${what}`,
  question: {
    how: 'How do I find out?',
    dontKnow: "I don't know",
    verdictNow: 'Give me the answer with what you have',
    send: 'Send',
    ownWords: 'Or say it in your own words',
    ownWordsAny: 'Say something',
    ownWordsHelp: 'Several things at once are fine, units too: clay loam, 9.2 at 30 cm, drains not running.',
    take: 'Take this',
    signsHelp: 'Tick all that you see, then confirm.',
    signsTake: (count: number) => `Confirm: ${count} ${count === 1 ? 'sign' : 'signs'}`,
    signsNone: 'Confirm: none of these',
    placeHere: "Use this device's place",
    placeBusy: 'Asking the device for its place…',
    placeRefused: 'The device did not give its place. Read latitude and longitude off a map and fill them in.',
    range: (low: string, high: string, unit: string) => `From ${low} to ${high}${unit}`,
  },
  number: {
    empty: (label: string) => `Nothing is filled in for ${label}. Fill in a number, or press "I don't know".`,
    notANumber: (label: string, unit: string, came: string) =>
      `"${came}" is not just a number. For ${label} write only a number${unit}, for example 9.2 or 9,2. Other units go in the box for your own words.`,
    twoWays: (came: string, whole: string, decimal: string) =>
      `"${came}" can be read in two ways. Write ${whole}, or ${decimal}.`,
    outside: (label: string, low: string, high: string, unit: string, came: string) =>
      `${label} goes from ${low} to ${high}${unit}; ${came} lies outside.`,
  },
  said: {
    heading: 'What you have told me',
    none: 'Nothing yet.',
  },
  verdict: {
    reasons: { 'spray-today': 'What was weighed', wait: 'What it waits for', 'do-not-spray': 'What speaks against it' },
    notKnown: 'Not known',
    unknowns: (count: number) => `Not known yet (${count})`,
    jobs: 'To do or find out',
    jobsLater: (count: number) => `To do or find out for another time (${count})`,
    advice: 'Worth knowing',
    dose: 'Dose',
    workOutDose: 'Work out the dose',
    cautions: 'Cautions, always',
    basis: 'What this rests on',
    trace: (count: number) => `Every rule, one by one (${count})`,
    traceLead: 'Each rule with its outcome, what it read, its limit, how much room was left, and who says so.',
    read: 'What it read',
    limits: 'Limits',
    room: 'Room',
    because: 'Why',
    source: 'Source',
    authority: 'Who says so',
    checkRest: 'Check the rest too',
    lookAgain: 'Look again',
    withdrawn: 'That answer is withdrawn: something it stood on has grown too old.',
    withdrawnWhy:
      'Spray today was true for a while only. Look again before you go on: what is still good is not asked twice.',
    old: 'This answer has grown old.',
  },
  status: {
    connecting: 'Connecting…',
    lost: 'No connection: trying again.',
    lostUnsent: (count: number) =>
      `No connection: trying again. ${count === 1 ? 'What you said is' : `${count} things you said are`} kept and sent when it is back.`,
    cameBack: 'The connection is back.',
    otherVersion: 'The page is older than the server. Load it anew to go on.',
    reload: 'Load the page anew',
    forecast: 'Fetching the forecast…',
    rules: 'Weighing the rules…',
    sending: 'Sending…',
    opening: 'Opening the field…',
  },
  refusal: { heading: 'That did not go through', expected: 'Expected', came: 'Came', putAway: 'Put away' },
  menu: { heading: 'This conversation', again: 'Start again on this field', another: 'Another field' },
  foot: [
    'Loamward is not a label, not a permit and not a qualified adviser. The label in hand, local law and your adviser decide.',
    'What is not known never counts as approval.',
  ],
};
