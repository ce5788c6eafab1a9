import type { Catalogue } from '../catalogue.ts';

/** Rules, conditions and parameters as sentences made from their structure, in German. */
export const sayWords: Catalogue['say'] = {
  effects: { stop: 'Verbietet', hold: 'Hält auf', advise: 'Rät' },
  lifts: {
    hours: 'löst sich in Stunden',
    days: 'löst sich in Tagen',
    person: 'löst sich, sobald sich jemand darum gekümmert hat',
    season: 'löst sich in dieser Saison nicht',
  },
  sentence: (head, condition) => `${head}, wenn gilt: ${condition}.`,
  opening: (head, lead) => `${head}, wenn gilt: ${lead}`,
  plural: [],
  is: '',
  are: '',
  number: {
    below: (label, limit, name) => `${label} unter ${limit} (${name})`,
    atMost: (label, limit, name) => `${label} höchstens ${limit} (${name})`,
    above: (label, limit, name) => `${label} über ${limit} (${name})`,
    atLeast: (label, limit, name) => `${label} mindestens ${limit} (${name})`,
  },
  day: {
    below: (label, limit, name) => `${label} vor dem ${limit} (${name})`,
    atMost: (label, limit, name) => `${label} bis einschließlich ${limit} (${name})`,
    above: (label, limit, name) => `${label} nach dem ${limit} (${name})`,
    atLeast: (label, limit, name) => `${label} ab dem ${limit} (${name})`,
  },
  choice: {
    is: (label, choice) => `${label}: ${choice}`,
    isNot: (label, choice) => `${label}: nicht ${choice}`,
    oneOf: (label, choices) => `${label}: eines von ${choices}`,
    noneOf: (label, choices) => `${label}: keines von ${choices}`,
    has: (label, sign) => `${label} zeigt „${sign}“`,
  },
  named: (choices, name) => `${choices} (${name})`,
  all: { joiner: ', und ', one: (member) => `alles von (${member})`, lead: 'alles hiervon:' },
  any: { joiner: ', oder ', one: (member) => `eines von (${member})`, lead: 'eines hiervon:' },
  eitherOf: {
    joiner: ', oder ',
    whole: (members) => `was bekannt ist von (${members})`,
    lead: 'eines hiervon, soweit es bekannt ist:',
  },
  not: { whole: (member) => `es trifft nicht zu: (${member})`, lead: 'es trifft nicht zu:' },
  rule: {
    whole: (title, id, member) => `„${title}“ (${id}) trifft zu, das heißt (${member})`,
    lead: (title, id) => `„${title}“ (${id}) trifft zu, das heißt:`,
  },
  acrossNewYear: (text) => `über den Jahreswechsel: ${text}`,
  parameter: (id, value, tighter, span) => `${id} ist ${value} ${span}; ${tighter}.`,
  tighter: {
    lower: 'niedriger ist strenger',
    higher: 'höher ist strenger',
    fewer: 'weniger sind strenger',
    more: 'mehr sind strenger',
    neither: 'keine Richtung ist strenger',
  },
  tried: {
    sum: (cases, changes, noticed, equal, survivors) =>
      `${cases} Fälle, ${changes} Änderungen: ${noticed} bemerkt, ${equal} von keinen Angaben zu unterscheiden, ${survivors} von keinem Fall bemerkt.`,
    failing: 'Nichts wurde geändert, denn diese Fälle gehen nicht so aus, wie sie sagen:',
    unjudged:
      'Weggelassen, weil ein Grenzwert an ihrem Tag nicht gilt; geben Sie eigenen Fällen einen Tag, an dem er gilt:',
    leftOut: (cases, day, parameter) =>
      `${cases} ${cases === 1 ? 'Fall' : 'Fälle'} vom ${day}: ${parameter} gilt dann nicht`,
    failed: (expected, given) => `Er sagt: ${expected}. Es kommt heraus: ${given}.`,
    made: (id, before, after) => `${id}: ${before} geändert in ${after}`,
    equal: 'Keine Angaben können diese von den Regeln unterscheiden, wie sie sind:',
    survivors: 'Diese bemerkt kein Fall:',
    was: (sentence) => `ist:      ${sentence}`,
    now: (sentence) => `geändert: ${sentence}`,
    kill: (facts, expected) => `Ein Fall, der es bemerkt: ${facts}. Zu erwarten: ${expected}.`,
    expected: (verdict, met) => (met === '' ? verdict : `${verdict}, erfüllt ist ${met}`),
    notMet: (rule) => `${rule} nicht erfüllt`,
    unknown: (rule) => `${rule} nicht bekannt`,
    missing: (facts) =>
      facts === '' ? 'nichts Fehlendes könnte es ändern' : `es fehlt, was es ändern könnte: ${facts}`,
    over: (name, file) => `Alles andere wie am Tag von „${name}“ in ${file}.`,
    factNotKnown: (label) => `${label}: nicht bekannt`,
    noKill: (facts) => `Kein einfacher Tag zeigt es; die Regel geht anders aus mit ${facts}.`,
  },
  span: (from, to) => (to === null ? `ab dem ${from}` : `vom ${from} bis zum ${to}`),
};
