import { words } from '../phrases.ts';
import { answer, type WordRow } from '../rows.ts';

const strong = { strong: true } as const;

/** What is said of rain, now and as forecast. */
export const rainWords: readonly WordRow[] = [
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
    words`dry, bone dry, no rain, fine, none, nothing, dry as a bone, fair, not now, not right|just now, not at the? moment|minute, not currently, not just yet, not today, not a drop, not a spot, all dry, perfectly|completely|totally dry, cleared up`,
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
  answer(
    'rain.next48hMm',
    'dry',
    '',
    words`nothing|none forecast|due|expected|coming|predicted|promised, dry as a bone, set fair`,
  ),
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
];
