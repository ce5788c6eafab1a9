import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { emptyConversation } from '../../../src/core/dialogue/conversation.ts';
import type { ConversationEvent, Effect } from '../../../src/core/dialogue/events.ts';
import { standingOf } from '../../../src/core/dialogue/standing.ts';
import { openConversation, step } from '../../../src/core/dialogue/step.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { inventedForecast } from '../../../src/demo/invented-weather.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { heard, listener } from './listener.ts';
import { fieldLess, fitMorning } from './ready-field.ts';
import {
  doesNotKnow,
  filled,
  line,
  lines,
  look,
  morning,
  pressed,
  said,
  stamp,
  started,
  type Told,
  take,
  talk,
  undone,
} from './talk.ts';

const { pack } = shipped;
const world = { pack, forecast: null };

const event = (told: Told, count: number, minutes = count, device = 'phone') =>
  ({ ...told, ...stamp(count, minutes, device) }) as ConversationEvent;

const opening = event(started(pack, fieldLess(fitMorning, 'soil.feel')), 0);

describe('one event', () => {
  test('handed over twice changes nothing', () => {
    const once = step(emptyConversation, opening, world).conversation;
    const twice = step(once, { ...opening }, world);
    expect(twice.conversation).toBe(once);
    expect(twice.effects).toEqual([]);
    expect(twice.refused).toBeNull();
  });

  test('with the id of another but other content is refused, and what came first is kept', () => {
    const once = step(emptyConversation, opening, world).conversation;
    const other = step(once, { ...opening, field: null } as ConversationEvent, world);
    expect(other.conversation).toBe(once);
    expect(other.refused?.code).toBe('EVENT_CHANGED');
  });

  test('of the future is clamped to the newest known time of the server, and that is said', () => {
    const now = epochSeconds(morning + 60);
    const early = take(emptyConversation, opening, { ...world, now });
    const ahead = event(pressed('soil-feel', 'moist'), 1, 300);
    const clamped = take(early, ahead, { ...world, now });
    expect(clamped.events.find(({ id }) => id === ahead.id)).toMatchObject({ at: now, clampedFrom: ahead.at });
    expect(lines(clamped, pack)).toContainEqual(expect.stringMatching(/clock of this device is ahead.*09:01/));
    const again = step(clamped, ahead, { ...world, now: epochSeconds(now + 30) });
    expect(again.refused).toBeNull();
    expect(again.conversation).toBe(clamped);
  });

  test('up to two minutes ahead is taken as it is', () => {
    const ahead = event(started(pack), 0, 2);
    const { conversation } = step(emptyConversation, ahead, { ...world, now: morning });
    expect(conversation.events).toEqual([ahead]);
  });

  test('that begins under other rules is refused', () => {
    const other = step(emptyConversation, { ...opening, packHash: 'other' } as ConversationEvent, world);
    expect(other.refused?.code).toBe('CONVERSATION_OTHER_RULES');
  });

  test.each([
    ['a question that there is not', { ...pressed('no-such', 'a') }, 'QUESTION_UNKNOWN'],
    ['a choice that it does not offer', pressed('soil-feel', 'purple'), 'ANSWER_MISFIT'],
    ['a number of another fact', filled('soil-temperature', { 'wind.boomKmh': 3 }), 'ANSWER_MISFIT'],
    ['nothing at all', pressed('soil-feel'), 'ANSWER_MISFIT'],
    ['a number that cannot be', filled('soil-temperature', { 'soil.temperature30cmC': 85 }), 'FACT_OUT_OF_RANGE'],
  ])('that answers with %s tells nothing and is said', (_, told, code) => {
    const conversation = talk([started(pack, fieldLess(fitMorning, 'soil.feel')), told], world);
    const errors = look(conversation, pack).entries.flatMap((entry) =>
      entry.kind === 'error' ? [entry.error.code] : [],
    );
    expect(errors).toEqual([code]);
    expect(look(conversation, pack).question?.id).toBe('soil-feel');
  });
});

