import type { LanguageWords } from '../language-words.ts';
import { spell, words } from './spelling.ts';

const closed =
  'weg, ist|sind weg|fort|verschwunden, abgezogen, abgelaufen, geschlossen, zu gegangen, geschmolzen, aufgetaut, getaut, abgetaut';

/** What little words do to the clause that they stand in. Patterns as in `phraseBook`. */
export const flagWords: LanguageWords['flags'] = {
  not: words`
    nicht, nimmer, nicht mehr, kein, keine, keinen, keiner, keines, keinem, keins, nichts, nirgends, nirgendwo, ohne, weder, nie,
    niemals, kein* mehr, nicht ein*, nicht ein* einzig*, gar|überhaupt nicht, gar|überhaupt kein*, frei von, noch nicht,
    noch kein*, nirgends ein*, keinerlei, kein einzig*, kein bisschen, nirgends mehr, mitnichten, keine spur|anzeichen von|der?, keine
    sichtbar*, absolut|wirklich kein*, absolut|wirklich nicht, nix, nicht mehr so?, nichts von, nichts mehr, aufgehört, hat|haben
    aufgehört, nicht irgendwo
  `,
  ended: words`${closed}`,
  spread: words`plus minus, plus oder minus, mehr oder weniger hin oder her, hin oder her, auf oder ab, rauf oder runter, nach oben oder|und unten`,
  or: words`oder, bis, /, bzw, beziehungsweise`,
  doubt: words`
    vielleicht, eventuell, evtl, möglicherweise, womöglich, wahrscheinlich, vermutlich, wohl, ich? glaube|glaub, glaube|glaub ich, ich?
    denke|denk, denke|denk ich, ich? meine, meine ich, ich? schätze|schätz, schätze|schätz ich, ich? vermute|vermut, vermute|vermut ich, ich? nehme|nehm
    an, nehme|nehm ich an, könnte|könnten, könnte|könnten sein, kann sein, dürfte|dürften, dürfte|dürften sein, müsste|müssten, müsste|müssten sein, sollte|sollten sein,
    scheint, scheinen, sieht so? aus wie|als|nach, sieht danach aus, anscheinend, scheinbar, offenbar, angeblich, schätzungsweise, geschätzt, über den
    daumen, über den daumen gepeilt, aus dem kopf, soweit ich weiß, soviel ich weiß, wenn ich mich recht|richtig erinnere, ungefähr, etwa,
    circa, ca, fast, beinahe, nahezu, mehr oder weniger, so ziemlich, irgendwie, so gut wie, eher, würde ich sagen, ich? würde sagen,
    ich? würd sagen, tendenziell, quasi, sozusagen, ziemlich sicher, bestimmt, hoffentlich, muss wohl, vom gefühl her, gefühlt, fühlt sich
    an wie, ich? tippe auf?, tippe ich, kommt mir so? vor, kommt mir vor wie, aus der erinnerung, grob geschätzt, mutmaßlich, oder so, pi mal daumen, tippe auf, über den daumen,
    im großen und ganzen, halbwegs, sah so? aus wie?
  `,
  unsure: words`
    ich? weiß nicht ob|wie|was|wo, weiß ich nicht, weiß nicht, nicht sicher, nicht sicher ob, bin|bin mir? nicht sicher, unsicher, keine ahnung,
    keine ahnung ob|wie|was, kann ich nicht sagen, kann nicht sagen ob?|wie?, nicht zu erkennen, nicht erkennbar, schwer zu sagen, nicht
    gemessen|geprüft|gezählt|nachgesehen|geguckt|geschaut, noch nicht gemessen|geprüft|gezählt|nachgesehen|geguckt|geschaut, ob, frage
    mich ob, nicht genau, weiß ich nicht genau, nicht so genau, vergessen, kann mich nicht erinnern, keinen schimmer, nicht bekannt, unklar,
    unbekannt, nicht so sicher, nicht ganz sicher, entweder
  `,
  block: words`
    wenn, falls, sobald, solange, bis der|die|das|es|er, vor langer zeit, damals, früher, letzten|letztes|letzter|letzte
    frühjahr|frühling|sommer|herbst|winter|jahr|monat|saison, letzter saison, letztes mal, voriges|vorigen|vorige jahr|herbst|saison|monat,
    im vorjahr, vorjahr, im frühjahr|frühling, neulich, vor|vor ein paar jahren, würde|würden, wäre|wären, hätte|hätten,
    dürfte ich, sollte ich, müsste ich, nachbar|nachbarn|nachbars, beim nachbarn, nebenan, seine|seiner|seinem|seinen, ihr|ihre
    feld|acker, nicht nur, außer, statt, anstatt, anstelle, will|wollen, möchte|möchten, wünsche|wünschen, hoffe|hoffen,
    brauche|brauchen|braucht|bräuchte, grenze, grenzwert, regel|regeln, vorschrift, schlepper|traktor|trecker, mähdrescher, hände|händen, reifen,
    anhänger, düse|düsen, weizen, winterweizen, gerste, wintergerste, roggen, triticale, mais, rüben|zuckerrüben, bohnen|ackerbohnen, erbsen,
    kartoffeln, nitrat, rotes|roten gebiet|gebieten, immer, meistens|meist, normalerweise, gewöhnlich, oft, manchmal, gelegentlich, jedes jahr, fast immer,
    generell, nächste|nächster|nächsten woche|monat|jahr, übernächste woche, übernächsten tag, geplant, vorhaben, plane, anderes|anderen|andere
    feld|acker|schlag|felder, in der nähe, regenwahrscheinlichkeit, wahrscheinlichkeit, chance, ziel, sollwert, fahre|fahren|fährt, fahrgeschwindigkeit,
    zehnjährig*, mal angenommen, angenommen, lager, keller, kühlschrank, büro, küche, stall, halle, werkstatt, wohnzimmer, hof, vorgestern abend noch,
    kostet|kosten|preis, hat er gesagt, sagt er|sie|man, laut nachbar|nachbarn, durchschnitt der jahre, im schnitt der jahre, letzte nacht hatten, hatten
    wir, es? gab, gefallen, bisher gefallen, jahre alt, hunderttausend, stau, kommt drauf an, je nachdem, in england und wales, im sommer|winter|frühling ist|war|sind|waren, im graben|bach|teich|fluss, nachts, tagsüber, steht
    in der zeitung, hatte|hatten, war noch, wetterstation, wetterhahn, windkarte, höhe, in der höhe, wassertemperatur, temperatur im? wasser|tank, wasser hat, teichwasser, kompost, heizung, kaffee, raum, bier
  `,
  ahead: words`
    vorhersage, vorhergesagt, gemeldet, angesagt, angekündigt, erwartet, zu erwarten, kommt|kommen noch, kommend*, morgen, morgen früh|mittag|abend|nachmittag,
    übermorgen, wird, werden, soll|sollen noch?, in den nächsten|kommenden, die|den nächsten|kommenden, in den? nächsten|kommenden
    stunden|tagen|tage|zwei|beiden, für die|den nächsten|kommenden stunden|tage|zwei|beiden?, nächsten|kommenden stunden|tage|tagen|zwei|beiden,
    in nächster zeit, bald, demnächst, in kürze, später, heute abend|nacht|nachmittag, diese woche, innerhalb einer|dieser woche, bis
    freitag|montag|sonntag|samstag|dienstag|mittwoch|donnerstag, bis zum wochenende, am wochenende, im anmarsch, im anzug, soll|sollen, solls, sollen kommen, melden|meldet
    sie?, sagen sie an, sie sagen, geben, laut wetterbericht|vorhersage|wetterdienst|app|wetter, wetterbericht, prognose, vorausgesagt, voraussichtlich, wetterbericht sagt,
    vorhersage sagt|gibt|meldet, steht bevor, unterwegs, droht|drohen, fängt|fangen bald, über nacht kommt, in zwei tagen, fangen
    an, fängt an, anfangen, anfangen zu, zu laufen
  `,
  scant: words`
    nicht sehr|zu|so|viel|viele|besonders|wirklich|gerade|richtig|allzu|ganz|überall, kaum, kaum noch|welche?, fast kein*, so gut wie kein*, praktisch
    kein*, nahezu kein*, wenig|wenige, nur wenig|wenige, beinahe kein*
  `,
};

