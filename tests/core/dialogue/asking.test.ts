import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { openQuestion } from '../../../src/core/dialogue/open-question.ts';
import { standingOf } from '../../../src/core/dialogue/standing.ts';
import { viewSchema } from '../../../src/core/protocol/view-schema.ts';
import { evaluateWithEngine } from '../../../src/core/rules/engine.ts';
import { verdictWord } from '../../../src/core/verdict/verdict-of.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { answerOf, people } from './answers.ts';
import { canMatter } from './can-matter.ts';
import { interview, openings } from './interview.ts';
import { look } from './talk.ts';

const { pack } = shipped;
const opened = fc.tuple(people, openings);

describe('whatever is answered, in whatever way', () => {
  test('the conversation ends, with nothing asked twice, and its verdict is that of the rules on the same facts', () => {
    fc.assert(
      fc.property(opened, ([person, opening]) => {
        const { conversation, put } = interview(person, opening);
        const ids = put.map(({ question }) => question.id);
        expect(ids).toEqual([...new Set(ids)]);
        const standing = standingOf(conversation.state, pack);
        const last = conversation.state.verdicts.at(-1);
        expect(openQuestion(conversation.state, pack)).toBeNull();
        expect(last?.tag).toBe(standing?.tag);
        expect(last?.decision.verdict).toBe(verdictWord(standing?.trace ?? []));
        const view = look(conversation, pack, 2);
        expect(viewSchema.parse(JSON.parse(JSON.stringify(view)))).toEqual(view);
        expect(view.verdict?.rules.map(({ rule }) => rule)).toEqual(standing?.trace.map(({ rule }) => rule));
      }),
      { numRuns: 50 },
    );
  });

  test('what is told unasked is never asked, and the order of telling does not change the verdict', () => {
    const volunteered = fc.tuple(people, openings, fc.shuffledSubarray([...pack.questions.keys()], { maxLength: 14 }));
    fc.assert(
      fc.property(volunteered, ([person, opening, order]) => {
        const tell = (indexes: readonly number[]) =>
          indexes.map((index) => answerOf(person, pack.questions[index] ?? pack.questions[0]!, index));
        const one = interview(person, opening, tell(order));
        const other = interview(person, opening, tell(order.toReversed()));
        const told = order.map((index) => pack.questions[index]?.id);
        expect(one.put.map(({ question }) => question.id).filter((id) => told.includes(id))).toEqual([]);
        const verdicts = [one, other].map(({ conversation }) => conversation.state.verdicts.at(-1)?.decision.verdict);
        expect(verdicts[1]).toBe(verdicts[0]);
      }),
      { numRuns: 25 },
    );
  });

  test('each question could, when it was put, change the verdict or what the person can settle', () => {
    fc.assert(
      fc.property(opened, ([person, opening]) => {
        for (const { question, standing } of interview(person, opening).put) {
          expect(question.forDose).toBeUndefined();
          expect(canMatter(question, standing, opening.rest), question.id).toBe(true);
        }
      }),
      { numRuns: 15 },
    );
  });

  test('the engine agrees with the verdict that was given', async () => {
    await fc.assert(
      fc.asyncProperty(opened, async ([person, opening]) => {
        const standing = standingOf(interview(person, opening).conversation.state, pack);
        if (standing === null) throw new Error('no standing');
        const outcomes = await evaluateWithEngine(standing.compiled, standing.facts);
        expect(standing.trace.map(({ rule, outcome }) => [rule, outcome])).toEqual([...outcomes]);
      }),
      { numRuns: 15 },
    );
  });
});
