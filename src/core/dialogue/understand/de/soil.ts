import { choice, noSign, sign, type WordRow } from '../rows.ts';
import { words } from './spelling.ts';

const ofSoil = 'soil surface';
const strong = { strong: true } as const;

/** What is said of the soil today: feel and surface. */
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
    feucht*, schön feucht*, erdfeucht*, gut feucht*, richtig feucht*, gut durchfeuchtet*, durchfeuchtet*, bodenfeucht*, genug feuchtigkeit|feuchte, gute
    feuchte|feuchtigkeit, genügend feuchtigkeit|feuchte, angenehm feucht*, ziemlich feucht*, gut feuchte
  `,
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
  choice('soil.feel', 'at-capacity', '', words`feldkapazität, genau feldkapazität`),
  choice(
    'soil.feel',
    'saturated',
    'none soil',
    words`
    gesättigt*, wassergesättigt*, vollgesogen*, läuft wasser raus|heraus, läuft das? wasser raus|heraus, wasser läuft raus|heraus, wasser tropft|rinnt raus|heraus?, da läuft wasser raus|heraus, tropft von selbst, völlig durchweicht*, durchweicht*, matschig*, schlammig*, wasser läuft|rinnt|kommt von selbst? heraus|raus, völlig
    gesättigt*, patschnass, tropfnass, trieft, triefend, klatschnass, klitschnass, triefnass, triefend nass, pitschnass, quatschnass, total durchweicht*, wie ein
    schwamm, voll gesättigt*, übersättigt*, mit wasser gesättigt*
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
];
