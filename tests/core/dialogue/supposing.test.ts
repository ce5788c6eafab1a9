import { describe, expect, test } from 'vitest';
import { emptyConversation } from '../../../src/core/dialogue/conversation.ts';
import type { ConversationEvent } from '../../../src/core/dialogue/events.ts';
import { step } from '../../../src/core/dialogue/step.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { fieldLess, fitMorning } from './ready-field.ts';
import { lines, look, pressed, said, stamp, started, type Told, talk } from './talk.ts';

const { pack } = shipped;
const world = { pack, forecast: null };
const ready = [started(pack, fieldLess(fitMorning, 'soil.feel')), pressed('soil-feel', 'moist')];
const having = (...told: Told[]) => talk([...ready, ...told], world);
const tail = (...told: Told[]) => lines(having(...told), pack).slice(lines(having(), pack).length);

describe('what if', () => {
  test('another value is judged, and neither the facts nor the verdict change', () => {
    const before = look(having(), pack);
    const view = look(having(said('what if the soil were 14 at 30 cm?')), pack);
    expect(view.verdict?.verdict).toBe(before.verdict?.verdict);
    expect(view.said.length).toBe(before.said.length);
    expect(tail(said('what if the soil were 14 at 30 cm?')).at(-1)).toMatch(/too warm/i);
  });

  test('of nothing that is a fact is not understood, in the words that were said', () => {
    const [, answer] = tail(said('  what if the moon were blue?  '));
    expect(answer).toContain('what if the moon were blue?');
    expect(look(having(said('what if the moon were blue?')), pack).verdict?.verdict).toBe('spray-today');
  });

  test.each([
    ['what if the soil were 99 at 30 cm?', 'FACT_OUT_OF_RANGE'],
    ['what if the soil were 9 at 2 cm?', 'DEPTH_NOT_30CM'],
  ])('"%s" is refused with its range, and nothing is judged', (text, code) => {
    const view = look(having(said(text)), pack);
    const last = view.entries.at(-1);
    expect(last?.kind === 'error' ? last.error.code : last?.kind).toBe(code);
    expect(view.verdict?.verdict).toBe('spray-today');
  });

  test('before a conversation has begun there is nothing to suppose with: it is refused, not judged', () => {
    const early = { ...said('what if the soil were 9 at 30 cm?'), ...stamp(0) } as ConversationEvent;
    const { conversation, refused } = step(emptyConversation, early, world);
    expect(refused !== null || conversation.state.notes.every(({ kind }) => kind !== 'supposed')).toBe(true);
  });
});
