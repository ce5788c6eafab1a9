import { describe, expect, test } from 'vitest';
import { localDate } from '../../../src/core/facts/local-day.ts';
import { definitionsOf, type FactId } from '../../../src/core/facts/registry/index.ts';
import type { ResolvedFacts } from '../../../src/core/facts/resolved.ts';
import { knownCellsOf } from '../../../src/core/rules/analyse/known-cells.ts';
import { compileRules } from '../../../src/core/rules/compile.ts';
import { evaluateChecked } from '../../../src/core/rules/evaluate-checked.ts';
import type { Question } from '../../../src/core/rules/pack-types.ts';
import { comparisonsIn, comparisonsOf } from '../../../src/core/rules/reads.ts';
import { evaluateRule } from '../../../src/core/rules/reference.ts';
import type { CompiledRule } from '../../../src/core/rules/types.ts';
import { factsAfter } from '../../../src/core/tour/answer-effect.ts';
import { answersOf } from '../../../src/core/tour/answers.ts';
import { makeTour, tourMoment } from '../../../src/core/tour/make-tour.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { shipped } from '../../cases/shipped-pack.ts';

const { pack } = shipped;
const definitionOf = definitionsOf(pack.facts);

/** All made anew in each test, so that each is seen to reach what it checks. */
function made() {
  const at = tourMoment(pack, epochSeconds(0));
  const compiled = compileRules(pack, localDate(at, pack.zone));
  const world = { pack, compiled, at };
  return { compiled, world, tour: makeTour(world) };
}

/** The answers of a question as given and as the tour tells them. */
function answersTo(id: string, { compiled, tour }: ReturnType<typeof made>) {
  const question = pack.questions.find((one) => one.id === id)!;
  const told = tour.steps.find((step) => step.question === id)!.answers;
  return answersOf(question, compiled, definitionOf).map(({ gives }, index) => ({ gives, told: told[index]! }));
}

const factsRead = new Set(pack.rules.flatMap(({ when }) => comparisonsOf(when, new Map()).map(({ fact }) => fact)));
const isRead = ({ facts }: Question) => facts.some((fact) => factsRead.has(fact));
const questions = pack.questions.filter(isRead).map(({ id }) => id);
const unread = pack.questions.filter((question) => !isRead(question)).map(({ id }) => id);

/** Facts completed in every way that makes a difference to one rule. */
function* completions(facts: ResolvedFacts, rule: CompiledRule, open: readonly FactId[]): Generator<ResolvedFacts> {
  const [first, ...rest] = open;
  if (first === undefined) return yield facts;
  const comparisons = comparisonsIn(rule.condition).filter(({ fact }) => fact === first);
  for (const cell of knownCellsOf(definitionOf(first), comparisons) ?? []) {
    yield* completions({ ...facts, [first]: cell }, rule, rest);
  }
}

describe('the tour of the shipped pack', () => {
  test('asks every question once, cheap ones first and those for the dose last', () => {
    const { tour } = made();
    expect(tour.steps.map(({ question }) => question).sort()).toEqual(pack.questions.map(({ id }) => id).sort());
    expect(tour.steps.map(({ number }) => number)).toEqual(tour.steps.map((_, index) => index + 1));
    const dose = tour.steps.map(({ forDose }) => forDose);
    expect(dose.indexOf(true)).toBe(dose.lastIndexOf(false) + 1);
  });

  test('names every rule, at a question or at a fact that nobody is asked for', () => {
    const { tour } = made();
    const named = new Set([...tour.steps, ...tour.unasked].flatMap(({ rules }) => rules));
    expect([...named].sort()).toEqual(pack.rules.map(({ id }) => id).sort());
  });

  test('cuts the soil temperature at its limits and nowhere else', () => {
    const { tour } = made();
    const step = tour.steps.find(({ question }) => question === 'soil-temperature')!;
    expect(step.answers.map(({ shape }) => shape)).toMatchObject([
      { from: null, to: 9, withTo: true },
      { from: 9, to: 10, withFrom: false, withTo: true },
      { from: 10, to: null, withFrom: false },
    ]);
  });

  test.each(questions)('says of each answer to %s what both evaluators say', async (question) => {
    const all = made();
    for (const { gives, told } of answersTo(question, all)) {
      const trace = await evaluateChecked(all.compiled, factsAfter(gives, all.world));
      for (const { rule, outcome } of told.rules) {
        expect(trace.find((one) => one.rule === rule)?.outcome, `${rule} ${JSON.stringify(told.shape)}`).toBe(outcome);
      }
    }
  });

  test.each(questions)('says of each answer to %s only what is so whatever else comes', (question) => {
    const all = made();
    for (const { gives, told } of answersTo(question, all)) {
      const facts = factsAfter(gives, all.world);
      for (const { rule: id, outcome, waitsFor } of told.rules) {
        const rule = all.compiled.rules.find((one) => one.rule.id === id)!;
        const outcomes = new Set<string>();
        for (const known of completions(facts, rule, waitsFor)) outcomes.add(evaluateRule(rule, known).outcome);
        expect([...outcomes].sort(), id).toEqual(outcome === 'unknown' ? ['met', 'not-met'] : [outcome]);
      }
    }
  });

  test.each(unread)('says nothing of rules at the answers to %s, which no rule reads', (question) => {
    expect(answersTo(question, made()).flatMap(({ told }) => told.rules)).toEqual([]);
  });

  test('leaves no rule out whose outcome an answer changes', () => {
    const all = made();
    const { compiled, world } = all;
    const nothing = factsAfter({}, world);
    for (const { gives, told } of pack.questions.flatMap(({ id }) => answersTo(id, all))) {
      const facts = factsAfter(gives, world);
      const changed = compiled.rules.filter(
        (rule) => evaluateRule(rule, facts).outcome !== evaluateRule(rule, nothing).outcome,
      );
      const named = told.rules.map(({ rule }) => rule);
      expect(named).toEqual(expect.arrayContaining(changed.map(({ rule }) => rule.id)));
    }
  });

  test('says where the conversation ends, where it waits and where it goes on', () => {
    const { tour } = made();
    const goesOn = (question: string, choice: string) =>
      tour.steps
        .find((step) => step.question === question)
        ?.answers.find(({ shape }) => shape.kind === 'choice' && shape.choice === choice)?.after;
    expect(goesOn('already-applied', 'yes')).toBe('ends');
    expect(goesOn('already-applied', 'no')).toBe('asks-on');
    expect(goesOn('soil-feel', 'dry')).toBe('waits');
    expect(goesOn('soil-feel', 'moist')).toBe('asks-on');
  });

  test('closes a question only where no rule that is still open needs it', () => {
    const { tour } = made();
    const outside = tour.steps
      .find(({ question }) => question === 'drained')!
      .answers.find(({ shape }) => shape.kind === 'choice' && shape.choice === 'no')!;
    expect(outside.closes).toContain('drains-running');
    expect(outside.closes).not.toContain('surface');
  });
});
