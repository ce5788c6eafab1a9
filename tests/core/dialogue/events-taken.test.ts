import { describe, expect, test } from 'vitest';
import { type Conversation, emptyConversation } from '../../../src/core/dialogue/conversation.ts';
import type { ConversationEvent } from '../../../src/core/dialogue/events.ts';
import { openQuestion } from '../../../src/core/dialogue/open-question.ts';
import { standingOf } from '../../../src/core/dialogue/standing.ts';
import { openConversation, step } from '../../../src/core/dialogue/step.ts';
import { reportOf } from '../../../src/core/errors/coded-error.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { inventedForecast } from '../../../src/demo/invented-weather.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { heard, listener } from './listener.ts';
import { fieldLess, fitMorning } from './ready-field.ts';
import {
  doesNotKnow,
  fieldOf,
  filled,
  lines,
  look,
  morning,
  pressed,
  requested,
  said,
  stamp,
  started,
  type Told,
  talk,
  undone,
} from './talk.ts';

const { pack } = shipped;
const world = { pack, forecast: null };
const begin = started(pack, fieldLess(fitMorning, 'soil.feel'));
const home = started(pack, fieldLess({ ...fitMorning, 'field.latitude': 54, 'field.longitude': -2 }, 'soil.feel'));

/** Steps without carrying out what they ask for. */
function stepped(...told: readonly Told[]): ReturnType<typeof step> {
  return told.reduce(
    (now, one, index) => step(now.conversation, { ...one, ...stamp(index) } as ConversationEvent, world),
    { conversation: emptyConversation, effects: [], refused: null } as ReturnType<typeof step>,
  );
}
const tagOf = ({ state }: Conversation) => standingOf(state, pack)?.tag ?? '';
const failed = (more: object = {}): Told => ({
  kind: 'forecast-failed',
  error: reportOf('FORECAST_DOWN', { expected: 'a', came: 'b' }),
  ...more,
});

describe('a run of the engine that fails', () => {
  const broken = (conversation: Conversation) =>
    ({
      kind: 'evaluation-failed',
      tag: tagOf(conversation),
      error: reportOf('UNEXPECTED', { expected: 'a', came: 'b' }),
      ...stamp(7),
    }) as const;

  test('is said, gives no verdict, and is not asked for again, here or where the conversation is opened anew', () => {
    const ready = stepped(begin, pressed('soil-feel', 'moist'));
    const after = step(ready.conversation, broken(ready.conversation), world);
    expect(after.effects).toEqual([]);
    expect(look(after.conversation, pack).verdict).toBeNull();
    expect(look(after.conversation, pack).entries.at(-1)).toMatchObject({
      kind: 'error',
      error: { code: 'UNEXPECTED' },
    });
    expect(openConversation(after.conversation.events, world).effects).toEqual([]);
    const again = step(after.conversation, { ...broken(ready.conversation), id: 'other' }, world);
    expect(again.conversation).toBe(after.conversation);
  });

  test('of facts that are no longer the present ones is dropped', () => {
    const before = stepped(begin, pressed('soil-feel', 'moist')).conversation;
    const now = stepped(begin, pressed('soil-feel', 'moist'), pressed('soil-feel', 'dry')).conversation;
    expect(step(now, broken(before), world).conversation).toBe(now);
  });
});

describe('an evaluation', () => {
  test('put later by a clock that is behind is not said to be so, since nobody said anything', () => {
    const { conversation } = stepped(begin, pressed('soil-feel', 'moist'));
    const trace = standingOf(conversation.state, pack)?.trace ?? [];
    const outcomes = Object.fromEntries(trace.map(({ rule, outcome }) => [rule, outcome]));
    const early = {
      kind: 'evaluated',
      tag: tagOf(conversation),
      outcomes,
      ...stamp(5),
      at: epochSeconds(morning - 60),
    } as const;
    const { conversation: after } = step(conversation, early, world);
    expect(after.events.find(({ id }) => id === 'phone-5')).toMatchObject({
      at: morning + 60,
      clampedFrom: morning - 60,
    });
    expect(lines(after, pack).join('\n')).not.toContain('clock of this device');
    const given = after.events.find((event) => event.kind === 'verdict-given');
    expect(given).toMatchObject({
      at: morning + 60,
      device: 'phone',
      count: 5,
      saw: ['phone-0', 'phone-1', 'phone-5'],
    });
  });

  test('is asked for at once where a stop is met, though the forecast is still to come', () => {
    const stop = started(pack, fieldOf({ 'field.country': 'FR', 'field.latitude': 47, 'field.longitude': 2 }));
    expect(stepped(stop).effects.map(({ kind }) => kind)).toEqual(['fetch-forecast', 'evaluate']);
  });

  test('waits for the forecast where that may still tell what is not known', () => {
    const windless = { ...fitMorning, 'field.latitude': 54, 'field.longitude': -2 };
    const waiting = started(pack, fieldLess(windless, 'wind.boomKmh', 'wind.gustKmh'));
    expect(stepped(waiting).effects.map(({ kind }) => kind)).toEqual(['fetch-forecast']);
    expect(stepped(waiting, requested('verdict-now')).effects).toEqual([]);
  });

  test('is asked for while a question is open only by whoever wants the verdict now', () => {
    expect(stepped(begin).effects).toEqual([]);
    const { effects, conversation } = stepped(begin, requested('verdict-now'));
    expect(effects).toEqual([{ kind: 'evaluate', tag: tagOf(conversation) }]);
  });

  test('keeps with its verdict the forecast only where some fact came from it', () => {
    const forecastOf = (hoursOld: number) => {
      const forecast = { ...inventedForecast(morning), fetchedAt: epochSeconds(morning - hoursOld * 3600) };
      return talk([home, pressed('soil-feel', 'moist')], { pack, forecast }).state.verdicts.at(-1)?.decision.forecast;
    };
    expect(forecastOf(1)).toMatchObject({ invented: true, fetchedAt: '2026-11-06T08:00:00Z' });
    expect(forecastOf(100)).toBeNull();
  });
});

