import type { FactId } from '../../facts/registry/index.ts';
import type { UnknownReason } from '../../facts/types.ts';

/** What the coming days may bring, how sure that is, and where nothing can be told. No sentence of it promises a day's answer. */
export const outlookWords = {
  heading: { now: 'The coming days', later: 'When will it come right?' },
  weekdays: ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'] as readonly string[],
  time: {
    shortDay: (weekday: string) => weekday.slice(0, 3),
    day: (weekday: string, day: string) => `${weekday} ${day}`,
    sameDay: (day: string, from: string, until: string) => `${day}, ${from} to ${until}`,
    acrossDays: (fromDay: string, from: string, untilDay: string, until: string) =>
      `${fromDay}, ${from}, until ${untilDay}, ${until}`,
    at: (day: string, clock: string) => `${day}, ${clock}`,
    secondTime: (clock: string) => `${clock} (the second time, clocks went back)`,
    endOfDay: '24:00',
  },
  mayComeRight: (span: string, hours: string) =>
    `It may come right on ${span} (${hours}): nothing that can be told now stands in the way then.`,
  mayComeRightIf: (span: string, hours: string, conditions: string) =>
    `It may come right on ${span} (${hours}), but only if ${conditions}.`,
  moreWindows: (count: number) =>
    count === 1 ? 'One more such stretch follows.' : `${count} more such stretches follow.`,
  noWindow: (reach: string) =>
    `Up to ${reach}, as far as the forecast tells enough, there is no stretch long enough in which nothing stands in the way.`,
  throughout: (titles: string) => `In the way throughout: ${titles}.`,
  untold: (reason: string) => `Of the coming days nothing can be told: ${reason}.`,
  untoldBecause: {
    'too-old': 'the forecast is too old, look again for a new one',
    'forecast-gap': 'the forecast is not of this place',
  } as Readonly<Partial<Record<UnknownReason, string>>>,
  noForecast: 'Without a forecast nothing can be told of the coming days.',
  ends: (reach: string) => `What comes after ${reach} is not known: the forecast ends or tells too little.`,
  askThen: 'Ask again on the day itself.',
  spoiled: (titles: string, time: string) => `What could still spoil it: ${titles}, from ${time}.`,
  spoiledLater: (titles: string, time: string) =>
    `As the forecast stands, nothing spoils it before ${time}; then: ${titles}. Look at the sky before you fill the tank all the same.`,
  notSpoiled: (reach: string) =>
    `The forecast, up to ${reach}, shows nothing that would spoil it. Look at the sky before you fill the tank all the same.`,
  hours: (count: number) => `${count} h`,
  light: {
    all: (hours: string) => `${hours}, all in daylight`,
    none: (hours: string) => `${hours}, all in the dark`,
    one: (hours: string, clocks: string) => `${hours}, of which ${clocks} in daylight`,
    several: (hours: string, lit: string, clocks: string) => `${hours}, of which ${lit} in daylight, first ${clocks}`,
  },
  chance: {
    whole: (sure: string) => `Hour by hour the weather is ${sure}.`,
    surest: (span: string, sure: string, isLit: boolean) =>
      `Surest${isLit ? ' in daylight' : ''}: ${span}; hour by hour the weather is ${sure}.`,
    best: (span: string, sure: string, isLit: boolean) =>
      `In no useful part${isLit ? ' by daylight' : ''} is the weather likely to hold; the best is ${span}, ${sure}.`,
    first: (share: string) => `For the first hours: ${share}.`,
    hold: {
      veryLikely: (share: string) => `very likely to hold (${share})`,
      likely: (share: string) => `likely to hold (${share})`,
      even: (share: string) => `about as likely to hold as not (${share})`,
      unlikely: (share: string) => `unlikely to hold (${share})`,
    },
    soil: (limit: string, first: string, last: string) =>
      first === last
        ? `Chance that the soil at 30 cm is below ${limit} then: ${first}.`
        : `Chance that the soil at 30 cm is below ${limit}: ${first} as it begins, ${last} as it ends.`,
    untold: 'How sure its weather is cannot be told from this forecast.',
  },
  share: {
    most: 'more than 9 in 10',
    least: 'less than 1 in 10',
    about: (tenths: number) => `about ${tenths} in 10`,
  },
  conditions: {
    gone: (titles: string) => `what is in the way now has gone (${titles})`,
    lookAgain: (names: string) => `a fresh look finds ${names} still fit`,
    findOut: (names: string) => `you find ${names} fit`,
    allFit: (names: string) => `a fresh look finds ${names} fit`,
    more: (count: number) => `${count} more`,
  },
  /** What is looked at, in running text; the label stands in for what is not listed. */
  looks: {
    'soil.feel': 'the feel of the soil',
    'soil.surface': 'the soil surface',
    'soil.temperature30cmC': 'the soil temperature at 30 cm',
    'soil.temperatureTrendCPerDay': 'the soil temperature at 30 cm',
    'soil.fieldCapacityPercent': 'the water in the soil',
    'soil.drainsRunning': 'the drains',
    'soil.drainsExpected7d': 'the drains',
    'crop.trueLeaves': 'the crop',
    'crop.frostOnLeaves': 'the leaves (frost)',
    'weed.present': 'the weed',
    'weed.plantsPerM2': 'the weed',
    'weed.tillers': 'the weed',
    'wind.boomKmh': 'the wind',
    'wind.gustKmh': 'the wind',
    'wind.towardsSensitive': 'the way the wind blows',
    'air.inversionRisk': 'the air (inversion)',
    'air.temperatureC': 'the air temperature',
    'rain.nowMmPerH': 'the sky (rain)',
    'rain.next48hMm': 'the rain to come',
    'rain.next48hMaxMmPerH': 'the rain to come',
  } as Readonly<Partial<Record<FactId, string>>>,
  window: {
    clear: (span: string, hours: string) => `${span} (${hours}): nothing that can be told now stands in the way.`,
    clearIf: (span: string, hours: string, conditions: string) => `${span} (${hours}): only if ${conditions}.`,
    clearIfSame: (span: string, hours: string) => `${span} (${hours}): on the same conditions.`,
    endedBy: (titles: string) => `Ended by: ${titles}.`,
    forecastEnds: 'From there the forecast tells too little; it may last longer.',
    lookAgain: 'After that, what you saw is too old: look again.',
  },
  soil: {
    between: (limit: string, from: string, until: string) =>
      `The soil at 30 cm is likely to fall below ${limit} for good between ${from} and ${until} (about 8 in 10).`,
    by: (limit: string, until: string) =>
      `The soil at 30 cm may be below ${limit} for good already; by ${until} that is likely (about 9 in 10).`,
    open: (limit: string, from: string, middle: string) =>
      `The soil at 30 cm may fall below ${limit} for good from ${from} on; by ${middle} it is about as likely as not, and it may take longer than can be told.`,
    mayNot: (limit: string, from: string) =>
      `The soil at 30 cm may fall below ${limit} for good from ${from} on, but within the days that can be told it more likely does not.`,
    unlikely: (limit: string) =>
      `Within the days that can be told the soil at 30 cm is unlikely to fall below ${limit} for good.`,
    onceFrom: (limit: string, from: string) =>
      `The soil at 30 cm may fall below ${limit} for good on ${from}; that is about as likely as not, and it may take longer than can be told.`,
    belowNow: (limit: string) =>
      `The soil at 30 cm is more likely than not to stay below ${limit} from now on, but that is not sure.`,
    staysBelow: (limit: string) => `The soil at 30 cm is likely to stay below ${limit}.`,
    warmsBack: (share: string) => `Once below, it may warm back above for a while (${share}).`,
  },
  changes: {
    fall: (label: string, now: string, by: string, to: string) =>
      `${label}: ${now}; it has to fall by ${by}, to ${to}.`,
    rise: (label: string, now: string, by: string, to: string) =>
      `${label}: ${now}; it has to rise by ${by}, to ${to}.`,
    findOut: (label: string, to: string) => `${label}: not known; find it out. The limit is ${to}.`,
    notKnown: 'not known',
    choice: (label: string, now: string, to: string) => `${label}: ${now}; it has to be ${to}.`,
    sign: (label: string, sign: string) => `${label}: no longer ${sign}.`,
    day: (label: string, to: string) => `${label}: not before ${to}.`,
    lifts: {
      hours: 'Weather can bring that within hours.',
      days: 'That takes days.',
      person: 'You can see to that.',
      season: 'That does not come this season.',
    },
    forecastAt: (time: string) => `In the forecast from ${time}.`,
    notInForecast: 'Not within the forecast.',
    notForSure: 'Not for sure within the forecast.',
    least: (labels: string) => `The least that would turn today's answer, as far as it is known: ${labels}.`,
  },
  states: {
    clear: 'nothing in the way that can be told',
    'clear-if': 'only if looked at again',
    blocked: 'something in the way',
    'beyond-forecast': 'beyond the forecast',
  },
  figures: {
    day: 'Day',
    to: 'to',
    hours: {
      title: 'The coming days, hour by hour',
      description: (days: number, clear: string, clearIf: string) =>
        `${days} days, a row each from midnight to midnight: ${clear} with nothing in the way that can be told, ${clearIf} only if looked at again.`,
      clear: 'Nothing in the way',
      clearIf: 'Only if looked at again',
      forHours: 'In the way, for hours',
      forDays: 'In the way, for days or longer',
      none: 'none',
    },
    soil: {
      title: 'Soil temperature at 30 cm',
      description: (now: string, last: string, day: string, limit: string) =>
        `${now} now, ${last} on ${day}. The darker band holds 8 in 10, the lighter one 19 in 20. The line across is the limit, ${limit}.`,
      beyond: {
        ofPlace: (years: number) =>
          `Beyond the hatched edge the forecast has ended: the usual air of the place, by ${years} past years, stands in for it.`,
        ofLatitude:
          'Beyond the hatched edge the forecast has ended: the usual air of the latitude stands in for it, which is far less sure.',
      },
      middle: 'Middle, C',
      band: '8 in 10 lie between, C',
      chanceBelow: (limit: string) => `Chance below ${limit}`,
      limit: (limit: string) => `limit ${limit}`,
    },
    rain: {
      title: 'Rain, and the sum of the 48 hours to come',
      total: (total: string) => `${total} in all.`,
      most: (most: string, day: string, limit: string) =>
        `The line is the sum of the next 48 hours at the wetter end of the forecast, as the rules count it: at most ${most}, on ${day}. The limit is ${limit}.`,
      fallen: 'Rain, mm',
      sum: 'Highest 48 h sum begun that day, mm',
      limit: (limit: string) => `limit ${limit}`,
    },
    water: {
      title: 'Water held by the soil, against what it can hold',
      description: (first: string, last: string, day: string) =>
        `${first} now, ${last} on ${day}. The line across is field capacity: all that the soil holds against gravity. Above it water runs off or to the drains.`,
      below: (amount: string) => `${amount} below field capacity`,
      above: (amount: string) => `${amount} above field capacity`,
      at: 'at field capacity',
      capacity: 'field capacity',
      level: 'Against field capacity, mm',
      band: 'Lies between, mm',
      ofCapacity: 'Share of water at field capacity, %',
      ofAvailable: 'Share of available water, %',
    },
    table: 'As a table',
    more: 'Soil, rain and water in figures',
    windows: 'Hours to look at',
    hourByHour: 'Hour by hour',
    changes: 'What would have to change',
    moreWindows: (count: number) => `${count} more`,
  },
};
