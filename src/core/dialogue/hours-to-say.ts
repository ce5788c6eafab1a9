import type { Question } from '../rules/pack-types.ts';
import { atField } from '../units/field-clock.ts';
import type { State } from './state.ts';
import { soilTemperature } from './understand/depth-refusal.ts';
import type { ViewContext } from './view-context.ts';

/** Hours are offered two apart, none before this one of the day, and at most so many. */
const apart = 2;
const first = 4;
const most = 6;

/**
 * What can be said by pressing where a temperature at another depth was told without its hour: that it was now, or an even hour of
 * the day at the field so far, newest first. Another hour is typed. None where no hour is missing.
 */
export function hoursToSay({ facts }: Question, { hourless }: State, { pack, now, words }: ViewContext): string[] {
  if (hourless === null || !facts.includes(soilTemperature)) return [];
  const { hour } = atField(now, pack.zone);
  const newest = hour - (hour % apart);
  const hours = Array.from({ length: most }, (_, index) => newest - index * apart).filter((one) => one >= first);
  return [words.asking.hour.now, ...hours.map(words.asking.hour.at)];
}
