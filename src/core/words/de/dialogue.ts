import type { Catalogue } from '../catalogue.ts';

/** What the assistant says in a conversation beside questions and verdicts. */
export const dialogueWords: Catalogue['dialogue'] = {
  hello: 'Wählen Sie eine Antwort oder sagen Sie es mit eigenen Worten; „weiß nicht“ ist auch eine Antwort.',
  packInEnglish:
    'Fragen, Regeln und Aufgaben sind auf Englisch: Diese Regeln sind noch nicht in diese Sprache übersetzt.',
  readAsEnglish: 'Was getippt oder gesprochen wird, wird als Englisch gelesen; die Knöpfe gehen wie immer.',
  field: (name, invented, day) => {
    if (!invented) return `${name}.`;
    return day === null ? `${name}, ein erfundenes Feld.` : `${name}, ein erfundenes Feld am ${day}.`;
  },
  person: {
    'why-asked': 'Warum fragen Sie?',
    'what-said': 'Was habe ich gesagt?',
    'check-the-rest': 'Auch den Rest prüfen.',
    'look-again': 'Noch einmal nachsehen.',
    dose: 'Wie hoch ist die Aufwandmenge?',
    'verdict-now': 'Wie lautet die Antwort jetzt?',
    confirm: 'Ja, das stimmt.',
    deny: 'Nein, das stimmt nicht.',
    'why-not': 'Warum nicht?',
    when: 'Wann?',
    needs: 'Was brauchen Sie noch?',
    fields: 'Wie steht es um die Felder?',
    change: 'Eine Antwort ändern.',
    keep: 'So lassen, wie es ist.',
    'same-for': 'Dasselbe für das nächste Feld.',
    language: 'In einer anderen Sprache.',
    doesNotKnow: 'Weiß ich nicht.',
    nothing: 'Nichts davon.',
  },
  understood: (phrases) => `Verstanden: ${phrases}.`,
  corrected: (phrases) => `Berichtigt: ${phrases}.`,
  notUnderstood: (pieces) => `${pieces} habe ich nicht verstanden. Daraus wurde nichts entnommen.`,
  quote: (text) => `„${text}“`,
  undone: (phrases) => `Zurückgenommen: ${phrases}.`,
  undoneNothing: 'Zurückgenommen.',
  declined: (label) => `Als nicht bekannt vermerkt: ${label}.`,
  declinedDose: (label) =>
    `Als nicht bekannt vermerkt: ${label}. Wo es ohne geht, wird die Aufwandmenge trotzdem genannt.`,
  whyAsked: (why, rules) => `${why} Mit Ihrer Antwort kann ich prüfen: ${rules}.`,
  whyNow: 'Solange das nicht bekannt ist, kann sich die Antwort noch ändern.',
  saidSoFar: (list) => `Bisher: ${list}.`,
  saidNothing: 'Sie haben noch nichts gesagt.',
  saidItem: (label, value, from) => `${label}: ${value} (${from})`,
  confirmUnusual: (what) => `${what} liegt weit außerhalb des Üblichen. Stimmt das?`,
  confirmDoubtful: (quote, what) => `Aus „${quote}“ habe ich entnommen: ${what}. Stimmt das?`,
  confirmConflict: (label, values) => `Zwei Geräte gaben verschiedene Antworten zu ${label}: ${values}.`,
  confirmWhyUnusual: 'Ein Vertippen würde hier die Antwort ändern.',
  confirmWhyDoubtful: 'Die Antwort hängt davon ab, darum wird es erst zurückgelesen.',
  confirmHow: 'Antworten Sie mit Ja oder Nein, oder nennen Sie den richtigen Wert.',
  yes: 'Ja',
  no: 'Nein',
  confirmed: (what) => `Übernommen: ${what}.`,
  denied: (what) => `Nicht übernommen: ${what}.`,
  clamped: (time) => `Die Uhr dieses Geräts geht vor; dies gilt als um ${time} gesagt.`,
  forecastCame: (time, attribution) => `Vorhersage abgerufen um ${time}. ${attribution}`.trim(),
  doseAsked:
    'Für die Aufwandmenge frage ich zwei Angaben aus der Gebrauchsanleitung, sobald sonst nichts mehr offen ist.',
  doseNone: 'Keine Aufwandmenge, solange die Antwort „nicht spritzen“ heißt.',
  doseOnLabel: 'Diese Regeln nennen keine Aufwandmenge: Sie steht in der Gebrauchsanleitung des Mittels.',
  earlierVerdict: (headline) => `Die Antwort damals: ${headline}`,
  withdrawnOld: (time) =>
    `„Heute spritzen“ galt bis ${time} und ist zurückgezogen: Etwas, worauf es beruhte, ist zu alt. Sehen Sie noch einmal nach.`,
  withdrawnStale: '„Heute spritzen“ ist zurückgezogen: Was seither kam, kann es ändern.',
  failed: (says, expected, came, next) => `${says} Erwartet: ${expected}. Bekommen: ${came}. ${next}`,
  supposed: {
    met: (what, verdict, because) =>
      `Angenommen, ${what}: ${verdict}${because === '' ? '' : `, wegen: ${because}`}. Das ist keine Antwort; was Sie gesagt haben, bleibt, wie es ist.`,
    unknown: (what, verdict, open) =>
      open === ''
        ? `Angenommen, ${what}: ${verdict}, soweit Ihre Angaben und die Vorhersage reichen. Das ist keine Antwort; was Sie gesagt haben, bleibt, wie es ist.`
        : `Angenommen, ${what}: ${verdict}, weil dies dann noch nicht bekannt wäre: ${open}. Das ist keine Antwort; was Sie gesagt haben, bleibt, wie es ist.`,
  },
  remarks: {
    'readings-differ': (quote) =>
      `„${quote}“ weicht von dem ab, was Sie in der letzten Stunde sagten; ich rechne mit allem dazwischen. War eines ein Versehen, sagen Sie „nein, es waren“ und den richtigen Wert; sonst messen Sie noch einmal.`,
  },
  remark: (quote) => `Bemerkt, aber nicht verwendet: „${quote}“.`,
  help: (term: string | null) =>
    `Sagen Sie, was Sie sehen, gern mehreres auf einmal: „Wind 6 km/h, Böen 11 km/h“. Sie können auch sagen: warum fragst du, was habe ich gesagt, nein es waren 11, was wäre bei 9, warum nicht, wann, was brauchst du noch, ${term === null ? '' : `was heißt ${term}, `}dasselbe für das nächste Feld, rückgängig, weiß nicht, Antwort, den Rest prüfen, noch einmal nachsehen, Aufwandmenge, von vorn, anderes Feld.`,
  plain: {
    'nothing-found': 'Daraus konnte ich nichts entnehmen. Sagen Sie es anders, oder wählen Sie eine Antwort.',
    'nothing-to-undo': 'Es gibt nichts zurückzunehmen.',
    'nothing-to-confirm': 'Gerade gibt es nichts, wozu Sie Ja oder Nein sagen könnten.',
    'no-question': 'Gerade ist keine Frage offen. Sagen Sie, was sich geändert hat, oder „noch einmal nachsehen“.',
    'start-again': 'Von vorn: Was Sie gesagt haben, ist beiseitegelegt.',
    'another-field': 'Wählen Sie das Feld.',
    'forecast-failed': 'Bis es eine Vorhersage gibt, frage ich nach dem Wetter.',
    'look-again': 'Ich sehe noch einmal nach, mit dem, was noch gilt.',
    'checking-rest': 'Auch der Rest wird gefragt; die bisherige Antwort bleibt.',
    'verdict-asked': 'Die Antwort wird nach dem gegeben, was jetzt bekannt ist.',
    kept: 'So gelassen, wie es ist.',
    'nothing-to-change': 'Es gibt keine Antwort dieser Art, die sich ändern ließe.',
  },
};