describe('a forecast that failed', () => {
  test('is noted for the place that it was wanted for, and asked for again only by looking again', () => {
    const { conversation } = stepped(home, failed());
    expect(conversation.state.attempt).toEqual({ latitude: 54, longitude: -2, look: 0, failed: true });
    expect(stepped(home, failed(), said('hm')).effects).toEqual([]);
    expect(stepped(home, failed(), requested('look-again')).effects).toContainEqual({
      kind: 'fetch-forecast',
      latitude: 54,
      longitude: -2,
    });
  });

  test('before any place was known says nothing of the place that is told later', () => {
    const { effects } = stepped(begin, failed(), filled('place', { 'field.latitude': 0, 'field.longitude': 0 }));
    expect(effects).toContainEqual({ kind: 'fetch-forecast', latitude: 0, longitude: 0 });
  });
});

describe('the moment of a conversation', () => {
  const moments = (...told: Told[]) => stepped(begin, ...told).conversation.state.at;

  test.each<[string, Told, boolean]>([
    ['what is answered', pressed('soil-feel', 'moist'), true],
    ['what is not known', doesNotKnow('soil-feel'), true],
    ['what is taken back', undone('phone-9'), false],
    ['what cannot be', filled('soil-temperature', { 'soil.temperature30cmC': 85 }), true],
    ['what does not belong to the question', pressed('soil-feel', 'purple'), false],
    ['looking again', requested('look-again'), true],
    ['checking the rest', requested('check-the-rest'), true],
    ['wanting the verdict', requested('verdict-now'), true],
    ['asking why', requested('why-asked'), false],
    ['asking for the dose', requested('dose'), false],
    ['a forecast that failed', failed(), true],
    ['what is not understood', said('hm'), false],
  ])('%s: moves it on, %s %s', (_, told, moves) => {
    expect(moments(said('hm'), told)).toBe(moves ? morning + 120 : morning);
  });
});

describe('what is told', () => {
  test('with its time ago is kept so, by whom and how sure', () => {
    const understand = listener({
      'eight at six': heard('soil.temperature30cmC', 8, { agoHours: 3, doubtful: true, quote: 'eight' }),
    });
    const { state } = talk([started(pack, fieldLess(fitMorning, 'soil.temperature30cmC')), said('eight at six')], {
      ...world,
      understand,
    });
    expect(state.observations.at(-1)).toEqual({
      fact: 'soil.temperature30cmC',
      reading: { type: 'number', value: 8 },
      at: morning + 60 - 3 * 3600,
      source: 'said',
      event: 'phone-1',
      device: 'phone',
      doubtful: true,
      quote: 'eight',
    });
  });

  test('of the forecast by hand counts as told, not seen', () => {
    const { state } = talk(
      [started(pack, fieldLess(fitMorning, 'rain.next48hMm', 'rain.next48hMaxMmPerH')), pressed('rain-ahead', 'wet')],
      world,
    );
    expect(state.observations.find(({ fact, event }) => fact === 'rain.next48hMm' && event === 'phone-1')?.source).toBe(
      'told',
    );
  });

  test('by an event that was taken back before it came is noted and counts for nothing', () => {
    const early = step(
      stepped(begin).conversation,
      { ...undone('phone-5'), ...stamp(4) } as ConversationEvent,
      world,
    ).conversation;
    for (const told of [said('soil feels moist'), pressed('soil-feel', 'moist')]) {
      const { conversation } = step(early, { ...told, ...stamp(5) } as ConversationEvent, world);
      expect(openQuestion(conversation.state, pack)?.id).toBe('soil-feel');
      expect(lines(conversation, pack).at(-1)).toMatch(/^> (?:soil feels moist|Moist)/);
    }
  });

  test('far outside what is usual, twice with different values, is asked about anew', () => {
    const warm = (value: number) => filled('soil-temperature', { 'soil.temperature30cmC': value });
    const open = started(pack, fieldLess(fitMorning, 'soil.temperature30cmC'));
    const { state } = talk([open, warm(31), warm(32)], world);
    expect(state.unusual.map(({ reading }) => reading)).toEqual([{ type: 'number', value: 32 }]);
    expect(openQuestion(state, pack)?.id).toBe('confirm:soil.temperature30cmC');
    expect(talk([open, warm(31), warm(8)], world).state.unusual).toEqual([]);
  });

  test('undone by "undo" is the last thing told, and never what the field brought', () => {
    const understand = listener({ undo: { intents: ['undo'] } });
    const { state } = talk([begin, said('undo')], { ...world, understand });
    expect(state.observations.length).toBe(talk([begin], world).state.observations.length);
    expect(state.notes.at(-1)?.kind).toBe('nothing-to-undo');
    const warm = filled('soil-temperature', { 'soil.temperature30cmC': 31 });
    const after = talk([begin, pressed('partner', 'yes'), warm, said('undo')], { ...world, understand }).state;
    expect([after.unusual, after.observations.some(({ fact }) => fact === 'treatment.partnerInTank')]).toEqual([
      [],
      true,
    ]);
  });
});
