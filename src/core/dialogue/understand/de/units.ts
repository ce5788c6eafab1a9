import type { SaidUnit } from '../lexicon-types.ts';
import { spell } from './spelling.ts';

const hour = 'h|std|stunde';
const km = 'km|kilometer|kilometern';
const m = 'm|meter|metern|mtr';
const mm = 'mm|millimeter|millimetern|milimeter';
const g = 'g|gramm|gr';
const kg = 'kg|kilo|kilogramm';
const litre = 'l|liter|litern';
const ha = 'ha|hektar|hektare';
const degree = '°|grad|gradn';
const per = 'pro|je|die|in|/|per|auf|a';
const the = 'der?|die?|den?|dem?|das?|einem?|einer?|einen?';
const square = 'quadratmeter|qm|m2';
const plants =
  'pflanze|pflanzen|ähren|halme|stück|ackerfuchsschwanz|fuchsschwanz|weidelgras|weidelgräser|ungräser|ungraspflanzen|ungras|stängel|ackerfuchsschwanzpflanzen|fuchsschwanzpflanzen|gräser';
const optional = (words: string) => words.replaceAll('?', '');

const after: readonly (readonly [pattern: string, unit: SaidUnit])[] = [
  [`${degree} c|celsius`, 'C'],
  ['c|celsius|gradc', 'C'],
  [`${degree} f|fahrenheit`, 'F'],
  ['f|fahrenheit', 'F'],
  [degree, 'deg'],
  ['meile|meilen', 'mile'],
  ['mph', 'mph'],
  [`meile|meilen ${per} ${optional(the)} ${hour}`, 'mph'],
  [`meile|meilen ${per} ${hour}`, 'mph'],
  ['knoten|kn|kt|kts', 'kn'],
  [`${m} ${per} s|sek|sekunde`, 'm/s'],
  [`${m} ${per} ${optional(the)} s|sek|sekunde`, 'm/s'],
  ['sekundenmeter|metersekunden', 'm/s'],
  [`${km} ${per} ${hour}`, 'km/h'],
  [`${km} ${per} ${optional(the)} ${hour}`, 'km/h'],
  [`${km} ${hour}`, 'km/h'],
  ['kmh|stundenkilometer|stundenkilometern|kmst', 'km/h'],
  [km, 'km'],
  [`${km} weit? weg|weit|entfernt`, 'km'],
  [m, 'm'],
  [`${m} weit? weg|weit|entfernt`, 'm'],
  ['cm|zentimeter|zentimetern|zenti|centimeter', 'cm'],
  ['m|meter breit|hoch|lang|dick|auseinander', 'foreign'],
  ['cm|zentimeter breit|dick|auseinander', 'foreign'],
  ['m|meter tief', 'foreign'],
  ['windstaerken|beaufort|bft', 'force'],
  [mm, 'mm'],
  [`${litre} ${per} ${square}`, 'mm'],
  [`${litre} ${per} ${optional(the)} ${square}`, 'mm'],
  [`${mm} ${per} ${hour}`, 'mm/h'],
  [`${mm} ${per} ${optional(the)} ${hour}`, 'mm/h'],
  ['zoll|"', 'in'],
  ["fuß|'", 'ft'],
  ['yard|yards', 'yd'],
  [ha, 'ha'],
  ['acre|acres', 'acre'],
  ['morgen', 'foreign'],
  ['%|prozent|proz', '%'],
  [`%|prozent ${optional(the)}? feldkapazität|fk|nfk`, '% of field capacity'],
  ['%|prozent nutzbarer? feldkapazität', '% of field capacity'],
  ['%|prozent gefälle|hangneigung|neigung|steigung', '% slope'],
  [`${degree} gefälle|hangneigung|neigung|steigung`, 'deg slope'],
  [`${g} ${per} ${litre}`, 'g/L'],
  [`${g} ${per} ${optional(the)} ${litre}`, 'g/L'],
  [`${g} ${per} ${kg}`, 'g/kg'],
  [`${g} propyzamid|wirkstoff ${per} ${litre}`, 'g/L'],
  [`${g} ${per} ${ha}`, 'g/ha'],
  [`${g} propyzamid|wirkstoff ${per} ${ha}`, 'g/ha'],
  [`${g} ${per} ${optional(the)} ${ha}`, 'g/ha'],
  [`${kg} ${per} ${ha}`, 'kg/ha'],
  [`${kg} propyzamid|wirkstoff ${per} ${ha}`, 'kg/ha'],
  ['laubblatt|laubblätter|laubblättern|blatt|blätter|blättern', 'leaves'],
  ['echte|echten|richtige|richtigen|voll entwickelte? blätter|laubblätter|blättern', 'leaves'],
  ['blattstadium', 'leaves'],
  ['blatt stadium', 'leaves'],
  ['laubblatt stadium', 'leaves'],
  ['bestockungstrieb|bestockungstriebe|bestockungstrieben|trieb|triebe|trieben|seitentriebe', 'tillers'],
  [`${plants} ${per} ${square}`, 'plants/m2'],
  [`${plants} ${per} ${optional(the)} ${square}`, 'plants/m2'],
  [`${per} ${square}`, 'plants/m2'],
  [`${per} ${optional(the)} ${square}`, 'plants/m2'],
  [`${litre} wasser? ${per} ${ha}|acre|morgen`, 'foreign'],
  [`${litre} wasser? ${per} ${optional(the)} ${ha}|acre|morgen`, 'foreign'],
  [`${litre}|ml|milliliter|gallonen`, 'foreign'],
  [`${kg}|${g}|t|tonne|tonnen|dt|dezitonnen|zentner|doppelzentner`, 'foreign'],
  [`${kg} n|stickstoff|dünger ${per} ${ha}`, 'foreign'],
  [`t|tonne|tonnen|dt|dezitonnen|zentner ${per} ${ha}`, 'foreign'],
  ['bar|psi|kpa|hpa|mbar|millibar|hektopascal', 'foreign'],
  [
    `sekunde|sekunden|sek|minute|minuten|min|stunde|stunden|std|h|tag|tage|tagen|woche|wochen|monat|monate|monaten|jahr|jahre|jahren`,
    'time',
  ],
  ['euro|cent|pfund|eur|€', 'foreign'],
  [`euro|cent|pfund|eur|€ ${per} ${litre}|${ha}|${kg}`, 'foreign'],
  [
    'felder|feldern|feld|schläge|schlägen|leute|leuten|männer|kühe|schafe|mal|male|stellen|stellen|orten|überfahrten|düsen|schritt|schritte|schritten|punkte|anwendungen|häuser|fahrten|pferde',
    'foreign',
  ],
  ['volt|ps|ph|ppm|umdrehungen|kw|watt', 'foreign'],
  ['quadratmeter|qm', 'foreign'],
  ['bbch', 'bbch'],
];

