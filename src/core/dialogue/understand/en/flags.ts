import type { Flag } from '../lexicon-types.ts';
import { words } from '../phrases.ts';

/** What little words do to the clause that they stand in. Patterns as in `phraseBook`; apostrophes left out. */
export const flagWords: Readonly<Record<Exclude<Flag, 'filler'>, readonly string[]>> = {
  not: words`
    no more,
    i? doubt, i? doubt if|whether|that,
    cant|cannot|couldnt|dont|didnt|never|couldnae find|see|spot|notice|detect a|any|one|many|much? single?, havent|not|hasnt|never seen|found|spotted|noticed|had a|any|one|many|much? single?, free from|of any?,
    clean|clear|empty of,
    unlikely to, not likely to,
    not so much as, not even, nobody, noone, not, no, isnt, arent, aint, wasnt, werent, hasnt, havent, hadnt, dont, doesnt, didnt, wont, never, none,
    nothing, without, neither, cant see any, cannot see any, no sign|signs of, not any, no longer, not seen any,
    free of|from, zero, havent seen any, couldnt see any, absence of, not a single, nil, no evidence of, not yet,
    yet to be, lack of
  `,
  ended: words`
    gone, have|has|are|is gone, have|has|are|is all gone, all gone, closed, closed up, drained away|off, melted, lifted, cleared, cleared up,
    soaked away, have|has soaked away, have|has dried up|out|off, gone off, have|has gone off, have|has closed up?, have|has melted, have|has lifted, have|has
    cleared, have|has drained away
  `,
  spread: words`give or take, out? either|each way|side, plus or minus, one way or the other, up or down`,
  mostly: words`mostly, mainly, largely, otherwise, elsewhere, in the main, for the most part, by and large, on the whole, in general`,
  or: words`or, /, nor`,
  doubt: words`
    i? doubt, i? doubt if|whether|that,
    wants|want to be, ought to be about, by my reckoning|guess|estimate|judgement|eye, when i, when we,
    i? reckon|expect|think|guess|imagine|suppose|fancy it|thatll|itll|theyll will? be, it|that will be about|around|roughly|near|nearly|something|somewhere, bound to be about|around, ought to be,
    if anything, if the? my? thermometer|probe|meter|gauge is? right|accurate|correct, if the? my? thermometer|probe|meter|gauge is? to be trusted|believed, if its right|accurate|correct, if i read it right, if memory serves,
    if memory serves me right?, if im not mistaken|wrong, if i remember rightly|correctly, unless im mistaken|wrong, as best i can tell, best i can tell, by eye, by the look of it, by the looks of it, going by feel, at a push, depending on? where|how you stand|look|measure|dig|check|go, it? depends where you look|stand|dig, i? should think, i?
    should say, i? would guess|think, might well be, may well be, as i recall, if i recall, to the best of my knowledge, in my opinion, wouldnt swear to it, dont quote me, dont quote me on that|it, ballpark, ball park, rough
    guess, as near as i can tell|judge, i? fancy, i? take it, i? gather, i? presume, i? assume, im fairly|pretty sure, im told, seemingly, allegedly, appears, appears to be, looked to be, could well be, just a guess, only a
    guess, thereabouts, estimate, estimated, i? estimate, i? would estimate, id estimate, my guess, my guess is, my best guess, best guess,
    maybe, perhaps, possibly, probably, prob, i? think, i? reckon, i? guess, i? believe, i? suppose, might, might
    be, could be, may be, looks like, looks as if|though, seems, seems to be, apparently, presumably, i imagine,
    guessing, at a guess, id say, id guess, should be, ish, more or less, roughly, about, almost, nearly,
    approximately, around, if i remember right, from memory, off the top of my head, as far as i know, afaik, not
    sure but, could, may, likely, pretty sure, fairly sure, must be, hopefully, supposedly, sort of, kind of,
    kinda, im guessing, feels like, give or take, near enough, or thereabouts, thereabouts,
    looked like, as good as, close to, or so
  `,
  unsure: words`
    i? dont know if|whether|about, not sure if|whether|about, i? cant tell if|whether, i? dont know how|what,
    not|isnt sure, unsure, i? dont know, dunno, no idea, cant|couldnt say|tell, not certain, i? dont remember,
    cant remember, wouldnt know, dont really know, no clue, havent a clue, not a clue, havent
    checked|looked|measured, didnt check|look|measure, not checked|looked|measured, i? wonder, wondering, whether,
    hard to say|tell, not measured it? yet?, not so sure, not too sure, not entirely sure, not quite
    sure, nothing to measure|check|test|read|judge|gauge it? with|by, have no idea, dont know if, difficult to say
  `,
  block: words`
    some|bits|parts|part|half|most|others|rest of? it? isnt|arent|aint|hasnt|havent|not|doesnt|dont|didnt|wasnt, boom|booms width|widths|length, my|the|our? booms, boom is|span,
    over|for the? next week|fortnight|month, i said, other farm, the other farm, other side of the|farm, another farm, other place, next farm, down the road, mate says|reckons|said|told|had|has|got|down|of|who, my|a mate, mates field|farm|soil|drains, brothers, brother, my dads,
    cousin, cousins, uncle, uncles, on the mast, mast, weather station, met station, airfield, gauge, rain gauge, fell, fallen, weve had, weve had so far, this time last year, back in, years back, last time, used to be,
    when i was, grandad, in theory, in my experience, rule of thumb, as a rule, the book says, the guide says, the guidelines, too wet to, too dry to, far too, worried about, worry about, afraid of, in case, let me
    know, tell me if, they had|got, provided, as long as, so long as, once it|the|its|theyve|weve|ive|i|we|they, after it, waiting for, wait for, wait till, wait until, ive heard, heard that, read that, they reckon it, radio, telly, on tv, newspaper, everyone,
    everybody, anyone, someone, somebody, some people, the lad next, over the|their fence|hedge|road, pub, in town, at home, back home, house, greenhouse, shed, fridge, kitchen, cab, engine, coolant, bath, pool,
    boom set, booms set, set at, barn, potato, potatoes, sugar beet, beet, maize, grassland, pasture, lawn, garden centre, record, records, average for, long term, historically,
    if, ages ago, long ago, previously, back then, in|last spring|summer, the other day, unless, until, when,
    would, wouldnt, should, shouldnt, supposed, supposed to, used to, calm down, frosts out, frost is out, frost has come out, frost has? come out of the ground|soil, neighbour, neighbours, next door, next
    doors, their, his, her, last year|season|autumn|spring|summer|winter, the? next field over|along|to|door, the next field, neighbouring|adjoining|adjacent field|farm|land|block, years ago, ever, not only, than,
    except, apart from, rather than, instead, wants, wish, hope, hoping, need, needs, want, threshold, rule,
    rules, tractor, combine, boots, hands, boot, tyres, trailer, sprayer, nozzles, free draining, well drained,
    drains|draining well|freely, freely draining, good drainage, naturally drained, other field, near a, close to
    a, mate, wheat, barley, beans, in a mixture of, nvz, nitrate, before, always, usually, normally, often,
    sometimes, generally, tends to, every year, most years, target, wales and england, new england, week after
    next, next week, yesterdays, said it, plan to, plan is to
  `,
  ahead: words`
    unlikely to, not likely to,
    forecast, forecasts, forecasted, predicted, expected, expected to, coming, due, tomorrow, will, will be,
    gonna, going to, next|coming two|few|couple|hours|days, over the next, for|in the? next, next two|few days,
    next couple of days, for two days, likely to, about to, soon, they say|reckon|give, theyre giving|forecasting,
    on the? way, promised, this week, within a week, later, tonight, by
    friday|monday|sunday|saturday|tuesday|wednesday|thursday, by the weekend, to come, set to, wont, not going to,
    on its way, ahead, wont be, before long
  `,
  scant: words`
    not very|too|that|much|many|particularly|really|so|overly|especially|all, hardly, hardly any, barely, barely
    any, scarcely, isnt|arent very|too|that|much|many|really, almost no, next to no, few if any, no great, not
    quite
  `,
};

