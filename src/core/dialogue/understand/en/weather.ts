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
    the moment, dry out here|there, stopped raining, rain has? stopped, not raining now
  `,
    strong,
  ),
  answer('rain.nowMmPerH', 'none', 'rain', words`stopped, none, dry`),
  answer('rain.nowMmPerH', 'none', '', words`dry, bone dry, no rain, fine, none, nothing, dry as a bone`),
  answer(
    'rain.nowMmPerH',
    'drizzle',
    'none',
    words`
    a? few|odd spots, odd spot, spitting, a? few spots of rain, spots of rain, spotting
  `,
  ),
  answer(
    'rain.nowMmPerH',
    'rain',
    'none',
    words`
    raining, is raining, its raining, drizzling, drizzle, pouring, pouring down, chucking it down, raining
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
    dry, stay|staying|stays dry, to stay dry, no rain, nothing, be dry, no rain for?, fine, looking dry, looks
    dry, none
  `,
  ),
  answer(
    'rain.next48hMm',
    'showers',
    'none rain',
    words`
    showers, showery, a? few|odd showers, light showers, shower or two, scattered showers
  `,
  ),
  answer(
    'rain.next48hMm',
    'bursts',
    'none rain',
    words`
    heavy bursts, thunder, thundery, thunderstorm|thunderstorms, heavy showers, downpours, cloudbursts, storms
  `,
  ),
  answer('rain.next48hMm', 'bursts', 'none rain', words`heavy rain, lots of rain, heavy, a lot of rain`, {
    doubtful: true,
  }),
  answer('rain.next48hMm', 'dry', '', words`dry, nothing, no rain, none, dry spell, fine, nothing much`),
  answer('rain.next48hMm', 'showers', '', words`showers, showery, a? few|odd showers, light showers`),
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
    calm, dead calm|still, still, no wind, not a breath, not a breath of wind, flat calm, no wind at all, none,
    nil
  `,
  ),
  answer('wind.boomKmh', 'calm', 'wind', words`none, nil`),
  answer('wind.boomKmh', 'light-air', 'none wind', words`light air|airs`),
  answer('wind.boomKmh', 'light-breeze', 'none wind', words`light breeze, slight breeze`),
  answer('wind.boomKmh', 'gentle-breeze', 'none wind', words`gentle breeze`),
  answer('wind.boomKmh', 'moderate-breeze', 'none wind', words`moderate breeze`),
  answer(
    'wind.boomKmh',
    'stronger',
    'none wind',
    words`
    fresh|strong|stiff breeze, strong wind|winds, gale, near gale, blowing a? hooley|gale, very windy, too windy,
    blowing hard, howling, strong gale, storm force
  `,
  ),
  answer('wind.boomKmh', 'stronger', '', words`strong, very strong, stronger, windy`),
  answer('wind.gustKmh', 'medium', '', words`small branches move, small branches, dust lifts, moderate`),
  answer('wind.gustKmh', 'light', '', words`leaves and twigs, leaves, twigs, no gusts, not gusting, hardly any`),
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
    none, clear, all gone, gone, cleared, none seen
  `,
  ),
  choice(
    'air.inversionRisk',
    'yes',
    'none',
    words`
    inversion, an inversion, temperature inversion, mist in the? hollows|hollow|valley|bottoms, smoke is?
    hanging|lying|flat, smoke is? lying flat|low, smoke is? hanging low?, dust is? hanging, signs of an?
    inversion, ground mist, mist lying, fog in the? hollows|bottoms|valley, misty hollows
  `,
    { strong: true },
  ),
  choice(
    'air.inversionRisk',
    'yes',
    '',
    words`
    mist, misty, fog, foggy, heavy dew, dust hanging, hanging, lying flat
  `,
  ),
  choice(
    'air.inversionRisk',
    'no',
    'none',
    words`
    smoke is? rising, smoke rises, smoke is? going? straight? up, smoke is? drifting? away, smoke rises and
    spreads
  `,
    { strong: true },
  ),
  choice('air.inversionRisk', 'no', '', words`rising, none, no signs, no mist, none seen, goes up, clear`),
  choice(
    'sun.daylight',
    'no',
    'none',
    words`
    dark, pitch dark|black, night, after dark, no daylight, sun has? set, not light yet, still dark
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
