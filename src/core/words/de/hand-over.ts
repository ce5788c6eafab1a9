import type { Catalogue } from '../catalogue.ts';

/** An answer handed over: printed, sent as text, shown under a link. */
export const handOverWords: Catalogue['handOver'] = {
  title: (treatment, field) => `${treatment}, ${field}: Passt der heutige Tag?`,
  ownField: 'einem Feld ohne Namen',
  invented: 'ERFUNDEN: Betrieb, Tag und Wetter sind ausgedacht. Nichts hier betrifft ein wirkliches Feld.',
  given: (time) => `Gegeben um ${time}.`,
  handedOver: (time) => `Weitergegeben um ${time}: Was unten über das Alter von Angaben steht, gilt dann.`,
  goodUntil: (time) =>
    `Gilt längstens bis ${time}. Danach ist sie zurückgezogen, auch wenn dieser Text sie noch zeigt: Sehen Sie noch einmal nach, bevor Sie spritzen.`,
  copy: 'Dies ist eine Kopie der Antwort, wie sie gegeben wurde. Sie ist keine Gebrauchsanleitung, keine Genehmigung und kein sachkundiger Berater, und sie folgt nicht dem, was später gesagt wurde.',
  reason: (title, text, authority) => `${title}: ${text} (${authority})`,
  notKnown: (title) => `Nicht bekannt: ${title}`,
  answer: (label, value, from) => `${label}: ${value} (${from})`,
  caution: (text, authority) => `${text} (${authority})`,
  headings: {
    reasons: 'Gründe',
    jobs: 'Zu tun oder herauszufinden',
    advice: 'Gut zu wissen',
    dose: 'Aufwandmenge',
    answers: 'Was gesagt wurde und bekannt ist',
    cautions: 'Vorsicht, immer',
    basis: 'Worauf das beruht',
  },
  shown: {
    until: (day) => `Diese Seite wird bis ${day} gezeigt. Wer sie gemacht hat, kann sie vorher zurücknehmen.`,
    withdrawn:
      'Zurückgezogen: Etwas, worauf diese Antwort beruhte, ist zu alt geworden. Spritzen Sie nicht danach; fragen Sie neu.',
    goneHeading: 'Hier wird nichts gezeigt',
    gone: 'Die Antwort unter dieser Adresse ist abgelaufen oder zurückgenommen, oder es gab sie nie.',
    goneSafe: 'Spritzen Sie nicht nach einer Antwort, die sich nicht lesen lässt.',
    goneNext: 'Bitten Sie den, der die Adresse gesendet hat, um eine neue, oder fragen Sie selbst nach dem Feld.',
    ask: 'Nach einem Feld fragen',
  },
};
