import fc from 'fast-check';
import { type Conversation, emptyConversation } from '../../../src/core/dialogue/conversation.ts';
import type { ConversationEvent, FieldProfile } from '../../../src/core/dialogue/events.ts';
import { openQuestion } from '../../../src/core/dialogue/open-question.ts';
import { type Standing, standingOf } from '../../../src/core/dialogue/standing.ts';
import type { Question } from '../../../src/core/rules/pack-types.ts';
import type { Forecast } from '../../../src/core/weather/forecast.ts';
import { inventedForecast } from '../../../src/demo/invented-weather.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { answerOf, type Person } from './answers.ts';
import { fieldOf, morning, requested, stamp, started, type Told, take } from './talk.ts';

const { pack } = shipped;

/** How a conversation begins. */
export interface Opening {
  readonly field: FieldProfile | null;
  readonly forecast: Forecast | null;
  /** True where the rest is to be checked although the answer is sure. */
  readonly rest: boolean;
}

/** Fields known to different degrees, with and without a forecast. */
export const openings: fc.Arbitrary<Opening> = fc.record({
  field: fc.constantFrom(
    null,
    fieldOf({ 'field.country': 'GB-ENG', 'field.latitude': 54, 'field.longitude': -2 }),
    fieldOf({ 'field.protectedWaterArea': 'inside', 'field.drained': 'yes', 'field.waterDistanceM': 12 }),
  ),
  forecast: fc.constantFrom(null, inventedForecast(morning)),
  rest: fc.boolean(),
});

/** One question as it was put, with what was known when it was. */
export interface Put {
  readonly question: Question;
  readonly standing: Standing;
}

/** Tells what is told unasked, then answers whatever is asked until nothing is; a second each. At most 100 questions. */
export function interview(
  person: Person,
  { field, forecast, rest }: Opening,
  unasked: readonly Told[] = [],
): { readonly conversation: Conversation; readonly put: readonly Put[] } {
  let conversation = emptyConversation;
  const put: Put[] = [];
  const tell = (told: Told) => {
    const count = conversation.events.length;
    const event = { ...told, ...stamp(count, count / 60) } as ConversationEvent;
    conversation = take(conversation, event, { pack, forecast });
  };
  for (const told of [started(pack, field), ...(rest ? [requested('check-the-rest')] : []), ...unasked]) tell(told);
  for (let turn = 0; turn < 100; turn++) {
    const open = openQuestion(conversation.state, pack);
    const standing = standingOf(conversation.state, pack);
    if (open?.kind !== 'pack' || standing === null) break;
    put.push({ question: open.question, standing });
    tell(answerOf(person, open.question, pack.questions.indexOf(open.question)));
  }
  return { conversation, put };
}