/** Words that say nothing of a fact and may stand anywhere. */
export const fillerWords =
  'a an the it its is are am was were be been being i im ive we weve you he she they theyre there theres this thats that these those here ' +
  'in on at of to for from by with as into onto up down out off over under through across along per and but so well er um erm hmm oh ah just ' +
  'very quite pretty really fairly rather bit little touch slightly lot lots plenty loads few some any all everywhere anywhere places place patches patch spots ' +
  'now today currently presently present moment right morning afternoon evening still already yet also too only again both ' +
  'got get gets getting has have had having do does did done see sees saw seen look looks looking looked feel feels feeling felt find found seem ' +
  'read reads reading readings say says said saying show shows showing showed give gives giving measure measured measures measuring check checked checking count counted counting ' +
  'took take taken made make makes call called go goes going went come came comes put stands standing sits ' +
  'field fields bit whole part parts end top bottom middle side sides low high heavy-parts please thanks thank cheers hi hello hey mate pal love ok okay ' +
  'my mine our ours your me us him them myself one ones thing things stuff about then than because since while time year season autumn ' +
  'nice nicely good fine lovely great bad badly properly exactly precisely bang nearest coldest average boom height direction north south east west northerly southerly easterly westerly ' +
  'northeast northwest southeast southwest farm land gateway hedge wood usual normal typical overall stage level valley hollow texture type value figure answer way kind sort type max maximum min ' +
  'shade dawn sunrise noon midday lunchtime enough underfoot hand hands fingers squeeze squeezed visible near far away distance close about roughly around bits hollows corner corners walk walked big small size wide long shows speak ' +
  'd s re ve ll t y eh yeah aye lads though although however plus while whereas next last second first reckoned current latest new old hard tight soft wee nowt owt summat ' +
  'officer catchment adviser advisor agronomist weather temperature-wise pushed dug stuck probe instrument meter gauge using used spade depth deep hole digging tested test can hairline little id ill dot nose button dead bang hovering nozzle outermost furthest between somewhere anything moving lying sat stood indeed outside rustling when-shaken over again yon yonder thats lass lad boss sir ta youve youre youll weve were well theyve ya mark sitting sits averaging hovering steady standing leaving round hit hits hitting top tops headland headlands mean median easy easily comfortably comfortable mentioned nearby anyway anyhow written wrote noted jotted logged';

