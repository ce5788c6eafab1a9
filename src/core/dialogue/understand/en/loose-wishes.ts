import type { LooseWish } from '../language-words.ts';
import { words } from '../phrases.ts';

const of = (text: string): ReadonlySet<string> => new Set(text.split(/\s+/));
const people =
  'i we you me us it its that this be is are was to the a an of for on in at do does did have has had got get im id ill ive';
const times =
  'today now yet then again still next this week day days time morning afternoon tomorrow later soon spray spraying sprayed go going start put';
const fit =
  'fit right ok okay alright all good better best suitable ready possible safe able allowed on wait waiting hold until till before come back try window chance slot';

/** Wishes known by how they begin, where what follows is all of words that change nothing. The exact ones go before them. */
export const looseWishes: readonly LooseWish[] = [
  {
    intent: 'when',
    begins: words`
      when will|can|could|should|would|may|might|is|do|does|am|are|it|i|we, whens, how long till|until|til|before|have|do|must|will|should|is, how soon, what day|time|date,
      when dyou|dya|did, any|what chance|hope|prospect|window|gap|likelihood of?, whens the|it, when, which day|days, whats|what is? the? next|soonest|earliest|best, next|earliest|soonest chance|window|slot|day, how many days, how much longer, any idea when, until when
    `,
    words: of(
      `${people} ${times} ${fit} will would might should could can able expect expected expecting ground land soil conditions weather getting get gap of looking look likely think reckon long take earliest soonest happen cold enough cool down drop dry out clear days hours`,
    ),
  },
  {
    intent: 'verdict',
    begins: words`
      am|are|is|can|could|shall|should|may|might|do|does|will|would|dare|wouldnt|couldnt|wont|isnt|cant i|we|it|this|today|conditions|that, whats|what is? your|the? verdict|answer|decision|upshot|outcome|result|call|word|advice|recommendation|bottom, whats it to be, is it a? yes|no|go, yes or no, what do you
      reckon|think|say|advise|recommend, give me the|a|your, safe|ok|okay|fit|good|right|clear to, any good, good to, go or no, spray or, is today, do you think, reckon, so can|am|is|do|shall|should i|we|it, are we
    `,
    words: of(
      `${people} ${times} ${fit} or not no yes verdict answer decision upshot outcome result call word bottom line your you think reckon advice about out sprayer get crack cracking conditions suit suits suitable then will can could should shall`,
    ),
    needs: of(
      'spray spraying sprayed go fit ok okay suit suits suitable verdict answer decision upshot outcome result wait hold start yes bottom reckon think advise recommend cracking',
    ),
  },
  {
    intent: 'stop',
    begins: words`
      knocking|packing|clocking|wrapping|calling|finishing|stopping|leaving|signing off|up|in|it|here,
      im|were|i|we am|are? done|finished|off|through|away|stopping|packing|calling|knocking|leaving|going|heading, im|were|i|we am|are? packing|knocking|calling|leaving|wrapping up|off|in|it, i? got|need|have|must|gotta to? go|run|dash|stop|finish, lets|let us leave|stop|finish|call|end|pack, call it, leave it|this, pack|knock it|this? in|off|up, thats|that is me|it|enough|all|us|your|plenty, thatll|that will do, enough
      of|for|now, stop asking|here|there|now|this|it, no more, right thats|im, ill leave|stop|come|finish|call, quit|exit|end|close|finish|bye
    `,
    words: of(
      `${people} done finished off through away stopping stop finish leave call end pack in up enough all more questions asking now today for day there here it tonight dinner tea home bed later back night off go run dash lot you your see thank that this that's till tomorrow up it wrapping packing another conversation chat bye`,
    ),
  },
  {
    intent: 'dose',
    begins: words`
      how much|many, what|which|whats|give|tell|need|show|want is|me|us|the|my|a|to? the|my|a? rate|dose|dosage|quantity, how many|much litres|litre|product|cans|grams|mls, what|which rate|dose|dosage|quantity, work|tell|figure|calculate|give out|me|us the|my? rate|dose|dosage
    `,
    words: of(
      `${people} rate dose dosage quantity litres litre product propyzamide cans grams put in on use need want apply per hectare acre should would can must work out tell give us field tank load mix then`,
    ),
    needs: of('rate dose dosage litres litre product propyzamide'),
  },
  {
    intent: 'check-the-rest',
    begins: words`check|do|see|look|ask|judge|go|carry|keep|run|finish at|on|through|over|with|off?`,
    words: of(
      `${people} everything anything rest others other remaining else as well too all them what about with through on with`,
    ),
    needs: of('rest others remaining else'),
  },
  {
    intent: 'look-again',
    begins: words`
      have|has|is|are|can|could|do? you|there|we? got|get|have|seen? a|any|the? newer|new|fresh|fresher|latest|later|updated forecast|weather, have|take|give|try another|a|one look|check|go, check|look|try|refresh|update|fetch|get|pull|reload|recheck|redo it|that|the|this|again|once|a|up?, run|go over|through it|that|the again|forecast|weather
    `,
    words: of(
      `${people} again another fresh latest new newest update refresh recheck forecast weather once more look check up now go out`,
    ),
    needs: of('again another fresh fresher latest later new newer newest updated refresh recheck'),
  },
  {
    intent: 'fields',
    begins: words`what|which|how|show|list|tell me|us|the|all|many|my? fields, fields ive|i|we|left|still|done|to`,
    words: of(
      `${people} fields field all my done left still to got spray sprayed go ready fit ok already checked been not yet there so far down listed`,
    ),
    needs: of('fields'),
  },
  {
    intent: 'why-not',
    begins: words`
      why cant|isnt|wont|shouldnt|not|couldnt|cannot|mustnt, why is it|this|today not, why am i being? told|stopped|not, why do|must|should i|we wait|have|hold, how come, whats
      wrong|stopping|holding|against|blocking|preventing|keeping|making, what is wrong|stopping|holding|against|blocking|preventing, whats|what is? the reason|cause for|of? the? wait|hold|delay|no?, why it|is it|you|does|say saying|say|says|telling|stopping, why no, why are you saying|telling|stopping|holding|refusing|blocking|against, why did
      you say, why does it say, why is it a? no, whats the problem|issue|trouble, why are we waiting|held, what makes it unfit|unsuitable, why isnt
    `,
    words: of(
      `${people} ${times} ${fit} no not cant me up wrong with from saying say told doing field one against it's there`,
    ),
  },
  {
    intent: 'why',
    begins: words`
      what|why|how does|do|would|should that|this|it matter, does that|this|it really? matter, what difference does it|that|this make, what|why do|dyou|would you? need|want|have|care to? know?|ask?
    `,
    words: of(
      `${people} how what if whether which where when steep far close big small deep warm cold wet dry old many much slope soil water drains leaves size matter know need asking this that question field so for`,
    ),
    needs: of('matter difference why care'),
  },
  {
    intent: 'why',
    begins: words`
      what dyou|dya need|want|wanna that|this|it, how is|does that|this|it, is|does that|this|it really? matter|important|relevant|necessary, do you really need, does it|that|this make any|a|much? difference, whats|what has|is that|this|it got|to|for|about,
      why that|this|it, why on earth, and? why dyou|dya|do|would|are|did|should you|i|we, why you, what do you need|want that|this|it for, whats that|this|it for|to|got, what does that|it matter, why is|does|would that|this|it|the, what has|is that|this|it
      got|to, whats the point|reason|relevance, for what reason, what makes you, why should, whats it to, why ask, why bother, what difference does
    `,
    words: of(
      `${people} need want wanna know dyou ask asking asked that this why really difference necessary affect change help bother matter matters important relevant for with anything here question answer tell all make care wanting needing so such`,
    ),
  },
  {
    intent: 'needs',
    begins: words`
      what|which bits|questions|answers|facts|things|info|information|other do|are you|we|i|still|left|missing, what am i still|missing, whatve|what have i|we still|left|got|yet still|left|to?, whatve i|we still|left|got|yet, what|which have i|we not, what else dyou|dya, what still, how much|many more|else do you|i, what has to|needs to, what must, what will it take, what would get, what else,
      what else, what do|would|should|must you|i|it still? need|want|require, whats needed|missing|left|outstanding|still|required|lacking, what is needed|missing|left|outstanding|still|required|lacking, what would it|have|need|make|get|change|help|allow|let, what has|needs|must
      to?, what are you waiting|missing|short, what havent|have i|we not?, what conditions, what do i|we still? need|have|want, what more, what am i missing, how do i get, how do we get, what can i do to|about, what could
      i do to|about, is there anything else?, anything else, anything more, how many more questions?
    `,
    words: of(
      `${people} ${times} ${fit} from need needs needed want know hear tell told answer answered say yes make change changed happen different what else there left more questions question dyou dya up find out check green let`,
    ),
  },
  {
    intent: 'what-said',
    begins: words`
      sum|summarise|tot|total|tally up? what|it|everything|my|the, remind|tell me|us what|of, can|could|will you remind|repeat|read|list|show|recap|summarise, what|which answers|facts|bits|things have|has|did, what have|do you got|have|think|know|reckon, so what have|do, say|read it|that all? back|again, let me see|hear|check what|my, just? recap|summarise, what have|did i|we|you told|tell|said|say|put|given|give|answered|answer|got|taken|noted|down|entered|recorded, what do you know|have|think, read me|it|that|them|back|out back|my?, remind me, where
      have|are|had we, list my?|all|the|what|everything, show me my|what|the, go over|through, run|talk me? over|through, whats|what is? on record|file, what you got|know|have, what facts, which answers, tell me what
      i|you, repeat what|my|it|that|everything, give me a|the, play it|that, recap
    `,
    words: of(
      `${people} told tell said say so far up now back already answers answer facts know down what my your put given over everything all list taken about field summary recap rundown remember noted them out`,
    ),
  },
  {
    intent: 'undo',
    begins: words`
      undo|scrap|scrub|delete|remove|ignore|cancel|forget|bin|strike|drop|lose the|my|that|this|it last|previous|latest|bit|one|answer|entry|reply?, i? hit|pressed|tapped|clicked|put|typed|said the? wrong, i|ive? put|typed|entered|told|gave|said|got you? that|it|this|the|last one? in|down? wrong, go|step|jump back one|a|to the? step|previous|last|question?, can|could|let i|we|me|you undo|change|go|take|redo|delete|remove|fix|correct|scrap, take that|it|the|my|back, scrub|scrap|delete|remove|cancel|undo|ignore|forget|strike|bin|reverse|discard|drop|erase|disregard that|it|the|my|what|last|i, rub that|it, get rid of, go back one|a, back one|a|up,
      one step back, can i|we undo|change|take, i take that|it|back, i didnt mean, that was a|my|wrong|not, let me take|undo|redo, i want to change
    `,
    words: of(
      `that it last one thing answer bit back the my what i just said say told put out a step mistake wrong undo scrap scrub delete remove ignore cancel forget bin strike drop lose latest reply button key hit pressed tapped clicked put change fix redo correct question go steps two right mean to of meant typed entry previous line again me be`,
    ),
  },
  {
    intent: 'start-again',
    begins: words`
      wipe|clear|scrap|bin|forget|delete|reset|erase|dump|chuck|ditch it|that|them|the|all|everything|my, start|begin over|again|afresh|anew|from|fresh|clean|all, wipe|clear|scrap|bin|forget|delete|reset|erase everything|all|the|that|it, go|take me|back back? to the start|beginning|top, from scratch|the, can we start|begin, restart,
      lets start|begin over|again|afresh|from, do it all, start the, a? fresh|clean|new start|slate|conversation
    `,
    words: of(
      `it all everything the lot start beginning top scratch again over from to new fresh slate clean zero wipe clear scrap bin forget delete reset erase dump answers so far square one conversation whole thing go and please that with up a back very`,
    ),
  },
  {
    intent: 'another-field',
    begins: words`
      lets|can|could|shall|i|we|ill|now|move|on|onto|next|switch|swap|change|go|do|try|try|look|got|ive to|on|do|try|at|have|got|over|want|a|the|another|we|i? another|different|next|new|other|second field|fields|one|parcel|block, another|different|next|new|other|second field|one, a|the different|new|next|other|second field, lets do|try|look|move|go|have|start, move|go|carry|switch|change|swap|onto|on on? to?, ive|i have|got another|a, i
      want|need to? do|try|look|check|another|a, can we do|try|look|move|go|start, do|try|check|open|pick|choose another|a|the, what about another|the
    `,
    words: of(
      `another different next new other field fields one a an the to at on with now look do move go please my of second second check start in for have this after up`,
    ),
    needs: of('field fields'),
  },
  {
    intent: 'dont-know',
    begins: words`
      i? havent|aint|isnt|not|no|never a|the|any? clue|scooby|idea|notion|foggiest|faintest|earthly|bloody|had|done|been|got, no idea|clue|way, id only|just? be, cant rightly, didnt|havent think|get|manage, ill|i|id have|need|will|must|would to? check|look|measure|find|ask|see|count|go, let me|im going, i? hadnt
      noticed|looked|checked, beyond|beats me, ask me|someone, i? dont know|remember|recall|think, i? cant|couldnt|wouldnt remember|recall|tell|say|know|be, i? havent looked|checked|measured|counted|been|got|had|a|seen|any, not looked|checked|measured|counted|been|a|had|sure|certain|got|yet,
      no idea|clue|notion|thermometer|probe|meter|way, id have|need to, ill have|need to, i would have|need to, id be guessing, who knows, no instrument|kit|gadget|gear|tool|tools|hygrometer|anemometer, ive no idea|clue|notion, ive not looked|checked|measured|counted|been|got|had, i have no
      idea|clue|notion, i have not looked|checked|measured|counted|been, never looked|checked|measured|counted, i? didnt look|check|measure|count|take|bring, i? forgot to|the|my, i? need to, left the|my, i? dont
      have|carry a|the|one, i? wasnt able, not able to, i? wish i, your guess, im not
    `,
    words:
      of(`where when which why know look looked looking check checked checking measure measured count counted tell say sure certain remember recall been out there here yet to see go and it that this for you be honest on from up exactly off
      hand really without thermometer probe meter gauge instrument with me a the any idea clue chance first what is how many much take took bring home at my all im too one i do can could say not completely entirely quite about scooby instrument instruments kit gadget gear tool tools hygrometer anemometer earthly notion managed manage noticed notice rightly find ask asked someone agronomist later tomorrow minute stab only just be clue faintest foggiest good as mine get round down`),
    needs: of(
      'scooby instrument instruments kit gadget gear tool tools hygrometer anemometer earthly noticed notice find ask asked beats stab know look looked looking check checked checking measure measured count counted tell say sure certain remember recall thermometer probe meter gauge instrument idea clue notion chance faintest foggiest guess see go been bring knows way guessing',
    ),
  },
  {
    intent: 'help',
    begins: words`
      i? im? not sure|certain|clear what|how, i? dont|didnt|cant|not understand|follow|work, whats|what is this|that|the question? about|mean|asking, what does that|this|it mean|want, come again, say|explain that|this|it again, eh, youve lost me, you lost me, not with you, im|i am? not? with|sure|following|lost|stuck|confused|struggling, help, how do|can|should i|we, how does|do this|it|that|you, what can|do|should|must i|we|you, what am i supposed|meant, i? dont understand|follow|get, im lost|stuck|confused|struggling, can you help|explain, give me a|some help|hand|hint, i need|want a|some|help|hand, what
      happens|do now|next
    `,
    words: of(
      `me us you this that it do i say type ask asking asked youre want wanting after tell answer meant meaning supposed confused lost stuck put write enter press click tap use work works how what now next here with help hand some a bit please to the understand question mean means start measure check find out get all supposed go on need asking all thing`,
    ),
  },
];
