import { describe, expect, test } from 'vitest';
import { emptyConversation } from '../../../src/core/dialogue/conversation.ts';
import type { ConversationEvent } from '../../../src/core/dialogue/events.ts';
import { step } from '../../../src/core/dialogue/step.ts';
import { viewOf } from '../../../src/core/dialogue/view.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { inventedForecast } from '../../../src/demo/invented-weather.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { heard, listener } from './listener.ts';
import { fieldLess, fitMorning } from './ready-field.ts';
import { fieldOf, line, look, morning, pressed, said, stamp, started, type Told, take, talk, undone } from './talk.ts';

const { pack } = shipped;
const world = { pack, forecast: null };
const without = (...facts: Parameters<typeof fieldLess>[1][]): Told => started(pack, fieldLess(fitMorning, ...facts));

describe('a view', () => {
  test('of nothing is empty', () => {
    expect(viewOf(emptyConversation, { pack, now: morning })).toEqual({
      language: 'en',
      field: null,
      packTitle: pack.title['en'],
      entries: [],
      earlier: 0,
      question: null,
      verdict: null,
      outlook: null,
      said: [],
      fields: [],
      terms: [expect.objectContaining({ id: 'propyzamide', said: ['propyzamide'] })],
      now: '2026-11-06T09:00:00Z',
      busy: null,
      eventCount: 0,
    });
  });

  test('tells the field, and how many events there are of the device that has most', () => {
    const conversation = talk([started(pack, { ...fieldOf({}), note: 'Wet.' }), said('hm'), said('hm')], world);
    const more = take(conversation, { ...said('hm'), ...stamp(9, 5, 'tablet') } as ConversationEvent, world);
    const view = look(take(more, { ...said('hm'), ...stamp(3, 6) } as ConversationEvent, world), pack);
    expect(view.field).toEqual({ id: 'field', name: 'Mill Piece', invented: true, note: 'Wet.' });
    expect(view.eventCount).toBe(9);
    expect(look(talk([started(pack, fieldOf({}))], world), pack).field?.note).toBeNull();
  });

  test('says what it waits for: the forecast, or the rules', () => {
    const home = started(pack, fieldLess({ ...fitMorning, 'field.latitude': 54, 'field.longitude': -2 }, 'soil.feel'));
    const first = step(emptyConversation, { ...home, ...stamp(0) } as ConversationEvent, world).conversation;
    expect(look(first, pack).busy).toBe('forecast');
    const forecast = inventedForecast(morning);
    const came = step(first, { kind: 'forecast-attached', forecast, ...stamp(1) }, world).conversation;
    expect(look(came, pack).busy).toBeNull();
    const answered = { ...pressed('soil-feel', 'moist'), ...stamp(2) } as ConversationEvent;
    expect(look(step(came, answered, world).conversation, pack).busy).toBe('rules');
  });

  test('withdraws a spray today with a reason, and a wait without one', () => {
    const given = talk([without('soil.feel'), pressed('soil-feel', 'moist')], world);
    expect(look(given, pack, 49).entries.at(-1)?.kind).toBe('verdict');
    const undone1 = take(given, { ...undone('phone-1'), ...stamp(2) } as ConversationEvent, world);
    const view = look(undone1, pack);
    expect(view.verdict).toBeNull();
    expect(view.entries.map(line).at(-1)).toBe('- "Spray today" is withdrawn: what came in since may change it.');
    expect(view.entries.at(-1)?.id).toMatch(/^[0-9a-f-]{36}\/withdrawn$/);
    const dry = talk([without('soil.feel'), pressed('soil-feel', 'dry'), undone('phone-1')], world);
    expect(look(dry, pack).verdict).toBeNull();
    expect(look(dry, pack).entries.map(line).join()).not.toContain('withdrawn');
    expect(viewOf(given, { pack, now: epochSeconds(morning + 3000) }).verdict).toBeNull();
  });

  test('reads back words understood with doubt, by the words themselves', () => {
    const understand = listener({
      'eight or so': heard('soil.temperature30cmC', 8, { doubtful: true, quote: 'eight or so' }),
    });
    const told = talk([without('soil.temperature30cmC'), said('eight or so')], { ...world, understand });
    expect(look(told, pack).question).toMatchObject({
      id: 'confirm:soil.temperature30cmC',
      ask: 'From "eight or so" I took: soil at 30 cm 8 C. Is that right?',
      why: 'The answer rests on it, so it is read back first.',
      how: 'Answer yes or no, or give the right value.',
      form: 'confirm',
      now: '',
      before: null,
      picture: null,
    });
  });
});
