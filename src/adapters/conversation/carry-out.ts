import type { ConversationEvent, Effect, EventStamp } from '../../core/dialogue/events.ts';
import { isLoamwardError, reportOf } from '../../core/errors/coded-error.ts';
import { epochSeconds } from '../../core/units/brands.ts';
import type { ConversationMeans, ConversationState, OfferedField } from './types.ts';

/** The effects whose result comes back as an event. */
export type CarriedEffect = Extract<Effect, { kind: 'fetch-forecast' | 'evaluate' }>;

/** Where an effect is carried out: the field and shift of the conversation, and a stamp for the event that comes of it. */
export interface EffectContext<C extends ConversationState> {
  readonly means: ConversationMeans<C>;
  readonly conversation: C;
  readonly field: OfferedField | null;
  /** Seconds from the real to the invented moment. */
  readonly shiftSeconds: number;
  readonly stamp: () => EventStamp;
}

/** Carries out one effect, once the reply to what asked for it is on its way; what comes of it is an event. Never rejects. */
export async function carryOut<C extends ConversationState>(
  effect: CarriedEffect,
  context: EffectContext<C>,
): Promise<ConversationEvent> {
  await (context.means.nextTurn ?? timerTurn)();
  try {
    return await (effect.kind === 'evaluate' ? evaluate(effect.tag, context) : fetchForecast(effect, context));
  } catch (thrown) {
    const error = isLoamwardError(thrown)
      ? thrown.toJSON()
      : reportOf('UNEXPECTED', { expected: 'a result', came: 'a fault of the program' });
    return effect.kind === 'evaluate'
      ? { kind: 'evaluation-failed', ...context.stamp(), tag: effect.tag, error }
      : { kind: 'forecast-failed', ...context.stamp(), error };
  }
}

/** A turn of the event loop, in Node and in a page. */
function timerTurn(): Promise<void> {
  return new Promise((resolve) => void setTimeout(resolve));
}

async function evaluate<C extends ConversationState>(
  tag: string,
  context: EffectContext<C>,
): Promise<ConversationEvent> {
  const outcomes = await context.means.dialogue.evaluate(context.conversation, tag);
  return { kind: 'evaluated', ...context.stamp(), tag, outcomes };
}

async function fetchForecast<C extends ConversationState>(
  point: { readonly latitude: number; readonly longitude: number },
  context: EffectContext<C>,
): Promise<ConversationEvent> {
  const { means, field, shiftSeconds } = context;
  if (field?.forecastAt) {
    const forecast = field.forecastAt(epochSeconds(means.clock.now() + shiftSeconds));
    return { kind: 'forecast-attached', ...context.stamp(), forecast };
  }
  const answer = await means.forecastService.forecastFor({ latitude: point.latitude, longitude: point.longitude });
  return 'forecast' in answer
    ? {
        kind: 'forecast-attached',
        ...context.stamp(),
        forecast: answer.forecast,
        ...(answer.warning ? { warning: answer.warning } : {}),
      }
    : { kind: 'forecast-failed', ...context.stamp(), error: answer.error };
}
