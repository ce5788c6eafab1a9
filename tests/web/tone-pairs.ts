/** Tones that carry words over another: WCAG 2.2, 1.4.3 and 1.4.6. */
export const wordPairs = [
  ['text', 'ground'],
  ['text', 'sheet'],
  ['soft', 'ground'],
  ['soft', 'sheet'],
  ['on-strong', 'strong'],
  ['on-earth', 'earth'],
  ['ink', 'kingfisher'],
] as const;

/** Tones of edges and drawings beside another: WCAG 2.2, 1.4.11. */
export const edgePairs = [
  ['edge', 'ground'],
  ['edge', 'sheet'],
  ['pattern', 'sheet'],
  ['text', 'ground'],
  ['text', 'sheet'],
  ['ink', 'kingfisher'],
  ['on-earth', 'earth'],
  ['kingfisher', 'earth'],
] as const;
