import { words as plainWords } from '../phrases.ts';

const letters: Readonly<Record<string, string>> = { ä: 'ae', ö: 'oe', ü: 'ue', ß: 'ss' };

const dialect: Readonly<Record<string, string>> = {
  net: 'nicht',
  ned: 'nicht',
  nit: 'nicht',
  nich: 'nicht',
  nech: 'nicht',
  koa: 'kein',
  koan: 'keinen',
  koane: 'keine',
  keen: 'kein',
  keene: 'keine',
  is: 'ist',
  isch: 'ist',
  dat: 'das',
  wat: 'was',
  et: 'es',
  heut: 'heute',
  jetz: 'jetzt',
  etz: 'jetzt',
  ham: 'haben',
  sinds: 'sind',
  wars: 'war',
  warens: 'waren',
  laeufts: 'laeuft',
  stehts: 'steht',
  klebts: 'klebt',
  bissl: 'bisschen',
  bissel: 'bisschen',
  bisserl: 'bisschen',
  bisken: 'bisschen',
  aufm: 'auf',
  inner: 'in',
  vielleich: 'vielleicht',
  vllt: 'vielleicht',
  ungefaer: 'ungefaehr',
  drocken: 'trocken',
  trokken: 'trocken',
  rissich: 'rissig',
  klebrich: 'klebrig',
  kain: 'kein',
  kaine: 'keine',
  wint: 'wind',
};

/** A lower-case word as it is looked up: umlauts and the sharp s written out, as many people type them; of a dialect, as
 * the lists have it. */
export function spell(word: string): string {
  const plain = word.replace(/[äöüß]/g, (letter) => letters[letter] ?? letter);
  return Object.hasOwn(dialect, plain) ? (dialect[plain] ?? plain) : plain;
}

const endings = ['', 'e', 'er', 'es', 'em', 'en'];

/** Patterns parted by commas, looked up as `spell` writes them; `feucht*` stands for the word with every ending of an adjective. */
export function words(parts: TemplateStringsArray, ...inserted: readonly string[]): readonly string[] {
  return plainWords(parts, ...inserted).map((pattern) => spell(pattern.replace(/([^\s|?]+)\*/g, inflected)));
}

function inflected(_: string, stem: string): string {
  return endings.map((ending) => stem + ending).join('|');
}

/** Words that are no mistyped word of the lists, though a letter away from one. */
export const properWords: readonly string[] = (
  'wasser wassern wissen wesen boten bogen baden biegen bohren bohne bohnen boden bruder brause riese riesen rosse rasse rassen reste rest rassig nasse nase nasen masse massen kasse gasse gassen lasse lassen hasse ' +
  'tasse tassen klebe kleber kleiner leben lieben laube laufe laufend laufende kaufen raufen taufen haufen saufen lauf lief tief tiefen riefen liefer liefern schnell schneide schneider schneit schneien frosch ' +
  'froscht frust frist kost post rost mist lust last gast fast feuchter leuchtet fechten dichter dichten richten leichter leichten leuchte beuchte nebel nebels hebel nabel kabel gabel regel regeln riegel reigen ' +
  'degen segen fegen wegen hegen gegen legen lagen sagen wagen tragen fragen schlagen rage waage lage plage winde winden binden finden linden rinde kinder kinden wild wand wunder winter hinter ' +
  'traktor tanker tanks bank dank rank sanken senken senke denken danken banken ranken trinken trocknen trockner trockne locken locker lockern flocken socken hocken bocken brocken ' +
  'pflanzung pflaster pfeffer pfanne pfannen pfeife pfosten pfade pfad platz plaetze pfuetzen stuetzen nutzen putzen mutzen risse risiko riss bisse kisse kissen wissen rissen gerissen gewissen genosse gegossen geschossen ' +
  'grabe grabens graeber groben grauen braun braunen brauner ' +
  'halme halten hallen hellen heller keller teller schneller hagel nagel vogel kugel flach flache flasche flaschen fleisch fluch flucht frucht fruechte flaeche flaechen steile stelle stellen stille stiller stiel stiele ' +
  'raeder leder feder jeder weder wieder lieder glieder flieder bauer bauern mauer mauern sauer dauer trauer hektik heiter weiter leiter reiter seite seiten weiten leiten saite ' +
  'land lande laender lander england englaender englisch schottisch walisisch irisch wahl walzer wales wale polen pole holen sohlen kohlen irland island finnland ' +
  'luftig lustig listig duft lufttrocken lupe lunge lungen schauen schauer bauer lauer tropfen topfen klopfen stopfen hopfen rinnen rennen rinne innen spinnen gewinnen beginnen tonnen sonnen wonne sonne sonniger ' +
  'mittel mitteln mitte titel viertel zettel bettel sattel lehre lehrer lehnen leim lehmig leise reise weise meise kreise schwere schwerer schwer schwach schwarz wetter wette wetten retter blatter blatt platte platten ' +
  'matt satt glatt glatter bleiben beide beider beiden bluete blueten triebe trieb treiben betrieb betriebe getrieb vertrieb besitz besatz einsatz absatz ansatz umsatz'
).split(' ');
