import { words } from '../phrases.ts';
import { answer, choice, type WordRow } from '../rows.ts';
import { countyWords } from './counties.ts';

const strong = { strong: true } as const;
const ofTexture = 'none soil';
const texture = (name: string, ...say: string[]) => choice('field.texture', name, ofTexture, say, strong);
const land = 'land|soil|ground|textured|texture';

/** What is said of the field: soil, slope, water, drains, country. */
export const fieldWords: readonly WordRow[] = [
  texture('loamy-sand', 'loamy sand'),
  texture('sandy-loam', 'sandy loam', 'sand loam'),
  texture('silt-loam', 'silt|silty loam'),
  texture('sandy-clay-loam', 'sandy clay loam'),
  texture('clay-loam', 'heavy|medium? clay loam', 'clayey loam'),
  texture('silty-clay-loam', 'silty|silt clay loam'),
  texture('sandy-clay', 'sandy clay'),
  texture('silty-clay', 'silty|silt clay'),
  choice('field.texture', 'clay', ofTexture, words`the clay`, { doubtful: true }),
  choice('field.texture', 'clay', ofTexture, words`clay, heavy|stiff|strong clay, clay land|soil`),
  choice('field.texture', 'loam', ofTexture, words`loam, loam soil`),
  choice('field.texture', 'silt', ofTexture, words`silt, silt soil`),
  choice('field.texture', 'sand', ofTexture, words`sand, pure sand, blowing sand`),
  answer('field.texture', 'light', 'soil', words`light, sandy, very light, pretty light, light and sandy`),
  answer('field.texture', 'light', 'none', words`light ${land}, sandy soil|land|ground`),
  answer('field.texture', 'medium', 'soil', words`medium, middling, medium to? middling, middle of the road`),
  answer(
    'field.texture',
    'medium',
    'none',
    words`medium ${land}, medium|middling sort|kind|type of ${land}, middling ${land}`,
  ),
  answer('field.texture', 'heavy', 'soil', words`heavy, very|pretty|quite heavy, strong, clayey`),
  answer('field.texture', 'heavy', 'none', words`heavy ${land}, strong land, clayey soil|land|ground`),
  choice(
    'field.organicSoil',
    'yes',
    ofTexture,
    words`peat, peaty, peaty soil|land|ground, peat soil|land, fen peat, organic soil, black fen`,
    strong,
  ),
  choice('field.organicSoil', 'no', ofTexture, words`mineral, mineral soil, not peaty, no peat`),
  answer(
    'field.slopePercent',
    'flat',
    'none slope',
    words`
    flat, level, dead|pretty|fairly|almost|near|nearly|more|virtually flat|level, flat as a board|table|plate|fart, as flat as a pancake, table top, flat land, level field|ground|as a table, no fall, no fall to speak of, dead level, flat as a pancake, no slope, flat field|ground, pan flat
  `,
  ),
  answer(
    'field.slopePercent',
    'gentle',
    'none slope',
    words`
    gentle slope, slight|slightly slope|sloping, gentle|gently, gently sloping, gentle fall, bit of a slope, slight|slightly fall|incline|rise, gentle incline|rise|gradient|bank, shallow slope, falls away gently|slightly, slopes|falls gently|slightly, a? bit of fall, rolling, slightly rolling, gently rolling
  `,
  ),
  answer(
    'field.slopePercent',
    'steep',
    'none slope',
    words`
    steep, very|quite|really|fairly|pretty steep, steep slope|bank|hill|incline|gradient, steeply sloping, like the side of a house, proper bank, falls away steeply|sharply, steep as a roof, a steep one, steepish, bit steep
  `,
  ),
  choice(
    'field.drained',
    'yes',
    'none',
    words`
    tile|tiled|pipe|piped|under|all|fully drained|tiled|piped back in the fifties|sixties|seventies|eighties|nineties|war, drained|tiled|piped back in the fifties|sixties|seventies|eighties|nineties|war, drained, tile drained, under drained, underdrained, is|its|fully|all|systematically drained, land drains, tile
    drains, got|has|have drains, drains in, piped, been drained, there are drains, old drains, clay pipes, a?
    drainage system|scheme
  `,
    strong,
  ),
  choice(
    'field.drained',
    'no',
    'none',
    words`
    never|not|hasnt|havent had|been|got|seen a|any drain|drains|pipe|pipes|tile|tiles|drainage in|under|on? it|there?, not a drain|pipe|tile in it|there?, undrained, no drains, no drainage, without drains, no land|tile|field? drains, isnt|not drained, no drainage
    system|scheme
  `,
    strong,
  ),
  choice(
    'field.drained',
    'yes',
    '',
    words`tiles, pipes, drains, outfalls, there are, piped, old clay? tiles|pipes, clay tiles|pipes, plastic pipe|pipes|drains, tiled, under drained, all drained, part of it, some of it, half of it, partly, in part, mole drained, moled, drained years ago|back, in the seventies|eighties|sixties|nineties`,
  ),
  choice(
    'field.drained',
    'no',
    '',
    words`none, no pipes, no tiles, nothing, never, never has been, never been, free draining, naturally drained`,
  ),
  choice(
    'field.loosenedThisSeason',
    'yes',
    '',
    words`
    moled, mole drained, mole ploughed, subsoiled, sub soiled, loosened, ripped, moling, subsoiling, been subsoiled|moled|loosened|ripped, sub soiler, subsoiler, mole plough, flat lifted, had the subsoiler|sub through it, sub loosened, part of it,
    some of it
  `,
  ),
  choice(
    'field.loosenedThisSeason',
    'yes',
    'none',
    words`
    moled|subsoiled this season|autumn|year|august|september|summer, mole drained this|after
    season|autumn|year|harvest, moled|subsoiled since|after last? harvest, mole drained since last? harvest,
    subsoiled|moled it? in july|august|september, sub soiled this|after season|autumn|year|harvest, loosened
    after|since last? harvest, subsoiled|moled before drilling, subsoiled|moled it? since|after last? harvest,
    subsoiled|moled it? this season|autumn|year|summer
  `,
    strong,
  ),
  choice(
    'field.loosenedThisSeason',
    'yes',
    'none',
    words`subsoiler|moler|mole|flat lifter|topdown|loosener plough? through|in|across|over|has?, moled, mole drained, mole ploughed, subsoiled, sub soiled, moling, subsoiling`,
    { doubtful: true, strong: true },
  ),
  choice(
    'field.loosenedThisSeason',
    'no',
    '',
    words`
    ploughed, just ploughed, only ploughed, min till, direct drilled, nothing, none, never, not touched, left alone, no subsoiling, no moling, last done years ago, not for years, years ago, not since, not in years
  `,
  ),
  choice(
    'field.loosenedThisSeason',
    'no',
    'none',
    words`no subsoiling, no moling, no deep loosening, no mole draining, not been? subsoiled|moled|loosened this season|autumn|year, not been? subsoiled or moled this season|autumn|year`,
    strong,
  ),
  choice(
    'field.protectedWaterArea',
    'inside',
    'zone',
    words`in, inside, within, its in, falls in|inside|within, part of it? in, lies in|inside|within, we are in|inside`,
  ),
  choice(
    'field.protectedWaterArea',
    'outside',
    'zone',
    words`
    outside, out, outside of, out of, not in, isnt in, nowhere near, clear of, not in any|a|the|one, not in any kind|sort of, isnt in any|a|the, not part of a|any?, not within a|any|the?, not inside a|any|the?, not under, no
  `,
  ),
  choice(
    'field.protectedWaterArea',
    'outside',
    '',
    words`
    outside it?, out of it, not in one|it|any|that, isnt, not in any, well outside, just outside, not within one|it, no zone, neither, not in either
  `,
  ),
  choice(
    'field.protectedWaterArea',
    'inside',
    '',
    words`inside it?, in one, in it, within it?, just inside, well inside, in the zone, part of it is?, partly, part in`,
  ),
  choice(
    'field.waterPlanAgreed',
    'yes',
    'plan',
    words`
    agreed, in place, signed, signed off, done, approved, got, have, there is, sorted, all in place, drawn up and agreed, all signed, been agreed|signed|approved, set, set up, all done, agreed with the?
    adviser|agronomist|officer|catchment
  `,
    strong,
  ),
  choice(
    'field.waterPlanAgreed',
    'yes',
    '',
    words`agreed, in place, signed, signed off, sorted, all agreed, done, there is one, got one, have one, ive|weve got? one, all signed off?, approved, been agreed|signed|approved, all done|sorted|in place`,
  ),
  choice(
    'field.waterPlanAgreed',
    'no',
    '',
    words`still? got|have|need|yet|waiting|meaning|going to ring|call|phone|see|speak|ask|agree|talk|do|get|make|arrange|draw|sort|contact, not|havent|hasnt spoken|asked|rung|talked|phoned|discussed, nobody asked|came|been, waiting on|for, in hand, being drawn up, in the pipeline, no plan, none agreed, not got one, havent got one, not agreed, not signed, not drawn up, nothing agreed, nothing in place, still waiting, not agreed yet, isnt one`,
  ),
  choice(
    'field.waterPlanAgreed',
    'no',
    'none',
    words`no plan, no water plan, no plan agreed, without a plan, plan not agreed`,
    strong,
  ),
  choice(
    'field.bufferMarked',
    'yes',
    'buffer',
    words`
    marked, marked out, marked up|off, pegged, pegged out, known and marked, staked, staked out, flagged, flagged up|out, caned, caned out, in the gps|guidance, set up, measured and marked,
    measured
  `,
    strong,
  ),
  choice(
    'field.bufferMarked',
    'yes',
    '',
    words`
    marked, marked out, pegged, pegged out, known and marked, staked out?, flagged, known, caned out?, canes in, its in the gps|guidance|sat, in the gps, on the gps, sprayed off, all marked out?, all pegged out?, flagged up|out, flags in|out,
    pegs|canes|flags|markers|stakes|posts|poles are? in|out|up|down|set, marked with canes|pegs|flags|posts|stakes, measured, measured out, paced out, set up, sorted
  `,
  ),
  answer(
    'field.waterDistanceM',
    'to-20',
    '',
    words`right? up? against|beside|alongside|by|along|on|next|bang to? the? ditch|stream|beck|brook|river|dyke|pond|burn|bank|water|watercourse|edge, adjoining, right next to it, runs alongside|along, borders it`,
  ),
  ...countyWords,
  choice('field.country', 'GB-ENG', 'none', words`england, english`),
  choice('field.country', 'GB-SCT', 'none', words`scotland, scottish`),
  choice('field.country', 'GB-WLS', 'none', words`wales, welsh`),
  choice('field.country', 'GB-NIR', 'none', words`northern ireland, ulster, n ireland`),
  choice(
    'field.country',
    'IE',
    'none',
    words`ireland, eire, republic of ireland, irish republic, southern ireland`,
    strong,
  ),
  choice('field.country', 'FR', 'none', words`france`),
  choice('field.country', 'DE', 'none', words`germany`),
  choice('field.country', 'DK', 'none', words`denmark`),
  choice('field.country', 'NL', 'none', words`netherlands, holland`),
  choice('field.country', 'BE', 'none', words`belgium`),
  choice('field.country', 'PL', 'none', words`poland`),
];
