import type { Catalogue } from '../catalogue.ts';

/** The verdict, what stands behind it and what lifts it. */
export const verdictWords: Catalogue['verdict'] = {
  names: { 'spray-today': 'heute spritzen', wait: 'warten', 'do-not-spray': 'nicht spritzen' },
  sprayToday: 'Heute spritzen: Nichts, was geprüft wurde, spricht dagegen.',
  wait: {
    hours: 'Warten: Das Wetter ist im Moment dagegen. In einigen Stunden noch einmal nachsehen.',
    days: 'Warten: Es dauert Tage, nicht Stunden.',
    season: 'Warten: Auf diesem Feld wird es in dieser Saison nichts mehr.',
    jobs: (count) =>
      count === 1 ? 'Warten, bis die Aufgabe unten erledigt ist.' : 'Warten, bis die Aufgaben unten erledigt sind.',
    findOut: 'Warten: Etwas Wichtiges ist nicht bekannt. Finden Sie es zuerst heraus.',
  },
  doNotSpray: {
    hours: 'Jetzt nicht spritzen: In einigen Stunden noch einmal nachsehen, wenn das Wetter sich geändert hat.',
    days: 'Jetzt nicht spritzen: Es dauert Tage, bis das vorbei ist.',
    season: 'Dieses Feld in dieser Saison nicht spritzen.',
    jobs: (count) =>
      count === 1
        ? 'Nicht spritzen, bevor die Aufgabe unten erledigt ist.'
        : 'Nicht spritzen, bevor die Aufgaben unten erledigt sind.',
  },
  allClear: (count) => `Keiner der ${count} Gründe zum Lassen oder Warten trifft zu.`,
  nearest: (label, margin) => `Am nächsten an der Grenze: ${label}, ${margin}.`,
  more: (count) => `${count} weitere`,
  notKnown: (titles) => `Noch nicht zu beurteilen: ${titles}.`,
  stillUnknown: (titles) => `Nicht beurteilt, weil die Antwort auch so feststeht: ${titles}.`,
  nothingRead: 'Keine Regel spricht dafür oder dagegen.',
  outcomes: {
    stop: { met: 'verbietet es', 'not-met': 'trifft nicht zu', unknown: 'nicht bekannt' },
    hold: { met: 'hält es auf', 'not-met': 'trifft nicht zu', unknown: 'nicht bekannt' },
    advise: { met: 'gut zu wissen', 'not-met': 'trifft nicht zu', unknown: 'nicht bekannt' },
  },
  kinds: {
    stop: 'schließt aus',
    hold: 'hält auf',
    advise: 'rät',
    law: 'Gesetz',
    label: 'Gebrauchsanleitung',
    water: 'Gewässerschutz',
    practice: 'Praxis',
  },
  authorities: {
    law: 'Recht: fragen Sie die zuständige Behörde',
    label: 'Gebrauchsanleitung: prüfen Sie die vorliegende',
    water: 'Schutz des Wassers',
    practice: 'übliche Praxis, ohne Quelle',
  },
  safety:
    'Die vorliegende Gebrauchsanleitung, die zuständige Behörde und ein sachkundiger Berater gehen dieser Antwort vor. Sagt einer von ihnen Nein, dann nicht spritzen.',
  change: {
    same: (verdict) => `Wie zuvor: ${verdict}.`,
    sameBut: (verdict, what) => `Weiterhin ${verdict}; ${what}.`,
    now: (before, after) => `Es hieß ${before}; jetzt ${after}.`,
    nowBecause: (before, after, what) => `Es hieß ${before}; jetzt ${after}. Grund: ${what}.`,
    gone: (titles) => `nicht mehr im Weg: ${titles}`,
    cleared: (titles) => `geprüft und nicht im Weg: ${titles}`,
    come: (titles) => `neu im Weg: ${titles}`,
    lost: (titles) => `nicht mehr bekannt: ${titles}`,
  },
};
