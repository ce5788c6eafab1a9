import type { Catalogue } from '../catalogue.ts';

/** What is said of questions, of other fields, and to those who ask back. */
export const askingWords: Catalogue['asking'] = {
  settles: (rules) => `Daran hängt jetzt: ${rules}.`,
  more: (count) => `${count} weitere`,
  answerNow: (value) => `Bisher: ${value}.`,
  changing: (label) => `${label} ändern: Antworten Sie neu, oder lassen Sie es, wie es ist.`,
  carried: (field, list) => `Von ${field} übernommen, weil es auch hier gilt: ${list}. Ändern Sie, was nicht gilt.`,
  carriedFrom: (field, from) => `${from}, für ${field}`,
  nextField: (name) => `Als Nächstes: ${name}, mit dem, was für den ganzen Betrieb gilt.`,
  nextUnknown: 'Wählen Sie das nächste Feld. Was für den ganzen Betrieb gilt, wird nicht noch einmal gefragt.',
  explained: (text, source) => `${text} (${source})`,
  notExplained: (words) => `„${words}“ kann ich nicht erklären.`,
  whyNot: {
    nothing: 'Nichts, was bekannt ist, steht im Weg: heute spritzen.',
    inTheWay: (sentences) => sentences,
    notKnown: (titles) => `Noch nicht bekannt, und Unbekanntes ist nie eine Zusage: ${titles}.`,
  },
  when: {
    today: (until) => (until === null ? 'Heute, jetzt.' : `Heute, bis ${until}.`),
    over: 'Auf diesem Feld nicht mehr in dieser Saison.',
    lifts: (sentences) => `Wenn das vorbei ist: ${sentences}`,
    openFirst: 'Das lässt sich erst sagen, wenn die offenen Fragen beantwortet sind.',
  },
  needs: {
    nothing: 'Nichts weiter: Die Antwort steht fest.',
    wait: 'Sie können dabei nichts tun: Zeit und Wetter entscheiden.',
    list: (jobs) => jobs,
  },
  hour: {
    now: 'gerade eben',
    at: (hour) => (hour === 12 ? 'zu Mittag' : hour < 12 ? `${hour} Uhr morgens` : `${hour} Uhr`),
  },
  stopped: (fields) =>
    `Hier halten wir an. Alles, was Sie gesagt haben, bleibt, und eine offene Frage wartet auf Sie. ${fields} Sagen Sie etwas, um weiterzumachen.`,
  wordsHere: (terms) => `Wörter, die hier vorkommen und erklärt werden können: ${terms}. Fragen Sie „Was heißt …?“.`,
  fields: {
    line: (name, verdict) => `${name}: ${verdict}`,
    until: (verdict, time) => `${verdict} bis ${time}`,
    wasUntil: (verdict, time) => `war ${verdict} bis ${time}, noch einmal nachsehen`,
    slow: (verdict, slowness) => `${verdict}, ${slowness}`,
    none: 'noch keine Antwort',
    own: 'Dieses Feld',
    unseen: 'heute noch nicht betrachtet',
    only: 'Heute wurde noch kein Feld betrachtet.',
    list: (lines) => `Heute: ${lines}.`,
    slowness: { hours: 'Stunden', days: 'Tage', season: 'nicht in dieser Saison' },
  },
};
