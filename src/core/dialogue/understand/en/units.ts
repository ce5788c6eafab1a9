import type { SaidUnit } from '../lexicon-types.ts';

/** Units as said after a number; `foreign` ones measure nothing that is asked. Patterns as in `phraseBook`. */
export const unitsAfter: readonly (readonly [pattern: string, unit: SaidUnit])[] = [
  ['°|degrees|degree|deg|digrees|degres? c|celsius|centigrade|celcius|cel', 'C'],
  ['°|degrees|degree|deg? f|fahrenheit', 'F'],
  ['degc', 'C'],
  ['degf', 'F'],
  ['°|degrees|degree|deg|degs', 'deg'],
  ['mile|miles', 'mile'],
  ['mph|mphs', 'mph'],
  ['m p h', 'mph'],
  ['mile|miles per|an|a hour', 'mph'],
  ['kilometres|kilometers|kilometre|k p h', 'km/h'],
  ['k p h', 'km/h'],
  ['miles|mile per|an|a|/ hour|hr|h', 'mph'],
  ['knot|knots|kn|kt|kts', 'kn'],
  ['m|metres|metre|meters|meter / s|sec|second', 'm/s'],
  ['m|metres|metre|meters|meter per|a second|sec|s', 'm/s'],
  ['mps', 'm/s'],
  ['km|k|kilometres|kilometers|kilometre / h|hr|hour', 'km/h'],
  ['km|kilometres|kilometers|kilometre per|an hour|h', 'km/h'],
  ['kph|kmh|kmph|kms|klicks', 'km/h'],
  ['km|kilometre|kilometres|kilometer|kilometers', 'km'],
  ['m|metre|metres|meter|meters|mtr|mtrs', 'm'],
  ['cm|cms|centimetre|centimetres|centimeter|centimeters', 'cm'],
  ['mm|mms|millimetre|millimetres|millimeter|millimeters|mil|mils|mill', 'mm'],
  ['mm|millimetres|millimeters / h|hr|hour', 'mm/h'],
  ['mm|millimetres|millimeters per|an|in? an? hour|h', 'mm/h'],
  ['inch|inches|ins|"', 'in'],
  ['inch|inches per|an|/ hour', 'in/h'],
  ["foot|feet|ft|'", 'ft'],
  ['yard|yards|yd|yds', 'yd'],
  ['ha|hectare|hectares', 'ha'],
  ['acre|acres|ac', 'acre'],
  ['%|percent|pc', '%'],
  ['per cent', '%'],
  ['%|percent of? field capacity|fc', '% of field capacity'],
  ['per cent of? field capacity', '% of field capacity'],
  ['%|percent of? fc', '% of field capacity'],
  ['per cent of? fc', '% of field capacity'],
  ['%|percent slope|gradient|fall', '% slope'],
  ['°|degrees|degree|deg slope|incline', 'deg slope'],
  ['%|percent w / v', '% w/v'],
  ['g|grams|gram|grammes / l|litre|liter', 'g/L'],
  ['g|grams|gram|grammes per|a|to? the? litre|liter|l', 'g/L'],
  ['gpl', 'g/L'],
  ['g|grams|gram|grammes / kg|kilo', 'g/kg'],
  ['g|grams|gram|grammes per|a kg|kilo|kilogram', 'g/kg'],
  ['g|grams|gram|grammes / ha|hectare', 'g/ha'],
  ['g|grams|gram|grammes per|a ha|hectare', 'g/ha'],
  ['kg|kilos|kilo / ha|hectare', 'kg/ha'],
  ['kg|kilos|kilo|kilograms per|a ha|hectare', 'kg/ha'],
  ['true? leaf|leaves', 'leaves'],
  ['true? leaf|leaves stage', 'leaves'],
  ['true leaves|leaf stage?', 'leaves'],
  ['tiller|tillers', 'tillers'],
  ['plants|heads|weeds|blackgrass / m2|sqm', 'plants/m2'],
  [
    'black? blackgrass|ryegrass|grass|rye|weed plants|heads|weeds|seedlings|tillers? per|a|to the? square metre|meter',
    'plants/m2',
  ],
  ['black? blackgrass|ryegrass|grass|weed plants|heads|weeds|seedlings? per|a|to|/ the? m2|sqm', 'plants/m2'],
  ['plants|heads|weeds|seedlings? per|a|to? the? square metre|meter', 'plants/m2'],
  ['plants|heads|weeds|seedlings? per|a|to? the? sq m|metre|meter', 'plants/m2'],
  ['plants|heads|weeds|seedlings? per|a m2|sqm', 'plants/m2'],
  ['plants|heads|weeds|seedlings? per metre|meter squared', 'plants/m2'],
  ['per|a|/ square metre|meter', 'plants/m2'],
  ['per|a|/ m2|sqm', 'plants/m2'],
  ['per metre|meter squared', 'plants/m2'],
  ['gal|gallon|gallons per|an|a|/ acre|ac', 'foreign'],
  ['l|litre|litres|liter|liters per|a|/ ha|hectare|acre', 'foreign'],
  ['l|litre|litres|liters|gal|gallon|gallons|pint|pints|ml', 'foreign'],
  ['pace|paces|stride|strides|step|steps', 'foreign'],
  ['bar|psi|kpa|hpa|mb|millibars|kg|kilo|kilos|tonne|tonnes|t|ton|tons|lb|lbs|g|gram|grams|grammes', 'foreign'],
  ['t|tonnes|tonne|tons per|a|/ ha|hectare|acre', 'foreign'],
  [
    'second|seconds|sec|secs|minute|minutes|min|mins|hour|hours|hr|hrs|h|day|days|week|weeks|month|months|year|years',
    'time',
  ],
  ['pound|pounds|quid|euro|euros|pence|p', 'foreign'],
  [
    'times|fields|field|people|lads|men|cows|sheep|spots|places|passes|seasons|applications|nozzles|point|points',
    'foreign',
  ],
  ['square metre|metres|meters|feet|yards', 'foreign'],
  ['v|volts|hp|rpm|ph|ppm|ug', 'foreign'],
  ['bbch', 'bbch'],
];

