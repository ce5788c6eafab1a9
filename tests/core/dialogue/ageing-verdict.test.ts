import { describe, expect, test } from 'vitest';
import type { ConversationEvent } from '../../../src/core/dialogue/events.ts';
import { viewOf } from '../../../src/core/dialogue/view.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { fieldLess, fitMorning } from './ready-field.ts';
import { doesNotKnow, line, look, morning, pressed, requested, stamp, started, take, talk } from './talk.ts';

const { pack } = shipped;
const world = { pack, forecast: null };
const given = () => talk([started(pack, fieldLess(fitMorning, 'soil.feel')), pressed('soil-feel', 'moist')], world);
const lastLine = (minutes: number) => look(given(), pack, minutes).entries.map(line).at(-1);

describe('a spray-today that was given', () => {
  test('stands until the first thing that it rested on is too old, and not a second longer', () => {
    const until = Date.parse(look(given(), pack).verdict?.validUntil ?? '') / 1000;
    expect(until).toBe(morning + 50 * 60);
    expect(viewOf(given(), { pack, now: epochSeconds(until - 1) }).verdict?.verdict).toBe('spray-today');
    expect(viewOf(given(), { pack, now: epochSeconds(until) }).verdict).toBeNull();
    expect(lastLine(50)).toMatchInlineSnapshot(
      `"- "Spray today" was good until 09:50 and is withdrawn: something that it rested on is too old. Look again."`,
    );
  });

  test('is withdrawn as soon as something said since may change it', () => {
    const doubted = talk(
      [
        started(pack, fieldLess(fitMorning, 'soil.feel')),
        pressed('soil-feel', 'moist'),
        pressed('wind', 'moderate-breeze'),
      ],
      world,
    );
    expect(look(doubted, pack).verdict?.verdict).toBe('wait');
    expect(look(doubted, pack).verdict?.change).toMatchInlineSnapshot(
      `"It was spray today; now wait, because new in the way: too windy; no longer known: wind towards something sensitive."`,
    );
  });

  test('is looked at again with what is still good: what grew old is asked, the rest is not', () => {
    const later = { ...requested('look-again'), ...stamp(5, 120) } as ConversationEvent;
    const again = take(given(), later, world);
    const { question, verdict, said } = look(again, pack, 121);
    expect(verdict).toBeNull();
    expect(question?.id).toBe('place');
    const noPlace = { ...doesNotKnow('place'), ...stamp(6, 121) } as ConversationEvent;
    expect(look(take(again, noPlace, world), pack, 121).question?.id).toBe('rain-now');
    expect(said.find(({ fact }) => fact === 'wind.boomKmh')?.value).toMatchInlineSnapshot(
      `"not known: what was said is too old"`,
    );
    expect(said.find(({ fact }) => fact === 'soil.feel')?.value).toBe('moist');
  });

  test('is followed by a wait that stands while the rest is checked, and falls with what held it', () => {
    const dry = [started(pack, fieldLess(fitMorning, 'soil.feel', 'soil.surface')), pressed('soil-feel', 'dry')];
    const checking = [...dry, requested('check-the-rest'), pressed('air-temperature', 'milder')];
    expect(look(talk(checking, world), pack).verdict?.verdict).toBe('wait');
    expect(look(talk(checking, world), pack).question?.id).toBe('surface');
    expect(look(talk([...checking, pressed('soil-feel', 'moist')], world), pack).verdict).toBeNull();
  });

  test('moves with the invented day of a demo field', () => {
    const shift = 3 * 86_400;
    const shifted = { ...started(pack, fieldLess(fitMorning)), shiftSeconds: shift, ...stamp(0, -shift / 60) };
    const conversation = take(talk([], world), shifted as ConversationEvent, world);
    const view = viewOf(conversation, { pack, now: epochSeconds(morning - shift + 600) });
    expect(view.verdict?.verdict).toBe('spray-today');
    expect(view.now).toBe('2026-11-06T09:10:00Z');
    expect(view.entries.map(line)[0]).toMatch(/invented field on 6 November 2026/);
    expect(viewOf(conversation, { pack, now: epochSeconds(morning - shift + 3600) }).verdict).toBeNull();
  });
});
