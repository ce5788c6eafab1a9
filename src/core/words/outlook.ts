import type { HourBlock, Outlook, Window } from '../outlook/types.ts';
import { atField } from '../units/field-clock.ts';
import type { VerdictWord } from '../verdict/types.ts';
import { describeSoilBelow, describeSureness } from './outlook-chance.ts';
import { describeFallThrough } from './outlook-soil.ts';
import { showDayAndTime, showEnd, showSpan } from './outlook-times.ts';
import { describeConditions, describeHours, namesOf, type OutlookWording } from './outlook-windows.ts';
import { isoDay } from './times.ts';

/** What lies further ahead than two days no longer spoils a spraying of today. */
const soonSeconds = 48 * 3600;

/** How much that is to be looked at the paragraph names; the windows below it name all. */
const namedInParagraph = 3;

/**
 * The coming days in one short paragraph: when it may come right and for how long, what must be looked at again, how sure that is. For
 * a spray-today: what could still spoil it.
 */
export function describeOutlook(outlook: Outlook, verdict: VerdictWord, wording: OutlookWording): string {
  const { words, zone } = wording;
  const said = words.outlook;
  const { untold, reachesTo } = outlook;
  if (untold !== null) return said.untold(said.untoldBecause[untold.reason] ?? words.values.reasons[untold.reason]);
  if (reachesTo === null) return said.noForecast;
  const reach = showEnd(reachesTo, zone, words);
  if (verdict === 'spray-today') return spoilSentence(outlook, reach, wording);
  const first = outlook.windows[0];
  if (first === undefined) return noWindow(outlook, reach, wording).join(' ');
  return [
    firstWindow(first, wording),
    ...(first.soilBelow === null ? [] : [describeSoilBelow(first, words)]),
    describeSureness(first, zone, words),
    said.askThen,
  ].join(' ');
}

/** What else is worth knowing of the coming days: further windows, the soil through its limit, where the forecast ends; may be empty. */
export function describeFurther(outlook: Outlook, verdict: VerdictWord, wording: OutlookWording): string {
  const { words, zone } = wording;
  const said = words.outlook;
  const { untold, reachesTo, windows } = outlook;
  const soil = soilSentences(outlook, verdict, wording);
  if (untold !== null || reachesTo === null || verdict === 'spray-today' || windows.length === 0) return soil.join(' ');
  const more = windows.length > 1 ? [said.moreWindows(windows.length - 1)] : [];
  return [...more, ...soil, said.ends(showEnd(reachesTo, zone, words))].join(' ');
}

function firstWindow(stretch: Window, wording: OutlookWording): string {
  const { words, zone } = wording;
  const said = words.outlook;
  const span = showSpan(stretch.from, stretch.until, zone, words);
  const hours = describeHours(stretch, wording, true);
  const conditions = describeConditions(stretch, wording, namedInParagraph);
  return conditions === '' ? said.mayComeRight(span, hours) : said.mayComeRightIf(span, hours, conditions);
}

function noWindow(outlook: Outlook, reach: string, wording: OutlookWording): string[] {
  const { outlook: said } = wording.words;
  const lasting = blocksThroughout(outlook);
  return [said.noWindow(reach), ...(lasting.length > 0 ? [said.throughout(namesOf(lasting, wording))] : [])];
}

/** Blocks of every hour that the forecast tells. */
function blocksThroughout({ hours }: Outlook): HourBlock[] {
  const told = hours.filter(({ state }) => state !== 'beyond-forecast');
  const [first, ...rest] = told.map(({ hourBlocks, dayBlocks }) => [...dayBlocks, ...hourBlocks]);
  return (first ?? []).filter(({ rule }) => rest.every((blocks) => blocks.some((one) => one.rule === rule)));
}

function spoilSentence({ spoiled, at }: Outlook, reach: string, wording: OutlookWording): string {
  const { words, zone } = wording;
  if (spoiled === null) return words.outlook.notSpoiled(reach);
  const say = spoiled.at - at < soonSeconds ? words.outlook.spoiled : words.outlook.spoiledLater;
  return say(namesOf(spoiled.by, wording), showDayAndTime(spoiled.at, zone, words));
}

function soilSentences({ fallThrough, at }: Outlook, verdict: VerdictWord, { words, zone }: OutlookWording): string[] {
  const today = atField(at, zone).toFormat(isoDay);
  if (fallThrough === null) return [];
  const isPast = fallThrough.day90 !== null && fallThrough.day90 <= today;
  if (isPast && verdict === 'spray-today') return [];
  return [describeFallThrough(fallThrough, today, words)];
}
