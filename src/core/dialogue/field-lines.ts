import type { Catalogue } from '../words/catalogue.ts';
import { secondsOf, showTime } from '../words/times.ts';
import { fieldResult } from './field-results.ts';
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

function resultText({ given }: FieldResult, zone: string, now: ViewContext['now'], words: Catalogue): string {
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
