import { words } from '../phrases.ts';
import { choice, type WordRow } from '../rows.ts';

const holds =
  'holds|hold|holding|stays|staying|keeps|sticks|binds|hangs|hanging|hang|clings|squeezes|squeezing|moulds|molds|pats|packs|goes|rolls|presses';
const breaks = 'falls|falling|fell|crumbles|crumbling|crumbled|breaks|breaking|broke|goes|going|drops|comes';
const makes = 'makes|make|forms|form|rolls|roll|get|gets|got|holds|hold';
const bits = 'to|into|in|apart|up|easily bits|pieces|crumbs?';

/** How the soil feels in the hand. */
export const feelWords: readonly WordRow[] = [
  choice(
    'soil.feel',
    'dry',
    'soil',
    words`
    dry, bone|powder dry, dusty, powdery, dry as a bone|dust, parched, too dry
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
  choice(
    'soil.feel',
    'slightly-moist',
    '',
    words`will? ${makes} a|some? ball|lump but|that|and|which it|then? ${breaks} ${bits}, ball|lump but|that|and|which it|then? ${breaks} ${bits}, ${breaks} ${bits} if|when|once|as|soon i|you|its bounce|bounced|toss|tossed|poke|touch|touched|prod|drop|dropped it?, ${breaks} ${bits} on bouncing|landing`,
    { strong: true, doubtful: true },
  ),
  choice(
    'soil.feel',
    'dry',
    '',
    words`crumbles|crumbled|falls|blows away, my|your|the? hand|hands|fingers|palm stay|stays|stayed|is|are|still|come|comes? clean, clean hand|hands|fingers, no mark|marks|stain on the? my? hand|hands|fingers, hard|dry|brick clods|lumps`,
    { strong: true, doubtful: true },
  ),
  choice('soil.feel', 'dry', 'soil', words`dried out|off|up, drying out`, { doubtful: true }),
  choice('soil.feel', 'dry|slightly-moist', '', words`crumbles, crumbly, crumbling, crumbles up`, { doubtful: true }),
  choice('soil.feel', 'slightly-moist', 'soil', words`a? bit|little|touch moist|damp, on the dry side`, {
    doubtful: true,
  }),
  choice(
    'soil.feel',
    'moist',
    'none soil',
    words`
    moist, nicely|nice and? moist, just nicely|nice|right|lovely and? moist|damp, good moisture, plenty of moisture
  `,
  ),
  choice('soil.feel', 'moist', 'soil', words`damp, moisture`, { doubtful: true }),
  choice(
    'soil.feel',
    'dry',
    '',
    words`
    ${breaks} to|into nothing|dust|powder|bits|pieces, ${breaks} straight? apart, wont|doesnt|cant|not hold|bind|stick|stay|go|make|form|mould a|into|in? ball|shape|together|up, wont|doesnt|cant|not hold|bind|ball|mould, runs|trickles|pours|slips through my|the|your? fingers,
    falls|falling apart, wont ball|bind, wont make|form|hold a ball, wont hold together, wont stick|hold together, doesnt hold together, runs through my? the? fingers, like dust, dust, loose
    and dry, flows|pours through my|the fingers, no ball, wont stay together, no moisture in it?, doesnt ball, not a bit of moisture, turns|goes to dust, powder, dry
  `,
    { strong: true, doubtful: true },
  ),
  choice(
    'soil.feel',
    'slightly-moist',
    '',
    words`
    ${breaks} to|into? bits|pieces|apart when i? bounce|bounced|toss it?, weak ball, makes|forms a weak ball, crumbly ball, ball falls|breaks apart|up, just|barely|hardly holds|hangs together, just|barely makes|forms a ball, a? ball that falls|breaks|crumbles
    apart?, loosely holds together, ball but it falls apart, ball crumbles, just about holds together, just about makes a ball
  `,
    { strong: true, doubtful: true },
  ),
  choice(
    'soil.feel',
    'moist',
    '',
    words`
    will make|form|hold|roll|squeeze|go|stay|mould into|in|to? a ball|lump|shape|sausage, will hold|stay|stick|bind together, solid|firm|tight|good|proper|nice ball|lump|sausage|clod, made|got|formed a ball|lump, ${holds} together, ${holds} in|into|to|as? a? ball|shape|lump, ${holds} its|the shape, neither|not wet nor|or dry, not wet and|but not dry, neither one nor the other, in between,
    makes|forms|holds|stays|rolls|squeezes|goes in|into? a good? nice? firm|tight|solid|strong|proper ball, stays in|as a ball, rolls into a ball, moist right|all down|through|over, ball with clear? finger marks, finger marks|prints, clear finger marks, leaves finger marks, makes|forms|holds a ball, makes|forms a good|firm|nice|clear|proper ball, holds together, holds its shape, damp stain, leaves|makes
    a? damp stain, makes|forms a ball with clear? finger marks, leaves my? the? hand|fingers damp, dampens my? the? hand, holds together nicely|well, moist enough, rolls into a ball, balls up nicely?
  `,
    { strong: true, doubtful: true },
  ),
  choice(
    'soil.feel',
    'wet',
    '',
    words`
    water|wet|moisture on|over|left hands|fingers|palm, fingers|hands|hand|palm come|comes|came|are|is|get|gets|left wet, leaves hands|hand|fingers|palm wet, leaves wet marks|mark|smear|patch|print on?,
    wets my|the hand|hands|palm|fingers, hand is|comes wet, leaves my|the hand|hands|palm|fingers wet, wet outline, leaves a wet outline, water on my|the fingers|hand, wet hand|hands, makes my hand|hands|palm wet, slick, slippery
  `,
    { strong: true, doubtful: true },
  ),
  choice(
    'soil.feel',
    'at-capacity',
    '',
    words`
    glistens, glistens when i? shake|shaken it?, glistening, shines, shiny, shines when i? shake|shaken it?, at capacity, at fc, field capacity, full, as wet as it|can gets|hold|be, as wet as it can|will|could|ll go|get|be|hold|take, wet as it can|will|could go|get|be|hold|take, holding all it can, film of
    water, no free water
  `,
    { strong: true, doubtful: true },
  ),
  choice(
    'soil.feel',
    'saturated',
    '',
    words`
    water|wet|moisture|drops|drips|drop|juice trickle|trickles|trickling|run|drip|come|drop|squeeze|leak|ooze|runs|running|ran|drips|dripping|dripped|comes|coming|came|oozes|oozing|squeezes|squirts|pours|pouring|drops|streams out|off|from|through|between|when, wring|wrung|squeeze|squeezed|squeezing water out|from, like|its|pure soup|slop|slurry|pudding|porridge|custard, squelches|squelching|squelchy, sloppy, swimming,
    i? can squeeze water out of? it?, squeeze water out of? it?, get water out of? it?, can get water out of? it?, water runs|drips|comes|oozes|squeezes|pours out, drips, dripping, drips when i? squeeze|squeezed it?, water comes|drips|runs out when i? squeeze it?, squeezes out, free water, can wring it out, wringing, soup, slurry,
    water squeezes out, pudding, like porridge, porridge, runs out between my? the? fingers, water between my? the? fingers
  `,
    { strong: true },
  ),
  choice('soil.feel', 'dry|slightly-moist', 'none soil', words`dry to slightly moist|damp`),
  choice('soil.feel', 'slightly-moist|moist', 'none soil', words`slightly moist|damp to moist, slightly to moist`),
  choice('soil.feel', 'moist|wet', 'none soil', words`moist to wet, damp to wet`),
  choice('soil.feel', 'wet|at-capacity|saturated', 'none soil', words`wet to saturated`),
  choice('soil.feel', 'saturated', 'none soil', words`wringing wet, sopping wet`),
  choice('soil.feel', 'moist', 'none', words`moist enough, plenty moist, moist all through`),
  choice('soil.feel', 'at-capacity', 'soil', words`at capacity, at fc, holding all it can`),
  choice('soil.feel', 'wet', 'soil', words`wet, very wet, really wet, too wet, soggy`),
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
    words`saturated, waterlogged, sodden, sodden through, saturated through, water runs|running out of it|the? soil?, like|a soup`,
    { strong: true },
  ),
  choice('soil.feel', 'wet|at-capacity|saturated', 'soil', words`wet through, wet right? through`),
  choice('soil.feel', 'saturated', 'soil', words`soaking, soaked, sopping, soaking wet`),
];
