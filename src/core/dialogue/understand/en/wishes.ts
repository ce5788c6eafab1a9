/** How a person asks what a word means; the group holds the word. */
export const definePatterns: readonly RegExp[] = [
  /^(?:and )?what (?:does|do|is meant by|are meant by) (?:the word |the term )?(.+?)(?: mean| stand for)?$/,
  /^(?:and |so )?what(?:'?s|s| is| are| was|ever is) (?:a |an |the )?(?:meaning of |definition of )?(?:a |an |the )?(.+?)(?: mean| means| supposed to mean| stand for)?$/,
  /^(?:please )?(?:explain|define) (?:a |an |the )?(.+?)$/,
  /^(?:the )?meaning of (?:a |an |the )?(.+?)$/,
];

/** Those that ask for nothing but the meaning of the words, whatever they are. */
export const sureDefinePatterns: readonly RegExp[] = [
  /^what(?:'s| is) meant by (?:a |an |the )?(.+?)$/,
  /^what (?:counts|do you count|do you class|would you class|qualifies) as (?:a |an |the )?(.+?)$/,
  /^what do you call (?:a |an )(.+?)$/,
  /^(?:and |so |sorry |sorry, )?what (?:do|did|d'|would) ?(?:you|ya|ye) mean by (?:a |an |the )?(.+?)(?: then| exactly)?$/,
  /^(?:and |so |sorry |sorry, )?what(?:'s| is| are) (.+?) when it(?:'s| is) at home$/,
  /^(?:please )?(?:can|could) you (?:please )?(?:explain|define|tell me) what (?:a |an |the )?(.+?) (?:is|are|means|mean)$/,
  /^(?:what(?:'s| is)|tell me) the (?:meaning|definition) of (?:a |an |the )?(.+?)$/,
  /^(?:please )?(?:explain|define|tell me) what (?:a |an |the )?(.+?) (?:is|are|means|mean|stands for)$/,
  /^(?:please )?define (?:a |an |the )?(.+?)$/,
  /^(?:(?:can|could|would|will) you )?(?:please )?explain (?:to me )?(?!how |why |what |this$|that$|it$|that |this |the question$|question$|yourself$)(?:a |an |the )?(\S+(?: \S+){0,3}?)(?: please| to me| for me)*$/,
  /^(?:i )?(?:don't|dont|do not) know what (?:a |an |the )?(?!to |you |it |i |we |that )(.+?) (?:is|are|means|mean)$/,
  /^what(?:'s| is) (?:a|an) (?!good |better |best |right )(\S+(?: \S+){0,2})$/,
  /^what (?:are|is) (\S+(?: \S+){0,2}) (?:exactly|anyway|then)$/,
];

/** How a person asks for the same on another field; the group holds its name, where one is said. */
export const sameForPatterns: readonly RegExp[] = [
  /^(?:now |and |so |ok |okay |right |please |can (?:you|we|i) |could (?:you|we) |lets |let's )*(?:do |try |check |run |use |copy |put |carry |take |it's |its )?(?:all )?(?:the )?(?:same|ditto) (?:again |answers? |thing |things |details |story |lot |figures |set |everything |goes |applies |over |across )*(?:for|with|on|onto|in|at|to) (.+?)(?: please| too| as well| now)?$/,
  /^(?:now |and |then |next )+(?:for |to |on to |do |try )?(.+?)(?: please| next)?$/,
  /^(?:go|move) on to (.+?)$/,
];

/** What stands for the next field whose name is not said. */
export const nextFieldWords: readonly string[] = ['next field', 'the next field', 'the next one', 'the next'];
