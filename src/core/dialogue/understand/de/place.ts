import { answer, choice, type WordRow } from '../rows.ts';
import { words } from './spelling.ts';

const strong = { strong: true } as const;

/** What is said of where the field lies: protected area, plan, distance to water, country. */
export const placeWords: readonly WordRow[] = [
  choice(
    'field.protectedWaterArea',
    'inside',
    'zone',
    words`innerhalb, liegt drin, drin, mittendrin, liegt mittendrin, fällt darunter`,
  ),
  choice(
    'field.protectedWaterArea',
    'inside',
    'none',
    words`
    im|innerhalb wasserschutzgebiet|trinkwasserschutzgebiet|schutzgebiet|wsg, liegt|ist|sind im wasserschutzgebiet|trinkwasserschutzgebiet|schutzgebiet|wsg, innerhalb des|eines wasserschutzgebiets|trinkwasserschutzgebiets|schutzgebiets|wasserschutzgebietes|trinkwasserschutzgebietes,
    in einem wasserschutzgebiet|trinkwasserschutzgebiet|schutzgebiet, in einer|der wasserschutzzone|schutzzone|trinkwasserschutzzone, im trinkwassereinzugsgebiet, liegt|ist in einem wasserschutzgebiet|trinkwasserschutzgebiet|schutzgebiet,
    liegt|ist in einer|der wasserschutzzone|schutzzone|trinkwasserschutzzone
  `,
    strong,
  ),
  choice(
    'field.protectedWaterArea',
    'outside',
    'none',
    words`
    nicht im wasserschutzgebiet|trinkwasserschutzgebiet|schutzgebiet|wsg, nicht in einem|keinem wasserschutzgebiet|trinkwasserschutzgebiet|schutzgebiet, nicht in einer|der wasserschutzzone|schutzzone|trinkwasserschutzzone,
    kein wasserschutzgebiet|trinkwasserschutzgebiet|schutzgebiet|wsg, in keinem wasserschutzgebiet|trinkwasserschutzgebiet|schutzgebiet, außerhalb vom|des|eines|von wasserschutzgebiet|trinkwasserschutzgebiet|schutzgebiet|wasserschutzgebiets|trinkwasserschutzgebiets|schutzgebiets|wasserschutzgebieten,
    keine wasserschutzzone|schutzzone|trinkwasserschutzzone, in keiner wasserschutzzone|schutzzone, liegt nicht im wasserschutzgebiet|trinkwasserschutzgebiet|schutzgebiet|wsg, ist nicht im wasserschutzgebiet|trinkwasserschutzgebiet|schutzgebiet
  `,
    strong,
  ),
  choice(
    'field.protectedWaterArea',
    'outside',
    'zone',
    words`außerhalb, draußen, nicht im|in, weit weg vom?, raus, ausserhalb von|vom`,
  ),
  choice(
    'field.protectedWaterArea',
    'outside',
    '',
    words`außerhalb, draußen, nicht drin, liegt außerhalb|draußen, liegt nicht drin, in keinem, nicht in einem, ist außerhalb, nein außerhalb, liegt nicht darin`,
  ),
  choice(
    'field.protectedWaterArea',
    'inside',
    '',
    words`innerhalb, drin, drinnen, liegt drin|innerhalb|darin|mittendrin, mittendrin, ist drin, in einem, darin, ja drin`,
  ),
  choice(
    'field.waterPlanAgreed',
    'yes',
    'plan',
    words`
    vereinbart, abgesprochen, abgestimmt, steht, liegt vor, vorhanden, unterschrieben, genehmigt, fertig, gemacht, beschlossen, mit dem? berater|beraterin|amt|behörde? vereinbart|abgesprochen|abgestimmt,
    mit der beraterin abgesprochen|vereinbart|abgestimmt, besprochen
  `,
    strong,
  ),
  choice(
    'field.waterPlanAgreed',
    'yes',
    '',
    words`
    vereinbart, abgesprochen, abgestimmt, unterschrieben, genehmigt, liegt vor, steht, vorhanden, plan, mit dem? berater|beraterin abgesprochen|vereinbart|abgestimmt, alles abgesprochen|vereinbart|geregelt, gibt es, haben wir
  `,
  ),
  choice(
    'field.waterPlanAgreed',
    'no',
    'none',
    words`
    kein plan, keinen plan, kein wasserplan, kein plan vorhanden|vereinbart|da|gemacht, keinen plan vereinbart|gemacht, ohne plan, plan nicht vereinbart|abgesprochen|fertig|vorhanden, plan noch nicht vereinbart|abgesprochen|fertig|vorhanden, noch kein plan,
    noch keinen plan, noch kein plan vorhanden|vereinbart|da, plan fehlt, plan fehlt noch, einen plan gibt es noch? nicht, es gibt keinen plan
  `,
    strong,
  ),
  choice(
    'field.waterPlanAgreed',
    'no',
    '',
    words`noch keiner, keiner, noch keinen, keinen, noch nicht vereinbart|abgesprochen|fertig, fehlt noch?, steht noch aus, noch offen, keiner vereinbart, nicht vereinbart`,
  ),
  choice(
    'field.bufferMarked',
    'yes',
    'buffer',
    words`
    markiert, abgesteckt, ausgesteckt, abgemessen, ausgemessen, bekannt und? markiert, gekennzeichnet, eingemessen, ausgeflaggt, mit pflöcken markiert, im gps markiert|hinterlegt|gespeichert?, abgepflockt, ausgepflockt, steht fest, im lenksystem,
    im gps, gesteckt, vermessen, eingezeichnet, im lenksystem hinterlegt|gespeichert
  `,
    strong,
  ),
  choice(
    'field.bufferMarked',
    'yes',
    '',
    words`
    markiert, abgesteckt, ausgesteckt, abgemessen, ausgemessen, gekennzeichnet, ist bekannt, bekannt, abgepflockt, ausgepflockt, eingemessen, alles markiert|abgesteckt, schon|bereits markiert|abgesteckt, im gps, im lenksystem
  `,
  ),
  choice('field.country', 'GB-ENG', 'none', words`england`),
  choice('field.country', 'GB-SCT', 'none', words`schottland`),
  choice('field.country', 'GB-WLS', 'none', words`wales`),
  choice('field.country', 'GB-NIR', 'none', words`nordirland, ulster`),
  choice('field.country', 'IE', 'none', words`irland, republik irland`, strong),
  choice('field.country', 'FR', 'none', words`frankreich`),
  choice('field.country', 'DE', 'none', words`deutschland`),
  choice('field.country', 'DK', 'none', words`dänemark`),
  choice('field.country', 'NL', 'none', words`niederlande|niederlanden, holland`),
  choice('field.country', 'BE', 'none', words`belgien`),
  choice('field.country', 'PL', 'none', words`polen`),
  answer(
    'field.country',
    'elsewhere',
    '',
    words`woanders, anderswo, wo anders, in einem anderen land, anderes land, keins davon, keines davon, österreich, schweiz, in österreich, in der schweiz, ausland, im ausland`,
  ),
];
