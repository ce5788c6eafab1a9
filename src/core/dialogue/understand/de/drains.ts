import { answer, choice, type WordRow } from '../rows.ts';
import { words } from './spelling.ts';

const strong = { strong: true } as const;

/** What is said of the drains today and in the days to come, and of the trend of the soil temperature. */
export const drainWords: readonly WordRow[] = [
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
