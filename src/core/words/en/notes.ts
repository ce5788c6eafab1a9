/** Notes of the invented farm, by their text in the farm's own files; other notes are shown as they came. */
export const notes: Readonly<Record<string, string>> = {
  'Clay loam, gentle slope, far from water; a still, mild morning.':
    'Clay loam, gentle slope, far from water; a still, mild morning.',
  'Drained clay beside a ditch, inside a protected water area.':
    'Drained clay beside a ditch, inside a protected water area.',
  'Sandy loam, heavy black-grass; rain is on its way.': 'Sandy loam, heavy black-grass; rain is on its way.',
  'Invented weather of Hollin Bank Farm: not a forecast of any place.':
    'Invented weather of Hollin Bank Farm: not a forecast of any place.',
};
