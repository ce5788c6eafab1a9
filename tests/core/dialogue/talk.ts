import type { DialogueContext } from '../../../src/core/dialogue/context.ts';
import { type Conversation, emptyConversation } from '../../../src/core/dialogue/conversation.ts';
import type { ConversationEvent, Effect, EventStamp, FieldProfile } from '../../../src/core/dialogue/events.ts';
import { standingOf } from '../../../src/core/dialogue/standing.ts';
import { step } from '../../../src/core/dialogue/step.ts';
import { viewOf } from '../../../src/core/dialogue/view.ts';
import type { ConversationView, Entry } from '../../../src/core/dialogue/view-types.ts';
import { reportOf } from '../../../src/core/errors/coded-error.ts';
import type { FactId } from '../../../src/core/facts/registry/index.ts';
import type { FactObservation } from '../../../src/core/facts/resolved.ts';
import type { Reading } from '../../../src/core/facts/types.ts';
import type { Pack } from '../../../src/core/rules/pack-types.ts';
import { type EpochSeconds, epochSeconds } from '../../../src/core/units/brands.ts';
import type { Forecast } from '../../../src/core/weather/forecast.ts';

/** 6 November 2026, 09:00 at the field. */
export const morning = epochSeconds(Date.UTC(2026, 10, 6, 9) / 1000);

/** An event without its stamp. */
export type Told = ConversationEvent extends infer E
  ? E extends EventStamp
    ? Omit<E, keyof EventStamp>
    : never
  : never;

/** A stamp: the count-th thing of a device, `minutes` after the morning. */
export function stamp(count: number, minutes: number = count, device = 'phone'): EventStamp {
  return { id: `${device}-${count}`, at: epochSeconds(morning + minutes * 60), device, count };
}

/** The beginning of a conversation under a pack. */
export function started(pack: Pack, field: FieldProfile | null = null): Told {
  return { kind: 'started', packId: pack.id, packHash: pack.hash, field, shiftSeconds: 0 };
}

export const said = (text: string, asked: string | null = null): Told => ({ kind: 'said', text, asked });
export const undone = (of: string): Told => ({ kind: 'undone', of });
export const requested = (request: Extract<Told, { kind: 'requested' }>['request']): Told => ({
  kind: 'requested',
  request,
});
export const pressed = (question: string, ...choices: string[]): Told => answered(question, { choices });
export const filled = (question: string, numbers: Record<string, number>): Told => answered(question, { numbers });
export const doesNotKnow = (question: string): Told => answered(question, { doesNotKnow: true });

function answered(question: string, more: Partial<Extract<Told, { kind: 'answered' }>>): Told {
  return { kind: 'answered', question, choices: [], numbers: {}, doesNotKnow: false, ...more };
}

/** A field whose profile is given in short: a number or one choice a fact, seen ten minutes before the morning. */
export function fieldOf(values: Partial<Record<FactId, number | string | Reading>>): FieldProfile {
  const observations = (Object.entries(values) as [FactId, number | string | Reading][]).map(
    ([fact, value]): FactObservation => ({
      fact,
      reading: readingOf(value),
      at: epochSeconds(morning - 600),
      source: 'profile',
    }),
  );
  return { id: 'field', name: 'Mill Piece', invented: true, observations };
}

function readingOf(value: number | string | Reading): Reading {
  if (typeof value === 'object') return value;
  return typeof value === 'number' ? { type: 'number', value } : { type: 'choice', possible: [value] };
}

/** What answers the effects: the forecast or null for none to be had. */
export interface World extends DialogueContext {
  readonly forecast: Forecast | null;
}

/** Takes one event and carries out what it asks for, and what that asks for, until nothing is left. */
export function take(conversation: Conversation, event: ConversationEvent, world: World): Conversation {
  const result = step(conversation, event, world);
  return result.effects.reduce((now, effect, index) => {
    const back = carryOut(effect, now, { ...event, id: `${event.id}+${index}`, device: 'server' }, world);
    return back === null ? now : take(now, back, world);
  }, result.conversation);
}

function carryOut(effect: Effect, conversation: Conversation, at: EventStamp, world: World): ConversationEvent | null {
  const { id, device, count } = at;
  const own = { id, at: at.at, device, count };
  if (effect.kind === 'evaluate') {
    const trace = standingOf(conversation.state, world.pack)?.trace ?? [];
    const outcomes = Object.fromEntries(trace.map(({ rule, outcome }) => [rule, outcome]));
    return { ...own, kind: 'evaluated', tag: effect.tag, outcomes };
  }
  if (effect.kind !== 'fetch-forecast') return null;
  if (world.forecast) return { ...own, kind: 'forecast-attached', forecast: world.forecast };
  const error = reportOf('FORECAST_UNREACHABLE', { expected: 'a forecast', came: 'nothing' });
  return { ...own, kind: 'forecast-failed', error };
}

/** A whole conversation of one phone, a minute between things told. */
export function talk(told: readonly Told[], world: World): Conversation {
  return told.reduce(
    (now, one, index) => take(now, { ...one, ...stamp(index) } as ConversationEvent, world),
    emptyConversation,
  );
}

/** What the person reads, a line an entry. */
export function lines(
  conversation: Conversation,
  pack: Pack,
  now: EpochSeconds = epochSeconds(morning + 1800),
): string[] {
  return viewOf(conversation, { pack, now }).entries.map(line);
}

/** One entry as a line: who speaks, then what. */
export function line(entry: Entry): string {
  if (entry.kind === 'verdict') {
    const { headline, why, change } = entry.verdict;
    return `! ${headline} ${why}${change === null ? '' : ` [${change}]`}`;
  }
  const mark = { person: '>', understood: '=', said: '-', question: '?', error: 'x' }[entry.kind];
  return `${mark} ${entry.text}`;
}

/** The view some minutes after the morning. */
export function look(conversation: Conversation, pack: Pack, minutes = 30): ConversationView {
  return viewOf(conversation, { pack, now: epochSeconds(morning + minutes * 60) });
}
