import type { Catalogue } from '../words/catalogue.ts';
import { secondsOf, showTime } from '../words/times.ts';
import { fieldResult, givenNow } from './field-results.ts';
import type { FieldResult, State } from './state.ts';
import type { ViewContext } from './view-context.ts';
import type { FieldLineView } from './view-types.ts';

/** Today's fields, in the order in which they were left, the present one last: each with its verdict in a line. */
export function fieldLines(state: State, { pack, now, words }: ViewContext): FieldLineView[] {
  const present = fieldResult(state, pack);
  return [...state.fields, ...(present ? [present] : [])].map((field) => ({
    id: field.id,
    name: field.name,
    text: words.asking.fields.line(field.name, resultText(field, pack.zone, now, words)),
  }));
}

/**
 * Every field that can be told of, each with its state: today's, then those on offer that nobody has looked at today. A field of one's
 * own, which has no name, is told as the present one.
 */
export function everyFieldLine(state: State, context: ViewContext): string[] {
  const { fields } = context.words.asking;
  const seen = fieldLines(state, context);
  const known = new Set(seen.map(({ id }) => id));
  const own =
    state.started !== null && !state.started.field ? [fields.line(fields.own, ownResult(state, context))] : [];
  const unseen = (state.started?.fields ?? []).filter(({ id }) => !known.has(id));
  return [...seen.map(({ text }) => text), ...own, ...unseen.map(({ name }) => fields.line(name, fields.unseen))];
}

function ownResult(state: State, { pack, now, words }: ViewContext): string {
  return resultText({ given: givenNow(state, pack) }, pack.zone, now, words);
}

function resultText(
  { given }: Pick<FieldResult, 'given'>,
  zone: string,
  now: ViewContext['now'],
  words: Catalogue,
): string {
  const { fields } = words.asking;
  if (given === null) return fields.none;
  const verdict = words.verdict.names[given.verdict];
  if (given.verdict === 'spray-today' && given.validUntil !== null) {
    const until = secondsOf(given.validUntil);
    const say = until <= now ? fields.wasUntil : fields.until;
    return say(verdict, showTime(until, zone, now, words));
  }
  if (given.verdict === 'spray-today' || given.slowest === null) return verdict;
  return fields.slow(verdict, fields.slowness[given.slowest]);
}
