import { answer, choice, type WordRow } from '../rows.ts';
import { words } from './spelling.ts';

const strong = { strong: true } as const;

/** What is said of rain, air and light, now and as forecast. */
export const weatherWords: readonly WordRow[] = [
  answer(
    'rain.nowMmPerH',
    'none',
    'none rain',
    words`
    es? regnet nicht, es? regnet jetzt|gerade|momentan|aktuell nicht, es? regnet nicht mehr, kein regen gerade|jetzt|momentan|aktuell?, gerade|jetzt|momentan|aktuell kein regen, draußen trocken, trocken draußen, draußen ist es trocken, hat aufgehört zu
    regnen, regen hat aufgehört, regen ist vorbei|durch, gerade|jetzt|momentan|aktuell trocken, es nieselt nicht, nieselt nicht, jetzt trocken, regnet gar nicht, es? regnet noch nicht, regnet überhaupt nicht
  `,
    strong,
  ),
  answer('rain.nowMmPerH', 'none', 'rain', words`aufgehört, keiner, trocken, nein`),
  answer(
    'rain.nowMmPerH',
    'none',
    '',
    words`trocken, knochentrocken, staubtrocken, kein regen, schön, keiner, nichts, kein tropfen`,
  ),
  answer(
    'rain.nowMmPerH',
    'drizzle',
    'none',
    words`
    ein paar tropfen, nur ein paar tropfen, paar tropfen, einzelne tropfen, vereinzelte tropfen, ein? paar tröpfchen, einzelne tröpfchen, es tröpfelt, es tröpfelt nur? leicht|ein|etwas?, vereinzelt ein tropfen, nur einzelne tropfen, es tröpfelt ein bisschen, es tröpfelt ein wenig, es tröpfelt nur ein paar tropfen
  `,
  ),
  answer('rain.nowMmPerH', 'drizzle', '', words`tröpfelt, tröpfelt ein bisschen|wenig, tröpfelt etwas|leicht, tropfen`),
  answer(
    'rain.nowMmPerH',
    'rain',
    'none',
    words`
    regnet, regnets, es regnet, es regnet leicht|stark|heftig|gerade|etwas, es nieselt, nieselt, nieselregen, niesel, schüttet, es schüttet, gießt, es gießt, gießt in strömen, es gießt in strömen, pisst, schifft, es schifft, pladdert, leichter regen, sprühregen, es sprüht,
    landregen, es regnet in strömen, regnet in strömen, wie aus eimern, es regnet bindfäden, regnet leicht|stark|heftig|gerade|etwas, es pieselt, fisselt, fieselt, es regnet ein bisschen, regnet ein bisschen, es fängt an zu regnen, fängt an zu regnen, schauer gerade, es schneeregnet
  `,
    { unless: { kind: 'answer', id: 'none' } },
  ),
  answer('rain.nowMmPerH', 'rain', '', words`regen, schauer, nass, starker regen, stark, leicht, regnerisch`),
  answer(
    'rain.next48hMm',
    'dry',
    'none rain',
    words`
    trocken, bleibt trocken, es bleibt trocken, bleibt es trocken, trocken bleiben, soll trocken bleiben, kein regen, keinen regen, kein niederschlag, keine niederschläge, kein tropfen, nichts, keiner, kein regen in sicht, keinen tropfen, schön, nicht regnen, regnet nicht,
    kein regen gemeldet|angesagt, nichts gemeldet|angesagt
  `,
  ),
  answer(
    'rain.next48hMm',
    'dry',
    'none',
    words`bleibt trocken, es bleibt trocken, kein regen in sicht, kein regen gemeldet|angesagt|vorhergesagt|erwartet, kein niederschlag gemeldet|angesagt|vorhergesagt, soll trocken bleiben`,
  ),
  answer(
    'rain.next48hMm',
    'showers',
    'none rain',
    words`
    schauer, schauern, ein paar schauer, einzelne schauer, vereinzelte schauer, leichte schauer, regenschauer, wechselhaft, ab und zu schauer, schauerwetter, vereinzelt schauer, gelegentliche schauer, kurze schauer
  `,
  ),
  answer(
    'rain.next48hMm',
    'bursts',
    'none rain',
    words`
    gewitter, starke güsse, starke schauer, kräftige schauer, heftige schauer, wolkenbruch, wolkenbrüche, gewittrig*, platzregen, starkregen, unwetter, gewitterschauer, gewitterregen, sturzregen, güsse, schwere schauer
  `,
  ),
  answer(
    'rain.next48hMm',
    'bursts',
    'none rain',
    words`starker regen, viel regen, heftiger regen, kräftiger regen, ergiebiger regen, stark regnen, dauerregen`,
    {
      doubtful: true,
    },
  ),
  answer(
    'rain.next48hMm',
    'dry',
    '',
    words`trocken, nichts, kein regen, keiner, schön, kein niederschlag, kein tropfen, bleibt trocken, es bleibt trocken, nichts gemeldet|angesagt, sonnig, keinen`,
  ),
  answer(
    'rain.next48hMm',
    'showers',
    '',
    words`schauer, ein paar schauer, leichte schauer, einzelne schauer, regenschauer, vereinzelte schauer, wechselhaft, vereinzelt schauer`,
  ),
  answer(
    'rain.next48hMm',
    'bursts',
    '',
    words`starke güsse, gewitter, starke schauer, kräftige schauer, wolkenbruch, platzregen, starkregen, heftige schauer, gewittrig*, güsse`,
  ),
  choice(
    'air.inversionRisk',
    'yes',
    'none',
    words`
    inversion, inversionslage, inversionswetterlage, temperaturinversion, eine inversion, nebel in den? senken|mulden|tal|tälern, nebel in der senke|mulde, nebel im tal, nebel liegt in den? senken|mulden|tälern, nebel liegt in der senke|mulde, nebel liegt im tal, bodennebel, rauch liegt|zieht|hängt|steht flach|tief, rauch liegt|hängt|steht am boden, rauch zieht flach, rauch hängt, rauch bleibt liegen|hängen, staub hängt, staub hängt in der luft, staub bleibt hängen, staub bleibt in der luft hängen, anzeichen einer|für eine? inversion, nebelschwaden, dunst in den senken, nebelfelder, rauch bleibt unten|flach, rauch steigt nicht auf?, rauch
    steht, staub liegt in der luft, nebel am boden, nebel steht in den? senken|mulden
  `,
    strong,
  ),
  choice(
    'air.inversionRisk',
    'yes',
    '',
    words`nebel, neblig*, dunst, dunstig*, starker tau, rauch hängt, hängt, liegt flach, flach, staub hängt, nebelig*, tau`,
  ),
  choice(
    'air.inversionRisk',
    'no',
    'none',
    words`
    rauch steigt, rauch steigt auf, rauch steigt gerade|senkrecht|hoch auf?, rauch steigt schön|gut auf, rauch zieht ab|weg|hoch|davon, rauch steigt nach oben, rauch verteilt sich, rauch steigt auf und verteilt sich, keine inversion, keine anzeichen für eine? inversion, keine anzeichen einer inversion, keine anzeichen von inversion, kein nebel, keine inversionslage, rauch geht gerade? hoch, rauch geht nach oben
  `,
    strong,
  ),
  choice(
    'air.inversionRisk',
    'no',
    '',
    words`keine, keine anzeichen, nichts, nichts zu sehen, steigt auf, steigt, kein nebel, klar, steigt gerade auf, verteilt sich, keine zu sehen, nichts davon`,
  ),
  choice(
    'sun.daylight',
    'no',
    'none',
    words`dunkel, stockdunkel, stockfinster, finster, nacht, kein tageslicht, nach sonnenuntergang, noch dunkel, schon dunkel, sonne ist untergegangen, noch nicht hell, nicht mehr hell`,
  ),
  choice('sun.daylight', 'no', 'none', words`wird dunkel, dämmert, dämmerung, es wird schon? dunkel`, {
    doubtful: true,
  }),
  choice(
    'sun.daylight',
    'yes',
    'none',
    words`hell, tageslicht, noch hell, schon hell, hell genug, taghell, sonnig, sonne scheint, die sonne scheint, heller tag, helllichter tag`,
  ),
];
