import type { Catalogue } from '../catalogue.ts';

/** Figures of the coming days and their tables. */
export const outlookFigures: Catalogue['outlook']['figures'] = {
  day: 'Tag',
  to: 'bis',
  hours: {
    title: 'Die kommenden Tage, Stunde für Stunde',
    description: (days, clear, clearIf) =>
      `${days} Tage, je eine Zeile von Mitternacht bis Mitternacht: ${clear}, in denen nichts im Weg steht, was sich sagen lässt, ${clearIf} nur nach neuem Blick.`,
    clear: 'Nichts im Weg',
    clearIf: 'Nur nach neuem Blick',
    forHours: 'Im Weg, für Stunden',
    forDays: 'Im Weg, für Tage oder länger',
    none: 'keine',
  },
  soil: {
    title: 'Bodentemperatur in 30 cm',
    description: (now, last, day, limit) =>
      `Jetzt ${now}, am ${day} ${last}. Das dunklere Band enthält 8 von 10, das hellere 19 von 20. Die Linie quer ist die Grenze, ${limit}.`,
    beyond: {
      ofPlace: (years) =>
        `Jenseits der schraffierten Kante ist die Vorhersage zu Ende: Die übliche Luft des Ortes, aus ${years} vergangenen Jahren, steht dafür.`,
      ofLatitude:
        'Jenseits der schraffierten Kante ist die Vorhersage zu Ende: Die übliche Luft der Breite steht dafür, was viel unsicherer ist.',
    },
    middle: 'Mitte, °C',
    band: '8 von 10 liegen zwischen, °C',
    chanceBelow: (limit) => `Aussicht unter ${limit}`,
    limit: (limit) => `Grenze ${limit}`,
  },
  rain: {
    title: 'Regen, und die Summe der kommenden 48 Stunden',
    total: (total) => `${total} insgesamt.`,
    most: (most, day, limit) =>
      `Die Linie ist die Summe der nächsten 48 Stunden am nasseren Ende der Vorhersage, wie die Regeln zählen: höchstens ${most}, am ${day}. Die Grenze ist ${limit}.`,
    fallen: 'Regen, mm',
    sum: 'Höchste 48-h-Summe ab diesem Tag, mm',
    limit: (limit) => `Grenze ${limit}`,
  },
  water: {
    title: 'Wasser im Boden, gegen das, was er halten kann',
    description: (first, last, day) =>
      `Jetzt ${first}, am ${day} ${last}. Die Linie quer ist die Feldkapazität: alles, was der Boden gegen die Schwerkraft hält. Darüber fließt Wasser ab oder in die Dräne.`,
    below: (amount) => `${amount} unter Feldkapazität`,
    above: (amount) => `${amount} über Feldkapazität`,
    at: 'bei Feldkapazität',
    capacity: 'Feldkapazität',
    level: 'Gegen Feldkapazität, mm',
    band: 'Liegt zwischen, mm',
    ofCapacity: 'Anteil des Wassers bei Feldkapazität, %',
    ofAvailable: 'Anteil des verfügbaren Wassers, %',
  },
  table: 'Als Tabelle',
  more: 'Boden, Regen und Wasser in Bildern',
  windows: 'Stunden zum Hinsehen',
  hourByHour: 'Stunde für Stunde',
  changes: 'Was sich ändern müsste',
  moreWindows: (count) => `${count} weitere`,
};
