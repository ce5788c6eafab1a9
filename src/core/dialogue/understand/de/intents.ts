import type { Intent } from '../types.ts';
import { words } from './spelling.ts';

const field = 'feld|schlag|acker|stück';
const otherField = `anderes|nächstes|neues ${field}`;

/** How people ask for something beside telling facts. Patterns as in `phraseBook`; they must be all that a clause says. */
export const intentWords: Readonly<Partial<Record<Exclude<Intent, 'yes' | 'no'>, readonly string[]>>> = {
  why: words`
    warum, wieso, weshalb, weswegen, wozu, wofür, warum|wieso|weshalb|wozu fragst du das|danach?,
    warum|wieso|weshalb|wozu fragen sie das|danach?, warum|wieso|weshalb|wozu willst du das|es? wissen, warum|wieso|weshalb|wozu wollen
    sie das|es? wissen, wozu|wofür brauchst du das, wozu|wofür brauchen sie das, wozu|wofür ist das gut|wichtig?, wozu|wofür soll das
    gut? sein?, warum|wieso ist das wichtig|nötig, warum|wieso das, warum musst du das wissen, warum müssen sie das wissen,
    was soll die frage, warum die frage, wieso die frage, warum|wieso spielt das eine rolle, was hat das damit zu tun, was tut das
    zur sache, aus welchem grund, was ist der grund, warum fragst du, wieso fragst du, wozu die frage, was bringt das, warum
    brauchst du das, wieso brauchst du das, wieso muss ich das sagen, warum soll ich das sagen, wofür willst du das wissen
  `,
  'why-not': words`
    warum nicht, wieso nicht, weshalb nicht, warum|wieso|weshalb darf|kann|soll ich heute|jetzt|hier? nicht spritzen|fahren|raus|los?,
    warum|wieso|weshalb dürfen|können|sollen wir heute|jetzt|hier? nicht spritzen|fahren|raus|los?, warum|wieso|weshalb geht das|es
    heute|jetzt? nicht, warum|wieso|weshalb nicht heute|jetzt|spritzen, warum|wieso heute|jetzt? nicht, warum|wieso passt es|das
    heute|jetzt? nicht, was spricht dagegen, woran liegt es|das, woran hängt es|das, was hindert mich, warum|wieso muss|soll ich
    noch? warten, warum|wieso warten, was steht dem|im weg? entgegen?, warum|wieso ist es|das|heute heute? nicht möglich|erlaubt,
    warum|wieso nein, was ist das problem, woran scheitert es|das, warum|wieso sagst du nein, warum|wieso ist es verboten
  `,
  'what-said': words`
    was habe|hab ich dir|ihnen? bisher|schon|alles|noch? alles? gesagt|erzählt|angegeben|eingegeben, was habe|hab ich dir|ihnen?
    bis jetzt alles? gesagt|angegeben|erzählt, was weißt du bisher|schon|alles|jetzt?,
    was wissen sie bisher|schon|alles|jetzt?, was hast du bisher|schon|alles?, was haben sie bisher|schon|alles?, zusammenfassung, gib|geben sie? mir eine|die zusammenfassung,
    zusammenfassen, fass|fasse alles|es|das|mal? zusammen, meine antworten, meine angaben, zeig|zeige mir? meine antworten|angaben,
    lies das|es|alles? vor, lies alles noch mal|einmal vor, bisherige angaben|antworten, stand der dinge, wo stehen|sind wir,
    was ist bisher|schon bekannt, was weißt du über das|dieses feld, was habe|hab ich eingegeben, was ist bekannt
  `,
  'start-again': words`
    von vorn, von vorne, noch? mal|einmal? von vorn|vorne anfangen|beginnen?, von vorn|vorne bitte?, noch? mal|einmal neu
    anfangen|beginnen|starten, nochmal von vorn|vorne anfangen?, nochmal neu anfangen?, nochmal neu beginnen, neu anfangen,
    neu beginnen, neu starten, neustart, neuanfang, alles neu, alles auf anfang, alles auf null, zurück zum anfang, zurück auf
    anfang|null|los, fang|fange noch? mal|einmal? von? vorn|vorne? an, fang|fange neu an, fangen wir noch? mal|einmal?
    neu|von? vorn|vorne? an, alles löschen, lösche alles, alles vergessen, vergiss alles, zurücksetzen, alles zurücksetzen,
    neues gespräch, ganz von vorn|vorne, wieder von vorn|vorne anfangen?, beginne von vorn|vorne, beginne neu
  `,
  'another-field': words`
    ${otherField}, ein ${otherField}, das nächste|andere ${field}, den nächsten|anderen schlag|acker, der nächste|andere
    schlag|acker, nächster|anderer schlag|acker, feld|schlag|acker wechseln, das feld wechseln, den schlag wechseln, zum nächsten|anderen
    ${field}, zu einem anderen ${field}, weiter zum nächsten ${field}, jetzt das nächste ${field}, nimm ein anderes|neues feld,
    wir nehmen ein anderes feld, ich will|möchte ein anderes feld, ich will|möchte zu einem anderen feld, ein neues feld,
    machen wir mit dem nächsten|einem anderen ${field} weiter, weiter mit dem nächsten ${field}, anderes feld nehmen|wählen,
    ein anderes feld nehmen|wählen, wechsle das feld, wechseln wir das feld, lass uns ein anderes feld nehmen, jetzt ein
    anderes feld, für ein anderes feld, andere fläche, nächste fläche, einen anderen schlag, anderen schlag, einen neuen schlag
  `,
  'dont-know': words`
    weiß nicht, ich? weiß es|das? nicht, ich? weiß ich? nicht, das|es? weiß ich leider|noch|gerade|grad|jetzt|auch? nicht, keine ahnung, ich? habe|hab? keine ahnung,
    weiß ich nicht, weiß nich, ich? weiß es|das leider|noch|gerade|jetzt nicht, ich weiß leider nicht, kann ich nicht sagen, das kann
    ich nicht sagen, kann ich dir|ihnen nicht sagen, ich kann es|das nicht sagen, kann man nicht sagen, schwer zu sagen, nicht
    sicher, bin|ich bin mir? nicht sicher, ich bin mir nicht sicher, bin mir nicht sicher, bin unsicher, unsicher, unbekannt,
    nicht bekannt, mir nicht bekannt, ist mir nicht bekannt, überspringen, nächste frage, keine angabe, keine angaben, passe,
    hab|habe ich? noch? nicht geguckt|geschaut|nachgesehen|gemessen|gezählt|geprüft|nachgeschaut|gesehen, ich hab|habe noch?
    nicht geguckt|geschaut|nachgesehen|gemessen|gezählt|geprüft|nachgeschaut|gesehen, noch? nicht
    gemessen|geguckt|nachgesehen|geschaut|geprüft|gezählt|nachgeschaut, kein thermometer, kein thermometer dabei|da|zur hand|hier,
    hab|habe kein thermometer dabei|da|hier?, ich habe|hab kein thermometer dabei|da|hier?, hab|habe das? thermometer nicht dabei,
    hab|habe ich? nicht im kopf, nicht im kopf, da muss ich? passen|nachsehen|schauen, muss ich? erst? nachsehen|nachschauen|messen,
    müsste ich? erst? nachsehen|nachschauen|messen, nicht so genau, weiß ich nicht genau, weiß nicht genau, ich weiß es|das nicht
    genau, null ahnung, woher soll ich das wissen, kann ich von hier aus? nicht sehen|sagen, wüsste ich auch gern,
    das entzieht sich meiner kenntnis, frag mich nicht, fragen sie mich nicht, was weiß ich, da bin ich überfragt,
    bin ich überfragt, ich? erinnere mich nicht, hab|habe vergessen, vergessen, hab|habe ich vergessen, habe|hab ich nicht da,
    war noch nicht da|dort|draußen, keinen schimmer, weiß keiner, weiß ich noch nicht, das weiß ich noch nicht,
    thermometer vergessen|kaputt, noch unbekannt, frage überspringen, auslassen, kann ich nicht beurteilen|einschätzen, ist schwer zu sagen, ich weiß nicht so
    recht|genau, weiß nicht so recht|genau, nicht nachgesehen, nicht geschaut, nicht geguckt, nicht gezählt, nicht geprüft,
    da habe|hab ich nicht nachgesehen|geguckt|geschaut, hab|habe nicht nachgesehen|geguckt|geschaut|gemessen, kann ich jetzt|gerade
    nicht sagen, das kann ich jetzt|gerade nicht sagen, kann ich schlecht|schwer sagen
  `,
  undo: words`
    rückgängig, rückgängig machen, mach|mache das|es rückgängig, das rückgängig machen, bitte rückgängig, zurück, einen schritt
    zurück, ein schritt zurück, geh|gehe zurück, zurücknehmen, nimm das|es zurück, das zurücknehmen, ich nehme das|es zurück,
    letzte eingabe|antwort|angabe zurücknehmen|löschen|rückgängig|streichen|rückgängig machen?, die letzte eingabe|antwort|angabe
    zurücknehmen|löschen|rückgängig|streichen|rückgängig machen?, letztes zurücknehmen|löschen|rückgängig, lösch|lösche das|es,
    streich|streiche das|es, das löschen, das streichen, vergiss das|es, das war falsch, das war ein fehler, das war ein
    versehen, nimm die|meine letzte eingabe|antwort|angabe zurück, lösche die|meine? letzte eingabe|antwort|angabe, widerrufen,
    letzten schritt zurück|rückgängig, letzte antwort zurück, mach|mache die|meine letzte eingabe|antwort|angabe rückgängig, letzten
    eintrag löschen|zurücknehmen
  `,
  verdict: words`
    darf|kann|soll|sollte ich heute|jetzt|nun? spritzen|fahren|loslegen|raus, dürfen|können|sollen wir heute|jetzt|nun?
    spritzen|fahren|loslegen|raus, kann|darf ich los|loslegen|losfahren, können|dürfen wir los|loslegen|losfahren, urteil, das urteil,
    ergebnis, das ergebnis, was ist das ergebnis|urteil, wie lautet das ergebnis|urteil|die antwort, die antwort, entscheidung,
    entscheide, geht es heute|jetzt, geht das heute|jetzt, passt es heute|jetzt, passt das heute|jetzt, ist
    heute ein guter tag, spritzen oder nicht, heute spritzen, sag mir das ergebnis|urteil, was sagst du, was sagen sie, kann ich
    spritzen oder nicht, darf ich spritzen oder nicht, soll ich spritzen oder nicht, wie sieht es aus, gehts heute
  `,
  help: words`
    hilfe, hilf mir, helfen, was nun, was jetzt, ich brauche hilfe, kannst du mir helfen, können sie mir helfen, was kann ich sagen|tun|machen|eingeben,
    was soll ich tun|machen|sagen, wie geht das|es, wie funktioniert das|es, wie benutze ich das, ich komme nicht weiter, ich
    verstehe das? nicht, was muss ich tun|machen|sagen, wie antworte ich, versteh ich nicht, verstehe ich nicht, ich verstehe die
    frage nicht, hilf mir mal|weiter, wie bediene ich das, anleitung, bitte hilfe, ich weiß nicht weiter, was muss ich hier machen|tun
  `,
  stop: words`
    stopp, stop, halt, aufhören, hör auf, hören sie auf, ende, schluss, beenden, fertig, abbrechen, abbruch, das wars, das war
    es, das reicht, genug, genug für heute, tschüss, tschüß, auf wiedersehen, ich bin fertig, keine fragen mehr, schluss für
    heute, feierabend, schluss jetzt, das wars für heute, reicht für heute, lass gut sein, lassen wir es, lassen wir das,
    lass es, lass uns aufhören, wir hören auf, ich höre auf, bis später, machen wir schluss, mach schluss, für heute reicht es,
    das genügt, ich will aufhören, gespräch beenden
  `,
  dose: words`
    dosis, die dosis, menge, die menge, aufwandmenge, die aufwandmenge, welche menge|dosis|aufwandmenge, wie hoch ist die
    menge|dosis|aufwandmenge, wie viel, wieviel, wie viel|wieviel mittel|propyzamid?, wie viel|wieviel liter?, wie viel|wieviel liter
    pro|je hektar, wie viel|wieviel pro|je hektar, wie viel|wieviel brauche ich, wie viel|wieviel muss|soll|darf ich
    nehmen|spritzen|ausbringen, was ist die dosis|menge|aufwandmenge, wie viel|wieviel mittel brauche|nehme ich, wie viel
    liter brauche ich, sag mir die dosis|menge
  `,
  'check-the-rest': words`
    prüf|prüfe|frag|frage den? rest|alles|weiter auch? noch?, den rest auch?, den rest bitte, den rest prüfen, auch den rest, mach|mache
    weiter, weiter fragen, weitermachen, weiter machen, frag|frage weiter, fragen sie weiter, alles prüfen, prüfe alles
  `,
  'look-again': words`
    sieh|schau noch? mal|einmal nach, schau nochmal nach, nochmal nachsehen|prüfen|schauen, noch mal|einmal nachsehen|prüfen|schauen,
    prüf|prüfe noch mal|einmal, prüf|prüfe nochmal, erneut prüfen, aktualisieren, neue vorhersage, neue vorhersage holen,
    vorhersage neu holen|laden, hol|hole die neue vorhersage, hol|hole die vorhersage neu, neu laden, wetter neu laden|holen
  `,
  fields: words`
    felder, alle felder, meine felder, zeig|zeige mir? alle|die|meine felder, liste der felder, übersicht, alle schläge, wie steht es um die felder,
    was ist mit den anderen? feldern, welche felder passen|gehen heute?, felder heute, welche felder kann|darf ich spritzen
  `,
  when: words`
    wann, wann denn, wann dann, wann passt es|das heute?, wann geht es|das, wann gehts, wann darf|kann|soll ich spritzen|fahren|los|raus|denn?
    spritzen?, wann dürfen|können|sollen wir spritzen|fahren|los|raus?, wann wird es besser|passen|gehen, wann ist es so
    weit, wann ist es soweit, wann wäre es möglich|günstig|besser, ab wann, ab wann geht es|das, ab wann darf|kann ich spritzen?, an
    welchem tag, an welchem tag passt|geht es|das, welcher tag passt|wäre gut?, wann ist die nächste gelegenheit, nächste
    gelegenheit, wann ist der nächste gute tag, bis wann, wann wieder, wann frühestens, wann kann ich frühestens spritzen, wie lange
    muss|soll ich noch? warten, wann passt es wieder, wann wird es passen, wann ist das nächste fenster, nächstes fenster, wann lohnt
    es sich, wann klappt es|das, wann ist es möglich, wann ist es günstig
  `,
  needs: words`
    was brauchst du jetzt? denn? noch? alles? von? mir?, was brauchen sie jetzt? noch|alles|denn? alles? von? mir?, was fehlt
    dir|ihnen? denn? noch|alles? alles?, was willst|musst du noch|alles? alles? wissen, was wollen|müssen sie noch|alles? alles? wissen,
    was muss|soll ich noch|alles|dir|ihnen? alles|noch? sagen|messen|angeben|wissen|nachsehen|herausfinden|prüfen|liefern, welche
    angaben fehlen noch?, welche angaben brauchst du noch?, welche angaben brauchen sie noch?, was bräuchtest du noch?, was müsste|muss
    passieren|geschehen|sein|stimmen|erfüllt dafür? sein?, was muss|müsste sich ändern, was müsste anders sein, was brauchst du noch?
    um ja zu sagen, was brauchst du noch? für ein ja, was bräuchtest du um ja zu sagen, was bräuchtest du für ein ja, welche fragen
    kommen noch, was steht noch aus, was ist noch offen, wie viele fragen kommen? noch, was wird noch gebraucht, was brauchst du
    damit ich spritzen|fahren darf|kann
  `,
};