/** Phrases that say nothing of a fact. */
export const fillerPhrases = words`
  since the? rain|storm|wet|frost, as youd|you|id|i like|want|wish|need, hasnt|havent|isnt|not|never come|gone|lifted|thawed|cleared|melted|shifted|moved|left|closed|dried out|off|away|up? yet?, when shaken|squeezed|pressed|bounced|rolled|crushed, if|once i|you squeeze|shake|press|grip|clench|crush|rub|bounce|wring|roll it|them?, without even? squeezing|pressing|shaking|touching|trying, without being? squeezed|pressed|shaken, without a squeeze|shake, when i? you? squeeze|squeezed|squeezing|shake|shook|press|pressed|wring|grip|clench|crush|open|rub|bounce it?|them?, nothing heavy|major|serious|drastic|dramatic|severe,
  not onto|towards|toward|into|over|at|on it|them|us, on average, under the? boot|boots|foot|feet, every time|where, all round|over|told|in all, by the way, as it happens, as it stands, as usual, as per usual, i tell you, i can tell you, let me tell you, to be fair,
  to be honest, on and off, off and on, you know, you see, believe it or not, thank god|goodness, touch wood, for the record
`;

/** How long ago something was seen, hours: "this morning" is counted as four hours, a night as twelve. */
export const agoWords: readonly (readonly [pattern: string, hours: number])[] = [
  ['earlier? this morning', 4],
  ['first thing', 4],
  ['first thing this morning', 4],
  ['early this morning', 6],
  ['at dawn|sunrise|daybreak', 6],
  ['earlier today', 4],
  ['earlier on?', 4],
  ['last night', 12],
  ['overnight', 12],
  ['yesterday', 24],
  ['yesterday morning', 28],
  ['yesterday afternoon', 20],
  ['yesterday evening', 16],
  ['the? day before yesterday', 48],
  ['last week', 168],
  ['a week ago', 168],
  ['a day ago', 24],
  ['an hour ago', 1],
  ['half an hour ago', 0.5],
  ['a? couple of hours ago', 2],
  ['a? couple of days ago', 48],
  ['just now', 0],
  ['now', 0],
  ['today', 0],
  ['currently', 0],
  ['at? the? moment|minute', 0],
  ['at breakfast', 4],
  ['at breakfast time', 4],
  ['before breakfast', 5],
  ['at first light', 6],
  ['when i got up', 5],
  ['at lunch|lunchtime|dinnertime', 3],
  ['the other morning', 48],
  ['a few|couple hours ago|back', 3],
  ['couple of hours back', 2],
  ['a few days ago|back', 72],
  ['a couple of days back', 48],
  ['the other day', 72],
  ['last|on monday|tuesday|wednesday|thursday|friday|saturday|sunday', 96],
  ['at the weekend', 72],
  ['last month', 720],
  ['back in july|august|september|october|november', 1000],
  ['yesterday lunchtime|dinnertime|teatime|night', 20],
];

/** Units of "three days ago", in hours. */
export const agoUnits: Readonly<Record<string, number>> = {
  hour: 1,
  hours: 1,
  hr: 1,
  hrs: 1,
  day: 24,
  days: 24,
  week: 168,
  weeks: 168,
};

/** The word that ends "three days ago". */
export const agoWord = 'ago';
