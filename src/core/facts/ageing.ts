import { codedError } from '../errors/coded-error.ts';
import { type EpochSeconds, epochSeconds } from '../units/brands.ts';
import { numberParameter, type Parameters } from '../units/parameter.ts';
import type { Forecast } from '../weather/forecast.ts';
import { rainReachedAt } from '../weather/rain-since.ts';
import { hourSeconds } from '../weather/series.ts';
import { nextMidnight, nextYearlyDay } from './local-day.ts';
import type { GoodFor } from './types.ts';

/** What ageing reads beside the observation. */
export interface AgeingInput {
  readonly zone: string;
  readonly parameters: Parameters;
  /** For rain since the observation; null where there is none or it is for another place. */
  readonly forecast: Forecast | null;
}

type Kind = GoodFor['kind'];
type AgeingOf<K extends Kind> = (
  goodFor: Extract<GoodFor, { kind: K }>,
  seenAt: EpochSeconds,
  input: AgeingInput,
) => EpochSeconds;

const ageings: { readonly [K in Kind]: AgeingOf<K> } = {
  season: (_, seenAt, { zone, parameters }) => nextYearlyDay(seenAt, zone, seasonStart(parameters)),
  moment: (_, seenAt, { zone }) => nextMidnight(seenAt, zone),
  'same-day': (_, seenAt, { zone }) => nextMidnight(seenAt, zone),
  days: ({ parameter }, seenAt, { parameters }) =>
    epochSeconds(seenAt + numberParameter(parameters, parameter) * 24 * hourSeconds),
  hours: ({ parameter, untilRainMm }, seenAt, { parameters, forecast }) => {
    const byHours = epochSeconds(seenAt + numberParameter(parameters, parameter) * hourSeconds);
    if (untilRainMm === undefined || forecast === null) return byHours;
    const byRain = rainReachedAt(forecast, seenAt, numberParameter(parameters, untilRainMm));
    return byRain === null || byRain > byHours ? byHours : byRain;
  },
};

/**
 * The moment from which an observation is too old: the start of the next season, the next midnight at the field, a number
 * of hours or days, or the stamp by which so much rain has fallen since, whichever comes first.
 */
export function goodUntilOf(goodFor: GoodFor, seenAt: EpochSeconds, input: AgeingInput): EpochSeconds {
  const ageing = ageings[goodFor.kind] as AgeingOf<Kind>;
  return ageing(goodFor, seenAt, input);
}

function seasonStart(parameters: Parameters): string {
  const day = parameters.get('fieldProfileSeasonStart')?.value;
  if (typeof day === 'string' && /^(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/.test(day)) return day;
  throw codedError('PARAMETER_MISSING', {
    expected: 'a month and day (MM-DD) in force on this day',
    came: String(day),
    parameter: 'fieldProfileSeasonStart',
  });
}
