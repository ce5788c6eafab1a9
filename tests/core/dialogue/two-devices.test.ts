import { describe, expect, test } from 'vitest';
import type { ConversationEvent } from '../../../src/core/dialogue/events.ts';
import { openQuestion } from '../../../src/core/dialogue/open-question.ts';
import { compiledFor, standingOf } from '../../../src/core/dialogue/standing.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { heard, listener } from './listener.ts';
import { fieldLess, fitMorning } from './ready-field.ts';
import { look, morning, pressed, requested, said, stamp, started, type Told, take, talk } from './talk.ts';

const { pack } = shipped;
const world = { pack, forecast: null };
const begin = started(pack, fieldLess(fitMorning, 'soil.feel'));

/** The phone tells one thing and the tablet, a minute later, another. */
function torn(phone: Told, tablet: Told) {
  const first = talk([begin, phone], world);
  return take(first, { ...tablet, ...stamp(1, 2, 'tablet') } as ConversationEvent, world);
}

describe('two devices that contradict each other', () => {
  test('on what a stop or hold reads: it is not known, for that reason, and its question is open', () => {
    const { state } = torn(pressed('soil-feel', 'moist'), pressed('soil-feel', 'dry'));
    expect(standingOf(state, pack)?.facts['soil.feel']).toEqual({ known: false, reason: 'in-conflict' });
    expect(openQuestion(state, pack)?.id).toBe('soil-feel');
    expect(
      look(torn(pressed('soil-feel', 'moist'), pressed('soil-feel', 'dry')), pack).said.find(
        ({ fact }) => fact === 'soil.feel',
      )?.value,
    ).toMatch(/^not known/);
  });

  test('on what only advice reads: the newer counts, and nobody is asked', () => {
    const { state } = torn(pressed('partner', 'yes'), pressed('partner', 'no'));
    expect(standingOf(state, pack)?.facts['treatment.partnerInTank']).toMatchObject({ known: true, possible: ['no'] });
    expect(standingOf(state, pack)?.conflicts.size).toBe(0);
  });

  test('are left out of what is supposed, and what is supposed of that fact counts', () => {
    const understand = listener({
      'the feel is moist': heard('soil.feel', 'moist'),
      'the soil is 7': heard('soil.temperature30cmC', 7),
    });
    const outcome = (text: string) => {
      const now = torn(pressed('soil-feel', 'moist'), pressed('soil-feel', 'dry'));
      const asked = { ...said(`what if ${text}`), ...stamp(2, 3) } as ConversationEvent;
      return take(now, asked, { ...world, understand }).state.notes.findLast(({ kind }) => kind === 'supposed');
    };
    expect(outcome('the feel is moist')).toMatchObject({ verdict: 'spray-today' });
    expect(outcome('the soil is 7')).toMatchObject({ verdict: 'wait', outcome: 'unknown' });
  });
});

describe('the rules of a day', () => {
  test('are made once a day at the field, and anew for another day', () => {
    const noon = compiledFor(pack, epochSeconds(morning + 3 * 3600));
    expect(compiledFor(pack, morning)).toBe(noon);
    expect(compiledFor(pack, epochSeconds(morning + 15 * 3600))).not.toBe(noon);
    expect(compiledFor({ ...pack }, morning)).not.toBe(noon);
  });
});

describe('"why do you ask?"', () => {
  test('names the rules that stop or hold and that the open question may settle, not those that advise or are settled', () => {
    const rules = (...told: Told[]) => {
      const { state } = talk([...told, requested('why-asked')], world);
      const note = state.notes.findLast(({ kind }) => kind === 'why');
      return note?.kind === 'why' ? note.rules : null;
    };
    const blocking = (id: string) => pack.rules.find((rule) => rule.id === id)?.effect !== 'advise';
    const named = rules(started(pack, fieldLess(fitMorning, 'soil.temperature30cmC'))) ?? [];
    expect(named).toEqual(['soil-too-warm', 'soil-warming']);
    expect(named.every(blocking)).toBe(true);
    expect(rules(begin)).toEqual(['soil-saturated', 'soil-too-dry']);
  });
});
