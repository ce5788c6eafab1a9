import type { Subject } from '../lexicon-types.ts';
import { words } from './spelling.ts';

/** What a word speaks of. Patterns as in `phraseBook`. */
export const subjectWords: Readonly<Record<Subject, readonly string[]>> = {
  soil: words`
    boden, böden, bodens, bodn, erde, krume, ackerkrume, oberboden, acker, bodentemperatur, boden temperatur,
    bodentemp, temperatur des bodens, bodenthermometer, bodenfeuchte, bodenfeuchtigkeit, bodenart, bodenfühler,
    erdreich, bodensonde, bodenwärme, temperatur im boden, im boden, saatbett
  `,
  surface: words`
    oberfläche, bodenoberfläche, obenauf, obendrauf, fahrgasse|fahrgassen, vorgewende, fahrspur|fahrspuren,
    an|auf der oberfläche, feldoberfläche
  `,
  drains: words`
    drän|dräne|dräns|dränen, dränung|dränungen, drainage|drainagen, dränage|dränagen, drain|drains|draine,
    dränrohr|dränrohre, drainagerohr|drainagerohre, drainrohr|drainrohre, dränauslauf|dränausläufe,
    drainageauslauf, drainagen auslauf, auslauf|ausläufe, sammler, dränleitung|dränleitungen,
    drainageleitung|drainageleitungen, drainausläufe, dränagerohr|dränagerohre, dränausmündung, rohr|rohre
  `,
  air: words`
    luft, lufttemperatur, luft temperatur, außentemperatur, draußen, temperatur der luft, lufttemp,
    temperatur draußen, außen
  `,
  wind: words`
    wind, winde, windes, windgeschwindigkeit, wind geschwindigkeit, windmesser, brise, wind in gestängehöhe, in höhe des gestänges|spritzgestänges, auf höhe des gestänges|spritzgestänges,
    windstärke, es weht, weht, es bläst, bläst, gestängehöhe
  `,
  gust: words`
    böe|böen|bö, in böen, böig, windböe|windböen, windspitze|windspitzen, spitzen, spitzenböe|spitzenböen, böenspitze|böenspitzen
  `,
  leaves: words`laubblatt|laubblätter|laubblättern, blatt|blätter|blättern, echte|echten blätter|blättern, blattzahl`,
  tillers: words`
    bestockungstrieb|bestockungstriebe|bestockungstrieben, trieb|triebe|trieben, bestockung, seitentrieb|seitentriebe
  `,
  weed: words`
    ackerfuchsschwanz, fuchsschwanz, weidelgras, weidelgräser, ungras, ungräser|ungräsern, ungraspflanzen, unkraut,
    unkräuter, afu, raygras, zählrahmen, besatz, gräser, fuchsschwanzpflanzen, ackerfuchsschwanzpflanzen, ungrasbesatz,
    welsches weidelgras
  `,
  crop: words`raps, winterraps, rapses, kultur, pflanze|pflanzen, bestand, rapspflanze|rapspflanzen, rapsbestand`,
  tank: words`tank, im|in den tank, spritze, brühe, spritzbrühe, spritzfass, mit rein, mit in den tank, fass`,
  buffer: words`
    abstand, wasserabstand, gewässerabstand, randstreifen, abstandsstreifen, pufferstreifen, mindestabstand,
    spritzabstand, abstandsauflage, gewässerrandstreifen, puffer, abstand zum wasser|gewässer|graben|bach,
    schutzstreifen
  `,
  plan: words`plan, wasserplan, feldplan, maßnahmenplan, plan für das feld, plan für dieses feld, gewässerplan`,
  zone: words`
    wasserschutzgebiet, trinkwasserschutzgebiet, schutzgebiet, wasserschutzzone, schutzzone, wsg, trinkwassergebiet,
    trinkwasserschutzzone, wassereinzugsgebiet, wassergebiet, trinkwassereinzugsgebiet
  `,
  water: words`
    graben, grabens, gräben, bach, baches, teich, fluss, gewässer, see, wasser, wasserlauf, weiher, tümpel, ufer,
    böschung, böschungskante, böschungsoberkante, vorfluter, kanal, wassergraben, entwässerungsgraben
  `,
  slope: words`hang, hangneigung, gefälle, neigung, steigung, hanglage, feldneigung`,
  area: words`fläche, größe, feldgröße, flächengröße, schlaggröße, spritzfläche`,
  rain: words`regen, niederschlag, niederschläge, regenmenge, wetter, wetterbericht`,
  peak: words`
    stärkste|nasseste|schlimmste stunde, stündlich, höchstens in einer stunde, in der stärksten|nassesten stunde, stärkster guss, spitze pro stunde
  `,
  'delta-t': words`delta t|te, deltat, delta`,
  capacity: words`feldkapazität, feldkapazität ist|liegt|bei, nfk, nutzbare feldkapazität, feldkapazität liegt bei`,
  humidity: words`
    luftfeuchte, luftfeuchtigkeit, relative? feuchte|luftfeuchte|luftfeuchtigkeit, hygrometer, rel luftfeuchte, luft feuchte
  `,
  product: words`
    mittel, produkt, konzentration, formulierung, gehalt, wirkstoffgehalt, kanister, mittel hat|enthält, präparat,
    im mittel, propyzamidgehalt
  `,
  label: words`
    gebrauchsanleitung, gebrauchsanweisung, etikett, zulassung, höchstmenge, maximalmenge, aufwandmenge, maximal, maximum,
    höchstens, zugelassen, laut etikett|gebrauchsanleitung|zulassung, erlaubt, höchstzulässig, packung, maximale aufwandmenge
  `,
  temperature: words`temperatur, temp, thermometer, einstichthermometer, sonde, messsonde, fühler, grad, temperaturen`,
  depth: words`tief, tiefe`,
  treatment: words`propyzamid, wirkstoff, der wirkstoff`,
};

/** Crops, each by all its names. */
export const cropNames: readonly (readonly string[])[] = [
  words`weizen, weizens, winterweizen, winterweizens, sommerweizen, weizenbestand`,
  words`gerste, wintergerste, sommergerste`,
  words`hafer, winterhafer, sommerhafer`,
  words`roggen, winterroggen`,
  words`triticale`,
  words`mais`,
  words`bohnen, ackerbohnen`,
  words`erbsen`,
  words`kartoffeln`,
  words`rüben, zuckerrüben`,
];
