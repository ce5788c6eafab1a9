import { words } from '../phrases.ts';
import type { Intent } from '../types.ts';

/** What may stand before the words of a wish. */
export const wishLeads = words`
  can|could|would|will you, i want|need to, id like|love to, i would like to, i wanna, lets, let us, let me, just, please, tell|show
  me, tell|show us, and, but, so, then, im afraid, honestly, to be honest, tbh, sorry, in fact, right|ok|okay, hey|hi, no, well, quick question,
  oops, whoops, ah, oh, eh, aye, yes, go on then, go on, do you know, can you tell me, could you tell me, would you tell me, can you say, i just want to, now, erm, um, truth is,
  do i|we? want? to
`;

/** What may stand after them. */
export const wishTails = words`
  to be honest, tbh, honestly, if im honest, off hand, offhand, yet, im afraid, mate, from here, at the moment|minute, right now, today, now, then,
  for me, please, anyway, really, at all, this time, again, exactly, actually, on me, with me, to hand, for now, for today, tonight, this
  morning|afternoon|evening, pal, love, sorry, off the top of my head, for certain|sure, for that, about that, on that one, that one, about it, of
  that, of it, if you dont mind, would you, could you, will you, can you, thanks, cheers, ta, altogether, completely, entirely, so far, instead, i
  suppose, you know, without looking|checking|going, till|until i|ive look|looked|check|checked, until i go, do you think, you reckon, mind, now
  then, here, there, though, on that, this week
`;

