/** What the terminal says beside what the conversation itself says. */
export const terminalWords = {
  whichField: 'Which field?',
  ownField: 'My own field',
  invented: (name: string) => `${name} (invented)`,
  typeNumber: (most: number) => `Type a number from 1 to ${most}.`,
  range: (low: string, high: string) => `${low} to ${high}`,
  severalLetters: 'several letters where several hold, for example: b d',
  stillOpen: (ask: string) => `Still open: ${ask}`,
  sections: {
    reasons: 'Reasons',
    toDo: 'To do',
    toFindOut: 'To find out',
    advice: 'Advice',
    dose: 'Dose',
    cautions: 'Cautions',
  },
  typing: {
    rest: '"check the rest" to go on with the questions',
    dose: '"dose" for the dose',
    trace: '"trace" for every rule',
    cautions: '"cautions" for the cautions',
    again: '"look again" later on',
    all: (list: string) => `Type ${list}.`,
    days: 'Type "days" for each day.',
  },
  limit: 'limit',
  noVerdict: 'There is no verdict yet.',
  noDays: 'Of the coming days nothing is told.',
  windows: 'Hours to look at',
  changes: 'What would have to change',
  whatIf: (supposed: string) => `What if: ${supposed}`,
  supposed: 'Supposed, not seen: the answer above stands.',
  /** Words that are typed: those that end the conversation, and those that unfold a part of the answer. */
  typed: {
    end: ['quit', 'exit', 'bye'] as readonly string[],
    trace: ['trace', 'all rules'] as readonly string[],
    cautions: ['cautions'] as readonly string[],
    days: ['days'] as readonly string[],
  },
  howToLeave: 'Type quit to leave; what you told is gone then.',
  failed: (code: string, says: string, expected: string, came: string, next: string) =>
    `${code}: ${says} Expected ${expected}; came ${came}. ${next}`,
};
