import { words } from '../phrases.ts';
import { noSign, sign, type WordRow } from '../rows.ts';

const ofSoil = 'soil surface';
const sticks =
  'sticks|sticking|stick|stuck|clings|clinging|clags|clagging|clogs|clogging|clarts|clarting|balls|balling|builds|building|picks|picking|cakes|caking|caked|plasters|plastered|gums|gumming|comes|gathers|gathering|hangs';
const boots = 'boots|boot|tyres|tyre|wheels|feet|shoes|soles|spade|shovel';

const shatters = 'breaks|break|breaking|crumbles|crumble|shatters|shattering|knocks';
const apart = 'up|down|apart|away';
const nicely = 'nicely|nice|well|lovely|grand|beautifully|easy|easily|sweet|fine';
const gapes = 'split|splitting|splits|cracking|cracks|cracked';
const gap = 'cracks|splits|fissures|gaps|crevices';
const limb = 'boot|foot|hand|finger|fingers|fist|arm|leg|spade|spanner|rule|pencil|pen|knife|coin|stick|cane|thumb';
const muck = 'muck|mud|clay|soil|dirt|clods|clarts|half|field';
const smeary = 'smeary|smears|smearing|smear|greasy|slimy|pasty|doughy|gooey|gloopy|clingy|clammy|tenacious';
const pool = 'pool|pools|puddle|puddles|flash|flashes|splash|splashes';
const inThe = 'in|on|by|at|along|down|round the|a|my|every|most?';
const hollow =
  'bottom|gateway|gateways|gate|corner|corners|dip|dips|hollow|hollows|low|middle|end|headland|headlands|tramline|tramlines|wheeling|wheelings|wheelmarks|rut|ruts|furrow|furrows|top|surface|spots|places|patches|holes';
const stands =
  'stands|standing|stood|lies|lying|lay|sits|sitting|sat|gathers|gathering|gathered|collects|collecting|pools|pooling|ponds|ponding|held|laid|puddling';
const there = 'about|around|everywhere|there|here|still|yet';
const stone = 'concrete|iron|rock|stone|brick|steel|bullets|nails|tarmac|board|bone';

