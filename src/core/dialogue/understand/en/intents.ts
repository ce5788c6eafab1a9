import { words } from '../phrases.ts';
import type { Intent } from '../types.ts';

/** How people ask for something beside telling facts. Patterns as in `expandPattern`; they must be all that a clause says. */
export const intentWords: Readonly<Record<Exclude<Intent, 'yes' | 'no' | 'define' | 'same-for'>, readonly string[]>> = {
  why: words`
    why, why do|would|are you ask|asking|need|want|wanting that|this|it|me?, why do|would you need|want to know?
    that|this|it?, why do|would you ask, why are you asking, what for, whats that|this|it for, how come, why is
    that, why that|this, why does that|it|this matter, does that|it|this matter, why do you want|need to
    know, what has that got to do with it, whats the reason, why do you need|want that|this, what do you need
    that|this|it for, whats that got to do with it, why the question, why should i tell you
  `,
  'what-said': words`
    what have i told|said|given you?, what did i say|tell|give you?, what do you know so? far?, what have you got
    so? far?, what do you have so? far?, what you have|got|know so? far?, summary, summarise, read it|that back,
    read back, list my? answers, show me? my answers, what have i said so? far?, what have i told you so? far?,
    where are we, so far, recap, what do you know about this|the|my field, what did i tell you
  `,
  'start-again': words`
    start again|over|afresh, restart, begin again, from the beginning|start|top, start from scratch, reset, new
    conversation, start over again, lets start again|over, clear everything|all, forget everything|all, start a
    new conversation, go back to the start|beginning
  `,
  'another-field': words`
    another|different|next|new|other field, the? other field, change|switch field|fields, change the field,
    do|try|choose|pick|take another|different field, lets do|try|take|look another|a different|other field, lets
    do a|the different|other|next field, look at another|different field, move on to the next field, go to another
    field, choose|pick a different|another field, a|the different|next|other field, try a different field
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
    knew, honestly? no idea, cant tell from here
  `,
  undo: words`
    undo, undo that|it|last, take that|it back, scrap that|it, go back, step back, delete that|it, forget that|it,
    cancel that|it, that was wrong, remove that|it, ignore that, strike that, that was a mistake, undo the last
    one|thing|answer, back one
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
    how do i answer, i need help
  `,
  stop: words`
    stop, stop it|now|there|asking, quit, exit, bye, goodbye, thats all, thats it for now, finish, enough, no more
    questions, cheerio, im done, all done, leave it, leave it there, thats enough, end
  `,
  dose: words`
    dose, the dose, whats the? dose|rate, what is the? dose|rate, what dose|rate, how much do|should|can i|we put|apply|use on?,
    how much product, how many litres, how much per hectare|acre, application rate, dose rate, how much, how much
    do i need, dose please, what rate should|do i use, tell me the dose, how much to put on, how many litres per
    hectare|acre, how much propyzamide
  `,
  'check-the-rest': words`
    check|ask|judge|do|see the rest too?, check|ask|judge everything|all else?, the rest, the rest too|please, check the others, carry
    on, carry on asking, go on, go on asking, keep asking, ask on
  `,
  'look-again': words`
    look|check|try again, look again now|please, check once more, look once more, have another look, refresh, update, look it up
    again, fetch the? forecast again, get a|the new forecast
  `,
  'why-not': words`
    why not, but? why not today|now|spray|then, why cant|cannot|shouldnt i|we spray|go, why should i|we not spray, why
    wait, why do i|we have to wait, why must i|we wait, whats stopping me|us, whats in the way, what is in the
    way, whats holding it up|back, what stands in the way, why do you say wait|no
  `,
  when: words`
    when, when then|else, when can|could|should|may i|we spray|go, when will it be? ok|okay|fit|right|possible|better,
    how soon, how long must|should|do i|we wait, when is the next chance|window|time|day, next chance|window,
    whats the next window|chance, when will|does|would it suit, which day|days, what day
  `,
  needs: words`
    what would|do you need, what would|do you need to know, what else do you need, what else do you need to know, whats
    missing, what is missing, what more do you need, what would it take, what would have to change, what would
    help, what do i need to do, what do i need to find out, what is left, whats left, whats still open, what is
    still open, what must i do, what needs doing
  `,
  fields: words`
    fields, all fields, list the? fields, list my fields, show the? fields, todays fields, how are|do the fields
    doing|stand, what about the fields|others, which fields can i spray, all my fields, overview, show all fields,
    fields today
  `,
};
