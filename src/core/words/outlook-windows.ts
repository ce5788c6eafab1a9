import type { HourBlock, Window } from '../outlook/types.ts';
import type { Catalogue } from './catalogue.ts';
import { labelOf } from './facts.ts';
import { describeSoilBelow, describeSureness } from './outlook-chance.ts';
import { showClocks, showSpan } from './outlook-times.ts';
import type { DefinitionOf } from './phrases.ts';
import { joinWords, shortList } from './units.ts';

/** What sentences of an outlook are made with. */
export interface OutlookWording {
  readonly words: Catalogue;
  /** IANA zone of the field. */
  readonly zone: string;
  readonly definitionOf: DefinitionOf;
  /** A rule's title, for example "Soil too warm". */
  readonly titleOf: (rule: string) => string;
}

/** Rules by title in running text: "too windy and heavy rain coming". */
export function namesOf(blocks: readonly Pick<HourBlock, 'rule'>[], { words, titleOf }: OutlookWording): string {
  return joinWords([...new Set(blocks.map(({ rule }) => words.values.inSentence(titleOf(rule))))], words.values.and);
}

/**
 * What a clear-if window rests on: what must have gone, be looked at again, or be found out. With `most` in short: so many things to
 * look at by name and the number of the others.
 */
export function describeConditions(stretch: Window, wording: OutlookWording, most: number | null = null): string {
  const { words, definitionOf } = wording;
  const { conditions } = words.outlook;
  /** What a person can look at; what nobody is asked for is named only where there is nothing else. */
  const namesFor = (facts: Window['lookAgain']) => {
    const seen = facts.filter((fact) => definitionOf(fact).noQuestion === undefined);
    const named = seen.length > 0 ? seen : facts;
    return [...new Set(named.map((fact) => words.outlook.looks[fact] ?? labelOf(fact, definitionOf, words)))];
  };
  const again = namesFor(stretch.lookAgain);
  const first = namesFor(stretch.unknown).filter((name) => !again.includes(name));
  const gone = stretch.ifLifted.length > 0 ? [conditions.gone(namesOf(stretch.ifLifted, wording))] : [];
  if (most !== null && again.length + first.length > 0) {
    const short = joinWords(shortList([...again, ...first], most, conditions.more), words.values.and);
    return [...gone, again.length > 0 ? conditions.allFit(short) : conditions.findOut(short)].join('; ');
  }
  const parts = [
    ...gone,
    ...(again.length > 0 ? [conditions.lookAgain(joinWords(again, words.values.and))] : []),
    ...(first.length > 0 ? [conditions.findOut(joinWords(first, words.values.and))] : []),
  ];
  return parts.join('; ');
}

/**
 * A window as sentences: when, on what conditions, how sure its weather is, what ends it. Conditions that are those of the window
 * told before it are not told again.
 */
export function describeWindow(stretch: Window, wording: OutlookWording, before?: Window): string {
  const { words, zone } = wording;
  const said = words.outlook.window;
  const span = showSpan(stretch.from, stretch.until, zone, words);
  const hours = describeHours(stretch, wording);
  const conditions = describeConditions(stretch, wording);
  const isSame = before !== undefined && conditions === describeConditions(before, wording);
  const onCondition = isSame ? said.clearIfSame(span, hours) : said.clearIf(span, hours, conditions);
  const when = conditions === '' ? said.clear(span, hours) : onCondition;
  const sure = stretch.surest === null ? '' : describeSureness(stretch, zone, words);
  return [when, describeSoilBelow(stretch, words), sure, describeEnd(stretch, wording)]
    .filter((part) => part !== '')
    .join(' ');
}

/**
 * How long a window is and which of it the sun is up: "20 h, of which 07:15 to 16:20 in daylight". In short only whether all or none
 * of it is.
 */
export function describeHours(
  { from, until, hours, daylight }: Window,
  { words, zone }: OutlookWording,
  isShort = false,
): string {
  const { light, hours: inHours } = words.outlook;
  const length = inHours(hours);
  if (daylight === null) return length;
  const [first] = daylight;
  if (first === undefined) return light.none(length);
  if (first.from === from && first.until === until) return light.all(length);
  if (isShort) return length;
  const clocks = showClocks(first.from, first.until, zone, words);
  if (daylight.length === 1) return light.one(length, clocks);
  const seconds = daylight.reduce((sum, one) => sum + one.until - one.from, 0);
  return light.several(length, inHours(Math.floor(seconds / 3600)), clocks);
}

function describeEnd({ endedBy }: Window, wording: OutlookWording): string {
  const said = wording.words.outlook.window;
  if (endedBy === 'forecast-ends') return said.forecastEnds;
  if (endedBy === 'look-again') return said.lookAgain;
  return endedBy.length === 0 ? '' : said.endedBy(namesOf(endedBy, wording));
}
