import { words } from '../phrases.ts';
import { answer, choice, sign, type WordRow } from '../rows.ts';

const ofSoil = 'soil surface';

/** What is said of the soil today: feel, surface, drains, trend of its temperature. */
export const soilWords: readonly WordRow[] = [
  choice(
    'soil.feel',
    'dry',
    'soil',
    words`
    dry, bone|powder dry, dusty, powdery, dried out, dry as a bone|dust, parched, too dry
  `,
  ),
  choice(
    'soil.feel',
    'slightly-moist',
    'none soil',
    words`
    slightly moist|damp, barely moist|damp, just moist|damp, hint of moisture
  `,
  ),
  choice('soil.feel', 'slightly-moist', 'soil', words`a? bit|little|touch moist|damp, on the dry side`, {
    doubtful: true,
  }),
  choice(
    'soil.feel',
    'moist',
    'none soil',
    words`
    moist, nicely|nice and? moist, good moisture, plenty of moisture
  `,
  ),
  choice('soil.feel', 'moist', 'soil', words`damp, moisture`, { doubtful: true }),
  choice('soil.feel', 'wet', 'soil', words`wet, very wet, wet through`),
  choice(
    'soil.feel',
    'at-capacity',
    'none soil',
    words`
    at field? capacity, as wet as it can hold, fully wetted up, at full capacity
  `,
  ),
  choice(
    'soil.feel',
    'saturated',
    'none soil',
    words`saturated, waterlogged, sodden, water runs|running out of it|the? soil?, like|a soup`,
    { strong: true },
  ),
  choice('soil.feel', 'saturated', 'soil', words`soaking, soaked, sopping, soaking wet`),
  sign(
    'friable',
    `none ${ofSoil}`,
    words`
    friable, crumbly, crumbles, crumbling, crumbling nicely, good|nice|lovely|fine|great tilth, nice and crumbly
  `,
  ),
  sign('cracked', `none ${ofSoil}`, words`cracks, cracked, crack, cracked open, fissures`, {
    strong: true,
  }),
  sign('cracked', ofSoil, words`cracking`),
  sign(
    'sticky',
    `none ${ofSoil}`,
    words`
    sticky, sticking, claggy, tacky, sticks to my? the? boots|wheels|tyres, clagging up, sticking to my? the?
    boots|wheels|tyres, gluey
  `,
  ),
  sign(
    'ponded',
    `none ${ofSoil} water`,
    words`
    ponded, ponding, puddles, puddle, puddled, standing water, water standing, surface water, water on the?
    surface|top, water lying, lying water, flooded, pools of water, water is? standing
  `,
    { strong: true },
  ),
  sign(
    'frozen',
    'soil surface',
    words`
    frozen, frozen solid|hard, froze, hard with frost, rock hard with frost, frosted, frost in
  `,
  ),
  sign('frozen', 'none', words`frozen ground|soil, ground|soil frost, frost in the? ground|soil, frozen solid`, {
    strong: true,
  }),
  sign(
    'snow',
    `none ${ofSoil}`,
    words`
    snow, snowy, snow on the? ground, snow cover, covered in snow, under snow, snow lying, lying snow
  `,
  ),
  choice(
    'soil.drainsRunning',
    'yes',
    'drains',
    words`
    running, flowing, trickling, dripping, going, run, flow, a? trickle|dribble, still going|running|flowing,
    discharging, started|start running|flowing, running well|hard|full|slowly, have? water in|coming, water coming
    out, in flow, dribbling, a? steady flow, gushing, pouring out
  `,
    { strong: true },
  ),
  choice(
    'soil.drainsRunning',
    'no',
    'drains',
    words`
    dry, stopped, stopped running|flowing, shut, quit, stop, dried up, bone dry, idle, still dry, no flow, nothing
    coming out, nothing running
  `,
    { strong: true },
  ),
  choice('soil.drainsRunning', 'no', 'none', words`no drains running|flowing|going, none of the drains running`, {
    strong: true,
  }),
  choice(
    'soil.drainsExpected7d',
    'yes',
    'drains',
    words`
    running, run, start, flow, flowing, start running|flowing, to run|start|flow, be running|flowing, expected
  `,
    { strong: true },
  ),
  choice('soil.drainsExpected7d', 'no', 'drains', words`dry, stay dry, remain dry, be dry`, { strong: true }),
  choice(
    'soil.drainsExpected7d',
    'yes',
    '',
    words`
    likely, very|quite|highly likely, expect so, within the|a? week, soon, any day, before long, bound to
  `,
  ),
  choice(
    'soil.drainsExpected7d',
    'no',
    '',
    words`
    unlikely, not likely, very|highly unlikely, no chance, doubt it, not for a while, not any time
    soon, not soon, not this week
  `,
  ),
  answer(
    'soil.temperatureTrendCPerDay',
    'colder',
    'soil',
    words`
    colder than a|last week|ago, colder than a week ago, cooler than a week ago, colder|cooler than last week,
    getting colder|cooler, cooling, cooling down|off, dropping, falling, going down, cooled, cooled down|off,
    dropped
  `,
  ),
  answer(
    'soil.temperatureTrendCPerDay',
    'colder',
    '',
    words`
    colder, cooler, a? bit|little|lot|touch colder|cooler, gone down, down, lower
  `,
  ),
  answer(
    'soil.temperatureTrendCPerDay',
    'warmer',
    'soil',
    words`
    warmer than a week ago, warmer than last week, getting warmer, warming, warming up, rising, going up, warmed
    up
  `,
  ),
  answer(
    'soil.temperatureTrendCPerDay',
    'warmer',
    '',
    words`
    warmer, a? bit|little|lot|touch warmer, gone up, up, higher
  `,
  ),
  answer(
    'soil.temperatureTrendCPerDay',
    'same',
    'soil',
    words`
    same as a week ago, same as last week, about? the? same as a|last week ago?, not changed since last week,
    steady
  `,
  ),
  answer(
    'soil.temperatureTrendCPerDay',
    'same',
    '',
    words`
    same, about|much the same, the same, no change, unchanged, no different, not changed, hasnt changed, no
    colder|warmer, not much different, not changed much
  `,
  ),
];