describe('effects', () => {
  test('the forecast is fetched as soon as the place is known, once, and the rules run when the questions are over', () => {
    const home = fieldLess({ ...fitMorning, 'field.latitude': 54, 'field.longitude': -2 }, 'soil.feel');
    const first = step(emptyConversation, event(started(pack, home), 0), world);
    expect(first.effects).toEqual([{ kind: 'fetch-forecast', latitude: 54, longitude: -2 }]);
    const asked = step(first.conversation, event(said('hm', 'soil-feel'), 1), world);
    expect(asked.effects).toEqual([]);
    const reopened = openConversation(asked.conversation.events, world);
    expect(reopened.effects).toEqual(first.effects);
    const attached = { kind: 'forecast-attached', forecast: inventedForecast(morning), ...stamp(2) } as const;
    const known = step(asked.conversation, attached, world);
    expect(known.effects).toEqual([]);
    const answered = step(known.conversation, event(pressed('soil-feel', 'moist'), 3), world);
    expect(answered.effects).toEqual([{ kind: 'evaluate', tag: standingOf(answered.conversation.state, pack)?.tag }]);
  });

  test.each<[string, string, Effect['kind']]>([
    ['start again', 'start-again', 'restart'],
    ['another field', 'another-field', 'choose-field'],
    ['stop', 'stop', 'leave'],
  ])('"%s" asks the caller to act, once', (text, intent, kind) => {
    const understand = listener({ [text]: { intents: [intent as 'stop'] } });
    const begun = step(emptyConversation, opening, { ...world, understand }).conversation;
    const asked = step(begun, event(said(text), 1), { ...world, understand });
    expect(asked.effects.map((effect) => effect.kind)).toEqual([kind]);
    expect(step(asked.conversation, event(said('hm'), 2), { ...world, understand }).effects).toEqual([]);
  });
});

describe('a wish in own words', () => {
  test.each([
    ['check the rest', 'check-the-rest', 'The rest is asked too; the answer so far stays.'],
    ['look again', 'look-again', 'Looking again with what is still good.'],
  ] as const)('"%s" does what its button does', (text, intent, says) => {
    const understand = listener({ [text]: { intents: [intent] } });
    const begun = step(emptyConversation, opening, { ...world, understand }).conversation;
    const { conversation } = step(begun, event(said(text), 1), { ...world, understand });
    expect(look(conversation, pack).entries.map((entry) => ('text' in entry ? entry.text : ''))).toContain(says);
  });
});

describe('the run of the engine', () => {
  /** All answered, so that the engine is to run, and what it would say. */
  const begin = () => {
    const ready = step(
      step(emptyConversation, opening, world).conversation,
      event(pressed('soil-feel', 'moist'), 1),
      world,
    );
    const trace = standingOf(ready.conversation.state, pack)?.trace ?? [];
    const outcomes = Object.fromEntries(trace.map(({ rule, outcome }) => [rule, outcome]));
    const tag = ready.effects.flatMap((effect) => (effect.kind === 'evaluate' ? [effect.tag] : []))[0] ?? '';
    return { ready, outcomes, evaluated: { kind: 'evaluated', tag, outcomes, ...stamp(2) } as const };
  };

  test('gives a verdict whose id follows from the tag, so that two runs give one', () => {
    const { ready, evaluated } = begin();
    const one = step(ready.conversation, evaluated, world).conversation;
    const two = step(one, { ...evaluated, id: 'another-run' }, world);
    expect(two.conversation).toBe(one);
    const given = one.events.filter(({ kind }) => kind === 'verdict-given');
    expect(given).toHaveLength(1);
    expect(given[0]?.id).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
    expect(look(one, pack).verdict?.verdict).toBe('spray-today');
  });

  test('for facts that are no longer the present ones is dropped', () => {
    const { ready, evaluated } = begin();
    const later = step(ready.conversation, event(pressed('soil-feel', 'dry'), 2), world).conversation;
    const dropped = step(later, { ...evaluated, ...stamp(3) }, world);
    expect(dropped.conversation).toBe(later);
    expect(look(later, pack).verdict).toBeNull();
  });

  test('by a clock that is behind still comes after what it was asked for', () => {
    const { ready, outcomes, evaluated } = begin();
    const behind = step(ready.conversation, { ...evaluated, at: epochSeconds(morning - 500) }, world).conversation;
    expect(look(behind, pack).verdict?.verdict).toBe('spray-today');
    const wrong = {
      ...evaluated,
      at: epochSeconds(morning - 500),
      outcomes: { ...outcomes, 'too-windy': 'met' },
    } as const;
    expect(look(step(ready.conversation, wrong, world).conversation, pack).verdict).toBeNull();
  });

  type Outcomes = Extract<ConversationEvent, { kind: 'evaluated' }>['outcomes'];
  test.each<[string, (right: Outcomes) => Outcomes]>([
    ['another outcome', (right) => ({ ...right, 'too-windy': 'met' })],
    ['a rule too few', (right) => Object.fromEntries(Object.entries(right).slice(1))],
    ['a rule too many', (right) => ({ ...right, 'no-such-rule': 'not-met' })],
  ])('with %s gives no verdict, says so, and is not asked for again', (_, change) => {
    const { ready, outcomes, evaluated } = begin();
    const taken = step(ready.conversation, { ...evaluated, outcomes: change(outcomes) }, world);
    expect(taken.effects).toEqual([]);
    const view = look(taken.conversation, pack);
    expect(view.verdict).toBeNull();
    expect(view.entries.map(line).at(-1)).toMatch(/^x The two evaluators do not agree on a rule/);
  });
});

