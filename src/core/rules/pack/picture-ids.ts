/** Drawings that a question may name: the page has one for each, with words in place of it. */
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
] as const;

/** Id of a drawing. */
export type PictureId = (typeof pictureIds)[number];
