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
    plenty, loads, lots, some, a few, everywhere, heaps, in patches, patches, a little, a bit, there is, rife,
    bad, weeds
  `,
  ),
  choice(
    'weed.present',
    'no',
    '',
    words`
    clean, none, none seen|there, none to be seen, cant see any, havent seen any, not seen any
  `,
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
    something else, else, other things, another product, mixing, fertiliser, fertilizer
  `,
  ),
  choice(
    'treatment.partnerInTank',
    'yes',
    '',
    words`
    fertiliser, fertilizer, something else, another product, mixing
  `,
  ),
  choice(
    'treatment.partnerInTank',
    'no',
    'none tank',
    words`
    nothing else, nothing else in, no adjuvant|adjuvants, no partner, just propyzamide, propyzamide alone|only,
    only propyzamide, propyzamide on its own, nothing else going in, no mix, not mixing anything, nothing mixed,
    no tank mix, propyzamide straight, straight propyzamide
  `,
  ),
  choice(
    'treatment.partnerInTank',
    'no',
    'tank',
    words`
    on its own, alone, straight, just that, just the one, nothing, by itself
  `,
  ),
  choice(
    'treatment.partnerInTank',
    'no',
    '',
    words`
    on its own, alone, straight, just that, by itself, nothing, just the one
  `,
  ),
  choice(
    'treatment.alreadyApplied',
    'yes',
    'none',
    words`
    already had|has|have? it|propyzamide|one, had|has|got propyzamide already|on, propyzamide already
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
    already sprayed|applied|treated|done, already been sprayed|done|treated, already on, had it, had it already,
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
    had none, had none yet, none yet, had nothing, not had any, hasnt had any, havent had any, first
    one|time|application, nothing on yet, not touched, nothing yet, not had it|any, untreated, not|hasnt|havent
    been? sprayed|treated|applied yet?
  `,
  ),
  choice(
    'crop.frostOnLeaves',
    'yes',
    'none crop leaves',
    words`
    frost on the? leaves|crop|plants, frosty, frost, frosted leaves, white frost, hoar frost, leaves|crop frosted,
    leaves|crop is|are frosty|frozen|white, leaves|crop white with frost, white over, a frost
  `,
    { strong: true },
  ),
  choice('crop.frostOnLeaves', 'yes', '', words`white, a bit, some, a little, in the hollows|shade, frozen`),
  choice('crop.frostOnLeaves', 'no', 'none', words`frost has? gone, frost gone|cleared|lifted|thawed, frost free`),
];