describe('two devices', () => {
  const told: readonly ConversationEvent[] = [
    opening,
    event(pressed('soil-feel', 'moist'), 1, 1),
    event(said('wind 7'), 2, 3),
    event(undone('phone-1'), 3, 6),
    event(filled('soil-temperature', { 'soil.temperature30cmC': 9.4 }), 1, 2, 'tablet'),
    event(doesNotKnow('soil-trend'), 2, 3, 'tablet'),
    event(pressed('surface', 'cracked'), 3, 5, 'tablet'),
  ];
  const understand = listener({ 'wind 7': heard('wind.boomKmh', 7) });

  test('give the same conversation in whatever order their events arrive', () => {
    const arrive = (events: readonly ConversationEvent[]) =>
      events.reduce((now, one) => step(now, one, { ...world, understand }).conversation, emptyConversation);
    const expected = look(arrive(told), pack);
    fc.assert(
      fc.property(fc.shuffledSubarray([...told], { minLength: told.length }), (events) => {
        expect(look(arrive(events), pack)).toEqual(expected);
      }),
      { numRuns: 40 },
    );
  });

  test('that contradict each other leave the fact unknown until the question is answered again', () => {
    const events = [
      opening,
      event(pressed('soil-feel', 'moist'), 1, 1),
      event(pressed('soil-feel', 'dry'), 1, 2, 'tablet'),
    ];
    const torn = events.reduce((now, one) => step(now, one, world).conversation, emptyConversation);
    expect(look(torn, pack).question?.ask).toMatchInlineSnapshot(
      `"Two devices gave different answers for feel of the soil in the hand: moist and dry. How does the soil feel in the hand?"`,
    );
    const settled = take(torn, event(pressed('soil-feel', 'moist'), 2, 3), world);
    expect(look(settled, pack).verdict?.verdict).toBe('spray-today');
  });
});

describe('the log', () => {
  test('keeps what was said before a new start, and shows the verdict of then as an earlier one', () => {
    const conversation = talk([started(pack, fieldLess(fitMorning)), started(pack, fieldLess({}))], world);
    const view = look(conversation, pack);
    expect(view.verdict).toBeNull();
    expect(view.entries.map(({ kind }) => kind)).toEqual(['said', 'said', 'said', 'question']);
    expect(view.question?.id).toBe('country');
  });

  test('of a fact that two devices contradict each other on lends nothing to what is derived from it', () => {
    const torn = [
      event(started(pack, fieldLess(fitMorning, 'field.drained')), 0),
      event(pressed('drained', 'no'), 1, 1),
      event(pressed('drained', 'yes'), 1, 2, 'tablet'),
    ].reduce((now, one) => step(now, one, world).conversation, emptyConversation);
    expect(standingOf(torn.state, pack)?.facts['soil.drainsRunning']).toMatchObject({ known: false });
  });
});
