import { words } from '../phrases.ts';
import { answer, choice, noSign, sign, type WordRow } from '../rows.ts';

const ofSoil = 'soil surface';
const sticks =
  'sticks|sticking|stick|stuck|clings|clinging|clags|clagging|clogs|clogging|clarts|clarting|balls|balling|builds|building|picks|picking|cakes|caking|caked|plasters|plastered|gums|gumming|comes|gathers|gathering|hangs';
const boots = 'boots|boot|tyres|tyre|wheels|feet|shoes|soles|spade|shovel';

/** What is said of the soil today: surface, drains, trend of its temperature. */
export const soilWords: readonly WordRow[] = [
  sign(
    'friable',
    `none ${ofSoil}`,
    words`
    friable, crumb, good|fine crumb, crumb structure, loose and crumbly, breaks|falls|crumbles underfoot, well structured, tilthy, good tilth, crumbly, crumbles, crumbling, crumbling nicely, good|nice|lovely|fine|great tilth, nice and crumbly, breaks into|to crumbs, breaks up nicely|well|lovely|grand|beautifully|easy|easily|sweet, breaks up a treat, breaks down nicely|well, in good tilth, lovely and crumbly, nice tilth, worked down nicely, nice and friable
  `,
  ),
  sign(
    'cracked',
    `none ${ofSoil}`,
    words`cracks, cracked, crack, cracked open, fissures, fissured, cracks opening|open|opened up?, opened up in cracks, gaping cracks, cracks you could|can lose|get|put a|your|my boot|hand|fingers|fist|arm in|down, cracks big|wide enough to? get|put|lose your|my|a hand|fist|fingers|boot in|down`,
    {
      strong: true,
    },
  ),
  sign('cracked', ofSoil, words`cracking`),
  sign(
    'sticky',
    `none ${ofSoil}`,
    words`
    ${sticks} up? to|on|onto|around|round? ${boots}, ${boots} are? up? caked|clagged|plastered|heavy|covered|balled|clogged|clarted, sticky when you|i walk|drive on? it?, sticks to|on your|the|a boot|boots|tyres|wheels, picks up on|the my? your? tyres|boots|wheels, picks up on the tyres|boots|wheels, balls up on your|my|the boots|tyres|wheels, boots|boot come|comes|came up heavy|caked|clagged, like plasticine|putty|glue, stodgy, sticky, sticking, claggy, tacky, sticks to my? the? boots|wheels|tyres, clagging up, sticking to my? the?
    boots|wheels|tyres, gluey, clarty, sticks to everything, sticks like glue, sticks to my? the? spade, balling up on the? my? boots|wheels|tyres, sticking|sticks to me boots|wheels|tyres, clinging to my? the? boots|wheels|tyres, clings to my? the?
    boots|wheels|tyres, plasticky, cloying, gummy, sticky as glue
  `,
  ),
  sign(
    'ponded',
    `none ${ofSoil} water`,
    words`
    under water, underwater, water stands|lies|sits|stood|lay, water in|on the? wheelings|tramlines|hollows|ruts|headland|headlands|wheelmarks|furrows|dips, wheelings|tramlines|hollows|ruts are? full|holding, full of water, holding water, waterlogged patches|spots,
    ponded, ponding, puddles, puddle, puddled, standing water, water standing, surface water, water on the?
    surface|top, water lying, lying water, flooded, pools of water, water is? standing, standing wet, water stood, water stood on it|top, puddles of water, wet holes, water sat|sitting on it|top|the surface, water lies on it|top, pools, pooling, lying wet,
    water in the wheelings|tramlines|wheelmarks|ruts, flashes of water, water lying in it|on top
  `,
    { strong: true },
  ),
  sign('ponded', '', words`waterlogged, swimming, sodden`, { doubtful: true }),
  noSign('ponded', 'none soil surface', words`no water standing|lying|stood`),
  noSign(
    'ponded',
    '',
    words`nothing standing|lying, nothing stood on it, well drained off, all soaked in|away, soaked in`,
  ),
  sign(
    'frozen',
    'soil surface',
    words`
    ice, icy, ice on puddles, skin of ice, frozen crust, frosty, frost, a frost, concrete with frost, like concrete with frost, like iron with frost, solid with frost, froze up|over, iced up|over, frozen, frozen solid|hard|up|over, froze, hard with frost, rock hard with frost, frosted, frost in
  `,
  ),
  sign(
    'frozen',
    'none',
    words`frozen ground|soil, ground|soil frost, frost in the? ground|soil, frozen solid|hard|stiff|through|rigid, hard frozen, frozen on top`,
    {
      strong: true,
    },
  ),
  sign(
    'snow',
    `none ${ofSoil}`,
    words`
    snow, snowy, snow on the? ground, snow cover, covered in snow, under snow, snow lying, lying snow, a? dusting of snow, snow on it|top, still snow lying, bit of snow, an|inch inch of snow, white with
    snow, snow covered
  `,
    { strong: true },
  ),
  choice(
    'soil.drainsRunning',
    'yes',
    'drains',
    words`
    running, flowing, trickling, dripping, going, run, flow, a? trickle|dribble, still going|running|flowing,
    discharging, started, started up, begun, begun to run, just started, started|start running|flowing, flowing well|hard|full|slowly|nicely|steady, going steady|well|nicely|strong, full bore, spilling, weeping, a? bit coming out, still
    trickling|dribbling|dripping|weeping, spouting, coming out, a bit of water coming? out?, running well|hard|full|slowly, have? water in|coming, water coming
    out, in flow, dribbling, a? steady flow, gushing, pouring out
  `,
    { strong: true },
  ),
  choice(
    'soil.drainsRunning',
    'no',
    'drains',
    words`
    not|nothing|nobbut a drop|trickle|drip|dribble|drop? coming|running|flowing|trickling|dripping, nothing trickling|dripping|flowing|moving, no movement, not moving, lying dry,
    dry, stopped, stopped running|flowing, shut, quit, stop, dried up, bone dry, idle, still dry, no flow, nothing
    coming out, nothing running, not a drop, not a trickle, no water coming? out?, not a drip, nothing out of them, nothing from them, bone dry still, gone dry, dried off, not run yet, no flow at all,
    they stopped, have|has dried up, ceased, packed up
  `,
    { strong: true },
  ),
  choice('soil.drainsRunning', 'yes', '', words`drip, trickle, dribble, drop, spit`),
  choice(
    'soil.drainsRunning',
    'no',
    '',
    words`dry, bone dry, nothing coming|running|flowing|trickling, not a drop|trickle|drip coming|running|flowing, dry as a bone, stopped, not a drop, not a trickle, nothing coming? out?, no water, nothing`,
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
  choice('soil.drainsExpected7d', 'no', 'drains', words`dry, stay dry, staying dry, remain dry, be dry`, {
    strong: true,
  }),
  choice(
    'soil.drainsExpected7d',
    'yes',
    '',
    words`
    likely, very|quite|highly likely, expect so, bound to be|start|run?, sure to, will do, they will, might well, odds on, almost certain, certain to, within days, any minute, before the week is out, within the|a? week, soon, any day, before long, bound to
  `,
  ),
  choice(
    'soil.drainsExpected7d',
    'no',
    '',
    words`
    unlikely, not likely, very|highly unlikely, no chance, doubt it, not for a while, not any time
    soon, not soon, not this week, not within the week, wont run|start|flow, not a chance, cant see it, shouldnt think so, wouldnt think so, not in the next week|7
    days?, long way off, weeks away, not for weeks, no way
  `,
  ),
  answer(
    'soil.temperatureTrendCPerDay',
    'colder',
    'soil',
    words`
    colder than a|last week|ago, colder than a week ago, cooler than a week ago, colder|cooler than last week,
    getting colder|cooler, cooling, cooling down|off, dropping, falling, going down, cooled, cooled down|off, cooled down|off since last week, colder|cooler since last week, dropped since last week,
    dropped
  `,
  ),
  answer(
    'soil.temperatureTrendCPerDay',
    'colder',
    '',
    words`
    colder, cooler, a? bit|little|lot|touch|shade|good|fair colder|cooler, gone down, down, lower, dropped, fallen, cooled, cooled off|down, dropping, falling, cooling, cooling off|down, come down, on the way down, been dropping|falling
  `,
  ),
  answer(
    'soil.temperatureTrendCPerDay',
    'warmer',
    'soil',
    words`
    warmer than a week ago, warmer than last week, getting warmer, warmed|warmer up? since last week, come up since last week, warmed, warming, warming up, rising, going up, warmed
    up
  `,
  ),
  answer(
    'soil.temperatureTrendCPerDay',
    'warmer',
    '',
    words`
    warmer, a? bit|little|lot|touch|shade warmer, gone up, up, higher, warmed, warmed up, rising, risen, warming, warming up, on the way up, come up, been rising, crept up
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
    same, about|much|pretty|roughly the? same, same as it was, much of a muchness, holding steady|still?, level, steady, static, hasnt moved|shifted, not moved|shifted, no real change, same again, no movement, stayed? the same, stayed put, the same, no change, unchanged, no different, not changed, hasnt changed, no
    colder|warmer, not much different, not changed much
  `,
  ),
];
