import type { AnswerWords } from '../language-words.ts';
import { words } from '../phrases.ts';

/** Short answers, corrections and questions, at the beginning of a clause. Patterns as in `phraseBook`. */
export const answerWords: AnswerWords = {
  yes: words`
    yes, yeah, yep, yup, yea, aye, ay, yes please, yeh, y, correct, thats right|correct|it|true, right, sure,
    definitely, certainly, absolutely, of course, indeed, ok, okay, affirmative, spot on, it is, they are, there
    is, there are, we have, i have, it has, it does, they do, i do, we do, it was, true, yessir, for sure, that is
    right|correct, uh huh, mm hm, mm hmm, mhm, mmhm, ya, yah, yis, ayup, it certainly is, oh yes, you bet, of? course it|they|there|we|i is|are|has|have|did|do|does, sure|certainly is|are|does|do|has|have|did, that
    it|they|we|i is|are|does|do|have|has, it sure|certainly|definitely is|does|has, they sure|certainly|definitely are|do, one|some|most|all|several of them is|are|do|does|has|have, one is, some are, most are, all are, both are, they all are,
    all of it|them, too right, course, very much so, very much, absolutely is|does|are, 100 percent, without|no doubt, im afraid so, sadly yes
  `,
  no: words`
    not any more, not anymore, no longer, no, nope, not as yet, nah, nay, naw, n, negative, no way, not at all, not yet, not a bit, certainly|definitely|absolutely
    not, it isnt, its not, it is not, theyre not, they arent, they are not, there isnt, there arent, there is not,
    there are none, it hasnt, we havent, i havent, it doesnt, they dont, we dont, i dont, it wasnt, it didnt, we
    didnt, not today, not now, false, thats wrong, wrong, no sir, none, not that i can see|tell|spot|find, not that ive seen|noticed|found, not that i know of,
    none at all, nothing at all, not this season|year, nothing, never, not any, nil, not one, not a hope|prayer, no hope, not a hope in hell, fat chance, no fear, havent|hasnt|not got|gotten|come round|around to it|that|doing? yet?, still to do|be done, yet to do it, yet to be done, not done yet?, havent done it|that|so|any, not been done, neither, none of them is|are|do|does|has|have?, not one of them, not at the? moment|minute, not at this? moment|minute, not this time, not just? yet, not right now, not recently|lately, course not, of course not, never has|have|did|had, never has|have
    been, no need, far from it, no chance, not likely, there are not, it
    has not, we have not, not so far, none that i can see, oh no
  `,
  leanYes: words`
    i? think it might|may be?, it might|may|could be?, might|may|could be|do|have?, in all likelihood, odds are, odds on, chances are, i? would think so, id think so, i? should think so, as far as i know, so far as i know, so im told, i? fancy so, i? hope so, hopefully,
    i? think so, probably, i? believe so, i? reckon so, i? guess so, i? suppose so, should be, most likely, more
    than likely, likely, looks like it, looks that way, i? would say so, id say so, i? expect so, pretty sure it?
    is?, i? imagine so, seems so, i? think it is|has|does, i? think they are|do
  `,
  leanNo: words`
    i? dont think so, probably not, i? dont believe so, i? doubt it, not really, i? think not, i? guess not, i?
    dont reckon so, shouldnt be, doubtful, very doubtful, not to my knowledge, not that im aware of, not that i|we can remember|recall, not so far as i know, afraid not, hopefully not, i? would say not, unlikely, wouldnt have thought so, dont reckon
    so, not likely, i? suppose not, i? wouldnt say so, not as far as i know, i? dont suppose so, i? think it
    isnt|hasnt, hardly
  `,
  correct: words`
    that|it? shouldve been|said|read, that|it should have|of be|been|say|said|read?, that|it was meant to be, meant to say|put|type, should have|of been|said|put|read, shouldve been|said|put|read, i? got that|it wrong, i? made a mistake, my bad, whoops, nope sorry, let me correct that, let me change that to?,
    cancel that, scrap that, scrub that, forget that, strike that, ignore that, rather, better make that, ive? misread|mistyped it|that?, i? misread|mistyped it|that, wrong number, wrong one, hold on, wait a minute|sec|second, hang on a minute|sec|second, apologies, my apologies, was? wrong there,
    make it, sorry, i? meant, or rather, i mean, correction, make that, actually, oops, wait, my mistake, i meant to say, should have
    said, should say, scratch that, i should have said, no wait, no sorry, hang on, i misread, typo, change that
    to, change it to, not that
  `,
  saidBefore: words`i said|put|wrote|typed|told, i told you, i had said|put, said, first i said`,
  ask: words`
    what, which, who, how, whats, hows, why, where, is it, are they, does it, do they, can i|we|you, could
    i|we|you, should i|we, shall i|we, am i, do i, do you, are you, will it, will|did|does|has|were the|my|there|they, are|do|is the|there|my, what if, is there, are there, would
    it|you
  `,
  askWithMark: words`
    is, are, does, do, can, shall, did, has, have, was, isnt, arent, would, should, could, will, when, might, so
    is|are|can
  `,
  noneOfIt: words`
    no to? all|any of? them|those|these|it, not any of? them|these|those, none of the above, no to all, no none of? them?, no nothing, none of them, none of that, not a thing,
    none of these|them|those, nothing, none, nothing at all, none of it, none of that, nothing like that, all
    clear, clean, nothing to see, nothing special
  `,
  plain: new Set('yes yeah yep yup yea aye ay yeh y no nope nah nay naw'.split(' ')),
  courtesies: new Set(
    'please thanks thank cheers mate then so ok okay now hi hello hey well right er um erm oh sorry just and'.split(
      ' ',
    ),
  ),
  leads: new Set(['well', 'oh', 'er', 'um', 'so']),
  labelLeads: new Set('its it is a an the they theyre are id say just'.split(' ')),
};
