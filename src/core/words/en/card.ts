/** The card for the cab. */
export const cardWords = {
  title: (pack: string) => `Card for the cab: ${pack}`,
  lead: 'Limits in the order in which you meet them. Not known counts as wait.',
  parts: {
    season: 'Before you go: season and papers',
    field: 'The field',
    crop: 'Crop and weed',
    soil: 'Soil and drains',
    weather: 'Weather, now and ahead',
  },
  effects: { stop: 'STOP', hold: 'WAIT', advise: 'NOTE' },
  effectsTold: 'STOP: do not spray. WAIT: not until it has lifted. NOTE: worth knowing, nothing hangs on it.',
  hand: 'Hand test',
  handFine: 'fine',
  waterArea: 'Where to look up water areas',
  cautions: 'Cautions, always',
  label: 'Check the label in hand: where it is stricter, it holds.',
  made: (version: string, hash: string, day: string, printed: string) =>
    `Rules ${version}, ${hash}. Limits of ${day}. Printed ${printed}. Throw it away when the rules change.`,
  print: 'Print this card',
};
