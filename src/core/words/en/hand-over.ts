/** An answer handed over: printed, sent as text, shown under a link. */
export const handOverWords = {
  title: (treatment: string, field: string) => `${treatment}, ${field}: does today suit?`,
  ownField: 'a field without a name',
  invented: 'INVENTED: farm, day and weather are made up. Nothing here is about a real field.',
  given: (time: string) => `Given at ${time}.`,
  handedOver: (time: string) => `Handed over at ${time}: what is said below of how old things are holds then.`,
  goodUntil: (time: string) =>
    `Good until ${time} at the latest. After that it is withdrawn, even where this text still shows it: look again before you spray.`,
  copy: 'This is a copy of the answer as it was given. It is not a label, not a permit and not a qualified adviser, and it does not follow what was said later.',
  reason: (title: string, text: string, authority: string) => `${title}: ${text} (${authority})`,
  notKnown: (title: string) => `Not known: ${title}`,
  answer: (label: string, value: string, from: string) => `${label}: ${value} (${from})`,
  caution: (text: string, authority: string) => `${text} (${authority})`,
  headings: {
    reasons: 'Reasons',
    jobs: 'To do, or to find out',
    advice: 'Worth knowing',
    dose: 'Dose',
    answers: 'What was told and known',
    cautions: 'Cautions, always',
    basis: 'What this rests on',
  },
  shown: {
    until: (day: string) => `This page is shown until ${day}. Whoever made it can take it back before.`,
    withdrawn: 'Withdrawn: something that this answer stood on has grown too old. Do not spray on it; ask again.',
    goneHeading: 'Nothing is shown here',
    gone: 'The answer under this address has ended or was taken back, or there never was one.',
    goneSafe: 'Do not spray on an answer that cannot be read.',
    goneNext: 'Ask whoever sent the address for a new one, or ask about the field yourself.',
    ask: 'Ask about a field',
  },
};