/** Units as said after a number; `foreign` ones measure nothing that is asked. Patterns as in `phraseBook`. */
export const unitsAfter: typeof after = after.map(([pattern, unit]) => [spell(pattern), unit]);

/** Units as said before a number. */
export const unitsBefore: readonly (readonly [pattern: string, unit: SaidUnit])[] = [
  ['windstaerke|beaufort|bft|staerke', 'force'],
  ['windstaerke von', 'force'],
  ['bbch', 'bbch'],
  ['bbch stadium|stufe', 'bbch'],
  ['pro|je quadratmeter|qm|m2', 'plants/m2'],
  ['auf den|einem quadratmeter', 'plants/m2'],
];

/** Words that are a unit with the number one. */
export const singleUnits: readonly (readonly [pattern: string, unit: SaidUnit])[] = [
  ['ein|einen|einem zoll', 'in'],
  ['eine|einer meile', 'mile'],
  ['ein|einen|einem fuss', 'ft'],
  ['ein grad', 'deg'],
  ['ein|einen|einem meter', 'm'],
  ['ein|einen hektar', 'ha'],
  ['ein prozent gefaelle|hangneigung|neigung', '% slope'],
  ['ein prozent', '%'],
  ['ein|einen millimeter', 'mm'],
  ['ein|einen kilometer', 'km'],
  ['ein laubblatt', 'leaves'],
  ['ein|einen bestockungstrieb|trieb', 'tillers'],
];