/** What may stand before the words of a wish without changing it. */
export const wishLeads = words`
  kannst|könntest|würdest du, können|könnten|würden sie, ich will|möchte|muss|würde, ich hätte gern, lass|lasst uns, lassen sie uns, lass|lassen mich, bitte, sag mir|mal, sag mal,
  sag mir mal, sagen sie mir|mal, und, aber, also, dann, leider, ehrlich gesagt, um ehrlich zu sein, entschuldigung, gut, okay|ok, so, hey|hallo|moin, nein, na, na ja, tja, äh|ähm, kurze
  frage, nur kurz, weißt du, wissen sie, jetzt, nun, ich will mal|jetzt, wir wollen|möchten, mal, doch, ach, oh, da, das, hm, puh, eigentlich
`;

/** What may stand after them. */
export const wishTails = words`
  ehrlich gesagt, um ehrlich zu sein, so genau, genau, leider, noch, im moment|augenblick, gerade, jetzt, heute, dann, für mich, bitte, eigentlich, überhaupt, wirklich, gar, nochmal, noch
  mal|einmal, wieder, mal, auswendig, aus dem kopf, so, dazu, darüber, davon, denn, bitte schön, danke, erst mal, erstmal, fürs erste, für heute, bisher, schon, alles, von hier aus, ohne nachzusehen, bis
  ich nachgesehen habe, so auf die schnelle, nun, mehr, bis jetzt, sofort, lieber, gern|gerne, da, hier, auch, so recht, mir
`;
