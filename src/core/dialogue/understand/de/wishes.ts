const leads = '(?:und |aber |bitte |ja |also |nun |jetzt )*';
const little = '(?:denn |eigentlich |hier |genau |bitte |mir |mal |noch mal )*';
const article =
  '(?:das wort |der begriff |den begriff |der ausdruck )?(?:die |der |das |den |dem |ein |eine |einen |einer )?';
const tail = '(?: eigentlich| denn| genau| hier| bitte)*$';

/** How a person asks in so many words what a word means, be it known or not; the group holds the word. */
export const sureDefinePatterns: readonly RegExp[] = [
  new RegExp(`^${leads}was (?:heißt|heisst|bedeutet|bedeuten|heißen) ${little}${article}(.+?)${tail}`),
  new RegExp(`^${leads}was (?:meinst du|meinen sie|meint ihr) ${little}mit ${article}(.+?)${tail}`),
  new RegExp(`^${leads}was (?:versteht man|verstehst du|verstehen sie) ${little}unter ${article}(.+?)${tail}`),
  new RegExp(`^${leads}was (?:ist|soll) ${little}mit ${article}(.+?) gemeint${tail}`),
];

/** How a person may ask what a word means; it is so where the word is a term of the glossary. */
export const definePatterns: readonly RegExp[] = [
  new RegExp(`^${leads}was (?:ist|sind|war|soll) ${little}${article}(.+?)(?: sein)?${tail}`),
  new RegExp(
    `^${leads}(?:erkl(?:ä|ae)re?|erkl(?:ä|ae)ren sie|definiere|erl(?:ä|ae)utere?) ${little}${article}(.+?)${tail}`,
  ),
  new RegExp(`^${leads}(?:erkl(?:ä|ae)rung|bedeutung|definition) (?:von|zu|f(?:ü|ue)r) ${article}(.+?)${tail}`),
  new RegExp(`^${leads}(?:kannst du|können sie) ${little}${article}(.+?) erkl(?:ä|ae)ren${tail}`),
];

/** How a person asks for the same on another field; the group holds its name. */
export const sureSameForPatterns: readonly RegExp[] = [
  /^(?:und |jetzt |nun |bitte |noch mal |nochmal |noch einmal |mach |mache |machen wir |pr(?:ü|ue)fe |rechne )*(?:das )?(?:dasselbe|das selbe|das gleiche|gleiche|selbe) (?:bitte |noch mal |nochmal |noch |auch |jetzt )*(?:f(?:ü|ue)r|auf|mit|bei|am|im) (?:dem |der |das |die |den )?(?:feld |schlag |acker )?(.+?)(?: bitte| auch| noch)*$/,
  /^(?:und |jetzt |nun )*(?:genauso|ebenso) (?:f(?:ü|ue)r|auf|bei) (.+?)(?: bitte)?$/,
  /^(?:und |jetzt |nun )*(?:(?:ü|ue)bernimm|(?:ü|ue)bernehme?) (?:das|alles|die angaben|die antworten) (?:auch )?(?:f(?:ü|ue)r|auf) (.+?)(?: bitte)?$/,
];

/** How a person may ask for it; it is so where the name is that of a field on offer. */
export const sameForPatterns: readonly RegExp[] = [
  /^(?:jetzt |nun |und |dann |weiter |bitte )+(?:mit |f(?:ü|ue)r |auf |zu |zum )?(.+?)(?: bitte)?$/,
  /^(?:wie sieht es|wie steht es|und) (?:mit|auf|bei|um) (.+?)(?: aus)?$/,
];

/** What stands for the next field whose name is not said, after words as above. */
export const nextFieldWords: readonly string[] = [
  'nächstes feld',
  'das nächste feld',
  'nächste feld',
  'nächster schlag',
  'naechstes feld',
  'das naechste feld',
  'den nächsten schlag',
  'das nächste',
];
