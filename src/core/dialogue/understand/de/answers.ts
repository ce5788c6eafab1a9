import type { AnswerWords } from '../language-words.ts';
import { words } from './spelling.ts';

/** Short answers, corrections and questions, at the beginning of a clause. Patterns as in `phraseBook`. */
export const answerWords: AnswerWords = {
  yes: words`
    ja, jo, joa, jawohl, jawoll, jep, jupp, jup, jau, ja ja, ja bitte, ja klar, ja genau, ja sicher, ja natürlich,
    ja doch, doch, klar, sicher, natürlich, genau, stimmt, richtig, das stimmt, stimmt genau, korrekt, gewiss,
    freilich, na klar, auf jeden fall, selbstverständlich, okay, ok, in ordnung, so ist es, passt, ja ist er|sie|es,
    ja sind sie, ja haben wir, ja hat er|sie|es, ja tut es|er, ja tun sie, ja gibt es, ist so, ist er|es, sind sie,
    hat er|es, haben wir, gibt es, ja habe ich, habe ich, das ist richtig, oh ja, j, jaja, ja schon, schon
  `,
  no: words`
    nicht mehr, jetzt nicht mehr, nein, nö, noch gar|überhaupt nicht, nee, ne, nä, nein nein, nicht, noch nicht, gar nicht, überhaupt nicht, auf keinen fall, nein noch nicht,
    keineswegs, keinesfalls, niemals, nie, nix, nichts, gar nichts, überhaupt nichts, kein*, gar|überhaupt
    kein*, noch kein*, noch nichts, stimmt nicht, das stimmt nicht, falsch, das ist falsch, nicht richtig, nope,
    ist es|er|sie nicht, sind sie nicht, haben wir nicht, hat er|es nicht, gibt es nicht, tut es|er nicht, tun sie nicht,
    heute nicht, jetzt nicht, dieses jahr nicht, diese saison nicht, bisher|bislang nicht, bisher|bislang nichts,
    nichts zu sehen, nicht dass ich wüsste, n, mitnichten, ach nein, ach was, habe ich nicht, nein gar nicht, nein danke,
    im gegenteil, bis jetzt nicht, nein noch nichts, noch nie
  `,
  leanYes: words`
    ich? glaube ich? schon|ja, glaub ich? schon|ja, ich? denke schon|ja, denk schon, ich? meine schon|ja, wahrscheinlich,
    wahrscheinlich schon|ja, vermutlich, vermutlich schon|ja, wohl schon|ja, wohl, höchstwahrscheinlich, sehr wahrscheinlich,
    sieht so|danach aus, sieht ganz so|danach aus, müsste so? sein, dürfte so? sein, sollte so? sein, ich? nehme es? an,
    ich? nehm an, eher schon|ja, ziemlich sicher, ich? würde sagen ja, vielleicht schon, kann gut sein, ich? glaube ja,
    ich? glaub ja, ja glaube ich, ja glaub ich, ja denke ich, ich? gehe davon aus, scheint so, bestimmt, jein, so ziemlich,
    könnte sein, kann sein, vielleicht ja, glaub|glaube|denk|denke ich schon|ja, ja vielleicht, ja wahrscheinlich, ja vermutlich, ja ich?
    glaube, ja ich? denke
  `,
  leanNo: words`
    glaub|glaube|denk|denke|mein|meine ich nicht, ich? glaube nicht|nein, glaub nicht|nein, ich? glaub nicht|nein, ich? denke nicht|nein, denk nicht, wahrscheinlich
    nicht|nein, vermutlich nicht|nein, wohl nicht|kaum, eher nicht|nein|weniger, eigentlich nicht, nicht wirklich, kaum,
    hoffentlich nicht, ich? würde sagen nein, sieht nicht so|danach aus, unwahrscheinlich, nicht dass ich weiß|wüsste,
    nicht unbedingt, ich? bezweifle es?, soweit ich weiß nicht, soviel ich weiß nicht, nein glaube ich, nein glaub ich,
    vielleicht nicht, glaube kaum, ich? glaube kaum, glaub kaum, nein ich? glaube, nein ich? denke
  `,
  correct: words`
    entschuldigung, sorry, ich meinte|meine, ich? meinte, korrektur, berichtigung, moment, halt, ach nein, ach so,
    verzeihung, quatsch, vertippt, versprochen, ich? habe|hab? mich vertippt|versprochen|verlesen|vertan|geirrt, verlesen, vertan, tippfehler, schreibfehler, doch
    nicht, falsch, stattdessen, ich wollte sagen, nein moment, nein halt, nein doch, eigentlich, besser gesagt, beziehungsweise,
    mein fehler, muss heißen, soll heißen, ich? korrigiere, tut mir leid, nein sorry, nein entschuldigung, ich habe mich geirrt
  `,
  ask: words`
    was, welche|welcher|welches|welchen|welchem, wer, wie, wieso, warum, weshalb, weswegen, wo, wann, woher, wozu, wofür,
    womit, darf|kann|soll|muss ich, dürfen|können|sollen|müssen wir, gibt es, hast|kannst|weißt|willst|meinst du,
    haben|können|wissen|wollen|meinen sie, ob, reicht, zählt
  `,
  askWithMark: words`
    ist, sind, war, waren, hat, haben, habe, läuft, laufen, regnet, regnets, steht, stehen, darf, dürfte, kann, könnte, soll,
    sollte, muss, müsste, geht, gehts, passt, wird, werden, würde, bin, bist, wäre, wären, wenn, falls, gilt, gelten, liegt,
    brauche|brauchen, tut, klebt, weht, und wenn, also, zu warm, zu kalt, zu nass, reichen, genügt, genügen, macht, heißt,
    denn, hätte, sei, dann, aber
  `,
  noneOfIt: words`
    nichts davon|dergleichen, nichts von alledem|allem|dem, keins|keines|keine|keiner davon, nichts, gar nichts, nichts zu sehen,
    nichts besonderes|auffälliges, alles gut|sauber|ok|okay, alles in ordnung, nix, nix davon, überhaupt nichts, keins, keines, nichts
    dabei, trifft nichts zu, trifft alles nicht zu, weder noch, keines von denen|allen, nichts auffälliges zu sehen
  `,
  plain: new Set('ja jo joa jawohl jawoll jep jupp jup jau jaja doch klar nein noe nee ne nae nope n j'.split(' ')),
  courtesies: new Set(
    (
      'bitte danke schoen dank dir ihnen mal doch denn dann so ok okay jetzt hallo hi hey moin servus na gut tja aeh aehm ach oh ' +
      'entschuldigung und also eben gerade noch nun halt eigentlich mir heute schnell einfach erstmal ja wieder ne oder du sie ich'
    ).split(' '),
  ),
  leads: new Set('na oh ach tja also aeh hm nun'.split(' ')),
  labelLeads: new Set('es ist sind ein eine einen der die das den dem er sie in im am liegt'.split(' ')),
};
