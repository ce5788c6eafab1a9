import { answer, choice, type WordRow } from '../rows.ts';
import { spell, words } from './spelling.ts';

const strong = { strong: true } as const;
const ofTexture = 'none soil';
const texture = (name: string, ...say: string[]) =>
  choice(
    'field.texture',
    name,
    ofTexture,
    say.map((one) => spell(one)),
    strong,
  );
const ground = 'boden|böden|land|acker|erde';

/** What is said of the field: soil, slope, drains. */
export const fieldWords: readonly WordRow[] = [
  texture('loamy-sand', 'lehmiger|lehmigem sand', 'anlehmiger sand'),
  texture('sandy-loam', 'sandiger|sandigem lehm', 'stark sandiger lehm', 'sandlehm'),
  texture('silt-loam', 'schluffiger|schluffigem lehm', 'schlufflehm', 'lehmiger schluff', 'loess lehm', 'loesslehm'),
  texture('sandy-clay-loam', 'sandig toniger lehm', 'sandiger|sandigem tonlehm', 'sandig tonigem lehm'),
  texture('clay-loam', 'toniger|tonigem lehm', 'tonlehm', 'schwerer lehm', 'lehmton'),
  texture('silty-clay-loam', 'schluffig toniger lehm', 'schluffiger|schluffigem tonlehm', 'tonschlufflehm'),
  texture('sandy-clay', 'sandiger|sandigem ton'),
  texture('silty-clay', 'schluffiger|schluffigem ton'),
  choice(
    'field.texture',
    'clay',
    ofTexture,
    words`ton, tonboden, tonböden, reiner ton, schwerer ton|tonboden, lehmiger ton, letten`,
  ),
  choice('field.texture', 'loam', ofTexture, words`lehm, lehmboden, mittlerer lehm, reiner lehm`),
  choice('field.texture', 'silt', ofTexture, words`schluff, schluffboden, löss, lößboden, lössboden, reiner schluff`),
  choice('field.texture', 'sand', ofTexture, words`sand, reiner sand, flugsand, nur sand`),
  answer('field.texture', 'light', 'soil', words`leicht*, sandig*`),
  answer(
    'field.texture',
    'light',
    'none',
    words`leicht* ${ground}, sandig* ${ground}, sandboden, leichter standort, sandböden`,
  ),
  answer('field.texture', 'light', '', words`sandig*, eher leicht*, leicht*`),
  answer('field.texture', 'medium', 'soil', words`mittel, mittelschwer*, mittler*`),
  answer('field.texture', 'medium', 'none', words`mittelschwer* ${ground}, mittler* ${ground}, mittelschwer*`),
  answer('field.texture', 'medium', '', words`mittel, mittler*`),
  answer('field.texture', 'heavy', 'soil', words`schwer*, tonig*, bindig*`),
  answer(
    'field.texture',
    'heavy',
    'none',
    words`schwer* ${ground}, tonig* ${ground}, bindig* ${ground}, minutenboden, schwerer standort, strenger boden`,
  ),
  answer('field.texture', 'heavy', '', words`schwer*, tonig*, eher schwer*`),
  choice(
    'field.organicSoil',
    'yes',
    ofTexture,
    words`
    moor, moorig*, anmoorig*, torf, torfig*, moorboden, moorböden, niedermoor, hochmoor, torfboden, mooriger|torfiger ${ground}, organischer boden, humusboden, sehr humos*, stark humos*, fenboden
  `,
    strong,
  ),
  choice(
    'field.organicSoil',
    'no',
    ofTexture,
    words`mineralisch*, mineralboden, mineralischer boden, kein moor|torf|moorboden, nicht moorig|torfig|anmoorig`,
    strong,
  ),
  answer(
    'field.slopePercent',
    'flat',
    'none slope soil',
    words`
    flach, flacher|flaches|flache|flachem|flachen, eben, ebener|ebenes|ebene, bretteben, topfeben, tischeben, flach wie ein brett, flach wie ein pfannkuchen, völlig eben|flach, ganz eben|flach, kein gefälle, kein hang, keine neigung, kaum gefälle, keine hangneigung,
    waagerecht, fast eben|flach, ohne gefälle, ziemlich eben|flach, ganz flach, nahezu eben|flach, keine steigung
  `,
  ),
  answer(
    'field.slopePercent',
    'gentle',
    'none slope soil',
    words`
    leicht|sanft|schwach|etwas|wenig geneigt*, leicht|sanft|schwach abfallend*, leichter|leichte|leichtes|schwacher|sanfter hang, leichtes|sanftes|schwaches|geringes gefälle, leichte|geringe|schwache|sanfte neigung|hangneigung, leicht hängig*, leicht wellig*,
    leicht schräg, leichte hanglage, fällt leicht|sanft ab?, ein? bisschen|wenig gefälle, leichte steigung, leicht hügelig*, ein? bisschen|wenig geneigt
  `,
  ),
  answer('field.slopePercent', 'gentle', 'slope', words`leicht*, sanft*, gering*`),
  answer('field.slopePercent', 'gentle', '', words`leicht, sanft, geneigt, leicht*`),
  answer(
    'field.slopePercent',
    'steep',
    'none slope soil',
    words`
    steil, steiler|steiles|steile|steilem, sehr|ziemlich|recht steil, steiler hang, steilhang, starkes gefälle, stark geneigt*, starke hangneigung|neigung, steil abfallend*, fällt steil ab, stark hängig*
  `,
  ),
  choice(
    'field.drained',
    'yes',
    'none soil',
    words`
    dräniert*, drainiert*, gedränt*, dränirt, systematisch|voll|teilweise|komplett|alt|früher dräniert|drainiert|gedränt, ist dräniert|drainiert|gedränt, hat dräne|drainagen|dränagen|eine|dränung|drainage, hat eine drainage|dränung|dränage, dräne drin|vorhanden|verlegt|drunter,
    drainagen drin|vorhanden|verlegt, drainage drin|vorhanden|verlegt, dränrohre drin|vorhanden|verlegt, alte dräne|drainagen|drainage|dränung, rohre drin|verlegt, liegen dräne|drainagen|rohre, dräne liegen, teilflächig dräniert,
    sind dräne|drainagen drin?, gibt dräne|drainagen
  `,
    strong,
  ),
  choice(
    'field.drained',
    'no',
    'none soil',
    words`
    undräniert*, undrainiert*, ungedränt*, nicht dräniert*|drainiert*|gedränt*, keine dräne|drainage|drainagen|dränung|dränage|dränagen|drainrohre|dränrohre|drains, nie dräniert|drainiert|gedränt, ohne dräne|drainage|dränung|drainagen, hat keine
    dräne|drainage|dränung|drainagen, nicht dräniert|drainiert|gedränt, keine rohre
  `,
    strong,
  ),
  choice('field.drained', 'yes', '', words`dräne, rohre, drainage, drainagen, ausläufe, dränrohre, dränung, tonrohre`),
  choice(
    'field.loosenedThisSeason',
    'yes',
    '',
    words`
    gelockert, tiefgelockert, tief gelockert, tiefenlockerung, untergrundgelockert, aufgerissen, maulwurfgedränt, maulwurfdräne, gegrubbert tief, ein teil, teilweise, teil davon, zum teil, nach der ernte, im august|september|sommer
  `,
  ),
  choice(
    'field.loosenedThisSeason',
    'yes',
    'none soil',
    words`
    nach der ernte gelockert|tiefgelockert, nach der ernte tief gelockert, seit der ernte gelockert|tiefgelockert, seit der letzten ernte gelockert|tiefgelockert, diesen|im herbst|sommer gelockert|tiefgelockert, im august|september|juli
    gelockert|tiefgelockert, vor der saat gelockert|tiefgelockert, dieses jahr gelockert|tiefgelockert, seit der ernte maulwurfgedränt, nach der ernte maulwurfgedränt, dieses jahr maulwurfgedränt, nach der ernte tiefenlockerung gemacht, diesen herbst tief
    gelockert, im august|september|juli tief gelockert, nach der letzten ernte tief? gelockert, nach der letzten ernte tiefgelockert, vor der saat tief gelockert
  `,
    strong,
  ),
  choice(
    'field.loosenedThisSeason',
    'yes',
    'none soil',
    words`tiefgelockert, tief gelockert, gelockert, untergrundgelockert, maulwurfgedränt, tiefenlockerung, untergrundlockerung, maulwurfdränung, maulwurfdräne gezogen`,
    { doubtful: true, strong: true },
  ),
];
