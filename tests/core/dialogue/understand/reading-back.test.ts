import { expect, test } from 'vitest';
import { emptyConversation } from '../../../../src/core/dialogue/conversation.ts';
import { step } from '../../../../src/core/dialogue/step.ts';
import { understand } from '../../../../src/core/dialogue/understand/index.ts';
import { shipped } from '../../../cases/shipped-pack.ts';
import { said, stamp, started } from '../talk.ts';

const { pack } = shipped;

test('a yes to a reading back gives no reading of the fact that was read back', () => {
  const context = { pack, understand };
  const begun = step(emptyConversation, { ...stamp(1), ...started(pack) }, context).conversation;
  const readingsAfter = (asked: string) =>
    step(begun, { ...stamp(2), ...said('yes', asked) }, context).conversation.state.observations.length;
  expect(readingsAfter('confirm:field.drained')).toBe(0);
  expect(readingsAfter('drained')).toBe(1);
});