/** Parts of a unit. */
export const unitParts: readonly (readonly [pattern: string, value: number])[] = [
  ['ein|einen halben|halbes|halber', 0.5],
  ['halb|halben|halbes', 0.5],
  ['einen|ein viertel', 0.25],
  ['ein drittel', 1 / 3],
];

/** Words between a number and how far it may be out. */
export const plusMinus: readonly string[] = ['plus minus?', 'plus oder minus?', '±', 'und / minus?'];

/** Words around a number that leave it open to one side, soften it, or make it negative. */
export const boundsBefore: readonly (readonly [
  pattern: string,
  bound: 'above' | 'least' | 'below' | 'most' | 'near',
])[] = [
  ['mehr|groesser|hoeher|waermer als', 'above'],
  ['ueber|>', 'above'],
  ['deutlich|weit|etwas|knapp|gut|leicht|klar ueber', 'above'],
  ['mindestens|wenigstens|minimum', 'least'],
  ['nicht weniger als', 'least'],
  ['ab', 'least'],
  ['weniger|kleiner|niedriger|geringer|kaelter als', 'below'],
  ['unter|<', 'below'],
  ['deutlich|weit|etwas|knapp|leicht|klar unter', 'below'],
  ['hoechstens|maximal|max', 'most'],
  ['bis zu', 'most'],
  ['nicht mehr als', 'most'],
  ['nicht ueber', 'most'],
  [
    'geschaetzte|gute|knappe|runde|etwa|ungefaehr|circa|ca|zirka|rund|fast|knapp|gut|beinahe|annaehernd|gegen|nahezu|schaetzungsweise|grob|so|um|ungefaehr|ungefaer|bald',
    'near',
  ],
  ['um die|rum', 'near'],
  ['an die', 'near'],
  ['so um|gegen|bei|ungefaehr|etwa|circa|ca', 'near'],
  ['so um die', 'near'],
  ['so circa|ca|etwa rund|um', 'near'],
  ['irgendwo|irgendwas um|bei', 'near'],
  ['irgendwo|irgendwas um die', 'near'],
  ['in der gegend von', 'near'],
  ['nahe an|bei', 'near'],
  ['mehr oder weniger', 'near'],
  ['nicht ganz', 'near'],
  ['kurz vor|unter|ueber', 'near'],
  ['einen tick|hauch unter|ueber', 'near'],
  ['ganz|recht knapp', 'near'],
  ['sagen wir', 'near'],
  ['sagen wir mal', 'near'],
];

/** The same, said after the number and its unit. */
export const boundsAfter: readonly (readonly [pattern: string, bound: 'least' | 'most' | 'near' | 'negative'])[] = [
  ['oder|und mehr|drueber|darueber|hoeher|groesser', 'least'],
  ['plus', 'least'],
  ['aufwaerts', 'least'],
  ['oder|und weniger|drunter|darunter|kleiner', 'most'],
  ['maximal|max|hoechstens', 'most'],
  ['etwa|ungefaehr|circa|ca|rum|herum|schaetzungsweise', 'near'],
  ['oder so', 'near'],
  ['oder so was|aehnlich', 'near'],
  ['so etwa|ungefaehr|rum|circa', 'near'],
  ['minus', 'negative'],
  ['unternull', 'negative'],
];

/** Words that join two numbers into a range. */
export const rangeWords: ReadonlySet<string> = new Set(['bis', 'oder']);

/** Word before a range joined by "und". */
export const betweenWord = 'zwischen';

/** Words that may lead a range. */
export const rangeLeads: ReadonlySet<string> = new Set([betweenWord, 'von']);
