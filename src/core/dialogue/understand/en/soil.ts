import { words } from '../phrases.ts';
import { answer, choice, type WordRow } from '../rows.ts';

const flows =
  'runs|run|running|ran|pours|pouring|pour|gushes|gushing|gush|spills|spilling|spewing|trickles|trickling|trickle|dribbles|dribbling|drips|dripping|drip|weeps|weeping|piddling|spouting|flows|flowing|coming|comes|chucking|shooting';
const ditches = 'ditch|dyke|dike|beck|brook|stream|burn|drain|river|pond|bank';

/** What is said of the drains and of the trend of the soil temperature. */
export const soilWords: readonly WordRow[] = [
  choice(
    'soil.drainsRunning',
    'yes',
    'drains',
    words`
    ${flows} out, ${flows} out? of|into|in|to|down the? ${ditches}|pipe|pipes, running, flowing, trickling, dripping, going, run, flow, a? trickle|dribble, still going|running|flowing,
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
  choice(
    'soil.drainsRunning',
    'yes',
    'none',
    words`${flows} out? of|from the|my|all|most|some? of? the? pipe|pipes|outfall|outfalls|drain|drains|tile|tiles|outlet|outlets`,
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
    id|i be|would? be? surprised|amazed if it|they did|do|ran|run|start|started|flow|flowed?, cant|dont|couldnt see them|it running|starting|flowing, unlikely, not likely, very|highly unlikely, no chance, doubt it, not for a while, not any time
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