/** What is said of the surface of the soil, by classes: what it does, to what, and where. */
export const surfaceWords: readonly WordRow[] = [
  sign(
    'friable',
    `none ${ofSoil}`,
    words`
    friable, crumb, good|fine crumb, crumb structure, loose and crumbly, breaks|falls|crumbles underfoot, well structured, tilthy, good tilth, crumbly, crumbles, crumbling, crumbling nicely, good|nice|lovely|fine|great tilth, nice and crumbly, breaks into|to crumbs, breaks up nicely|well|lovely|grand|beautifully|easy|easily|sweet, breaks up a treat, crumbs up|down ${nicely}?, crumbs, ${shatters} ${apart} ${nicely}, ${shatters} ${apart} like bread|cake|crumble, ${shatters}|falls|goes|works to|into crumbs|crumb|tilth, like breadcrumbs|crumble, fine|nice|good|lovely mould, mellow, kindly, breaks down nicely|well, in good tilth, lovely and crumbly, nice tilth, worked down nicely, nice and friable
  `,
  ),
  sign(
    'cracked',
    `none ${ofSoil}`,
    words`${gap} you|i|one|that could|can|would? lose|get|put|fit|stick|swallow|take a|an|your|my|the|half? ${limb} in|down|into?, ${gap} big|wide|deep enough to|for lose|get|put|fit? a|your|my? ${limb} in|down|into?, cracks, cracked, crack, crevices, crevice, split open, gaping|gapes|yawning open|wide?, ${gapes} open|wide|apart, gaping|yawning cracks|fissures, splits|gaps in the? ground|soil|top|surface, cracked wide? open, cracked open, fissures, fissured, cracks opening|open|opened up?, opened up in cracks, gaping cracks, cracks you could|can lose|get|put a|your|my boot|hand|fingers|fist|arm in|down, cracks big|wide enough to? get|put|lose your|my|a hand|fist|fingers|boot in|down`,
    {
      strong: true,
    },
  ),
  sign('cracked', ofSoil, words`cracking, cracking up|open|apart, opening up, gaping, splits, splitting`),
  sign(
    'sticky',
    `none ${ofSoil}`,
    words`
    ${sticks} up? to|on|onto|around|round? ${boots}, ${boots} are? up? caked|clagged|plastered|heavy|covered|balled|clogged|clarted, sticky when you|i walk|drive on? it?, sticks to|on your|the|a boot|boots|tyres|wheels, picks up on|the my? your? tyres|boots|wheels, picks up on the tyres|boots|wheels, balls up on your|my|the boots|tyres|wheels, boots|boot come|comes|came up heavy|caked|clagged, ${muck} on|to|over|round|onto|all each|every|all|my|the|your|both|our|of? my|your|the? ${boots}, like plasticine|putty|glue|dough|toffee|treacle, stodgy, ${sticks} up? to? everything|anything, sticks|sticking|clags|clagging|balls|balling|clarts|clarting up a? bit|lot|little?, ${smeary}, sticky, sticking, claggy, tacky, sticks to my? the? boots|wheels|tyres, clagging up, sticking to my? the?
    boots|wheels|tyres, gluey, clarty, sticks to everything, sticks like glue, sticks to my? the? spade, balling up on the? my? boots|wheels|tyres, sticking|sticks to me boots|wheels|tyres, clinging to my? the? boots|wheels|tyres, clings to my? the?
    boots|wheels|tyres, plasticky, cloying, gummy, sticky as glue
  `,
  ),
  sign(
    'ponded',
    `none ${ofSoil} water`,
    words`
    a|wee|big|small|little? ${pool} ${inThe} ${hollow}, ${pool} of water|wet, water|wet is|has|just|was? ${stands} ${inThe} ${hollow}|it, water is|has|just? ${stands} ${there}, ${hollow} are|is? flooded|awash|swimming|brimming, standing|sitting|lying|swimming|stood|sat in water|wet, awash, swamped, flooding, under water, underwater, water stands|lies|sits|stood|lay, water in|on the? wheelings|tramlines|hollows|ruts|headland|headlands|wheelmarks|furrows|dips, wheelings|tramlines|hollows|ruts are? full|holding, full of water, holding water, waterlogged patches|spots,
    ponded, ponding, puddles, puddle, puddled, standing water, water standing, surface water, water on the?
    surface|top, water lying, lying water, flooded, pools of water, water is? standing, standing wet, water stood, water stood on it|top, puddles of water, wet holes, water sat|sitting on it|top|the surface, water lies on it|top, pools, pooling, lying wet,
    water in the wheelings|tramlines|wheelmarks|ruts, flashes of water, water lying in it|on top
  `,
    { strong: true },
  ),
  sign('ponded', '', words`waterlogged, swimming, sodden`, { doubtful: true }),
  sign('ponded', '', words`lake|lakes|pond|ponds ${inThe} ${hollow}, like a lake|pond|swamp|bog|pudding`, {
    doubtful: true,
  }),
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
    like|as|hard? as? ${stone} with|from|in|after the? frost|cold|freeze, hard|solid|stiff with|from the? cold|freeze, crust|skin of frost|ice, ice, icy, ice on puddles, skin of ice, frozen crust, frosty, frost, a frost, concrete with frost, like concrete with frost, like iron with frost, solid with frost, froze up|over, iced up|over, frozen, frozen solid|hard|up|over, froze, hard with frost, rock hard with frost, frosted, frost in
  `,
  ),
  sign(
    'frozen',
    'none',
    words`froze|frozen on top|the? top|surface, frozen ground|soil, ground|soil frost, frost in the? ground|soil, frozen solid|hard|stiff|through|rigid, hard frozen, frozen on top`,
    {
      strong: true,
    },
  ),
  sign(
    'snow',
    `none ${ofSoil}`,
    words`
    snow, snowy, snow on the? ground, snow cover, covered in snow, under snow, snow lying, lying snow, a? dusting of snow, snow on it|top, still snow lying, bit of snow, an|inch inch of snow, white over? with
    snow, snow covered, snowed under|over?, couple|few inches|cm|inch of snow, snow on top|there|the? field|crop|headland, slush, slushy
  `,
    { strong: true },
  ),
  noSign(
    'frozen',
    `none ${ofSoil}`,
    words`thawed, thawed out|through|off?, thawed right out|through, frost is? out of the? ground|soil, unfrozen, not frozen any more|now|anymore`,
  ),
  noSign('snow', '', words`melted, thawed, melted off|away, thawed off|out`),
];
