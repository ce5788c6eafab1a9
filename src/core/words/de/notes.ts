/** German for the notes of the invented farm, by their English text; other notes are shown as they came. */
export const notes: Readonly<Record<string, string>> = {
  'Clay loam, gentle slope, far from water; a still, mild morning.':
    'Toniger Lehm, sanfter Hang, weit vom Wasser; ein windstiller, milder Morgen.',
  'Drained clay beside a ditch, inside a protected water area.':
    'Dränierter Ton an einem Graben, in einem Wasserschutzgebiet.',
  'Sandy loam, heavy black-grass; rain is on its way.': 'Sandiger Lehm, viel Ackerfuchsschwanz; Regen ist im Anzug.',
  'Invented weather of Hollin Bank Farm: not a forecast of any place.':
    'Erfundenes Wetter der Hollin Bank Farm: keine Vorhersage für einen wirklichen Ort.',
};