/** Words that say nothing of a fact and may stand anywhere. */
export const fillerWords = spell(
  'der die das den dem des ein eine einen einem einer eines er sie es ist sind war waren bin bist sein gewesen wurde wurden ich wir du ihr man mich mir uns dir euch ihnen ihm ihn ' +
    'dies diese dieser dieses diesem diesen hier da dort dran drin drauf davon dabei darin daran darauf damit dazu dafuer ' +
    'in im an am auf bei beim mit von vom zu zum zur fuer aus nach ueber unter durch entlang um pro je per und aber so na tja aeh aehm hm oh ach eben halt mal schon doch nur noch auch ja ' +
    'sehr ganz ziemlich recht richtig echt wirklich bisschen bissl etwas wenig leicht viel viele mehr einige paar alle alles ueberall irgendwo stellen stelle stellenweise teils teilweise fleck flecken ' +
    'jetzt heute aktuell gerade derzeit momentan moment augenblick momentan morgens vormittag mittag nachmittag abend wieder immer noch nun dann also ' +
    'hab habe hat haben hast habt hatte gibt gibts geht gehts gehen gemacht tun tut tuts macht machen sieht sehe sehen gesehen seh schaut geschaut guckt geguckt fuehlt fuehlen gefuehlt anfuehlt sich an aus finde gefunden ' +
    'lese liest gelesen abgelesen zeigt zeigen angezeigt sage sagt gesagt sagen gebe gegeben misst messe messen gemessen messung gezaehlt zaehle pruefe geprueft nachgesehen ' +
    'nehme genommen kommt kommen kam gekommen liegt liegen lag lagen steht stehen gestanden bleibt ' +
    'feld felder schlag stueck teil teile ende oben unten mitte seite seiten hoch niedrig bitte danke hallo moin servus okay ok gut ' +
    'mein meine meiner meinem meinen unser unsere unserem unseren unser euer dein deine eins andere sache dinge ding zeug ueber dann weil da seit waehrend zeit jahr saison herbst dieses ' +
    'schoen schoener schoenes prima super schlecht genau exakt bekannt vorhanden durchschnitt mittel mittelwert norden sueden osten westen nord sued ost west nordwest nordost suedwest suedost ' +
    'land gatter hecke wald ueblich normal meist stufe stadium tal senke senken mulde typ art sonst wert zahl antwort weise sorte ' +
    'schatten frueh daemmerung mittags genug sichtbar vor nahe weit entfernt entfernung naechste naechster naechsten naechstes bis hin her rum ringsum herum ecken ecke gehe gegangen gross klein breit lang tiefe hand finger fingern drueckt druecken ' +
    'plus oktober november dezember januar september erst total voellig absolut betraegt lautet sonde fuehler messstelle anzeige display ablesung werte werten mittlerweile inzwischen zwischendurch ungestoert a is ' +
    'ne nen ner nem ns obwohl dagegen waehrenddessen letzte naechste zweite erste neu neue alt alte harte weich kleine kleinen grosse grossen stiefel stiefeln schuh schuhen rad raedern ' +
    'berater beraterin amt behoerde gestochen gegraben loch messgeraet geraet spaten tief getestet insgesamt zusammen summe gesamt dass wie als welche welcher solche selbst allein hinten vorne vorn links rechts drueben hinein rein raus ' +
    'uebrigens natuerlich klar sowieso eigentlich jedenfalls immerhin leider zum glueck gott sei dank meter stueckchen quer ganze ganzen ganzer gesamte gesamten angeblich heutige knapp zirka hallo aber voll komplett beiden beide alle allen ' +
    'jede jeder jedes jedem pflanze direkt gleich irgendwelche irgendein irgendeine irgendwas was welches wo worden geworden geht dauernd staendig abgesehen sogar bereits gleichmaessig hinaus einzelne einzelnen einzelner',
);

