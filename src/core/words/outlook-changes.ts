import type { FallThrough, NeededChange, Outlook } from '../outlook/types.ts';
import { atField } from '../units/field-clock.ts';
import type { Catalogue } from './catalogue.ts';
import { labelOf } from './facts.ts';
import { showNumber } from './numbers.ts';
import { describeFallThrough } from './outlook-soil.ts';
import { showDayAndTime } from './outlook-times.ts';
import type { OutlookWording } from './outlook-windows.ts';
import { isoDay, showDay } from './times.ts';
import { capital, joinWords, unitSuffix } from './units.ts';
import { describeValue, showChoice } from './values.ts';

/**
 * The smallest change that lifts a rule: from what to what, who or what brings it, and when the forecast holds it. A soil that is
 * to fall through its limit later than the forecast tells for sure is told by the model's range of days.
 */
export function describeNeed(
  change: NeededChange,
  wording: OutlookWording,
  { at, fallThrough }: Pick<Outlook, 'at' | 'fallThrough'>,
): string {
  const { words, zone, definitionOf } = wording;
  const { changes } = words.outlook;
  const { lifts, forecastAt, fact } = change;
  const falls = fallThrough !== null && isFallOf(change, fallThrough) ? laterFall(fallThrough, at, wording) : null;
  const isTold = (lifts === 'hours' || lifts === 'days') && definitionOf(fact).obtained.some((way) => way !== 'asked');
  return [
    need(change, wording),
    changes.lifts[lifts],
    ...(forecastAt !== null ? [changes.forecastAt(showDayAndTime(forecastAt, zone, words))] : []),
    ...(forecastAt === null && isTold ? [falls ?? changes.notInForecast] : []),
  ].join(' ');
}

function isFallOf({ fact, to, by }: NeededChange, { limitC }: FallThrough): boolean {
  return fact === 'soil.temperature30cmC' && to === limitC && by !== null && by < 0;
}

function laterFall(fall: FallThrough, at: Outlook['at'], { words, zone }: OutlookWording): string {
  const today = atField(at, zone).toFormat(isoDay);
  return `${words.outlook.changes.notForSure} ${describeFallThrough(fall, today, words)}`;
}

/** The smallest set that would turn today's answer, by name; null where there is none. */
export function describeLeast(set: readonly NeededChange[], { words, definitionOf }: OutlookWording): string | null {
  const labels = [...new Set(set.map(({ fact }) => labelOf(fact, definitionOf, words)))];
  return labels.length === 0 ? null : words.outlook.changes.least(joinWords(labels, words.values.and));
}

function need({ fact, now, how, to, by, unit }: NeededChange, { words, definitionOf }: OutlookWording): string {
  const { changes } = words.outlook;
  const definition = definitionOf(fact);
  const label = capital(labelOf(fact, definitionOf, words));
  if (how === 'without') return changes.sign(label, showChoice(String(to), words));
  if (definition.type === 'date') return changes.day(label, showDay(String(to), words));
  const shown = (...limits: number[]) => (now.known ? describeValue(definition, now, words, limits) : changes.notKnown);
  if (typeof to !== 'number') return changes.choice(label, shown(), showChoice(to, words));
  const limit = amount(to, definition.shownDecimals ?? 1, unit, words);
  if (by === null) return changes.findOut(label, limit);
  const size = amount(Math.abs(by), definition.shownDecimals ?? 1, unit, words);
  return by < 0 ? changes.fall(label, shown(to), size, limit) : changes.rise(label, shown(to), size, limit);
}

function amount(value: number, decimals: number, unit: string | null, words: Catalogue): string {
  const shown = showNumber(words, value, decimals, [0]);
  return `${shown}${unitSuffix(unit, words, shown)}`;
}
