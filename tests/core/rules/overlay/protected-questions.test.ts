import { expect, test } from 'vitest';
import type { Reading } from '../../../../src/core/facts/types.ts';
import { protectQuestions } from '../../../../src/core/rules/overlay/protect/protect-questions.ts';
import { collectFindings } from '../../../../src/core/rules/pack/findings.ts';
import type { AnswerChoice, Question } from '../../../../src/core/rules/pack-types.ts';
import { factDefinition } from '../../../fixtures/core-facts.ts';
import { overlayOf, shipped, question as shippedQuestion } from './overlay-of.ts';

// Protected rules of the shipped pack read the wind at the boom; none reads the area of the field.
const [wind, area] = ['wind.boomKmh', 'field.areaHa'] as const;
const answer = (id: string, low: number, high: number, fact: string = wind, label = id): AnswerChoice => {
  const reading: Reading = { type: 'number', value: low, low, high };
  return { id, label: { en: label, de: label }, gives: { [fact]: reading } };
};
const question = (more: Partial<Question> = {}): Question => ({
  ...{ id: 'q', facts: [wind], form: 'number', effortSeconds: 5, group: 'weather', text: {} },
  choices: [answer('calm', 0, 5), answer('windy', 5.01, 20)],
  ...more,
});

/** What is said where a question of the pack (null for none) is given anew, or taken away. */
function said(was: Question | null, is: Question | null): string[] {
  const { findings, report } = collectFindings();
  const pack = (one: Question | null) => ({ ...shipped, questions: one === null ? [] : [one] });
  const parts = is === null ? { removes: { questions: ['q'] } } : { questions: [shippedQuestion('wind', { id: 'q' })] };
  protectQuestions({
    ...{ before: pack(was), after: pack(is), overlay: overlayOf(parts), report },
    ...{ definitionOf: factDefinition, days: ['2026-10-01'] },
  });
  return findings.map(({ code, pointer, expected, came, fact }) => `${code} ${pointer} ${fact}: ${expected}; ${came}`);
}
const fault = (words: string, pointer = '/questions/0') => `OVERLAY_QUESTION_LOOSENED ${pointer} ${wind}: ${words}`;
const shown = (id: string, low: number, high: number, label = id) =>
  `answer ${id} "${label}"/"${label}" {"${wind}":{"high":${high},"low":${low},"type":"number","value":${low}}}`;

test.each<readonly [string, Question | null, Question | null, readonly string[]]>([
  ['stay as it is', question(), question(), []],
  [
    'be asked sooner, in other words and later',
    question(),
    question({ effortSeconds: 60, group: 'crop', picture: 'slope' }),
    [],
  ],
  ['have its answers in another order', question(), question({ choices: question().choices!.toReversed() }), []],
  [
    'have one of its answers shared out',
    question(),
    question({ choices: [answer('calm', 0, 5), answer('fresh', 5.01, 10), answer('strong', 10.01, 20)] }),
    [],
  ],
  [
    'have one more answer that says nothing of protected facts',
    question(),
    question({ choices: [...question().choices!, answer('wide', 1, 2, area)] }),
    [],
  ],
  [
    'be new, for facts that nobody protects',
    null,
    question({ facts: [area], choices: [answer('wide', 1, 2, area)] }),
    [],
  ],
  ['be new, for a protected fact, without an answer that gives it', null, question({ choices: [] }), []],
  ['be new without answers', null, { ...question(), choices: undefined } as unknown as Question, []],
  ['go, where it asks for what nobody protects', question({ facts: [area], choices: [] }), null, []],
])('a question may %s', (_, was, is, findings) => {
  expect(said(was, is)).toEqual(findings);
});

test.each<readonly [string, Question | null, Question | null, readonly string[]]>([
  [
    'be asked in another form',
    question(),
    question({ form: 'choice' }),
    [fault(`form number for ${wind} as shipped; form choice for ${wind}`)],
  ],
  [
    'be asked for the dose alone',
    question(),
    question({ forDose: true }),
    [fault('a question for the verdict too; a question for the dose alone')],
  ],
  [
    'be asked for more facts',
    question(),
    question({ facts: [wind, area] }),
    [fault(`form number for ${wind} as shipped; form number for ${wind}, ${area}`)],
  ],
  [
    'have an answer that gives another band',
    question(),
    question({ choices: [answer('calm', 0, 6), answer('windy', 5.01, 20)] }),
    [
      fault(`${shown('calm', 0, 5)}, or answers that share out its band; ${shown('calm', 0, 6)}`),
      fault(`no readings beyond those as shipped; ${shown('calm', 0, 6)}`),
    ],
  ],
  [
    'have an answer under another label',
    question(),
    question({ choices: [answer('calm', 0, 5, wind, 'fine'), answer('windy', 5.01, 20)] }),
    [fault(`${shown('calm', 0, 5)}, or answers that share out its band; ${shown('calm', 0, 5, 'fine')}`)],
  ],
  [
    'lack an answer',
    question(),
    question({ choices: [answer('calm', 0, 5)] }),
    [fault(`${shown('windy', 5.01, 20)}, or answers that share out its band; no such answer`)],
  ],
  [
    'have one more answer for a protected fact',
    question(),
    question({ choices: [...question().choices!, answer('still', 0, 1)] }),
    [fault(`no readings beyond those as shipped; ${shown('still', 0, 1)}`)],
  ],
  [
    'be new and give a protected fact',
    null,
    question({ choices: [answer('wide', 1, 2, area), answer('calm', 0, 5)] }),
    [
      fault(
        `no readings of a fact that protected rules read; answer calm: {"${wind}":{"high":5,"low":0,"type":"number","value":0}}`,
      ),
    ],
  ],
  [
    'go, where it asks for a protected fact',
    question(),
    null,
    [fault(`question q, which asks for a fact that protected rules read; no such question`, '/removes/questions/0')],
  ],
])('a question may not %s', (_, was, is, findings) => {
  expect(said(was, is)).toEqual(findings);
});

test('what the dose is reckoned from counts as protected', () => {
  const dose = question({ facts: ['weed.plantsPerM2'], choices: [answer('few', 1, 20, 'weed.plantsPerM2')] });
  expect(said(null, dose)).toHaveLength(1);
  expect(
    said(
      null,
      question({ ...dose, facts: ['product.labelMaxGPerHa'], choices: [answer('a', 1, 2, 'product.labelMaxGPerHa')] }),
    ),
  ).toHaveLength(1);
  expect(
    said(
      null,
      question({ ...dose, facts: ['product.activeGPerL'], choices: [answer('a', 1, 2, 'product.activeGPerL')] }),
    ),
  ).toHaveLength(1);
});
