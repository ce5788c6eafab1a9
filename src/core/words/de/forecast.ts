import type { Catalogue } from '../catalogue.ts';

/** The forecast used, how long an answer stands, and which rules judged. */
export const forecastWords: Catalogue['forecast'] = {
  none: 'Es wurde keine Vorhersage verwendet: Das Wetter ist so, wie Sie es angegeben haben.',
  fetched: (time, age) => `Vorhersage abgerufen um ${time} (${age})`,
  use: (fetched, use) => `${fetched}; ${use}.`,
  reaches: (time) => `sie reicht bis ${time}`,
  gapNow: 'ihr fehlt ein Teil des Wetters dieser Stunde, und was fehlt, gilt als nicht bekannt',
  unused: {
    'too-old': 'sie ist zu alt, und nichts davon wurde verwendet',
    'too-far': 'ihr Punkt liegt zu weit vom Feld, und nichts davon wurde verwendet',
  },
  rainChance: (share, courses, mm) =>
    `Aussicht, dass in den nächsten 48 Stunden höchstens ${mm} mm Regen fallen: ${share} (${courses} Verläufe des Wetters).`,
  cell: (km) => `Ihr Punkt liegt ${km} km vom Feld.`,
  validUntil: (time) => `Diese Antwort gilt längstens bis ${time}. Danach noch einmal nachsehen.`,
  doesNotAge: 'Nichts in dieser Antwort veraltet heute.',
  local: (title, author, place, rules) =>
    `Örtliche Regeln: ${title} von ${author}, für ${place}: ${rules === '' ? 'keine Regel geändert' : `geänderte oder neue Regeln: ${rules}`}.`,
  pack: (title, version, hash) => `Regeln: ${title}, Version ${version}, Inhalt ${hash}.`,
};
