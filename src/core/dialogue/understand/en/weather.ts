import { words } from '../phrases.ts';
import { answer, choice, type WordRow } from '../rows.ts';

const sensitive =
  'house|houses|village|garden|gardens|school|cottage|cottages|farmhouse|bungalow|beck|ditch|stream|pond|river|brook|water|hives|bees|beehives|path|footpath|bridleway|people|folk|homes|buildings|neighbours|neighbour|lake|dyke|burn|reservoir|dwelling|dwellings|road|hamlet|playground|pub|church|caravans|orchard|walkers|watercourse';
const homes =
  'house|houses|village|garden|gardens|school|cottage|cottages|farmhouse|bungalow|hives|bees|path|footpath|people|folk|homes|buildings|road';
const crops = 'crop|field|beans|wheat|barley|garden|house|place|land';
const towards = 'towards|toward|onto|into|straight|right|directly|at|over';
const away = 'away|clear|off';
const strong = { strong: true } as const;

/** What is said of wind and air. */
export const weatherWords: readonly WordRow[] = [
  answer(
    'wind.boomKmh',
    'calm',
    'none wind air',
    words`
    calm, dead calm|still, no wind, not a breath, not a breath of wind|air, flat calm, no wind at all, not a whisper, not a leaf moving|stirring, no breeze, no
    breeze at all, perfectly|completely still|calm, still as a millpond
  `,
  ),
  answer('wind.boomKmh', 'calm', 'wind air', words`none, nil, still, very still`),
  answer(
    'wind.boomKmh',
    'calm',
    '',
    words`still, none, nil, nothing, smoke goes|going|rises|rising straight up, smoke straight up, smoke going up straight, nothing moving|stirring, dropped right off`,
  ),
  answer('wind.boomKmh', 'light-air', 'none wind', words`light air|airs, the? lightest of airs`),
  answer(
    'wind.boomKmh',
    'light-air',
    '',
    words`smoke drifts|drifting, smoke just drifts|drifting, smoke is? drifting, barely a breath, just a breath, hardly a breath`,
  ),
  answer(
    'wind.boomKmh',
    'light-breeze',
    'none wind',
    words`light|slight|faint breeze, bit of a breeze, breath of wind`,
  ),
  answer(
    'wind.boomKmh',
    'light-breeze',
    '',
    words`leaves rustle|rustling, leaves are? just? rustling, feel it on my|the|your face, feel it on face, felt on the? my? face, feel wind on my|the face, just feel it, can feel it, light`,
    { doubtful: true },
  ),
  answer('wind.boomKmh', 'gentle-breeze', 'none wind', words`gentle breeze|wind`),
  answer(
    'wind.boomKmh',
    'gentle-breeze',
    '',
    words`leaves and twigs moving|move, leaves twigs moving|move|in constant? motion, twigs moving|move, leaves moving constantly|all the time, flag|flags out|extended, gentle`,
    { doubtful: true },
  ),
  answer('wind.boomKmh', 'moderate-breeze', 'none wind', words`moderate breeze|wind`),
  answer(
    'wind.boomKmh',
    'moderate-breeze',
    '',
    words`small branches moving|move, branches moving|move, raising dust, dust lifting|blowing|raised, moderate`,
    { doubtful: true },
  ),
  answer(
    'wind.boomKmh',
    'stronger',
    'none wind',
    words`
    fresh|strong|stiff breeze, strong wind|winds, gale, near gale, blowing a? hooley|gale, very windy, too windy,
    blowing hard, howling, strong gale, storm force
  `,
  ),
  answer(
    'wind.boomKmh',
    'stronger',
    '',
    words`strong, very strong, stronger, windy, blowing a hooley, howling, small trees swaying|sway, trees swaying|sway, too strong, far too strong, blowing hard, wild`,
  ),
  answer(
    'wind.gustKmh',
    'medium',
    '',
    words`small branches move|moving, small branches, branches moving|move, dust lifts|lifting|blowing, moderate, small branches are moving, lifting|raising dust`,
  ),
  answer(
    'wind.gustKmh',
    'light',
    '',
    words`leaves and twigs, leaves, twigs, no gusts, not gusting, hardly any, only|just leaves|twigs, leaves and twigs moving at? most?, leaves moving, twigs moving, none, nothing, light, none to speak of`,
  ),
  answer('wind.gustKmh', 'light', 'none', words`no gusts, not gusting`, { doubtful: true }),
  answer('wind.gustKmh', 'strong', '', words`small trees sway, trees sway, trees swaying, swaying`),
  choice(
    'wind.towardsSensitive',
    'yes',
    'none wind',
    words`
    blowing|blows|carrying|carries|going|goes|drifting|heading|pushing|pointing|coming|headed ${towards} ${sensitive}, heading|making|headed|going|bound for ${sensitive}, blowing|carrying|going|drifting|heading|pushing? ${towards} next|neighbours|neighbour|another doors|door? ${crops},
    blowing|blows ${towards} at? the|our|my|a? ${sensitive}, blowing straight|right|directly
    at|to|towards|over|onto the|our|a? ${sensitive}, blowing towards|at anything, towards something sensitive
  `,
    strong,
  ),
  choice(
    'wind.towardsSensitive',
    'yes',
    'none',
    words`${sensitive} downwind, downwind of us|me|here? is|are ${sensitive}`,
    { strong: true },
  ),
  choice(
    'wind.towardsSensitive',
    'yes',
    'wind',
    words`
    ${towards} the|our|my|a? ${sensitive}, straight|right|directly at|towards|onto|over the|our|a? ${sensitive},
    towards anything, towards anything sensitive
  `,
    strong,
  ),
  choice(
    'wind.towardsSensitive',
    'no',
    'none wind',
    words`
    away from the|our|any|a? ${homes}, away from everything|anything|it|all, blowing|blows|going|goes|heading|drifting|drifts|carrying|blowing ${away} from? the|our|any|a? ${sensitive}, blowing|blows|going|goes|heading|drifting|drifts|carrying ${away} from
    the? sensitive? area|areas, nothing sensitive downwind, nothing downwind, towards nothing, blowing towards
    nothing, towards nothing sensitive, blowing towards open fields
  `,
    { strong: true },
  ),
  choice('wind.towardsSensitive', 'no', 'wind', words`blowing? ${away} from? the|our|any|a? ${sensitive}`, strong),
  answer(
    'air.temperatureC',
    'freezing',
    'air temperature',
    words`below|under|at|about freezing|zero|nought, sub zero, freezing`,
  ),
  answer(
    'air.temperatureC',
    'freezing',
    '',
    words`just? below|under|at|about freezing|zero|nought, sub zero, freezing, minus something`,
  ),
  answer('air.temperatureC', 'cold', '', words`just? above freezing|zero, just over freezing|zero`),
  choice(
    'crop.frostOnLeaves',
    'no',
    '',
    words`
    none, clear, all gone, gone, cleared, none seen, thawed, thawed out|off, melted, all clear, none left, nothing, not a trace, lifted, free of it, dried off
  `,
  ),
  choice(
    'air.inversionRisk',
    'yes',
    'none',
    words`
    inversion, an inversion, temperature inversion, mist in the? hollows|hollow|valley|bottoms, smoke is?
    hanging|lying|flat, smoke is? lying flat|low, smoke is? hanging low|flat, smoke is? hanging, dust is? hanging flat|low?, is hanging flat|low, dust is? hanging, dust is? hanging flat|low|in the air, dust hanging in the air, smoke is? going|lying|drifting|spreading flat|sideways,
    smoke is? spreading out flat?, mist is? lying|sitting|hanging in the? hollows|hollow|valley|bottom|bottoms|dips, fog is? lying|sitting in the? hollows|valley|bottom|bottoms, signs of an?
    inversion, ground mist, mist lying, fog in the? hollows|bottoms|valley, misty hollows
  `,
    { strong: true },
  ),
  choice(
    'air.inversionRisk',
    'yes',
    '',
    words`
    mist, misty, fog, foggy, heavy dew, dust hanging, hanging, lying flat, signs, there are signs, cool and still, still and clear, hanging about
  `,
  ),
  choice(
    'air.inversionRisk',
    'no',
    'none',
    words`
    smoke is? rising, smoke rises, smoke is? going? straight? up, smoke is? drifting? away, smoke rises and
    spreads, smoke rises|going|rising straight? up, smoke is? blowing away, no mist or fog, no signs of an? inversion, no sign of an? inversion
  `,
    { strong: true },
  ),
  choice(
    'air.inversionRisk',
    'no',
    '',
    words`rising, none, no signs, no mist, none seen, goes up, nothing, no sign, going up, rises, breezy, good mixing, air is moving, air moving`,
  ),
  choice('air.inversionRisk', 'no', '', words`clear`, { doubtful: true }),
  choice(
    'air.inversionRisk',
    'yes',
    '',
    words`clear sky|skies|night, clear and still, still and clear, sounds? carries|carrying`,
    { doubtful: true },
  ),
  choice(
    'sun.daylight',
    'no',
    'none',
    words`
    its dark, pitch dark|black, gone dark, too dark, dark now|out|already, after dark, no daylight, sun has? set, not light yet, still dark
  `,
  ),
  choice('sun.daylight', 'no', 'none', words`getting dark, dusk`, { doubtful: true }),
  choice(
    'sun.daylight',
    'yes',
    'none',
    words`
    daylight, broad daylight, still light, light enough, daytime, sunny, sun is? up|out|shining
  `,
  ),
];
