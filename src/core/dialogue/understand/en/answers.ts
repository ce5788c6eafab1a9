import type { AnswerWords } from '../language-words.ts';
import { words } from '../phrases.ts';

/** Short answers, corrections and questions, at the beginning of a clause. Patterns as in `expandPattern`. */
export const answerWords: AnswerWords = {
  yes: words`
    yes, yeah, yep, yup, yea, aye, ay, yes please, yeh, y, correct, thats right|correct|it|true, right, sure,
    definitely, certainly, absolutely, of course, indeed, ok, okay, affirmative, spot on, it is, they are, there
    is, there are, we have, i have, it has, it does, they do, i do, we do, it was, true, yessir, for sure, that is
    right|correct, it certainly is, oh yes, you bet
  `,
  no: words`
    no, nope, nah, nay, naw, n, negative, no way, not at all, not yet, not a bit, certainly|definitely|absolutely
    not, it isnt, its not, it is not, theyre not, they arent, they are not, there isnt, there arent, there is not,
    there are none, it hasnt, we havent, i havent, it doesnt, they dont, we dont, i dont, it wasnt, it didnt, we
    didnt, not today, not now, false, thats wrong, wrong, no sir, none, not that i can see, not that i know of,
    none at all, nothing at all, not this season|year, nothing, never, not any, nil, not one, there are not, it
    has not, we have not, not so far, none that i can see, oh no
  `,
  leanYes: words`
    i? think so, probably, i? believe so, i? reckon so, i? guess so, i? suppose so, should be, most likely, more
    than likely, likely, looks like it, looks that way, i? would say so, id say so, i? expect so, pretty sure it?
    is?, i? imagine so, seems so, i? think it is|has|does, i? think they are|do
  `,
  leanNo: words`
    i? dont think so, probably not, i? dont believe so, i? doubt it, not really, i? think not, i? guess not, i?
    dont reckon so, shouldnt be, hopefully not, i? would say not, unlikely, wouldnt have thought so, dont reckon
    so, not likely, i? suppose not, i? wouldnt say so, not as far as i know, i? dont suppose so, i? think it
    isnt|hasnt, hardly
  `,
  correct: words`
    sorry, i meant, i mean, correction, make that, actually, oops, wait, my mistake, i meant to say, should have
    said, should say, scratch that, i should have said, no wait, no sorry, hang on, i misread, typo, change that
    to, change it to, not that
  `,
  ask: words`
    what, which, who, how, whats, hows, why, where, is it, are they, does it, do they, can i|we|you, could
    i|we|you, should i|we, shall i|we, am i, do i, do you, are you, will it, what if, is there, are there, would
    it|you
  `,
  askWithMark: words`
    is, are, does, do, can, shall, did, has, have, was, isnt, arent, would, should, could, will, when, might, so
    is|are|can
  `,
  noneOfIt: words`
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
