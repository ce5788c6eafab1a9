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
  putAside: (count: number) => `Put aside: ${count} ${count === 1 ? 'line' : 'lines'} from before`,
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
    unknowns: (count: number) => `Not judged, since the answer is sure without it (${count})`,
    jobs: 'To do',
    findOut: 'To find out',
    unjudged: (count: number) => `What cannot be judged yet (${count})`,
    jobsLater: (count: number) => `To do for another time (${count})`,
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
  refusal: {
    heading: 'That did not go through',
    safe: 'What you told is kept. Nothing was approved by this: do not spray on an answer that did not come.',
    expected: 'Expected',
    came: 'Came',
    putAway: 'Put away',
  },
  comfort: {
    heading: 'Screen, sound and speech',
    open: 'Settings',
    look: 'How the page looks',
    looks: { device: 'As the device', day: 'Day', night: 'Night', sun: 'Strong sun' },
    voice: 'Sound and speech',
    buzz: {
      label: 'Buzz with an answer',
      help: 'One long for spray today, two short for wait, three long for do not spray.',
      cannot: 'This device cannot buzz.',
    },
    readsAloud: {
      label: 'Read questions and answers aloud',
      help: 'Some browsers send the text to a voice service of their maker.',
      cannot: 'This browser cannot read aloud.',
    },
    listens: {
      label: 'Let me speak instead of typing',
      help: 'Some browsers send what you say to a service of their maker to turn it into text. It needs a connection there.',
      cannot:
        'This browser cannot listen here. Browsers permit it on https pages only; the microphone of the keyboard may work.',
    },
    sendsHeard: {
      label: 'Send what was heard at once',
      help: 'Otherwise it waits in the box for you to look over and send.',
      cannot: '',
    },
    kept: 'Kept on this device only.',
    readAloud: 'Read aloud',
    hush: 'Stop reading',
    speak: 'Speak',
    stopListening: 'Stop listening',
    listening: 'Listening…',
    heard: 'Heard. Look it over, then press Send.',
    problems: {
      refused:
        'The browser did not give the microphone. Nothing was sent. Permit it in the settings of the browser, or type.',
      'no-microphone': 'No microphone was found. Nothing was sent. Plug one in, or type.',
      'no-service':
        'The browser could not reach the service that turns speech into text. Nothing was sent. Type, or press a button.',
      'heard-nothing': 'Nothing was heard. Nothing was sent. Try again nearer to the microphone, or type.',
      failed: 'Listening failed. Nothing was sent. Try again, or type.',
    },
  },
  offline: {
    alone: 'No signal: this page answers by itself, by the same rules.',
    aloneSlow: 'The server does not answer: this page answers by itself, by the same rules.',
    aloneKept: 'What you say is kept here and handed over when the signal is back.',
    handingOver: (count: number) =>
      count === 0
        ? 'The connection is back: handing over…'
        : `The connection is back: handing over ${count === 1 ? 'one thing' : `${count} things`} you said…`,
    handedOver: (count: number) =>
      `Handed over: ${count === 1 ? 'one thing' : `${count} things`} you said. The server goes on from here.`,
    can: {
      no: 'On line. This page is not ready to go on without a signal yet.',
      'while-open': 'This page can go on without a signal as long as it stays open.',
      always: 'This page can go on without a signal, also after it is closed and opened again.',
    },
    full: 'The storage of this device is full. What was kept before is safe; what you say from now on lasts only as long as this page stays open. Free some space on the device, or keep the page open until the signal is back and it has handed over.',
    none: 'This browser keeps nothing for this page (a private window does that). What you say lasts only as long as this page stays open, unless it is handed over to the server.',
    clockOff: (span: string, isAhead: boolean) =>
      `The clock of this device is ${span} ${isAhead ? 'ahead of' : 'behind'} the server's. Times and the age of the forecast follow the server. Set the clock of the device right.`,
    clockSetBack:
      'The clock of this device was set back since the last connection. Times may be wrong until the signal is back: do not trust the age of the forecast before that.',
    span: (days: number, hours: number, minutes: number) =>
      [
        [days, 'day'],
        [hours, 'hour'],
        [minutes, 'minute'],
      ]
        .filter(([count]) => count !== 0)
        .slice(0, 2)
        .map(([count, unit]) => `${count} ${unit}${count === 1 ? '' : 's'}`)
        .join(' '),
    newVersion: 'A new version of this page is there. It is used after this conversation.',
    newVersionFree: 'A new version of this page is there.',
    useNew: 'Use the new version',
    newRules:
      'There are newer rules. This conversation stays with those it was begun under; start again on the field to be judged by the new ones.',
    elsewhere: 'The conversation goes on in another tab or window of this browser.',
    elsewhereWhy: 'Only one writes at a time, so that nothing is said twice. Everything is kept.',
    goOnHere: 'Go on here',
    conversations: 'Earlier conversations',
    conversationsNote: 'Kept on this device.',
    noVerdict: 'no answer yet',
    goTo: (field: string, day: string) => `${field}, ${day}`,
  },
  lazy: {
    loading: 'Loading this part…',
    failed:
      'This part of the page did not come. What you told and the answer above stay as they are. Look for a signal, then try again.',
    again: 'Try again',
  },
  handOver: {
    heading: 'Print, send or show this answer',
    share: 'Send…',
    copy: 'Copy as text',
    save: 'Save as text',
    print: 'Print',
    look: 'Look at what is handed over',
    linkHeading: 'A link that shows it',
    linkNote: 'Whoever has the link can read this answer, not change it. What you say later does not change it either.',
    linkOffline: 'A link needs a connection. Printing, copying and saving work without one.',
    makeLink: 'Make a link',
    linkBusy: 'Making the link…',
    linkMade: 'The link is made. Copy it, then send it to whom you like.',
    linkRemoved: 'Taken back: nothing is shown under that link any more.',
    linkFailed: 'The server was not reached. Nothing is shown. Try again when there is a signal, or send the text.',
    linkSafe: 'Nothing new is shown.',
    sendLink: 'Send the link…',
    copyLink: 'Copy the link',
    removeLink: 'Take the link back',
    shownUntil: (day: string) => `shown until ${day}`,
    sent: {
      shared: 'Handed to the device for sending.',
      copied: 'Copied.',
      saved: 'Saved among the downloads.',
      refused: 'The device did not do that. Nothing was sent. Try another of the ways here.',
    },
  },
  broken: {
    heading: 'The page could not draw this',
    safe: 'What you told is kept. An answer that you cannot read whole is no answer: do not spray on it.',
    next: 'Load the page anew. If it happens again, ask whoever looks after the server.',
  },
  menu: { heading: 'This conversation', again: 'Start again on this field', another: 'Another field' },
  foot: [
    'Loamward is not a label, not a permit and not a qualified adviser.',
    'What is not known never counts as approval.',
  ],
};
