import type { LearnWords } from '../types.ts';

/**
 * Wie sich eine gedrückte Handvoll anfühlt, nach Bodengruppe und Klasse. Nach USDA NRCS, "Estimating Soil Moisture by Feel and
 * Appearance" (1998), in eigenen Worten und aus dem Gedächtnis. Gesättigt: gute Praxis, ohne Quelle.
 */
export const feels: LearnWords['hand']['feels'] = {
  light: {
    dry: 'Lose Körner rinnen durch die Finger. Eine gedrückte Handvoll zerfällt beim Berühren. Die Hand bleibt sauber.',
    'slightly-moist':
      'Eine sehr lockere Kugel mit sichtbaren Fingerspuren. Einige Körner kleben an den Fingern, Wasser nicht.',
    moist: 'Eine lockere Kugel, dunkler als trocken. Körner und ein leicht feuchter Fleck an den Fingern. Kein Band.',
    wet: 'Eine lockere Kugel, die einen nassen Umriss auf der Hand lässt. Starker feuchter Fleck an den Fingern. Kein Band.',
    'at-capacity':
      'Eine weiche, lockere Kugel. Gedrückt oder geschüttelt zeigt sich kurz Wasser darauf. Nass belegte Finger.',
    saturated: 'Wasser läuft aus der Handvoll, ohne dass man drückt. Keine Kugel steht.',
  },
  medium: {
    dry: 'Krümel und Brocken, die unter dem Daumen zerbrechen. Keine Kugel, kein Fleck an den Fingern.',
    'slightly-moist':
      'Eine lockere Kugel mit rauer Haut; ein paar Krümel brechen ab. Kein feuchter Fleck an den Fingern.',
    moist:
      'Eine Kugel, die hält, dunkel und formbar. Ein ganz leicht feuchter Fleck. Daumen und Finger drücken ein kurzes, schwaches Band heraus.',
    wet: 'Eine Kugel mit deutlichen Fingerspuren und nassem Umriss auf der Hand. Boden und Wasser an den Fingern. Sie gibt ein Band.',
    'at-capacity': 'Eine weiche Kugel. Gedrückt oder geschüttelt glänzt kurz Wasser darauf. Dick nass belegte Finger.',
    saturated: 'Wasser läuft heraus, ohne dass man drückt, und die Handvoll sackt zusammen.',
  },
  heavy: {
    dry: 'Harte Brocken, die der Daumen kaum zerdrückt. Keine Kugel, kein Fleck.',
    'slightly-moist':
      'Eine lockere Kugel, kaum ein Krümel bricht ab; Brocken werden unter dem Daumen flach. Kein feuchter Fleck.',
    moist: 'Eine glatte Kugel mit deutlichen Fingerspuren. Leicht feuchter Fleck. Sie lässt sich zum Band drücken.',
    wet: 'Eine Kugel, die die Finger ungleich belegt, nasser Umriss auf der Hand. Sie gibt leicht ein langes Band.',
    'at-capacity':
      'Eine weiche Kugel, glitschig und klebrig. Gedrückt oder geschüttelt zeigt sich Wasser darauf. Dick belegte Finger.',
    saturated: 'Wasser läuft heraus, ohne dass man drückt; der Ton schmiert wie Brei.',
  },
};
