import type { Dialogue, DialogueStep } from '../../../src/adapters/conversation/types.ts';
import type { ConversationEvent, Effect, StartedEvent } from '../../../src/core/dialogue/events.ts';
import { isSameEvent } from '../../../src/core/dialogue/same-event.ts';
import type { ConversationView } from '../../../src/core/dialogue/view-types.ts';
import { codedError, reportOf } from '../../../src/core/errors/coded-error.ts';
import { emptyView } from '../../web/views.ts';

/** A conversation that only remembers: enough to test what carries it. Texts ask for effects and faults by their words. */
export interface PlainState {
  readonly events: readonly ConversationEvent[];
}

/** What a text makes the plain dialogue do. */
const effectsOf = (event: ConversationEvent): readonly Effect[] => {
  if (event.kind === 'started') return [{ kind: 'fetch-forecast', latitude: 54, longitude: -2 }];
  if (event.kind !== 'said') return [];
  if (event.text === 'start again') return [{ kind: 'restart' }];
  if (event.text === 'another field') return [{ kind: 'choose-field' }];
  if (event.text.startsWith('judge ')) return [{ kind: 'evaluate', tag: event.text.slice(6) }];
  return [];
};

const textOf = (event: ConversationEvent): string =>
  event.kind === 'said'
    ? event.text
    : event.kind === 'evaluated'
      ? `evaluated ${event.tag}`
      : event.kind === 'evaluation-failed' || event.kind === 'forecast-failed'
        ? `${event.kind} ${event.error.code}`
        : event.kind;

/** `padding` letters are added to every view. */
export function plainDialogue(padding = 0): Dialogue<PlainState> {
  return {
    open: (events) => ({ conversation: { events }, effects: [], refused: null }),
    step: ({ events }, event): DialogueStep<PlainState> => {
      const there = events.find(({ id }) => id === event.id);
      if (there) {
        const refused = isSameEvent(there, event)
          ? null
          : reportOf('EVENT_CHANGED', { expected: 'the same content', came: 'other content' });
        return { conversation: { events }, effects: [], refused };
      }
      if (event.kind === 'said' && event.text === 'throw') throw new TypeError('planted');
      if (event.kind === 'said' && event.text === 'refuse') {
        throw codedError('FIELD_UNKNOWN', { expected: 'another text', came: 'refuse' });
      }
      return { conversation: { events: [...events, event] }, effects: effectsOf(event), refused: null };
    },
    viewOf: ({ events }) => {
      const started = events.findLast((event): event is StartedEvent => event.kind === 'started');
      const view: ConversationView = {
        ...emptyView,
        field: started?.field
          ? {
              id: started.field.id,
              name: started.field.name,
              invented: started.field.invented,
              note: started.field.note ?? null,
            }
          : null,
        packTitle: 'x'.repeat(padding),
        entries: events.map((event) => ({ kind: 'said', id: event.id, text: textOf(event) })),
        eventCount: events.length,
      };
      return view;
    },
    evaluate: async (_state, tag) => {
      if (tag === 'fail') throw codedError('UNEXPECTED', { expected: 'another tag', came: tag });
      if (tag === 'break') throw new RangeError('planted');
      return { rule: 'met' };
    },
  };
}
