import { expect, test } from 'vitest';
import type { Change } from '../../../../src/core/rules/mutate/types.ts';
import type { AppliedOverlay, Pack, PackCase } from '../../../../src/core/rules/pack-types.ts';
import { resolveCase } from '../../../../src/core/rules/resolve-case.ts';
import type { Condition, Rule } from '../../../../src/core/rules/types.ts';
import { killOf } from '../../../../src/core/verdict/cases/kill.ts';
import { traceCases } from '../../../../src/core/verdict/cases/trace-cases.ts';
import { casesThatHold, someCaseNotices } from '../../../../src/core/verdict/cases/try-rules.ts';
import { factDefinition } from '../../../fixtures/core-facts.ts';
import { holdRule, tenSigns } from '../../../generators/small.ts';
import { calm, mini, trying } from './calm-day.ts';

function sayChange({ kind, before, after }: Change): string {
  if ('value' in after) return `limit ${before.id}: ${JSON.stringify(after.value)}`;
  const { effect, lifts, when } = after;
  return `${kind} of ${before.id}: ${kind === 'effect' || kind === 'lifts' ? `${effect}, ${lifts}` : JSON.stringify(when)}`;
}

test('each change that one calm day does not notice stands on a page, with the case that would notice it', async () => {
  const { survivors, equal, changes, cases } = trying([calm]);
  const lines = survivors.map(({ change, kill, facts, base }) => {
    const { file, at, name, expect: expected } = kill ?? { name: 'no case', file: '', at: '', expect: {} };
    const told = [
      `  ${name}`,
      `  ${file} at ${at ?? 'no moment'}, from ${base}, where it matters ${JSON.stringify(facts)}`,
    ];
    return [sayChange(change), ...told, `  expects ${JSON.stringify(expected)}`].join('\n');
  });
  const head = `${survivors.length} of ${changes} changes, ${cases} case; equal: ${equal.map(sayChange).join('; ') || 'none'}`;
  await expect(`${[head, ...lines].join('\n')}\n`).toMatchFileSnapshot('survivors.txt');
});

test('of cases, those of a day on which a limit does not hold are left out and told, with the first such limit', () => {
  const early: PackCase = { ...calm, name: 'early', at: '2019-12-31T09:00:00Z' };
  const earlier: PackCase = { ...calm, name: 'earlier', at: '2018-01-01T09:00:00Z', expect: { verdict: 'wait' } };
  const only = mini({
    rules: mini().rules.slice(0, 1),
    parameters: mini().parameters.map((one) => (one.id === 'windMostKmh' ? one : { ...one, validFrom: '2000-01-01' })),
  });
  const tried = trying([early, calm, earlier], only);
  expect(tried.unjudged).toEqual([
    { one: early, day: '2019-12-31', parameter: 'windMostKmh' },
    { one: earlier, day: '2018-01-01', parameter: 'windMostKmh' },
  ]);
  expect([tried.cases, tried.failing]).toEqual([1, []]);
  expect(trying([early], only)).toMatchObject({ cases: 0, changes: 0, survivors: [], equal: [] });
  const wrong: PackCase = { ...calm, name: 'wrong', expect: { verdict: 'wait' } };
  expect(casesThatHold(only, [early, wrong, calm]).map(({ name }) => name)).toEqual(['a calm day', 'early']);
});

test('in a pack with overlays only what they gave is changed', () => {
  const changed = { parameters: ['windMostKmh'], rules: ['too-dry'], questions: [], cautions: [], glossary: [] };
  const overlay: AppliedOverlay = {
    ...{ id: 'farm', title: { en: 'F' }, author: 'A', place: 'P', reason: 'r', validFrom: '2026-01-01', hash: '' },
    ...{ layer: 'farm', changed, fixed: [] },
  };
  const { survivors, changes } = trying([calm], mini({ overlays: [overlay] }));
  expect(changes).toBeGreaterThan(10);
  expect(new Set(survivors.map(({ change }) => change.before.id))).toEqual(new Set(['windMostKmh', 'too-dry']));
  const none = { ...overlay, changed: { ...changed, parameters: [], rules: [] } };
  expect(trying([calm], mini({ overlays: [none] })).changes).toBe(0);
  expect(trying([calm], mini({ overlays: [none, overlay] })).changes).toBe(changes);
});

