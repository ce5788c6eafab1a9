import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createConversation } from '../../src/adapters/conversation/create-conversation.ts';
import { dialogueOver } from '../../src/adapters/conversation/dialogue-over.ts';
import { clientMessageSchemas, type EventMessage } from '../../src/core/protocol/messages.ts';
import { parseServerMessage } from '../../src/core/protocol/parse-message.ts';
import { hollinBankFarm } from '../../src/demo/hollin-bank-farm.ts';
import { shipped } from '../cases/shipped-pack.ts';
import { factIds } from '../fixtures/core-facts.ts';
import { fakeTime } from './support/fake-time.ts';

const { pack } = shipped;
const words =
  'clay loam 9.2 at 30 cm drains not running yes no dont know 11 C -4 mph moist wet wait no, it was 1e999 why do you ask? start again another field 12% ditch 20 m Infinity ½ ٣ 💧 \u202e'.split(
    ' ',
  );
const questionIds = [...pack.questions.map(({ id }) => id), 'no-such-question', '__proto__'];
const choiceIds = [
  ...new Set(pack.questions.flatMap(({ choices }) => choices?.map(({ id }) => id) ?? [])),
  'constructor',
];

/** Something well-formed that a person, or a program gone wrong, might send. */
const doing = fc.oneof(
  fc.record({
    type: fc.constant('say' as const),
    text: fc.oneof(
      fc.array(fc.constantFrom(...words), { minLength: 1, maxLength: 12 }).map((some) => some.join(' ')),
      fc.string({ minLength: 1, maxLength: 100, unit: 'binary' }),
    ),
  }),
  fc.record({
    type: fc.constant('answer' as const),
    question: fc.constantFrom(...questionIds),
    choices: fc.array(fc.constantFrom(...choiceIds), { maxLength: 3 }),
    numbers: fc.dictionary(
      fc.constantFrom<string>(...factIds, 'no.such.fact', 'toString'),
      fc.oneof(fc.integer({ min: -5, max: 20 }), fc.double({ noNaN: true, noDefaultInfinity: true })),
      { maxKeys: 3 },
    ),
    doesNotKnow: fc.boolean(),
  }),
  fc.record({
    type: fc.constant('request' as const),
    request: fc.constantFrom(...clientMessageSchemas.request.shape.request.options),
  }),
  fc.record({ type: fc.constant('undo' as const), of: fc.constantFrom('e1', 'e2', 'e5', 'none') }),
);

describe('a real conversation', () => {
  test('takes whatever is well-formed without a fault, and every view is as the schema has it', async () => {
    const course = fc.tuple(
      fc.constantFrom('mill-piece', 'top-brow', 'long-ing', null),
      fc.array(fc.tuple(doing, fc.integer({ min: -3_600_000, max: 4 * 3_600_000 })), { minLength: 1, maxLength: 12 }),
    );
    await fc.assert(
      fc.asyncProperty(course, async ([field, steps]) => {
        const time = fakeTime();
        let made = 0;
        const conversation = createConversation({
          dialogue: dialogueOver(() => [pack]),
          clock: time.clock,
          newId: () => `made-${++made}`,
          fields: hollinBankFarm,
          packs: [pack],
          forecastService: { forecastFor: () => Promise.reject(new Error('planted')) },
        });
        let count = 0;
        const send = async (message: object, skew: number) => {
          count += 1;
          const stamp = { id: `e${count}`, at: time.clock.now() + skew, device: 'fuzz', count };
          const refused = await conversation.receive({ ...message, ...stamp } as EventMessage);
          await conversation.settled();
          expect(['SERVER_FAULT', 'UNEXPECTED', 'EVALUATORS_DISAGREE']).not.toContain(refused?.code);
          const frame = JSON.stringify({ type: 'view', view: conversation.view(), kept: conversation.events().length });
          expect(parseServerMessage(frame)).toMatchObject({ ok: true });
          expect(frame).not.toMatch(/EVALUATORS_DISAGREE|SERVER_FAULT|\bNaN\b|undefined|\[object/);
        };
        await send({ type: 'start', field }, 0);
        for (const [message, ms] of steps) {
          time.advance(Math.max(0, ms));
          await send(message, Math.min(0, ms) / 1000);
        }
      }),
      { numRuns: 150, seed: 3 },
    );
  });
});
