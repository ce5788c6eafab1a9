import type { PictureWords } from '../types.ts';

/** What the drawings show in German, for whoever does not see them, and the words in and below them; loaded with the drawings. */
export const pictures: PictureWords = {
  'texture-roll': {
    light: 'Leicht: zerfällt oder gibt eine kurze, bröckelnde Rolle.',
    medium: 'Mittel: eine dicke Rolle, die beim Biegen reißt.',
    heavy: 'Schwer: eine dünne Rolle, die sich zum Ring schließt.',
  },
  'feel-by-hand': {
    title:
      'Eine Handvoll fest gedrückt, dann zwischen Daumen und Finger zu einem Band ausgepresst. Es gelten die Worte der Antworten.',
    groups: { light: 'Leicht', medium: 'Mittel', heavy: 'Schwer' },
    feels: {
      dry: 'Trocken',
      'slightly-moist': 'Leicht feucht',
      moist: 'Feucht',
      wet: 'Nass',
      'at-capacity': 'So nass, wie er halten kann',
    },
    balls: { none: 'kein Ballen, Krümel', weak: 'ein loser Ballen', firm: 'ein fester Ballen' },
    ribbons: ['', 'ein kurzes Band', 'ein langes Band'],
    waters: ['', 'ein feuchter Abdruck', 'ein nasser Umriss', 'Wasser glänzt'],
  },
  'soil-surface': {
    friable: 'Krümelig: bricht unter dem Fuß.',
    cracked: 'Rissig: auch schmale Risse zählen.',
    sticky: 'Klebrig: hängt am Stiefel.',
    ponded: 'Pfützen: Wasser steht.',
    frozen: 'Gefroren: hart vom Frost.',
    snow: 'Schnee liegt.',
  },
  'thermometer-30cm': {
    says: 'Ein Thermometer steckt 30 cm tief im Boden, im Schatten des Bestandes; eine Uhr zeigt fünf Minuten.',
    caption: 'Im Schatten des Bestandes senkrecht bis auf 30 cm. Fünf Minuten warten, dann ablesen.',
    depth: '30 cm',
    wait: '5 Minuten',
  },
  'true-leaves': {
    says: 'Eine junge Rapspflanze: unten am Stängel zwei Keimblätter, die nicht zählen; darüber drei Laubblätter, nummeriert von 1 bis 3.',
    caption: 'Die Laubblätter zählen, hier 3. Die beiden Keimblätter unten zählen nicht.',
    seed: 'Keimblatt',
  },
  tillers: {
    says: 'Eine Graspflanze vom Grund aus: der Haupttrieb trägt die 0, drei Triebe daneben 1 bis 3.',
    caption: 'Die Triebe vom Grund aus zählen; der Haupttrieb zählt nicht. Hier: 3 Bestockungstriebe.',
  },
  quadrat: {
    says: 'Ein viereckiger Rahmen liegt im Bestand. Fünf Graspflanzen stehen darin, vier außerhalb.',
    caption:
      'Ein halber Meter mal ein halber Meter: die Pflanzen darin mal 4 stehen auf einem Quadratmeter. Hier 5, also 20.',
    side: 'ein halber Meter',
  },
  slope: {
    says: 'Ein Feld fällt zu einem Graben ab. Auf 100 m fällt es 2 m, wo es flach ist, und 5 m, wo es steil ist.',
    caption: 'Steiler gezeichnet, als es ist: 2 m Gefälle auf 100 m sind 2 %, 5 m sind 5 %.',
    along: '100 m',
    gentle: '2 m',
    steep: '5 m',
  },
  'water-distance': {
    says: 'Ein Spritzgestänge über dem Bestand und ein Graben am Feldrand; der Abstand reicht von der letzten Düse bis zur Böschungsoberkante.',
    caption: 'Von der letzten Düse bis zur Böschungsoberkante, nicht bis zum Wasser.',
    measure: 'der Abstand',
    bank: 'Böschungsoberkante',
  },
  'soil-water': {
    deficit: 'Defizit: Luft in den Poren. Der Boden kann Regen aufnehmen.',
    capacity: 'Feldkapazität: Wasserhäute hängen an den Körnern, die großen Poren sind leer gelaufen.',
    saturated: 'Gesättigt: Jede Pore ist voll. Mehr Wasser läuft ab.',
  },
  'soil-thread': {
    smears: 'Nasser: Ein 3 mm dicker Faden hält und biegt sich.',
    limit: 'An der Ausrollgrenze: Bei 3 mm beginnt er gerade zu bröckeln.',
    thickness: '3 mm dick',
  },
  'drain-and-mole': {
    says: 'Ein Schnitt durch ein Feld: ein runder Gang vom Maulwurfpflug, darunter Kies, darin ein Rohr, das zu einem Auslauf im Graben führt.',
    caption: 'Wasser geht vom Maulwurfgang durch Kies ins Rohr und am Auslauf hinaus.',
    mole: 'Maulwurfgang',
    pipe: 'Rohr',
    outfall: 'Auslauf',
  },
  inversion: {
    says: 'Kalte Luft liegt am Boden unter wärmerer. Rauch steigt ein wenig und zieht dann flach davon.',
    caption: 'Rauch, der flach liegt: Feine Tropfen tun dasselbe.',
    warm: 'wärmere Luft',
    cold: 'kalte Luft',
  },
  'boom-height': {
    says: 'Ein Spritzgestänge über dem Raps: Die Höhe wird von der Düse bis zur Oberkante des Bestands gemessen. Feine Tropfen ziehen mit dem Wind ab.',
    caption: 'Von der Düse bis zur Oberkante des Bestands. Je höher das Gestänge, desto mehr zieht ab.',
    height: 'Höhe',
  },
};