test('where no case is a day on which all is well, the fullest is taken, and without any the first day of the latest limit', () => {
  const pack = mini();
  const rule = pack.rules.find(({ id }) => id === 'too-windy')!;
  const change: Change = { kind: 'effect', before: rule, after: { ...rule, effect: 'stop' } };
  const resolved = (cases: readonly PackCase[]) =>
    killOf(change, {
      pack,
      definitionOf: factDefinition,
      cases: cases.map((one) => ({ one, day: one.at?.slice(0, 10) ?? '', facts: {} })),
    });
  const wet: PackCase = {
    ...calm,
    name: 'wet',
    facts: { ...calm.facts, 'soil.feel': 'wet', 'field.areaHa': 3 },
    expect: { verdict: 'wait' },
  };
  expect(resolved([wet, calm])).toMatchObject({ base: 'a calm day' });
  expect(resolved([{ ...calm, expect: { verdict: 'wait' } }, wet])).toMatchObject({ base: 'wet' });
  expect(resolved([])).toMatchObject({
    base: '',
    kill: { file: '', facts: { date: '2020-01-01' }, expect: { verdict: 'wait' } },
  });
});

test('a limit by which facts are worked out too is tried on facts worked out anew', () => {
  const [first] = mini().parameters;
  const before = { ...first!, id: 'noFrostAboveC', value: 4, unit: 'C' };
  const after = { ...before, value: 4.1 };
  const chilly = holdRule('chilly', { fact: 'air.temperatureC', below: 'noFrostAboveC' });
  const rules = [
    { ...chilly, effect: 'advise' as const, lifts: null },
    holdRule('frost', { fact: 'crop.frostOnLeaves', is: 'yes' }),
  ];
  const pack = mini({ rules, parameters: [...mini().parameters.filter(({ id }) => id !== before.id), before] });
  const notices = (temperature: number) => {
    const one: PackCase = { ...calm, facts: { 'air.temperatureC': temperature } };
    const traced = traceCases(pack, [resolveCase(one, pack)]);
    return [
      traced[0]?.trace.map(({ outcome }) => outcome),
      someCaseNotices(pack, { kind: 'limit', before, after }, traced),
    ];
  };
  expect(notices(4.05)).toEqual([['not-met', 'not-met'], true]);
  expect(notices(5)).toEqual([['not-met', 'not-met'], false]);
});

test('what cannot be gone through whole is never called equal', () => {
  const [first, ...rest] = tenSigns.map((fact): Condition => ({ fact, is: 'yes' })) as [Condition, ...Condition[]];
  const turned: Condition = { not: { fact: tenSigns[0], isNot: 'yes' } };
  const change = (count: number): readonly [Pack, Change] => {
    const before = holdRule('many', { any: [first, ...rest.slice(0, count)] });
    const pack = mini({ rules: [before] });
    return [pack, { kind: 'negation', before, after: { ...before, when: { any: [turned, ...rest.slice(0, count)] } } }];
  };
  const told = ([pack, one]: readonly [Pack, Change]) => killOf(one, { pack, cases: [], definitionOf: factDefinition });
  expect(told(change(3))).toBe('equal');
  expect(told(change(9))).toEqual({ kill: null, facts: {}, base: '' });
});

test('rules that cannot be compiled for another reason than a limit are a fault, not a case left out', () => {
  const pack = mini({ rules: [holdRule('lost', { rule: 'gone' })] });
  expect(() => trying([calm], pack)).toThrow('RULE_REFERENCE_MISSING');
});

test('where only what is not known shows a change, the case that would notice it goes without that fact', () => {
  const pack = mini();
  const before = pack.rules.find(({ id }) => id === 'too-dry')!;
  const members = 'eitherOf' in before.when ? before.when.eitherOf : [];
  const change: Change = { kind: 'connective', before, after: { ...before, when: { any: members } } };
  const known: PackCase = { ...calm, facts: { ...calm.facts, 'soil.fieldCapacityPercent': 90 } };
  const cases = [resolveCase(known, pack)];
  const found = killOf(change, { pack, cases, definitionOf: factDefinition });
  expect(found).toMatchObject({
    kill: { name: 'too-dry: soil.feel "moist", soil.fieldCapacityPercent ?', expect: { notMet: ['too-dry'] } },
    facts: { 'soil.feel': 'moist', 'soil.fieldCapacityPercent': null },
  });
  expect(found !== 'equal' && found.kill?.facts).toEqual(calm.facts);
});

test('where the plainest way is hidden by another rule of the day, the next one is the case', () => {
  const both: Condition = {
    any: [
      { fact: 'treatment.alreadyApplied', is: 'yes' },
      { fact: 'field.bufferMarked', is: 'yes' },
    ],
  };
  const before = holdRule('both', both);
  const stop: Rule = { ...holdRule('drained', { fact: 'treatment.alreadyApplied', is: 'yes' }), effect: 'stop' };
  const change: Change = { kind: 'effect', before, after: { ...before, effect: 'stop' } };
  const pack = mini({ rules: [before, stop] });
  const found = killOf(change, { pack, cases: [resolveCase(calm, pack)], definitionOf: factDefinition });
  expect(found).toMatchObject({ facts: { 'treatment.alreadyApplied': 'no', 'field.bufferMarked': 'yes' } });
  expect(found).toMatchObject({ kill: { expect: { verdict: 'wait', met: ['both'] } } });
});
