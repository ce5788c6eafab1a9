/** Drawings that a question or a term of the glossary may name: the page has one for each, with words in place of it. */
export const pictureIds = [
  'texture-roll',
  'feel-by-hand',
  'soil-surface',
  'thermometer-30cm',
  'true-leaves',
  'tillers',
  'quadrat',
  'slope',
  'water-distance',
  'soil-water',
  'soil-thread',
  'drain-and-mole',
  'inversion',
  'boom-height',
] as const;

/** Id of a drawing. */
export type PictureId = (typeof pictureIds)[number];
