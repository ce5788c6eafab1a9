import type { Catalogue } from '../catalogue.ts';

/** What the terminal says beside what the conversation itself says. */
export const terminalWords: Catalogue['terminal'] = {
  whichField: 'Welches Feld?',
  ownField: 'Mein eigenes Feld',
  invented: (name) => `${name} (erfunden)`,
  typeNumber: (most) => `Tippen Sie eine Zahl von 1 bis ${most}.`,
  range: (low, high) => `${low} bis ${high}`,
  severalLetters: 'mehrere Buchstaben, wo mehreres zutrifft, zum Beispiel: b d',
  stillOpen: (ask) => `Noch offen: ${ask}`,
  sections: {
    reasons: 'Gründe',
    toDo: 'Zu tun',
    toFindOut: 'Herauszufinden',
    advice: 'Rat',
    dose: 'Aufwandmenge',
    cautions: 'Vorsicht',
  },
  typing: {
    rest: '„den Rest prüfen“, um mit den Fragen weiterzumachen',
    dose: '„Aufwandmenge“ für die Aufwandmenge',
    trace: '„Regeln“ für jede Regel',
    cautions: '„Vorsicht“ für die Vorsichtshinweise',
    again: 'später „neu nachsehen“',
    all: (list) => `Tippen Sie ${list}.`,
    days: 'Tippen Sie „Tage“ für jeden einzelnen Tag.',
  },
  limit: 'Grenze',
  noVerdict: 'Es gibt noch keine Antwort.',
  noDays: 'Über die kommenden Tage lässt sich nichts sagen.',
  windows: 'Stunden, nach denen zu sehen ist',
  changes: 'Was sich ändern müsste',
  whatIf: (supposed) => `Was wäre, wenn: ${supposed}`,
  supposed: 'Angenommen, nicht gesehen: die Antwort oben gilt.',
  typed: {
    end: ['ende', 'schluss', 'tschüss', 'quit', 'exit'],
    trace: ['regeln', 'alle regeln', 'trace'],
    cautions: ['vorsicht', 'cautions'],
    days: ['tage', 'days'],
  },
  howToLeave: 'Mit „ende“ gehen Sie; was Sie gesagt haben, ist dann weg.',
  failed: (code, says, expected, came, next) => `${code}: ${says} Erwartet: ${expected}; gekommen: ${came}. ${next}`,
};
