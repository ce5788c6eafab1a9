import { answer, choice, noSign, sign, type WordRow } from '../rows.ts';
import { words } from './spelling.ts';

const ofSoil = 'soil surface';
const strong = { strong: true } as const;

/** What is said of the soil today: feel, surface, drains, trend of its temperature. */
export const soilWords: readonly WordRow[] = [
  choice(
    'soil.feel',
    'dry',
    'soil',
    words`
    trocken*, knochentrocken*, staubtrocken*, furztrocken*, strohtrocken*, ausgetrocknet*, staubig*, sehr trocken*, pulvrig*, zu trocken*,
    ganz trocken*, völlig trocken*, dürr*, ausgedörrt*, pulvertrocken*, total trocken*
  `,
  ),
  choice('soil.feel', 'dry', 'none', words`knochentrockener|staubtrockener|trockener boden, bodentrockenheit`),
  choice(
    'soil.feel',
    'slightly-moist',
    'none soil',
    words`
    schwach feucht*, leicht feucht*, etwas feucht*, ein? bisschen feucht*, kaum feucht*, gerade noch feucht*, wenig feucht*, leicht
    angefeuchtet*, nur leicht|schwach feucht*, angefeuchtet*, gerade so feucht*
  `,
  ),
  choice('soil.feel', 'slightly-moist', 'soil', words`eher trocken*, ziemlich trocken*`, { doubtful: true }),
  choice(
    'soil.feel',
    'moist',
    'none soil',
    words`
    feucht*, schön feucht*, gut feucht*, richtig feucht*, gut durchfeuchtet*, durchfeuchtet*, bodenfeucht*, genug feuchtigkeit|feuchte, gute
    feuchte|feuchtigkeit, genügend feuchtigkeit|feuchte, angenehm feucht*, ziemlich feucht*, gut feuchte
  `,
    { unless: { kind: 'choices', choices: [] } },
  ),
  choice('soil.feel', 'moist', 'soil', words`klamm*, frisch*`, { doubtful: true }),
  choice(
    'soil.feel',
    'wet',
    'soil',
    words`nass, nasse|nasser|nasses|nassen|nassem, sehr nass, durchnässt*, zu nass, ziemlich nass, ganz nass, richtig nass, sehr feucht*`,
  ),
  choice(
    'soil.feel',
    'at-capacity',
    'none soil',
    words`
    auf|bei|an feldkapazität, so nass wie er halten kann, so nass wie möglich, volle feldkapazität, hat feldkapazität, feldkapazität
    erreicht, an der feldkapazität, voll bis zur feldkapazität, gut voll, randvoll
  `,
  ),
  choice(
    'soil.feel',
    'saturated',
    'none soil',
    words`
    gesättigt*, wassergesättigt*, vollgesogen*, läuft wasser raus|heraus, da läuft wasser raus|heraus, tropft von selbst, völlig durchweicht*, durchweicht*, matschig*, schlammig*, wasser läuft|rinnt|kommt von selbst? heraus|raus, völlig
    gesättigt*, voll wasser, patschnass, klatschnass, klitschnass, triefnass, triefend nass, pitschnass, quatschnass, total durchweicht*, wie ein
    schwamm, voll gesättigt*, voller wasser, übersättigt*, mit wasser gesättigt*
  `,
    strong,
  ),
  sign(
    'friable',
    `none ${ofSoil}`,
    words`
    krümelig*, bröckelig*, bröselig*, locker*, krümelt, feinkrümelig*, schöne|gute krümelstruktur, krümelstruktur, schüttfähig*, schön
    krümelig*, zerfällt in krümel, garer boden, schöne|gute gare, schön locker*
  `,
  ),
  sign(
    'cracked',
    `none ${ofSoil}`,
    words`
    riss, risse, rissen, rissig*, aufgerissen*, gerissen, spalten, trockenrisse|trockenrissen, schwundrisse, schrumpfrisse, trockenriss, feine|kleine|große|breite|tiefe|einzelne risse,
    klafft, bodenrisse
  `,
    strong,
  ),
  sign(
    'sticky',
    `none ${ofSoil}`,
    words`
    klebrig*, klebrich*, schmierig*, klebt, kleben, klebend*, schmiert, schmieren, backt an, pappt, pappig*, pappen, klebt an den|die? stiefel|stiefeln|rädern|räder|reifen,
    klebt am stiefel|rad, klebt am schuh, klebt an den schuhen, schmierig* obenauf, haftet an den? stiefeln|rädern|reifen, bleibt an den? stiefeln|rädern|reifen hängen|kleben,
    bleibt an den? stiefeln|rädern|reifen, bleibt am stiefel|rad hängen|kleben, verschmiert*, batzig*, pickt, knatschig*
  `,
  ),
  sign(
    'ponded',
    `none ${ofSoil} water`,
    words`
    pfütze, pfützen, lachen, wasserlachen, wasserlache, stehend* wasser, wasser steht, steht wasser, steht das wasser, wasser stehen, staunässe, wasserpfützen,
    überschwemmt*, überflutet*, unter wasser, wasser auf der oberfläche, wasser auf dem feld|acker|schlag|boden, nasse stellen mit wasser, oberflächenwasser, blänke|blänken,
    wasser steht in den? fahrgassen|fahrspuren|spuren|senken|mulden, es? steht wasser in den? fahrgassen|fahrspuren|spuren|senken|mulden, steht irgendwo? noch? wasser,
    steht noch wasser, wasser steht noch, das wasser steht
  `,
    strong,
  ),
  noSign(
    'ponded',
    `none ${ofSoil} water`,
    words`
    kein wasser, kein stehendes wasser, steht kein wasser, es steht kein wasser mehr?, kein wasser steht, wasser steht keins|keines, steht nirgends wasser, nirgends wasser, steht nicht unter wasser, steht kein wasser mehr, nirgends steht wasser, steht
    nirgendwo wasser, kein wasser mehr, wasser ist abgelaufen, wasser steht nicht, wasser steht nirgends, steht nirgends mehr wasser, es steht nirgends wasser
  `,
    strong,
  ),
  noSign(
    'ponded',
    `none ${ofSoil} water`,
    words`pfützen weg, pfützen sind weg|abgetrocknet|verschwunden, wasser ist weg, pfützen abgetrocknet`,
    { doubtful: true },
  ),
  noSign(
    'sticky',
    `none ${ofSoil}`,
    words`klebt nicht|nichts|nix|nirgends, nichts klebt, klebt gar nicht|nichts, schmiert nicht, klebt nicht mehr, kleben nicht`,
  ),
  noSign(
    'cracked',
    `none ${ofSoil}`,
    words`risse zu, risse sind zu|geschlossen|weg, risse geschlossen, risse haben sich geschlossen`,
    { doubtful: true },
  ),
  noSign('snow', `none ${ofSoil}`, words`schnee ist weg|geschmolzen|getaut, schnee weg`, { doubtful: true }),
  sign(
    'frozen',
    `none ${ofSoil}`,
    words`
    gefroren*, hartgefroren*, durchgefroren*, festgefroren*, hart gefroren*, bodenfrost, frost im boden, angefroren*, überfroren*, hart vom frost, steinhart
    gefroren*, zugefroren*, vereist*, fest gefroren*, oberflächlich gefroren*, leicht gefroren*, leicht angefroren*
  `,
  ),
  sign('frozen', ofSoil, words`frost, frostig*`),
  sign(
    'snow',
    `none ${ofSoil}`,
    words`
    schnee, verschneit*, schneedecke, schneebedeckt*, schnee liegt, liegt schnee, es? liegt noch? schnee, schnee bedeckt, unter schnee, schneereste, schnee auf dem? feld|boden|acker,
    eingeschneit*, zugeschneit*
  `,
  ),
  choice(
    'soil.drainsRunning',
    'yes',
    'drains',
    words`
    läuft, laufen, lief, liefen, tröpfelt, tröpfeln, tropft, tropfen, rinnt, rinnen, fließt, fließen, plätschert, rieselt, sprudelt, führt|führen wasser, kommt wasser|was|etwas,
    kommt noch wasser|was|etwas, kommt wasser raus|heraus, kommt was|etwas raus|heraus, läuft wasser, läuft wasser raus|heraus, läuft noch, laufen noch, läuft wieder, laufen wieder, am laufen, voll, rinnsal,
    ein rinnsal, schwach, läuft voll|gut|stark|langsam|schwach, laufen voll|gut|stark|langsam|schwach, ziehen, zieht, läuft ein? bisschen|wenig, laufen ein? bisschen|wenig, läuft was|etwas, strömt, strömen
  `,
    strong,
  ),
  choice(
    'soil.drainsRunning',
    'no',
    'drains',
    words`
    trocken, steht, stehen, steht still, stehen still, still, läuft nicht, laufen nicht, läuft nicht mehr, laufen nicht mehr, läuft noch nicht, laufen noch nicht, läuft nichts,
    läuft nichts mehr, kommt nichts, kommt nichts raus|heraus|mehr, kommt nichts mehr, kommt nichts mehr raus|heraus, kommt kein wasser, kommt kein wasser raus|heraus|mehr, kein wasser, führt|führen kein wasser, führt|führen kein
    wasser mehr, ruhig, fließt nicht, fließen nicht, tropft nicht, tropfen nicht, tröpfelt nicht, ausgetrocknet, kommt kein tropfen, kein tropfen, läuft kein wasser, nichts, stehen alle? still, versiegt, aufgehört,
    hat|haben aufgehört, hat|haben aufgehört zu laufen, läuft gar nichts, läuft gar nicht, laufen gar nicht, kommt gar nichts, führt|führen nichts
  `,
    strong,
  ),
  choice(
    'soil.drainsExpected7d',
    'yes',
    'drains',
    words`
    läuft, laufen, zu laufen, an zu laufen, anfangen zu laufen, anlaufen, laufen an, läuft an, fließen, anspringen, springen an, wieder laufen, loslaufen, laufen los, losgehen
  `,
    strong,
  ),
  choice(
    'soil.drainsExpected7d',
    'no',
    'drains',
    words`trocken, trocken bleiben, bleiben trocken, bleibt trocken, bleibt still, nicht laufen, nicht anlaufen`,
    strong,
  ),
  choice(
    'soil.drainsExpected7d',
    'yes',
    '',
    words`
    wahrscheinlich, wahrscheinlich schon|ja, sehr wahrscheinlich, gut möglich, ziemlich wahrscheinlich, wohl schon, wohl ja, bald, demnächst, in den nächsten tagen,
    diese woche noch?, jeden tag, damit ist zu rechnen, höchstwahrscheinlich, davon gehe ich aus, ja wahrscheinlich, eher ja|schon, sicher, bestimmt, vermutlich, vermutlich schon|ja, ist wahrscheinlich, ist zu erwarten
  `,
  ),
  choice(
    'soil.drainsExpected7d',
    'no',
    '',
    words`
    unwahrscheinlich, sehr unwahrscheinlich, eher nicht, wohl nicht, wahrscheinlich nicht, wohl kaum, vermutlich nicht, nicht wahrscheinlich, nicht so bald, so bald nicht, eher unwahrscheinlich, keine chance,
    diese woche nicht, nicht diese woche, ziemlich unwahrscheinlich, kaum, damit ist nicht zu rechnen, nicht zu erwarten, ist nicht zu erwarten, ist unwahrscheinlich, noch lange nicht, eher nein
  `,
  ),
  answer(
    'soil.temperatureTrendCPerDay',
    'colder',
    'soil',
    words`
    kälter als vor einer woche, kälter als letzte woche, kühler als vor einer woche, kühler als letzte woche, wird kälter|kühler, kühlt ab, abgekühlt, kühlt sich ab, hat sich abgekühlt, kälter geworden,
    kühler geworden, fällt, gefallen, sinkt, gesunken, am sinken, am fallen, geht runter|zurück, hat abgekühlt, ist kälter als vor einer woche, deutlich? kälter als vor einer woche, etwas kälter als vor einer woche
  `,
  ),
  answer(
    'soil.temperatureTrendCPerDay',
    'colder',
    '',
    words`kälter, kühler, etwas kälter|kühler, ein? bisschen|wenig kälter|kühler, viel|deutlich kälter|kühler, niedriger, runter, gefallen, gesunken, leicht kälter`,
  ),
  answer(
    'soil.temperatureTrendCPerDay',
    'warmer',
    'soil',
    words`
    wärmer als vor einer woche, wärmer als letzte woche, wird wärmer, erwärmt sich, hat sich erwärmt, wärmer geworden, steigt, gestiegen, am steigen, ist wärmer als vor einer woche, etwas wärmer als vor einer woche, wärmt sich auf,
    aufgewärmt, erwärmt
  `,
  ),
  answer(
    'soil.temperatureTrendCPerDay',
    'warmer',
    '',
    words`wärmer, etwas wärmer, ein? bisschen|wenig wärmer, viel|deutlich wärmer, höher, gestiegen, leicht wärmer`,
  ),
  answer(
    'soil.temperatureTrendCPerDay',
    'same',
    'soil',
    words`
    genauso? wie vor einer woche, gleich wie vor einer woche, so warm wie vor einer woche, genauso warm|kalt wie vor einer woche, etwa? gleich warm|kalt? wie vor einer woche, wie letzte woche, unverändert seit letzter woche, gleich geblieben,
    gleichgeblieben, wie vor einer woche
  `,
  ),
  answer(
    'soil.temperatureTrendCPerDay',
    'same',
    '',
    words`
    gleich, etwa|ungefähr|ziemlich gleich, in etwa gleich, genauso, genau so, gleich geblieben, unverändert, kein unterschied, keine änderung, das gleiche, dasselbe, wie vor einer woche, nicht verändert, hat sich nicht
    geändert|verändert, nichts geändert, weder noch, gleich warm|kalt, mehr oder weniger gleich, so ziemlich gleich, kaum anders, kaum verändert
  `,
  ),
];
