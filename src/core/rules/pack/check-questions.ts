import type * as z from 'zod';
import { definitionIn, type FactId, type FactRegistry, factIdsOf, isFactOf } from '../../facts/registry/index.ts';
import type { Reading } from '../../facts/types.ts';
import type { AnswerChoice, Question } from '../pack-types.ts';
import { checkLanguages } from './check-texts.ts';
import { inside, type Place, type Report, show } from './findings.ts';
import { parseReading } from './parse-reading.ts';
import { pictureIds } from './picture-ids.ts';
import type { questionsSchema } from './schema.ts';
import { checkStraddle, type LimitsOf } from './straddle.ts';

type RawQuestion = z.output<typeof questionsSchema>['questions'][number];
type RawChoice = NonNullable<RawQuestion['choices']>[number];

/** What questions are checked against. */
export interface QuestionWorld {
  readonly registry: FactRegistry;
  readonly limitsOf: LimitsOf;
}

/** Checks the questions against the registry and the rules' limits, and gives them with their readings parsed. */
export function checkQuestions(
  questions: readonly RawQuestion[],
  file: string,
  languages: readonly string[],
  { registry, limitsOf }: QuestionWorld,
  report: Report,
): Question[] {
  return questions.map((question, index) => {
    const place = { file, path: ['questions', index] };
    question.facts.forEach((fact, at) => {
      if (!isFactOf(registry, fact)) {
        const where = inside(place, 'facts', at);
        report('RULE_FACT_UNKNOWN', where, {
          expected: 'the id of a fact',
          came: show(fact),
          among: factIdsOf(registry),
        });
      }
    });
    checkLanguages(question.text, languages, inside(place, 'text'), report);
    if (question.picture !== undefined && !pictureIds.some((id) => id === question.picture)) {
      const expected = `a drawing that the page has: ${pictureIds.join(', ')}`;
      report('QUESTION_PICTURE_UNKNOWN', inside(place, 'picture'), {
        expected,
        came: show(question.picture),
        among: pictureIds,
      });
    }
    const among = questions.map(({ id }) => id).filter((id) => id !== question.id);
    question.with?.forEach((other, at) => {
      if (among.includes(other)) return;
      const expected = 'the id of another question';
      report('QUESTION_MISFIT', inside(place, 'with', at), { expected, came: show(other), among });
    });
    checkForm(question, registry, place, report);
    const choices = question.choices?.map((choice, at) =>
      checkChoice(choice, question, inside(place, 'choices', at), languages, { registry, limitsOf }, report),
    );
    return { ...question, ...(choices ? { choices } : {}) } as Question;
  });
}

function checkForm(question: RawQuestion, registry: FactRegistry, place: Place, report: Report): void {
  const known = question.facts.filter((fact) => isFactOf(registry, fact));
  const types = known.map((fact) => definitionIn(registry, fact).type);
  const fits = {
    number: types.length === 1 && types[0] === 'number',
    signs: types.includes('signs'),
    choice: question.choices !== undefined,
    place: question.facts.includes('field.latitude') && question.facts.includes('field.longitude'),
  }[question.form];
  if (fits) return;
  const expected = {
    number: 'one number fact for form number',
    signs: 'a fact of signs for form signs',
    choice: 'choices for form choice',
    place: 'field.latitude and field.longitude for form place',
  }[question.form];
  report('QUESTION_MISFIT', inside(place, 'form'), { expected, came: `facts ${question.facts.join(', ')}` });
}

function checkChoice(
  choice: RawChoice,
  question: RawQuestion,
  place: Place,
  languages: readonly string[],
  { registry, limitsOf }: QuestionWorld,
  report: Report,
): AnswerChoice {
  checkLanguages(choice.label, languages, inside(place, 'label'), report);
  if (choice.help) checkLanguages(choice.help, languages, inside(place, 'help'), report);
  const gives: [FactId, Reading][] = [];
  for (const [fact, json] of Object.entries(choice.gives)) {
    const at = inside(place, 'gives', fact);
    if (!question.facts.includes(fact) || !isFactOf(registry, fact)) {
      const expected = `a fact of the question: ${question.facts.join(', ')}`;
      report('QUESTION_MISFIT', at, { expected, came: show(fact), among: question.facts });
      continue;
    }
    const reading = parseReading(json, fact, definitionIn(registry, fact), at, report);
    if (!reading) continue;
    checkStraddle(reading, fact, limitsOf(fact), { question: question.id, choice: choice.id }, at, report);
    gives.push([fact, reading]);
  }
  return { ...choice, gives: Object.fromEntries(gives) } as AnswerChoice;
}
