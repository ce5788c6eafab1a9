import { describe, expect, test } from 'vitest';
import { emptyConversation } from '../../../src/core/dialogue/conversation.ts';
import { isConfirmation, openQuestion, packQuestion } from '../../../src/core/dialogue/open-question.ts';
import { standingOf } from '../../../src/core/dialogue/standing.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { heard, listener } from './listener.ts';
import { fieldLess, fitMorning } from './ready-field.ts';
import { filled, said, started, talk } from './talk.ts';

const { pack } = shipped;
const begin = started(pack, fieldLess(fitMorning, 'soil.temperature30cmC'));
const understand = listener({ 'nine or so': heard('soil.temperature30cmC', 9, { doubtful: true }) });
const world = { pack, forecast: null, understand };

describe('the question that is open', () => {
  test.each([
    ['the next of the plan', [], 'pack', 'soil-temperature'],
    [
      'a value far outside what is usual, to be confirmed',
      [filled('soil-temperature', { 'soil.temperature30cmC': 31 })],
      'unusual',
      'confirm:soil.temperature30cmC',
    ],
    [
      'words that could mean something else, read back',
      [said('nine or so')],
      'doubtful',
      'confirm:soil.temperature30cmC',
    ],
  ])('is %s', (_, told, kind, id) => {
    const open = openQuestion(talk([begin, ...told], world).state, pack);
    expect(open).toMatchObject({ kind, id });
    expect(isConfirmation(id)).toBe(kind !== 'pack');
    expect(packQuestion(id, pack)?.id).toBe('soil-temperature');
  });

  test('is none before the start, and none when all is answered', () => {
    expect(openQuestion(emptyConversation.state, pack)).toBeNull();
    const done = talk([begin, filled('soil-temperature', { 'soil.temperature30cmC': 7.6 })], world);
    expect(openQuestion(done.state, pack)).toBeNull();
  });
});

describe('what a state comes to', () => {
  test('is nothing before the start', () => {
    expect(standingOf(emptyConversation.state, pack)).toBeNull();
  });

  test('is worked out once: the same state and pack give the same object, another pack another', () => {
    const { state } = talk([begin], world);
    expect(standingOf(state, pack)).toBe(standingOf(state, pack));
    expect(standingOf(state, { ...pack })).not.toBe(standingOf(state, pack));
  });
});
