import type { AnswerChoice, Question } from '../../pack-types.ts';
import { canonical, liesWithin, splitAnswer } from './split-answers.ts';
import { type ProtectWorld, placeIn, protectedFacts } from './world.ts';

/** Facts that the dose is reckoned from: the label limits it. */
const doseReads = ['weed.plantsPerM2', 'product.activeGPerL', 'product.labelMaxGPerHa'];

/**
 * Reports questions of an overlay by which a fact that protected rules read could be told better than before: where the pack asks
 * for one, its answers, their words and the readings that they give stay as shipped, or share out the band of one between them; a new
 * question gives no readings for one.
 */
export function protectQuestions(world: ProtectWorld): void {
  const { before, after, overlay, report, days, definitionOf } = world;
  const facts = new Set<string>([...doseReads, ...days.flatMap((day) => [...protectedFacts(before, day)])]);
  const shipped = new Map(before.questions.map((question) => [question.id, question]));
  const now = new Map(after.questions.map((question) => [question.id, question]));
  for (const id of new Set([
    ...(overlay.content.questions ?? []).map((one) => one.id),
    ...(overlay.content.removes?.questions ?? []),
  ])) {
    const was = shipped.get(id);
    const is = now.get(id);
    const touched = [...(was?.facts ?? []), ...(is?.facts ?? [])].find((fact) => facts.has(fact));
    if (touched === undefined) continue;
    const fault = (expected: string, came: string): void => {
      report('OVERLAY_QUESTION_LOOSENED', placeIn(overlay, 'questions', id), { expected, came, fact: touched });
    };
    if (!is) fault(`question ${id}, which asks for a fact that protected rules read`, 'no such question');
    else if (!was) checkNew(is, facts, fault);
    else checkReplaced(was, is, { facts, definitionOf }, fault);
  }
}

interface AskedWorld {
  readonly facts: ReadonlySet<string>;
  readonly definitionOf: ProtectWorld['definitionOf'];
}

type Fault = (expected: string, came: string) => void;

function checkNew({ choices = [] }: Question, facts: ReadonlySet<string>, fault: Fault): void {
  const giving = choices.find((choice) => givenOf(choice, facts) !== '{}');
  if (giving)
    fault('no readings of a fact that protected rules read', `answer ${giving.id}: ${givenOf(giving, facts)}`);
}

function checkReplaced(was: Question, is: Question, { facts, definitionOf }: AskedWorld, fault: Fault): void {
  if (was.form !== is.form || was.facts.join() !== is.facts.join()) {
    fault(`form ${was.form} for ${was.facts.join(', ')} as shipped`, `form ${is.form} for ${is.facts.join(', ')}`);
  }
  if (was.forDose !== is.forDose) fault(sayUse(was), sayUse(is));
  const given = is.choices ?? [];
  const isKept = (choice: AnswerChoice, among: readonly AnswerChoice[]) =>
    among.some(
      ({ id, ...other }) => id === choice.id && sayAnswer({ id, ...other }, facts) === sayAnswer(choice, facts),
    );
  const fresh = given.filter((choice) => !isKept(choice, was.choices ?? []));
  const used = new Set<AnswerChoice>();
  for (const choice of was.choices ?? []) {
    if (isKept(choice, given)) continue;
    const parts = fresh.filter((part) => liesWithin(part, choice, facts));
    for (const part of parts) used.add(part);
    if (splitAnswer(choice, parts, facts, definitionOf)) continue;
    const came = given.find(({ id }) => id === choice.id);
    fault(
      `answer ${choice.id} ${sayAnswer(choice, facts)}, or answers that share out its band`,
      came ? `answer ${came.id} ${sayAnswer(came, facts)}` : 'no such answer',
    );
  }
  const further = fresh.find((choice) => !used.has(choice) && givenOf(choice, facts) !== '{}');
  if (further) fault('no readings beyond those as shipped', `answer ${further.id} ${sayAnswer(further, facts)}`);
}

function sayUse({ forDose }: Question): string {
  return forDose ? 'a question for the dose alone' : 'a question for the verdict too';
}

function sayAnswer(choice: AnswerChoice, facts: ReadonlySet<string>): string {
  const labels = Object.keys(choice.label).sort();
  return `${labels.map((language) => `"${choice.label[language]}"`).join('/')} ${givenOf(choice, facts)}`;
}

/** The readings of an answer for some facts, keys in order. */
function givenOf({ gives }: AnswerChoice, facts: ReadonlySet<string>): string {
  const entries = Object.entries(gives).filter(([fact]) => facts.has(fact));
  const sorted = entries.sort(([a], [b]) => (a < b ? -1 : 1));
  return `{${sorted.map(([fact, reading]) => `"${fact}":${canonical(reading)}`).join()}}`;
}