/** Units as said before a number. */
export const unitsBefore: readonly (readonly [pattern: string, unit: SaidUnit])[] = [
  ['force|beaufort|bft', 'force'],
  ['force|beaufort of?', 'force'],
  ['beaufort force|scale', 'force'],
  ['bbch|gs', 'bbch'],
  ['b b c h', 'bbch'],
  ['b b ch', 'bbch'],
  ['bb ch', 'bbch'],
  ['bbch stage|code', 'bbch'],
  ['g s', 'bbch'],
  ['growth stage', 'bbch'],
];

/** Units with the number one in them. */
export const singleUnits: readonly (readonly [pattern: string, unit: SaidUnit])[] = [
  ['a foot', 'ft'],
  ['foot depth', 'ft'],
];

/** Parts of a unit. */
export const unitParts: readonly (readonly [pattern: string, value: number])[] = [
  ['half a|an', 0.5],
  ['half', 0.5],
  ['a? couple of?', 2],
  ['a? quarter', 0.25],
  ['half of? a|an', 0.5],
  ['a? quarter of? a|an', 0.25],
  ['a? third of a|an', 1 / 3],
];

/** Words between a number and how far it may be out. */
export const plusMinus: readonly string[] = ['plus or minus?', 'plus minus?', 'give or take', '±', 'and / minus?'];

