import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { emptyConversation, foldConversation } from '../../../src/core/dialogue/conversation.ts';
import type { ConversationEvent } from '../../../src/core/dialogue/events.ts';
import { latestStart } from '../../../src/core/dialogue/latest-start.ts';
import { compareEvents, insertEvent } from '../../../src/core/dialogue/order.ts';
import { clampToNow, clockSlackSeconds, eventChanged, isSameEvent } from '../../../src/core/dialogue/same-event.ts';
import { step } from '../../../src/core/dialogue/step.ts';
import { understand } from '../../../src/core/dialogue/understand/index.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { fieldLess, fitMorning } from './ready-field.ts';
import { morning, pressed, requested, said, stamp, started, talk } from './talk.ts';

const { pack } = shipped;
const world = { pack, forecast: null };

interface Place {
  readonly at?: number;
  readonly device?: string;
  readonly count?: number;
  readonly id?: string;
  readonly isVerdict?: boolean;
}

/** An event at a place in the order; what it says does not matter here. */
function placed({ at = 0, device = 'b', count = 1, id = 'm', isVerdict = false }: Place): ConversationEvent {
  const own = { id, at: epochSeconds(morning + at), device, count };
  return isVerdict
    ? { ...own, kind: 'verdict-given', tag: '', saw: [], decision: {} as never }
    : { ...own, kind: 'undone', of: 'x' };
}

describe('the order of events', () => {
  test.each<[string, Place, Place]>([
    ['time, before device', { at: 0, device: 'z' }, { at: 1, device: 'a' }],
    ['device, before count', { device: 'a', count: 9 }, { device: 'b', count: 1 }],
    ['count, before kind', { count: 1, isVerdict: true }, { count: 2 }],
    ['a verdict after what it answers, before id', { id: 'z' }, { id: 'a', isVerdict: true }],
    ['id last', { id: 'a' }, { id: 'b' }],
  ])('is by %s', (_, first, second) => {
    const [a, b] = [placed(first), placed(second)];
    expect(compareEvents(a, b)).toBeLessThan(0);
    expect(compareEvents(b, a)).toBeGreaterThan(0);
    expect(compareEvents(a, a)).toBe(0);
    expect(insertEvent([b], a)).toEqual([a, b]);
    expect(insertEvent([a], b)).toEqual([a, b]);
  });

  test('an event put in among others stands where sorting would put it', () => {
    const events = fc.array(
      fc.record({ at: fc.nat(3), device: fc.constantFrom('a', 'b'), count: fc.nat(3), id: fc.constantFrom('k', 'l') }),
    );
    fc.assert(
      fc.property(events, (places) => {
        const all = places.map(placed);
        const put = all.reduce<readonly ConversationEvent[]>((some, one) => insertEvent(some, one), []);
        expect(put).toEqual(all.toSorted(compareEvents));
      }),
    );
  });

  test('stored events are folded in their order, each id once, whatever order they were stored in', () => {
    const fold = { pack, understand };
    const { events } = talk([started(pack, fieldLess(fitMorning, 'soil.feel')), pressed('soil-feel', 'dry')], world);
    const again = foldConversation([...events.toReversed(), ...events], fold);
    expect(again.events).toEqual(events);
    expect(again.state.verdicts).toHaveLength(1);
    expect(again.waiting).toEqual([]);
    expect(foldConversation([], fold)).toEqual(emptyConversation);
  });

  test('the latest of several starts is the one that counts', () => {
    const { events } = talk([started(pack), said('hm'), started(pack, fieldLess(fitMorning))], world);
    expect(latestStart(events)).toMatchObject({ id: 'phone-2', kind: 'started' });
    expect(latestStart(events.filter(({ kind }) => kind !== 'started'))).toBeUndefined();
  });
});

describe('before the start', () => {
  test('nothing counts but what is taken back, which stays taken back', () => {
    const told = step(emptyConversation, { ...pressed('soil-feel', 'dry'), ...stamp(1) } as never, world);
    expect(told.conversation.state).toEqual(emptyConversation.state);
    const taken = step(told.conversation, { kind: 'undone', of: 'phone-4', ...stamp(2) }, world).conversation;
    expect([...taken.state.undone]).toEqual(['phone-4']);
    const begun = step(taken, { ...started(pack, fieldLess(fitMorning, 'soil.feel')), ...stamp(3) } as never, world);
    const late = step(begun.conversation, { ...pressed('soil-feel', 'dry'), ...stamp(4) } as never, world);
    expect(late.conversation.state.observations.some(({ fact }) => fact === 'soil.feel')).toBe(false);
  });
});

describe('the same event', () => {
  const said9: ConversationEvent = { ...requested('when'), ...stamp(1) } as ConversationEvent;

  test('has the same content, in whatever order its fields come, and a clamped time is the time that was given', () => {
    expect(isSameEvent(said9, JSON.parse(JSON.stringify(said9, Object.keys(said9).toReversed())))).toBe(true);
    expect(isSameEvent(said9, { ...said9, count: 2 })).toBe(false);
    const clamped = { ...said9, at: epochSeconds(said9.at - 50), clampedFrom: said9.at };
    expect(isSameEvent(said9, clamped)).toBe(true);
    expect(isSameEvent(clamped, said9)).toBe(true);
    expect(isSameEvent({ ...said9, at: clamped.at }, clamped)).toBe(false);
  });

  test('with other content is refused by what was expected and what came', () => {
    expect(eventChanged(said9)).toMatchObject({
      code: 'EVENT_CHANGED',
      expected: 'the content that this id came with first',
      came: 'other content of phone-1',
    });
  });
});

describe('a clock that is ahead', () => {
  const ahead = (seconds: number) =>
    ({ ...requested('when'), ...stamp(1), at: epochSeconds(morning + seconds) }) as const;

  test('by two minutes is believed, by more is clamped, and without a known time is believed whatever it says', () => {
    expect(clockSlackSeconds).toBe(120);
    expect(clampToNow(ahead(120), morning)).toEqual(ahead(120));
    expect(clampToNow(ahead(121), morning)).toEqual({ ...ahead(0), clampedFrom: morning + 121 });
    expect(clampToNow(ahead(1e6), undefined)).toEqual(ahead(1e6));
  });

  test('clamped twice keeps the time that the device gave', () => {
    const once = clampToNow(ahead(5000), epochSeconds(morning + 1000));
    expect(clampToNow(once, morning)).toEqual({ ...ahead(0), clampedFrom: morning + 5000 });
  });
});
