import type { CardWords } from '../card-words.ts';

/** Die Karte für die Kabine. */
export const cardWords: CardWords = {
  title: (pack) => `Karte für die Kabine: ${pack}`,
  lead: 'Grenzen in der Reihenfolge, in der Sie ihnen begegnen. Unbekannt zählt als Warten.',
  parts: {
    season: 'Vor der Fahrt: Saison und Papiere',
    field: 'Das Feld',
    crop: 'Kultur und Unkraut',
    soil: 'Boden und Dräne',
    weather: 'Wetter, jetzt und voraus',
  },
  effects: { stop: 'HALT', hold: 'WARTEN', advise: 'MERKE' },
  effectsTold: 'HALT: nicht spritzen. WARTEN: erst, wenn es vorbei ist. MERKE: gut zu wissen, nichts hängt daran.',
  hand: 'Handprobe',
  handFine: 'passt',
  waterArea: 'Wo Wasserschutzgebiete nachzusehen sind',
  cautions: 'Vorsicht, immer',
  label: 'Sehen Sie in die Gebrauchsanleitung Ihres Mittels: Wo sie strenger ist, gilt sie.',
  made: (version, hash, day, printed) =>
    `Regeln ${version}, ${hash}. Grenzen vom ${day}. Gedruckt am ${printed}. Werfen Sie sie weg, wenn sich die Regeln ändern.`,
  print: 'Diese Karte drucken',
};
