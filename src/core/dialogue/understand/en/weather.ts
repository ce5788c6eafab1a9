import { words } from '../phrases.ts';
import { answer, choice, type WordRow } from '../rows.ts';

const sensitive =
  'house|houses|village|garden|gardens|school|cottage|cottages|farmhouse|bungalow|beck|ditch|stream|pond|river|brook|water|hives|bees|beehives|path|footpath|bridleway|people|homes|buildings|neighbours|neighbour|lake|dyke|dwelling|dwellings|road';
const towards = 'towards|toward|onto|into|straight|right|directly|at|over';
const away = 'away|clear|off';
const strong = { strong: true } as const;

/** What is said of rain, wind and air, now and as forecast. */
export const weatherWords: readonly WordRow[] = [
  answer(
    'rain.nowMmPerH',
    'none',
    'none',
    words`
    not raining, isnt|aint raining, no rain now, no rain at? the? moment, dry now, dry right now, dry out, dry at?
    the moment, dry out here|there, stopped raining, rain has? stopped, not raining now, dry at? the? minute, dry now, not a drop falling?, not a drop of rain, no drop falling, nothing
    falling, nothing coming down, hasnt rained today?, rains stopped, rain has cleared, its dry out, dry outside|overhead, dry up here, fair and dry
  `,
    strong,
  ),
  answer(
    'rain.nowMmPerH',
    'none',
    'rain',
    words`stopped, none, dry, off, has stopped, cleared, passed, gone through, nil`,
  ),
  answer('rain.nowMmPerH', 'none', 'none', words`no rain, no rain falling|here|today|yet, rain free`),
  answer(
    'rain.nowMmPerH',
    'none',
    '',
    words`dry, bone dry, no rain, fine, none, nothing, dry as a bone, fair, not a drop, not a spot, all dry, perfectly|completely|totally dry, cleared up`,
  ),
  answer(
    'rain.nowMmPerH',
    'drizzle',
    'none',
    words`
    a? few|odd spots, odd spot, spitting, a? few spots of rain, spots of rain, spotting, spitting a? bit?, few|odd drops, the? odd spot, just spots, trying to rain,
    spots in the wind, mizzling slightly
  `,
  ),
  answer(
    'rain.nowMmPerH',
    'rain',
    'none',
    words`
    raining, is raining, its raining, drizzling, mizzling, mizzle, hammering down, coming down hard|heavily|steadily, bucketing, bucketing down, lashing, lashing down, siling
    down, hoying it down, throwing it down, teeming, teeming down, belting down, persisting down, chucking down, wet rain, steady rain, raining stair rods, drizzle, pouring, pouring down, chucking it down, raining
    hard|heavily|lightly|steadily, light rain, tipping down, pouring with rain, raining a? bit?
  `,
    { unless: { kind: 'answer', id: 'none' } },
  ),
  answer('rain.nowMmPerH', 'rain', '', words`rain, showers, shower, wet, heavy rain, heavy`),
  answer(
    'rain.next48hMm',
    'dry',
    'none rain',
    words`
    dry, stay|staying|stays dry, to stay dry, stay dry for, dry spell, bone dry, settled, fair, nothing of note, nothing to speak of, nothing in it, no rain, nothing, be dry, no rain for?, fine, looking dry, looks
    dry, none
  `,
  ),
  answer(
    'rain.next48hMm',
    'showers',
    'none rain',
    words`
    showers, showery, a? few|odd showers, light showers, shower or two, scattered showers, the? odd shower, passing showers, a shower, shower, odd light shower, bits and pieces
  `,
  ),
  answer(
    'rain.next48hMm',
    'bursts',
    'none rain',
    words`
    heavy bursts, thunder, thundery, thunderstorm|thunderstorms, heavy showers, downpours, downpour, cloudburst|cloudbursts, storms, heavy downpours|downpour, thundery showers|rain|downpours|bursts,
    torrential rain?, torrential downpours, burst of heavy rain
  `,
  ),
  answer('rain.next48hMm', 'bursts', 'none rain', words`heavy rain, lots of rain, heavy, a lot of rain`, {
    doubtful: true,
  }),
  answer('rain.next48hMm', 'dry', '', words`dry, nothing, no rain, none, dry spell, fine, nothing much`),
  answer('rain.next48hMm', 'wet', '', words`wet, very wet, soaking, ten or more, lots, a lot, plenty, a wet spell`, {
    doubtful: true,
  }),
  answer(
    'rain.next48hMm',
    'showers',
    '',
    words`odd shower, a shower or two, the odd shower, scattered showers, showers, showery, a? few|odd showers, light showers`,
  ),
  answer(
    'rain.next48hMm',
    'bursts',
    '',
    words`
    heavy bursts, thunder, thundery, thunderstorms, heavy showers, downpours, storms
  `,
  ),
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
    blowing|blows ${towards} at? the|our|my|a? ${sensitive}, blowing straight|right|directly
    at|to|towards|over|onto the|our|a? ${sensitive}, blowing towards|at anything, towards something sensitive
  `,
    strong,
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
    blowing? ${away} from the|our|any|a? ${sensitive}, away from everything|anything|it|all, blowing? ${away} from
    the? sensitive? area|areas, nothing sensitive downwind, nothing downwind, towards nothing, blowing towards
    nothing, towards nothing sensitive, blowing towards open fields
  `,
    { strong: true },
  ),
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
    words`rising, none, no signs, no mist, none seen, goes up, clear, nothing, no sign, going up, rises, breezy, good mixing, air is moving, air moving`,
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
