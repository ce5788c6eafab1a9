import { soilTemperatureAt } from '../../science/soil/temperature/index.ts';
import { epochSeconds } from '../../units/brands.ts';
import { numberParameter } from '../../units/parameter.ts';
import { hourSeconds } from '../../weather/series.ts';
import type { FactSource } from '../context.ts';
import { workedOutNote } from '../depth-reading.ts';
import { localTime } from '../local-day.ts';
import { derivedNumber, earliest } from './derived.ts';
import { soilInputOf } from './soil-days.ts';

/**
 * Temperature at 30 cm carried forward from the person's readings, the newest at most `soilTemperatureCarriedDays` old, through
 * the forecast's past and coming days; the band holds 95 % and grows with the age of the reading. Null without such a reading
 * or without a forecast that may be used.
 */
export const deriveSoilTemperature: FactSource = (context) => {
  const { at, zone, parameters, trusted } = context;
  const input = trusted && soilInputOf(context, trusted, 0);
  const newest = input?.readings.at(-1);
  if (!trusted || !input || !newest) return null;
  const oldestAt = newest.at + numberParameter(parameters, 'soilTemperatureCarriedDays') * 24 * hourSeconds;
  const here = oldestAt <= at ? null : soilTemperatureAt(input, at, newest.valueC);
  if (here === null) return null;
  const banded = { value: here.valueC, low: here.low95C, high: here.high95C };
  const fresh = epochSeconds(at + numberParameter(parameters, 'forecastFreshHours') * hourSeconds);
  const goodUntil = earliest(epochSeconds(oldestAt), fresh, trusted.oldestAt);
  const carried = `carried forward from ${newest.valueC} C read ${localTime(newest.at, zone)}`;
  const read = context.observations('soil.temperature30cmC').findLast((one) => one.at === newest.at)?.reading;
  const elsewhere = read?.type === 'number' ? workedOutNote(read) : null;
  const note = elsewhere === null ? carried : `${carried}, ${elsewhere}`;
  return derivedNumber('soil.temperature30cmC', banded, at, goodUntil, note);
};
