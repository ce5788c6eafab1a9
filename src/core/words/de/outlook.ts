import type { Catalogue } from '../catalogue.ts';
import { outlookFigures } from './outlook-figures.ts';

/** What the coming days may bring, how sure that is, and where nothing can be told. */
export const outlookWords: Catalogue['outlook'] = {
  heading: { now: 'Die kommenden Tage', later: 'Wann passt es?' },
  weekdays: ['Montag', 'Dienstag', 'Mittwoch', 'Donnerstag', 'Freitag', 'Samstag', 'Sonntag'],
  time: {
    /** Two letters, as German calendars have them. */
    shortDay: (weekday) => weekday.slice(0, 2),
    day: (weekday, day) => `${weekday}, ${day}`,
    sameDay: (day, from, until) => `${day}, ${from} bis ${until}`,
    acrossDays: (fromDay, from, untilDay, until) => `${fromDay}, ${from}, bis ${untilDay}, ${until}`,
    at: (day, clock) => `${day}, ${clock}`,
    secondTime: (clock) => `${clock} (zum zweiten Mal, die Uhren wurden zurückgestellt)`,
    endOfDay: '24:00',
  },
  mayComeRight: (span, hours) =>
    `Es kann passen: ${span} (${hours}). Nichts, was sich jetzt sagen lässt, steht dann im Weg.`,
  mayComeRightIf: (span, hours, conditions) => `Es kann passen: ${span} (${hours}), aber nur wenn ${conditions}.`,
  moreWindows: (count) => (count === 1 ? 'Eine weitere solche Zeit folgt.' : `${count} weitere solche Zeiten folgen.`),
  noWindow: (reach) =>
    `Bis ${reach}, soweit die Vorhersage genug sagt, gibt es keine ausreichend lange Zeit, in der nichts im Weg steht.`,
  throughout: (titles) => `Durchgehend im Weg: ${titles}.`,
  untold: (reason) => `Zu den kommenden Tagen lässt sich nichts sagen: ${reason}.`,
  untoldBecause: {
    'too-old': 'die Vorhersage ist zu alt, sehen Sie nach einer neuen',
    'forecast-gap': 'die Vorhersage ist nicht von diesem Ort',
  },
  noForecast: 'Ohne Vorhersage lässt sich zu den kommenden Tagen nichts sagen.',
  ends: (reach) => `Was nach ${reach} kommt, ist nicht bekannt: Die Vorhersage endet oder sagt zu wenig.`,
  askThen: 'Fragen Sie am Tag selbst noch einmal.',
  spoiled: (titles, time) => `Was es noch verderben kann: ${titles}, ab ${time}.`,
  spoiledLater: (titles, time) =>
    `Nach der Vorhersage verdirbt es vor ${time} nichts; danach: ${titles}. Sehen Sie trotzdem zum Himmel, bevor Sie den Tank füllen.`,
  notSpoiled: (reach) =>
    `Die Vorhersage, bis ${reach}, zeigt nichts, was es verdirbt. Sehen Sie trotzdem zum Himmel, bevor Sie den Tank füllen.`,
  hours: (count) => `${count} h`,
  light: {
    all: (hours) => `${hours}, ganz bei Tageslicht`,
    none: (hours) => `${hours}, ganz im Dunkeln`,
    one: (hours, clocks) => `${hours}, davon ${clocks} bei Tageslicht`,
    several: (hours, lit, clocks) => `${hours}, davon ${lit} bei Tageslicht, zuerst ${clocks}`,
  },
  chance: {
    whole: (sure) => `Stunde für Stunde ist das Wetter dafür ${sure}.`,
    surest: (span, sure, isLit) =>
      `Am sichersten${isLit ? ' bei Tageslicht' : ''}: ${span}; Stunde für Stunde ist das Wetter dafür ${sure}.`,
    best: (span, sure, isLit) =>
      `In keinem brauchbaren Teil${isLit ? ' bei Tageslicht' : ''} ist das Wetter dafür wahrscheinlich; am besten ist ${span}, ${sure}.`,
    first: (share) => `Für die ersten Stunden: ${share}.`,
    hold: {
      veryLikely: (share) => `sehr wahrscheinlich (${share})`,
      likely: (share) => `wahrscheinlich (${share})`,
      even: (share) => `etwa so wahrscheinlich wie nicht (${share})`,
      unlikely: (share) => `unwahrscheinlich (${share})`,
    },
    soil: (limit, first, last) =>
      first === last
        ? `Aussicht, dass der Boden in 30 cm dann unter ${limit} ist: ${first}.`
        : `Aussicht, dass der Boden in 30 cm unter ${limit} ist: ${first} am Anfang, ${last} am Ende.`,
    untold: 'Wie sicher das Wetter dafür ist, lässt sich aus dieser Vorhersage nicht sagen.',
  },
  share: {
    most: 'mehr als 9 von 10',
    least: 'weniger als 1 von 10',
    about: (tenths) => `etwa ${tenths} von 10`,
  },
  conditions: {
    gone: (titles) => `vorbei ist, was jetzt im Weg steht (${titles})`,
    lookAgain: (names) => `ein neuer Blick dies noch passend findet: ${names}`,
    findOut: (names) => `Sie dies passend finden: ${names}`,
    allFit: (names) => `ein neuer Blick dies passend findet: ${names}`,
    more: (count) => `${count} weitere`,
  },
  looks: {
    'soil.feel': 'Feuchte des Bodens in der Hand',
    'soil.surface': 'Bodenoberfläche',
    'soil.temperature30cmC': 'Bodentemperatur in 30 cm',
    'soil.temperatureTrendCPerDay': 'Bodentemperatur in 30 cm',
    'soil.fieldCapacityPercent': 'Wasser im Boden',
    'soil.drainsRunning': 'Dräne',
    'soil.drainsExpected7d': 'Dräne',
    'crop.trueLeaves': 'Raps',
    'crop.frostOnLeaves': 'Blätter (Reif)',
    'weed.present': 'Ungras',
    'weed.plantsPerM2': 'Ungras',
    'weed.tillers': 'Ungras',
    'wind.boomKmh': 'Wind',
    'wind.gustKmh': 'Wind',
    'wind.towardsSensitive': 'Windrichtung',
    'air.inversionRisk': 'Luft (Inversion)',
    'air.temperatureC': 'Lufttemperatur',
    'rain.nowMmPerH': 'Himmel (Regen)',
    'rain.next48hMm': 'kommender Regen',
    'rain.next48hMaxMmPerH': 'kommender Regen',
  },
  window: {
    clear: (span, hours) => `${span} (${hours}): Nichts, was sich jetzt sagen lässt, steht im Weg.`,
    clearIf: (span, hours, conditions) => `${span} (${hours}): nur wenn ${conditions}.`,
    clearIfSame: (span, hours) => `${span} (${hours}): unter denselben Bedingungen.`,
    endedBy: (titles) => `Beendet durch: ${titles}.`,
    forecastEnds: 'Ab da sagt die Vorhersage zu wenig; es kann länger dauern.',
    lookAgain: 'Danach ist zu alt, was Sie gesehen haben: noch einmal nachsehen.',
  },
  soil: {
    between: (limit, from, until) =>
      `Der Boden in 30 cm fällt wahrscheinlich zwischen ${from} und ${until} dauerhaft unter ${limit} (etwa 8 von 10).`,
    by: (limit, until) =>
      `Der Boden in 30 cm ist vielleicht schon dauerhaft unter ${limit}; bis ${until} ist es wahrscheinlich (etwa 9 von 10).`,
    open: (limit, from, middle) =>
      `Der Boden in 30 cm kann ab ${from} dauerhaft unter ${limit} fallen; bis ${middle} ist es etwa so wahrscheinlich wie nicht, und es kann länger dauern, als sich sagen lässt.`,
    mayNot: (limit, from) =>
      `Der Boden in 30 cm kann ab ${from} dauerhaft unter ${limit} fallen, in den absehbaren Tagen aber eher nicht.`,
    unlikely: (limit) => `In den absehbaren Tagen fällt der Boden in 30 cm kaum dauerhaft unter ${limit}.`,
    onceFrom: (limit, from) =>
      `Der Boden in 30 cm kann am ${from} dauerhaft unter ${limit} fallen; das ist etwa so wahrscheinlich wie nicht, und es kann länger dauern, als sich sagen lässt.`,
    belowNow: (limit) => `Der Boden in 30 cm bleibt von jetzt an eher unter ${limit} als nicht, sicher ist es nicht.`,
    staysBelow: (limit) => `Der Boden in 30 cm bleibt wahrscheinlich unter ${limit}.`,
    warmsBack: (share) => `Einmal darunter, kann er für eine Weile wieder wärmer werden (${share}).`,
  },
  changes: {
    fall: (label, now, by, to) => `${label}: ${now}; muss um ${by} fallen, auf ${to}.`,
    rise: (label, now, by, to) => `${label}: ${now}; muss um ${by} steigen, auf ${to}.`,
    findOut: (label, to) => `${label}: nicht bekannt; finden Sie es heraus. Die Grenze ist ${to}.`,
    notKnown: 'nicht bekannt',
    choice: (label, now, to) => `${label}: ${now}; muss sein: ${to}.`,
    sign: (label, sign) => `${label}: nicht mehr ${sign}.`,
    day: (label, to) => `${label}: nicht vor ${to}.`,
    lifts: {
      hours: 'Das kann das Wetter binnen Stunden bringen.',
      days: 'Das dauert Tage.',
      person: 'Dafür können Sie sorgen.',
      season: 'Das kommt in dieser Saison nicht.',
    },
    forecastAt: (time) => `In der Vorhersage ab ${time}.`,
    notInForecast: 'Nicht innerhalb der Vorhersage.',
    notForSure: 'Nicht sicher innerhalb der Vorhersage.',
    least: (labels) => `Das Wenigste, was die heutige Antwort ändern würde, soweit bekannt: ${labels}.`,
  },
  states: {
    clear: 'nichts im Weg, was sich sagen lässt',
    'clear-if': 'nur nach neuem Blick',
    blocked: 'etwas im Weg',
    'beyond-forecast': 'jenseits der Vorhersage',
  },
  figures: outlookFigures,
};
