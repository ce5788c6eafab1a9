import { choice, count, type WordRow } from '../rows.ts';
import { words } from './spelling.ts';

const strong = { strong: true } as const;
const leafWords = ['zwei', 'drei', 'vier', 'fünf', 'sechs', 'sieben', 'acht', 'neun'];

/** What is said of crop, weeds, tank and the treatment so far. */
export const cropWords: readonly WordRow[] = [
  count(
    'crop.trueLeaves',
    0,
    'none crop',
    words`
    keimblatt, keimblätter, keimblattstadium, nur keimblätter, nur die keimblätter, keine laubblätter, noch keine laubblätter, erst keimblätter, im keimblattstadium, erst die keimblätter, noch keine echten blätter, noch im keimblatt
  `,
  ),
  ...leafWords.map((word, at) =>
    count(
      'crop.trueLeaves',
      at + 2,
      'none crop',
      words`${word}blattstadium, ${word} blatt stadium, ${word}blatt stadium, ${word}blättrig*`,
    ),
  ),
  choice(
    'weed.present',
    'yes',
    'none weed',
    words`
    ackerfuchsschwanz, fuchsschwanz, weidelgras, weidelgräser, ungras, ungräser|ungräsern, afu, raygras, welsches weidelgras
  `,
    strong,
  ),
  choice(
    'weed.present',
    'yes',
    '',
    words`
    viel, viele, jede menge, reichlich, massenhaft, einiges, etwas, ein paar, überall, in nestern, nester, ein bisschen, ein wenig, stellenweise, einzelne, vereinzelt, an manchen stellen, voll damit, stark
    verungrast*, verungrast*, wenig, steht welcher, welcher da, ist welcher da, schon welcher, da ist welcher
  `,
  ),
  choice(
    'weed.present',
    'no',
    '',
    words`
    sauber, bestand|acker|feld|raps|schlag ist? sauber, keiner, keines, keins, nichts, nichts gefunden|gesehen|da|zu sehen, nichts zu finden, keins gefunden|gesehen, keinen gefunden|gesehen, alles sauber, nirgends, keine, keine gefunden|gesehen, sauberer bestand, nicht gefunden
  `,
  ),
  choice(
    'weed.present',
    'no',
    'weed',
    words`nicht gefunden, nirgends zu sehen|finden, nicht zu sehen|finden, nichts zu sehen|finden, nichts gefunden, nichts davon da|gefunden`,
    strong,
  ),
  count(
    'weed.tillers',
    0,
    'none weed tillers',
    words`
    unbestockt*, nicht bestockt*, noch nicht bestockt*, keine bestockung, keine bestockungstriebe, noch keine bestockungstriebe, noch keine triebe, keine triebe, vor der bestockung, ohne bestockung, noch keine bestockung
  `,
  ),
  choice(
    'treatment.partnerInTank',
    'yes',
    'none tank',
    words`
    netzmittel, zusatzstoff|zusatzstoffe, additiv, spurennährstoff|spurennährstoffe|spurenelemente, mangan, bor, tankmischung, tankmischpartner, mischpartner, blattdünger, flüssigdünger, magnesium, graminizid, haftmittel, öl dazu, wird gemischt, noch
    etwas|was mit rein, noch etwas|was im tank, noch etwas|was in den tank, insektizid, fungizid, bittersalz, ahl, in mischung mit, zusammen mit bor|mangan|blattdünger|netzmittel, noch was dazu, noch etwas dazu
  `,
    strong,
  ),
  choice(
    'treatment.partnerInTank',
    'yes',
    'tank',
    words`etwas anderes, was anderes, noch etwas|was, noch ein mittel, anderes mittel, dünger, gemischt`,
  ),
  choice(
    'treatment.partnerInTank',
    'yes',
    '',
    words`etwas anderes, was anderes, noch etwas|was, noch ein mittel, dünger, gemischt, kommt mit rein, eine mischung, mischung`,
  ),
  choice(
    'treatment.partnerInTank',
    'no',
    'none tank',
    words`
    nichts anderes|weiter|sonst im|in? den? tank, nichts anderes mit rein, kein netzmittel|zusatz|zusatzstoff|additiv|mischpartner|blattdünger|bor|mangan|dünger, keine zusatzstoffe|mischung|tankmischung|zusätze|mischpartner|spurennährstoffe, nur propyzamid, propyzamid
    allein|pur|solo|alleine, nur das propyzamid, nur propyzamid im tank, allein propyzamid, sonst nichts im|in? den? tank, sonst kommt nichts rein|dazu, nichts dazu, nix dazu|anderes|sonst, sonst nix, nichts beigemischt, solo, kommt nichts anderes rein|dazu, kommt sonst nichts rein|dazu, nichts
    anderes dazu, nichts anderes, nichts weiter, ohne zusatz|zusätze|netzmittel|mischpartner|zusatzstoffe, sonst nichts im tank
  `,
  ),
  choice(
    'treatment.partnerInTank',
    'no',
    'tank',
    words`allein, alleine, solo, pur, nur das, nur das eine, nichts, sonst nichts`,
  ),
  choice(
    'treatment.partnerInTank',
    'no',
    '',
    words`allein, alleine, solo, pur, nur das, nichts, sonst nichts, nichts anderes, nichts weiter, nur das eine, nur das mittel`,
  ),
  choice(
    'treatment.alreadyApplied',
    'yes',
    'none treatment',
    words`
    schon|bereits propyzamid gespritzt|ausgebracht|gefahren|bekommen|gehabt|drauf, propyzamid schon|bereits gespritzt|ausgebracht|gefahren|bekommen|drauf, hat schon|bereits propyzamid bekommen|gehabt|drauf, propyzamid ist schon|bereits
    drauf|ausgebracht|gespritzt|gefahren, propyzamid wurde schon|bereits gespritzt|ausgebracht|gefahren, schon|bereits mit propyzamid behandelt|gespritzt, mit propyzamid behandelt|gespritzt, propyzamid gespritzt|ausgebracht|gefahren, propyzamid ist drauf, propyzamid drauf
  `,
    strong,
  ),
  choice(
    'treatment.alreadyApplied',
    'yes',
    '',
    words`
    schon|bereits gespritzt|ausgebracht|behandelt|gefahren|drauf|bekommen|gemacht|passiert, gespritzt, ausgebracht, behandelt, gefahren, wurde schon|bereits gespritzt|ausgebracht|behandelt|gefahren, ist schon|bereits drauf|gespritzt|behandelt, in einer mischung, in
    mischung, einmal, schon einmal, hat er schon, schon drauf, ist drauf, hat schon was bekommen
  `,
  ),
  choice(
    'treatment.alreadyApplied',
    'yes',
    'treatment',
    words`schon|bereits gespritzt|ausgebracht|gefahren|drauf|bekommen, ausgebracht, gefahren, gespritzt`,
    strong,
  ),
  choice(
    'treatment.alreadyApplied',
    'no',
    'none treatment',
    words`
    noch? kein propyzamid gespritzt|ausgebracht|gefahren|bekommen|drauf|gehabt?, noch kein propyzamid, bisher|bislang kein propyzamid gespritzt|ausgebracht|gefahren|bekommen?, propyzamid noch nicht gespritzt|ausgebracht|gefahren|bekommen|drauf?, propyzamid
    nicht gespritzt|ausgebracht|gefahren, noch nichts gespritzt|ausgebracht|gefahren|drauf, hat noch kein propyzamid bekommen|gehabt?, propyzamid wurde noch nicht gespritzt|ausgebracht|gefahren, noch nicht mit propyzamid behandelt|gespritzt,
    bisher|bislang nichts gespritzt|ausgebracht|gefahren, propyzamid ist noch nicht drauf|gespritzt|ausgebracht|gefahren, noch nie propyzamid
  `,
    strong,
  ),
  choice(
    'treatment.alreadyApplied',
    'no',
    '',
    words`
    noch nicht gespritzt|ausgebracht|behandelt|gefahren|passiert?, noch nichts, noch nichts drauf, noch keins, noch keine, noch keines, bisher nicht, bisher nichts, unbehandelt*, nicht gespritzt|ausgebracht|behandelt|gefahren, erste anwendung|behandlung, ist
    die erste, noch nie gespritzt|behandelt, das erste mal, zum ersten mal, hat noch nichts bekommen, noch nie, noch gar nichts, hat noch nichts
  `,
  ),
  choice(
    'crop.frostOnLeaves',
    'yes',
    'none crop leaves',
    words`
    frost auf den blättern|pflanzen, frost auf dem raps|bestand, frost am raps, reif, raureif, rauhreif, bereift*, reif auf den blättern|pflanzen, reif auf dem raps|bestand, blätter sind? gefroren|weiß|bereift|vereist, raps ist bereift|weiß|gefroren, weiß vom
    frost|reif, frostig*, frost, blattfrost, frost in den blättern, weiße blätter, weiß bereift, raureif auf den blättern, eis auf den blättern
  `,
    strong,
  ),
  choice('crop.frostOnLeaves', 'yes', 'leaves crop', words`gefroren*, weiß, vereist*`),
  choice(
    'crop.frostOnLeaves',
    'yes',
    '',
    words`weiß, ein bisschen, etwas, gefroren, in den senken, im schatten, noch etwas, noch ein bisschen, leichter reif, leicht bereift, noch weiß`,
  ),
  choice(
    'crop.frostOnLeaves',
    'no',
    'none crop leaves',
    words`frostfrei*, frost ist? weg, frost ist? aufgetaut|getaut|abgetaut, reif ist? weg|abgetaut|getaut, kein frost mehr`,
  ),
  choice(
    'crop.frostOnLeaves',
    'no',
    '',
    words`keiner, alles weg, aufgetaut, abgetaut, getaut, nichts zu sehen, nichts, keiner mehr, keiner zu sehen, frei`,
  ),
];
