/** How a person asks what a word means; the group holds the word. */
export const definePatterns: readonly RegExp[] = [
  /^(?:and )?what (?:does|do|is meant by|are meant by) (?:the word |the term )?(.+?)(?: mean| stand for)?$/,
  /^what(?:'s| is| are| was) (?:a |an |the )?(?:meaning of )?(?:a |an |the )?(.+?)$/,
  /^(?:please )?(?:explain|define) (?:a |an |the )?(.+?)$/,
  /^(?:the )?meaning of (?:a |an |the )?(.+?)$/,
  /^(?:was (?:bedeutet|heißt|ist|sind)|erkläre?|was versteht man unter) (?:die |der |das |ein |eine )?(.+?)$/,
];

/** How a person asks for the same on another field; the group holds its name, where one is said. */
export const sameForPatterns: readonly RegExp[] = [
  /^(?:now |and |please )*(?:do |try |check |run )?(?:the )?same (?:again )?(?:for|with|on|in|at) (.+?)(?: please| too| as well)?$/,
  /^(?:now |and |then |next )+(?:for |to |on to |do |try )?(.+?)(?: please| next)?$/,
  /^(?:go|move) on to (.+?)$/,
  /^(?:jetzt|nun|und|dasselbe für|das gleiche für|weiter mit) (.+?)$/,
];

/** What stands for the next field whose name is not said. */
export const nextFieldWords: readonly string[] = [
  'next field',
  'the next field',
  'the next one',
  'the next',
  'nächstes feld',
  'das nächste feld',
  'nächster schlag',
];