/** Words around a number that leave it open to one side, soften it, or make it negative. */
export const boundsBefore: readonly (readonly [
  pattern: string,
  bound: 'above' | 'least' | 'below' | 'most' | 'near',
])[] = [
  ['no|not warmer|hotter|higher|greater|bigger|better|over|above than?', 'most'],
  ['no|not colder|cooler|lower|smaller|fewer|below|under than?', 'least'],
  ['cant|cannot|wont|couldnt be more|over|above|warmer|higher than?', 'most'],
  ['cant|cannot|wont|couldnt be less|under|below|colder|lower than?', 'least'],
  ['its|gone|come|came|risen|went|crept|back|now|got|been up|down to', 'near'],
  ['c|ca', 'near'],
  ['picked|picks|picking up to', 'near'],
  ['cooled|dropped|fallen|warmed|risen|climbed|come|gone|crept|sunk|fell|went|came down|up|off? to', 'near'],
  ['easily|comfortably|clearly|safely|way|far under|below', 'below'],
  ['easily|comfortably|clearly|safely|way|far over|above', 'above'],
  ['getting on for', 'near'],
  ['getting close|near to?', 'near'],
  ['close|near on', 'near'],
  [
    'pushing|nudging|touching|nearing|approaching|somewhere|anywhere|maybe|perhaps|probably|possibly|call|reckon|guess',
    'near',
  ],
  ['knocking on for?', 'near'],
  ['a? touch|shade|tad|whisker|hair|fraction|smidge|smidgen|little|bit under|below|off', 'near'],
  ['a? touch|shade|tad|whisker|hair|fraction|smidge|smidgen|little|bit over|above', 'near'],
  ['just? shy|short of', 'near'],
  ['not quite', 'near'],
  ['nigh on', 'near'],
  ['the? best part of', 'near'],
  ['in the neighbourhood|vicinity|order of', 'near'],
  ['a? good|clear|full', 'near'],
  ['in excess of', 'above'],
  ['north of', 'above'],
  ['upwards of', 'least'],
  ['south of', 'below'],
  ['fewer|less than', 'below'],
  ['more|greater|bigger|higher|warmer|hotter|better than', 'above'],
  ['colder|cooler than', 'below'],
  ['over|above|exceeding|>', 'above'],
  ['well|just|a? bit? over|above', 'above'],
  ['a? bit|little over|above', 'above'],
  ['at least', 'least'],
  ['minimum|min of?', 'least'],
  ['no|not less than', 'least'],
  ['less|fewer|lower|smaller than', 'below'],
  ['under|below|<', 'below'],
  ['well|just under|below', 'below'],
  ['a? bit|little under|below', 'below'],
  ['within|inside', 'most'],
  ['up to', 'most'],
  ['at most', 'most'],
  ['no|not more than', 'most'],
  ['maximum of?', 'most'],
  ['about|around|roughly|approx|approximately|abt|circa|near|nearly|almost|close|say', 'near'],
  ['close|near to', 'near'],
  ['somewhere|something about|around|like|near|round', 'near'],
  ['round about', 'near'],
  ['more or less', 'near'],
  ['in the region of', 'near'],
  ['round', 'near'],
  ['not far from|off', 'near'],
];

/** The same, said after the number and its unit. */
export const boundsAfter: readonly (readonly [pattern: string, bound: 'least' | 'most' | 'near' | 'negative'])[] = [
  ['or more|over|above|higher|better', 'least'],
  ['and more|over|above|up', 'least'],
  ['plus', 'least'],
  ['or less|fewer|under|below|lower', 'most'],
  ['max|tops|maximum', 'most'],
  ['at the? most|outside|maximum', 'most'],
  ['if that', 'most'],
  ['and a bit|something|touch', 'near'],
  ['something', 'near'],
  ['ish|or so|odd|thereabouts', 'near'],
  ['or so|thereabouts', 'near'],
  ['give or take', 'near'],
  ['below zero|freezing', 'negative'],
  ['below', 'negative'],
];

/** Words that join two numbers into a range. */
export const rangeWords: ReadonlySet<string> = new Set(['to', 'or', 'till']);

/** Word before a range joined by "and". */
export const betweenWord = 'between';

/** Words that may lead a range. */
export const rangeLeads: ReadonlySet<string> = new Set([betweenWord, 'from']);
