import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { openQuestion } from '../../../src/core/dialogue/open-question.ts';
import { standingOf } from '../../../src/core/dialogue/standing.ts';
import { verdictWord } from '../../../src/core/verdict/verdict-of.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { factDefinition } from '../../fixtures/core-facts.ts';
import { answerOf, people } from './answers.ts';
import { fieldLess, fitMorning } from './ready-field.ts';
import { look, pressed, requested, started, type Told, talk } from './talk.ts';

const { pack } = shipped;
const world = { pack, forecast: null };
const begin = started(pack, fieldLess(fitMorning, 'soil.feel'));
const change = (fact: string): Told => ({ kind: 'requested', request: 'change', fact });

describe('an earlier answer is changed', () => {
  test('its question opens again with the answer that stands, and the verdict stands until it is answered', () => {
    const view = look(talk([begin, pressed('soil-feel', 'dry'), change('soil.feel')], world), pack);
    expect(view.question).toMatchObject({ id: 'soil-feel', before: 'So far: dry.' });
    expect(view.verdict?.verdict).toBe('wait');
    expect(view.said.find(({ fact }) => fact === 'soil.feel')).toMatchObject({ canChange: true });
  });

  test('the verdict follows and the difference is said', () => {
    const told = [begin, pressed('soil-feel', 'dry'), change('soil.feel'), pressed('soil-feel', 'moist')];
    const view = look(talk(told, world), pack);
    expect(view.question).toBeNull();
    expect(view.verdict?.change).toMatch(/^It was wait; now spray today, because no longer in the way: /);
  });

  test('it can be left as it is', () => {
    const told = [begin, pressed('soil-feel', 'dry'), change('soil.feel'), requested('keep')];
    const view = look(talk(told, world), pack);
    expect(view.question).toBeNull();
    expect(view.verdict?.verdict).toBe('wait');
    expect(view.entries.at(-1)).toMatchObject({ text: 'Left as it is.' });
  });

  test.each(['air.deltaTC', 'no.such'])('nothing opens for %s, which no question asks for', (fact) => {
    expect(openQuestion(talk([begin, change(fact)], world).state, pack)).toMatchObject({ isChange: false });
  });

  test('an answer changed gives the verdict of having said it first', () => {
    const asked = pack.questions.filter(({ forDose, form }) => forDose !== true && form !== 'place');
    const drawn = fc.tuple(people, people, fc.constantFrom(...asked));
    fc.assert(
      fc.property(drawn, ([one, other, question]) => {
        const index = pack.questions.indexOf(question);
        const [first, second] = [one, other].map((person) => answerOf({ ...person, unsure: 0 }, question, index));
        const fact = question.facts[0] ?? '';
        const field = started(pack, fieldLess(fitMorning, ...question.facts));
        const end = (told: readonly Told[]) => {
          const { state } = talk(told, world);
          const standing = standingOf(state, pack);
          const outcomes = standing?.trace.map(({ rule, outcome }) => [rule, outcome]);
          return { outcomes, verdict: verdictWord(standing?.trace ?? []), open: openQuestion(state, pack)?.id ?? null };
        };
        expect(end([field, first!, change(fact), second!]), factDefinition(question.facts[0]!).label).toEqual(
          end([field, second!]),
        );
      }),
      { numRuns: 60 },
    );
  });
});