/** How long ago something was seen, hours: "heute früh" is counted as four hours, a night as twelve. */
export const agoWords: readonly (readonly [pattern: string, hours: number])[] = [
  ['heute frueh|morgen|vormittag', 4],
  ['frueher heute', 4],
  ['am morgen|vormittag', 4],
  ['heute ganz? frueh', 6],
  ['in der frueh|fruehe', 4],
  ['heute in aller fruehe', 6],
  ['vorhin', 1],
  ['eben', 0],
  ['gerade eben?', 0],
  ['letzte|vergangene nacht', 12],
  ['heute nacht', 8],
  ['gestern', 24],
  ['gestern frueh|morgen|vormittag', 28],
  ['gestern mittag', 24],
  ['gestern nachmittag', 20],
  ['gestern abend', 16],
  ['gestern nacht', 12],
  ['vorgestern', 48],
  ['letzte|vorige|vergangene woche', 168],
  ['vor einer? woche', 168],
  ['vor einem? tag', 24],
  ['vor einer? stunde', 1],
  ['vor einer halben stunde', 0.5],
  ['vor ein paar stunden', 3],
  ['vor ein paar tagen', 72],
  ['jetzt', 0],
  ['heute', 0],
  ['momentan|derzeit|aktuell', 0],
  ['im moment|augenblick', 0],
];

/** Units of "vor drei Tagen", in hours. */
export const agoUnits: Readonly<Record<string, number>> = {
  stunde: 1,
  stunden: 1,
  std: 1,
  h: 1,
  tag: 24,
  tage: 24,
  tagen: 24,
  woche: 168,
  wochen: 168,
};

/** The word that begins "vor drei Tagen". */
export const agoBefore = 'vor';
