import { words } from '../phrases.ts';
import { choice, count, type WordRow } from '../rows.ts';

const strong = { strong: true } as const;

/** What is said of crop, weeds, tank and the treatment so far. */
export const cropWords: readonly WordRow[] = [
  count(
    'crop.trueLeaves',
    0,
    'none crop',
    words`
    cotyledon|cotyledons stage?, seed leaves only, no true leaves, only seed leaves, just cotyledons
  `,
  ),
  choice(
    'weed.present',
    'yes',
    'none weed',
    words`
    black grass, blackgrass, rye grass, ryegrass, grass weed|weeds, grassweed|grassweeds, black grass in it
  `,
    strong,
  ),
  choice(
    'weed.present',
    'yes',
    '',
    words`
    plenty, loads, lots, some, a few, a fair bit, a fair few, quite a bit|few|lot, odd one, odd plant|plants, the odd one|plant|patch, a lot, tons, masses, full of it, riddled, infested, thick, thick with it, smothered, a carpet, both, seen some, aplenty, everywhere, heaps, in patches, patches, a little, a bit, there is, rife,
    bad, weeds
  `,
  ),
  choice(
    'weed.present',
    'no',
    '',
    words`
    clean, none, none seen|there, none to be seen, cant see any, havent seen any, not seen any, nothing, all clean, clean as a whistle, not a one, not one, not a plant, not a weed, nil, none found, found none, none that i can see, no weeds, weed free, only|just|nothing|nobbut but|bar|except? volunteer|volunteers|vols wheat|barley|oats|cereal|cereals?, only|just some|a|the|few|odd? volunteer|volunteers wheat|barley|oats|cereal|cereals?
  `,
  ),
  count(
    'weed.tillers',
    0,
    '',
    words`none, nil, no, not tillered yet?, not yet, untillered, no tillers yet?, single shoot|shoots|stem|stems, one shoot|stem each?, just the? one shoot|stem, just the main shoot`,
  ),
  count(
    'crop.trueLeaves',
    0,
    '',
    words`none, no true leaves yet?, cotyledon|cotyledons, seed leaves only?, just the seed leaves`,
  ),
  count(
    'weed.tillers',
    0,
    'none weed',
    words`
    untillered, no tillers, not tillered, not tillering, not tillered yet, not yet tillering
  `,
  ),
  choice(
    'treatment.partnerInTank',
    'yes',
    'none tank',
    words`
    adjuvant|adjuvants, trace elements, manganese, boron, wetter, tank mix, tank mixed, tank mixing, foliar feed,
    liquid fertiliser|fertilizer, mixing with, a partner, tank partner, magnesium, graminicide
  `,
    strong,
  ),
  choice(
    'treatment.partnerInTank',
    'yes',
    'tank',
    words`
    something else, else, other things, another product, mixing, fertiliser, fertilizer, a wetter, adding, insecticide, fungicide, herbicide, foliar, nutrients, trace, oil, an oil, sulphur, a mix
  `,
  ),
  choice(
    'treatment.partnerInTank',
    'yes',
    '',
    words`
    fertiliser, fertilizer, something else, another product, mixing, insecticide, a? fungicide, a? herbicide, foliar, foliar feed, nutrients, a? bit of boron|manganese|magnesium, oil, an oil, sulphur, a mix, a wetter
  `,
  ),
  choice(
    'treatment.partnerInTank',
    'no',
    'none tank',
    words`
    nothing else in, no adjuvant|adjuvants, nothing else in the tank|mix, no partner, just propyzamide, propyzamide alone|only,
    only propyzamide, propyzamide on its own, nothing else going in, no mix, not mixing anything, nothing mixed,
    no tank mix, propyzamide straight, straight propyzamide
  `,
  ),
  choice(
    'treatment.partnerInTank',
    'no',
    'tank',
    words`
    nothing else, nothing, on its own, alone, straight, just that, just the one, nothing, by itself
  `,
  ),
  choice(
    'treatment.partnerInTank',
    'no',
    '',
    words`
    on its own, alone, straight, just that, by itself, nothing, just the one, nothing else, nothing else going in?, nothing added, only that, just propyzamide, going on alone|straight, neat, solo, just water, water only, nothing bar water
  `,
  ),
  choice(
    'treatment.alreadyApplied',
    'yes',
    'none',
    words`
    had its|the|a|one|an dose|application|spray|shot|go|treatment|lot already?, already had|has|have? it|propyzamide|one, had|has|got propyzamide already|on, propyzamide already
    on|applied|sprayed, propyzamide has|have? been? applied|sprayed, already sprayed|applied|treated with?
    propyzamide, sprayed|treated with propyzamide already, propyzamide went on, put propyzamide on,
    sprayed|applied propyzamide, already been treated with propyzamide
  `,
    strong,
  ),
  choice(
    'treatment.alreadyApplied',
    'yes',
    '',
    words`
    already sprayed|applied|treated|done, been on, it went on, went on, has had it, its had it, put it on, put on already, done it, did it, already been sprayed|done|treated, already on, had it, had it already,
    been sprayed|treated|done, sprayed, in a mixture|mix, applied, once, treated
  `,
  ),
  choice(
    'treatment.alreadyApplied',
    'no',
    'none',
    words`
    nothing sprayed|applied|put|been on? yet?, nothing has? been? sprayed|applied|put on? yet?, no propyzamide
    yet|so, no propyzamide on? it? yet, no propyzamide, not had any? propyzamide yet?, hasnt|havent had any?
    propyzamide yet?, not applied|sprayed propyzamide yet?, no propyzamide so far, not put any? propyzamide on
    yet?, propyzamide not applied|sprayed|been yet?
  `,
    strong,
  ),
  choice(
    'treatment.alreadyApplied',
    'no',
    '',
    words`
    never had any|it|one on?, never been on|done|sprayed|treated, had none, had none yet, none yet, had nothing, not had any, hasnt had any, havent had any, the first, first
    one|time|application|go, nothing on yet, not touched, nothing yet, nothing so far, not on yet, not been on, not been done, not done yet?, no not yet, not this crop, not on this crop, first time, not a drop, hasnt been touched, wasnt, still to do, not had it|any, untreated, not|hasnt|havent
    been? sprayed|treated|applied yet?
  `,
  ),
  choice(
    'crop.frostOnLeaves',
    'yes',
    'none crop leaves',
    words`
    frost on the? leaves|crop|plants, frosty, frost, frosted leaves, hoar, rime, ground frost on the leaves, hoar frost all over, frost all over, frost on it, frosted over, iced over, ice on the leaves, white frost, hoar frost, leaves|crop frosted,
    leaves|crop is|are frosty|frozen|white, leaves|crop white with frost, white over, a frost
  `,
    { strong: true },
  ),
  choice('crop.frostOnLeaves', 'yes', '', words`white, a bit, some, a little, in the hollows|shade, frozen`),
  choice('crop.frostOnLeaves', 'no', 'none', words`frost free`),
  choice(
    'crop.frostOnLeaves',
    'no',
    'none crop leaves',
    words`frost has? all? gone, frost has? cleared|lifted|thawed|melted|burnt off?, frost gone|cleared|lifted|thawed|melted off?, frost has? gone|come|burnt off, frost is? off, no frost on leaves|crop|it|plants`,
    strong,
  ),
];
