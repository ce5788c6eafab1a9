/** Screen, sound, speech and language. */
export const comfort = {
  heading: 'Language, screen, sound and speech',
  open: 'Settings',
  language: 'Language',
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
};

/** Going on without a signal. */
export const offline = {
  alone: 'No signal: this page answers by itself, by the same rules.',
  aloneSlow: 'The server does not answer: this page answers by itself, by the same rules.',
  aloneHere: 'This page answers by itself; what you say is kept on this device.',
  aloneKept: 'What you say is kept here and handed over when the signal is back.',
  handingOver: (count: number) =>
    count === 0
      ? 'The connection is back: handing over…'
      : `The connection is back: handing over ${count === 1 ? 'one thing' : `${count} things`} you said…`,
  handedOver: (count: number) =>
    `Handed over: ${count === 1 ? 'one thing' : `${count} things`} you said. The server goes on from here.`,
  can: {
    no: 'Connected. This page is not ready to go on without a signal yet.',
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
  staysHere:
    'The server does not have the rules that this conversation was begun under. It stays on this device and goes on here; start again on the field to be judged by the rules of the server.',
  elsewhere: 'The conversation goes on in another tab or window of this browser.',
  elsewhereWhy: 'Only one writes at a time, so that nothing is said twice. Everything is kept.',
  goOnHere: 'Go on here',
  conversations: 'Earlier conversations',
  conversationsNote: 'Kept on this device.',
  noVerdict: 'no answer yet',
  saveEvents: 'Save what was said and judged as a file',
  saveEventsNote:
    'All that this device keeps, places and times too: for your records, or for an adviser who tries other rules on it.',
  eventsSaved: (count: number) => `Saved as loamward-events.json: ${count} events.`,
  eventsNotSaved: 'This device did not let it be read. Try again.',
  goTo: (field: string, day: string) => `${field}, ${day}`,
};

/** Handing an answer over. */
export const handOver = {
  heading: 'Print, send or show this answer',
  share: 'Send…',
  copy: 'Copy as text',
  save: 'Save as text',
  print: 'Print',
  look: 'Look at what is handed over',
  linkHeading: 'A link that shows it',
  linkNote:
    'Whoever has the link can read this answer, not change it. What you say later does not change it either. It ends on its day, or earlier when the server is started anew: print or save what must last.',
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
};