/** How people ask for something beside telling facts. Patterns as in `phraseBook`; they must be all that a clause says. */
export const intentWords: Readonly<Record<Exclude<Intent, 'yes' | 'no' | 'define' | 'same-for'>, readonly string[]>> = {
  why: words`
    why, why do|would|are you ask|asking|need|want|wanting that|this|it|me?, why do|would you need|want to know?
    that|this|it?, why do|would you ask, why are you asking, what for, whats that|this|it for, how come, why is
    that, why that|this, why does that|it|this matter, does that|it|this matter, why do you want|need to
    know, what has that got to do with it, whats the reason, why do you need|want that|this, what do you need
    that|this|it for, whats that got to do with it, why the question, why should i tell you,
    why do|dyou|did you|ya? want|need|ask|wanna to? know? that|this|it|about? that|this?, why dyou want|need|ask to? know? that|this|it?,
    why do you want to know, why dyou ask, why dyou want to know, whats the point of? that|this|asking?, whats the point, what difference does
    it|that make, why is that|it|this important, what makes you ask, whats it to you, why would it|that|this matter, why do you care, whats the
    relevance, how is that|this relevant, is that|this relevant, why do i have|need to tell you that|this?, whats the need for that|this, what do
    you want that|this|it for, why that question, why bother with that|this, for what reason, whats your reason, whats that to do with it|anything,
    why are you asking me? that|this|about?
  `,
  'what-said': words`
    what have i told|said|given you?, what did i say|tell|give you?, what do you know so? far?, what have you got
    so? far?, what do you have so? far?, what you have|got|know so? far?, summary, summarise, read it|that back,
    read back, list my? answers, show me? my answers, what have i said so? far?, what have i told you so? far?,
    where are we, so far, recap, what do you know about this|the|my field, what did i tell you,
    what have i told you up? to? now?, what do you think you know, what have i answered so? far?, what answers have you got|taken, read|say
    that|it|them back to me, read back what ive? said|told|got you?, read it|that|me back what you have|got, go over what ive said|told|given you?, whats
    been said so? far?, run through what you have|got|know, run through it|that again, play it|that back, repeat what i said|told|ve you?, list what you
    have|know|got, give me a|the summary|recap|rundown, what do you have down for me|this|the? field?, whats on record, what did i put, what did i
    answer, what have you written|noted down?, what facts do you have, sum up, sum it up, what have you heard|understood, remind me what i said, what
    have we got so? far?, what you got so far, what are my answers, tell me what you know|have|got
  `,
  'start-again': words`
    start again|over|afresh, restart, begin again, from the beginning|start|top, start from scratch, reset, new
    conversation, start over|again|afresh from scratch, start over again, lets start again|over, clear everything|all, forget everything|all, start a
    new conversation, go back to the start|beginning,
    start all over again?, start again from scratch|new|zero|the? beginning|top, start over from scratch|the? beginning|top|zero, start from the? new|beginning|top|zero, start
    afresh, wipe everything|it|that|all|the slate clean? clean?, wipe it all, clear it|that all?, clear the lot, scrap the lot|everything|it all, delete
    everything|all, begin afresh|anew, begin again from scratch|the beginning, go back to the very? start|beginning, back to the start|beginning|square one, new
    start, fresh start, restart the conversation, from scratch, do it all again, try again from the start|beginning|top, start a fresh, start anew, bin the lot, bin
    it all, throw it all away, from the top again?
  `,
  'another-field': words`
    another|different|next|new|other field, the? other field, change|switch field|fields, change the field,
    do|try|choose|pick|take another|different field, lets do|try|take|look another|a different|other field, lets
    do a|the different|other|next field, look at another|different field, move on to the next field, go to another
    field, choose|pick a different|another field, a|the different|next|other field, try a different field,
    move on to a|the|my? different|another|next|other field, go on to a|the|my? different|another|next|other field, onto the next field, on to
    the next field, go to the next|other field, go to a different field, a different one, i have|ve got? another field, ive another field, i want another|a
    different field, start|open|begin another|a|the new|different|next field, swap|change|switch to another|a|the different|next|other field, swap|change|switch
    field|fields, move|go to another field, look at a different|another|the next|other field, check another|a different field, what about another field, got another
    field to do|check|ask|look? about?|at?, can we do another field, do the next field, do the other field, do a different field, new field now, next field please
  `,
  'dont-know': words`
    i? dont know, dont no, dunno, i dunno, idk, no idea, ive no idea, i have no idea, not sure, im not sure, im
    unsure, unsure, i? cant|couldnt|cannot say|tell, couldnt tell you, not a clue, havent a clue, no clue, i?
    havent looked|checked|measured|got one, pass, skip, skip it|this|that, who knows, not measured, not checked,
    not looked, i? dont know that|yet, i? do not know, not known, unknown, search me, wouldnt know, i wouldnt
    know, i? havent measured it|that, i? havent looked|checked yet, no thermometer, havent got a thermometer, i?
    dont have a|the thermometer|meter, didnt have a|the thermometer with|on? me?, didnt check|look|measure,
    not|didnt measured|measure it yet?, not certain, dont remember, cant remember, beats me, havent the foggiest,
    not really sure, hard to say|tell, cannot tell, i? dont really know, not too sure, havent been to look, wish i
    knew, honestly? no idea, cant tell from here,
    didnt take it|one|any, i? didnt take it|one, ill go and check|look|see, ill check, i? will check, need to go and check|look, let me check|look, no thermometer|meter|probe|gauge|hygrometer|anemometer on|with|to me|hand, no thermometer|meter|probe with? me?, ive? left the thermometer|probe|meter at
    home, thermometers broken, thermometer is? broken|bust|flat, the thermometer is? broken|bust|flat, havent got one|a|the thermometer|probe|meter|gauge|one,  havent a? clue, havent the faintest, not the faintest, havent a notion, no notion, no clue, ive no clue, ive not looked|checked|measured|counted|been
    to look|see?, ive not had a look|chance, not had a look|chance to? look?, i? didnt look|check|measure|count|notice, i? havent had a look|chance, i?
    havent counted|been|seen it? yet?, havent been out yet?, havent been out there|to? look? yet?, not been out there|to look? yet?, i? couldnt say|tell you? for? sure?, i? cant|couldnt
    remember|recall, i? forget, ive forgotten, i? forgot, dont ask me, how would|should i know, who can say, your guess is as good as mine, god|lord|heaven|goodness
    knows, not a scooby, pass on that one?, next question, ask me another, skip that|this one|question?, leave that one blank?, ill have to check|look|ask|measure,
    i|id would? have to check|look|ask|measure|go?, need to check|look, id need to check|look, i need to check|look, couldnt be sure, cant be sure, im|i not am? sure|certain|too?, im not certain, i am not
    sure, not so sure,  havent measured|checked|looked, never looked|checked|measured|counted, never thought to look, no way of knowing|telling, impossible to say|tell,
    hard to say|tell|know|judge, difficult to say|tell|judge, cant|couldnt judge|see, i? wouldnt like to say|guess, wouldnt want to guess|say, i? couldnt guess, nobody knows, dont
    know that one, i? dont have that, i? dont have that information|figure|number, unknown to me, dunno about that, no idea about that, i? wish i knew, ive no way of knowing, havent the
    foggiest idea, not known yet, beats me
  `,
  undo: words`
    undo, undo that|it|last, take that|it back, scrap that|it, go back, step back, delete that|it, forget that|it,
    cancel that|it, that was wrong, remove that|it, ignore that, strike that, that was a mistake, undo the last
    one|thing|answer, back one,
    take that last one|thing|answer|bit? back, take the last one|thing|answer|bit? back, take back what i|the just? last? said|one|answer|thing?, take it all back, undo the? last answer|one|thing|step|bit, undo what
    i just? said|put|told, undo my last answer|one?, scrap the last one|thing|answer|bit, scrap what i just? said, delete the last one|thing|answer|bit, delete my last answer|one, remove the last one|thing|answer|bit, cancel
    the last one|thing|answer, cancel my last answer, ignore the last one|thing|answer|bit, ignore what i just? said, forget what i just? said, forget the last one|thing|answer|bit, forget i said
    that|anything|it, i didnt mean that|it|to say that?, didnt mean that|it|to say that, that wasnt|isnt right, go back one step?, go back a step, one step back, step back one?, back up, back up one?, back a step, rub that|it
    out, strike the last one|thing|answer?, that was my mistake, i made a mistake, made a mistake, wrong button, pressed the wrong button|one, hit the wrong button|one, can i undo that|it|this?, can i take that back, i take that|it
    back, reverse that, revert that|it?, retract that
  `,
  verdict: words`
    verdict, the verdict, can|should|shall|may i|we spray|go now|today|yet, can|should|shall|may i|we spray|go,
    can i spray it? now|today|then, whats the? verdict|answer|result|decision, the? answer, spray today, am i|we
    good to go, ok|okay|good to spray, is it ok|okay|fit|right|good to spray now|today?, so can i spray, so what
    now, decide, tell me the verdict, give me the? verdict|answer, what do you say, what is the verdict|answer,
    does today suit, is today ok|okay|any good, do i spray or not, can i spray or not, result, decision
  `,
  help: words`
    help, help me, what can i say|do|type, how does this|it work, how do i use this|it, what now, what do i do,
    how do i answer, i need help,
    im stuck, i am stuck, im lost, i? dont understand, i? dont get it|this, dont follow, i? dont follow, what am i supposed to do|say|type, what do i do now|next|here, what should i
    do|say|type now|next|here?, how do i do|use|work|start this|it?, how does this|it|the thing all? work, what can you do, what do you do, what is this for?, i need a hand, give me a hand, bit of help, some
    help, need some? help, i need some help, help needed, im confused, confused, what are my options, what are the options, how do i get|make started, how do i start, where do i start, what should i say, what can i ask|tell|say
    you?, how can i use this, show me how this|it works, explain how this|it works, instructions, i|im dont|not know sure what to do|say|type, not sure what to do|say, not sure what you want|mean|re, what do you want me to
    do|say, how do i work this, i? cant work this out, what do you mean, i? dont know what you mean|want, i? dont understand the question, i? dont understand that|this
  `,
  stop: words`
    stop, stop it|now|there|asking, quit, exit, bye, goodbye, thats all, thats it for now, finish, enough, no more
    questions, cheerio, im done, all done, leave it, leave it there, thats enough, end,
    thatll do, that will do, thatll do for now|today, thats me done, thats it, thats all for now|today, thats enough for now|today, stop asking me? questions?, stop asking me, no more, no more questions please, give it a
    rest, ive had enough, had enough, im finished, finished, were done, we are done, i am done, end it|this|here|conversation, end the conversation, close it|this, shut down, shut up, leave it for|at now|today|that, lets leave it there|at|for
    that|now|today?, lets stop there|here, lets call it a day, call it a day, pack it in, ill leave it there|at|for that|now|today?, i want to stop, see you, see you later, cheerio, ta ta, ta ra, goodnight, good night, im off, got to go, gotta go, i have to go, ive
    got to go, must dash, over and out, done for now|today, stop there|here|please, stop for now|today, ill come back later, come back to it|this later, enough for now|today, enough questions
  `,
  dose: words`
    dose, the dose, whats the? dose|rate, what is the? dose|rate, what dose|rate, how much do|should|can i|we put|apply|use on?,
    how much product, how many litres, how much per hectare|acre, application rate, dose rate, how much, how much
    do i need, dose please, what rate should|do i use, tell me the dose, how much to put on, how many litres per
    hectare|acre, how much propyzamide
  `,
  'check-the-rest': words`
    carry|go|keep on with the rest|others?, do the rest, check|ask|judge|do|see the rest too?, check|ask|judge everything|all else?, the rest, the rest too|please, check the others, carry
    on, carry on asking, go on, go on asking, keep asking, ask on
  `,
  'look-again': words`
    look|check|try|see|fetch|get|pull the|a|another? forecast|weather again|now?, check|look|try again,
    look|check|try again, look again now|please, check once more, look once more, have another look, refresh, update, look it up
    again, fetch the? forecast again, get a|the new forecast
  `,
  'why-not': words`
    why not, but? why not today|now|spray|then, why cant|cannot|shouldnt i|we spray|go, why should i|we not spray, why
    wait, why do i|we have to wait, why must i|we wait, whats stopping me|us, whats in the way, what is in the
    way, whats holding it up|back, what stands in the way, why do you say wait|no,
    why cant|cannot|shouldnt|wont|couldnt|mustnt i|we|it|you spray|go|start|be? on? today?|now|yet, why is|isnt it|this? not? ok|okay|fit|right|suitable|good|possible|on|a? yes|allowed, why isnt it fit|ok|okay|right|suitable|on|allowed, why is it not
    fit|ok|okay|right|suitable|on|allowed|good|possible|today|yet, why is it|that a? no|wait|off|out|unsuitable|unfit|wrong|bad, why no|wait|hold, why a|the no|wait|hold, why are you saying no|wait|not, why do|did you say no|wait|not, why
    have|must|should i|we to? wait, why do i|we have|need to wait|hold|hang off|on?, whats stopping me|us|it from? spraying|going?, what is stopping me|us|it from? spraying|going?, whats holding me|us|it|things up|back, whats wrong
    with? today|now|it|it today?, what is wrong with today|now, whats the problem|matter|hold up|issue|catch, what is the problem|issue, whats against it|spraying, what speaks against it, why not spray|go|start, why not go ahead, how come i|we|its cant|not spray|go|fit|ok?,
    how come its a? no|not, how come not, how come i cant go|spray, whats up with today, why wont it do, why wont you let me spray?|go?, what rules it out, why is it ruled out, why is it red, why is today out|off|no good, why is today not suitable|ok|fit|right, why isnt today
    ok|fit|right|suitable|any good, why can i|we not spray|go|start|put it on?, whats making you say no|wait, whats blocking me|us|it, which bit is stopping me|us, what fails, what failed, why does it say no|wait, what did i get wrong
  `,
  when: words`
    when, when then|else, when can|could|should|may i|we spray|go, when will it be? ok|okay|fit|right|possible|better,
    how soon, how long must|should|do i|we wait, when is the next chance|window|time|day, next chance|window,
    whats the next window|chance, when will|does|would it suit, which day|days, what day,
    when will|would|might|does|is it|this|that be|come|get? ok|okay|fit|right|possible|better|good|suitable|on|safe|ready|time, when will it come right|good|fit, when will it|that|things be|get better|right|fit|ok|good|suitable, when is it
    ok|fit|right|going to be? ok|fit|right|better|good|suitable, when would|will|could|can|should|might i|we be? able? to? spray|go|start|get on|put it on?, when would be better|best|good|right|ok, when would be a good|better time|day, when is|s a? good|better|best|right time|day|moment|chance, when
    should i try|come|look|check again|back, when do i get to spray|go, when do you think it|i will|can|ll be|spray|go fit|ok|right?, when can it be sprayed|done, when can i get on, when can i get on with it|that, when can i start|begin|get going, what day|time|date
    will|would|can|could|should|might it|i|we be? ok|fit|right|suitable|good|spray|go|better, what day is best|better|good|fit, what time can|should|could i|we spray|go|start, which day|days will|would|is|are be? best|better|good|fit|right|ok|suitable?, which day|days can|could|should i|we spray|go,
    how long until|till|before|til i|it|we can|is|s be? spray|go|fit|ok|right?, how long do i|we have|need to wait|hold off?, how long must|should|will|would i|we wait|be, how long till|until its fit|ok|right, how long will it be|take, how soon can|could|will i|we|it spray|go|be? fit|ok|right?, whats the next|best|earliest|soonest
    day|window|chance|slot|opportunity|time|date, next|best|earliest day|slot|opportunity|window|chance, when is the next|best|earliest|soonest day|slot|opportunity|window|chance|date, when is the earliest i can go|spray, is there a|any window|chance|slot|day coming|this|later up|week?, when
    does it look|get good|better|ok|fit|right|suitable, any day|days this week, will it be fit|ok|right|suitable tomorrow|later|this|next week?, will tomorrow be? better|do|ok|fit, when might it suit, when will it be cold|cool|dry|wet enough, when then, when else, until when
  `,
  needs: words`
    what would|do you need, what would|do you need to know, what else do you need, what else do you need to know, whats
    missing, what is missing, what more do you need, what would it take, what would have to change, what would
    help, what do i need to do, what do i need to find out, what is left, whats left, whats still open, what is
    still open, what must i do, what needs doing,
    what would you need to say yes|go, what do you need to say yes|go, what do you need|want|require from|off me, what do you need|want to know|hear still?, what do|would you still need|want to? know?, what would|do i|we need|have to do|change|check|find|tell|measure
    you? out? next?, what would|has|have|must have to|be be? happen|true|right|different|met, what has to happen|change|be right|come right, what would make it a? yes|ok|okay|fit|right|possible|go, what would make you say yes, what would make it ok to spray, what would get me|it|us a? yes|go|over the line,
    what would change your? mind|answer, what would change your mind|that|the answer|it, what would have to be different, what must change|happen|be right|be different, what needs to happen|change|be|come right|different?, whats needed, what is needed, whats still needed|needed|to|outstanding|wanted do|come|answer?, what is outstanding,
    whats outstanding, what else do you need from? me?, what else do you want|need to? know?, anything else you need|want to? know?, what else is there, what else, what questions are left, how many questions are left, how many more questions, what are you missing, what are you waiting for|on, what havent i told|given
    you, what have i not told|given you, what have i missed, what do i still need|have to do|tell|answer|check you?, what does it need, what does it take, what would it take to say? yes|go|get?, what would it take to get a yes, what would i need, what would i need to do|change|tell you|wait for, what conditions do|does i|it
    need, what are the conditions, what do i have to do, what information do you need, what info do you need, what more do you want|need to? know?
  `,
  fields: words`
    what|which fields have i|we|you got?, what are my|the fields, whats my fields, fields, all fields, list the? fields, list my fields, show the? fields, todays fields, how are|do the fields
    doing|stand, what about the fields|others, which fields can i spray, all my fields, overview, show all fields,
    fields today
  `,
};
