import { describe, expect, test } from 'vitest';
import { deferredFacts } from '../../../src/core/dialogue/deferred.ts';
import type { FactId } from '../../../src/core/facts/registry/index.ts';
import type { ConditionTrace, Outcome, RuleTrace } from '../../../src/core/rules/trace-types.ts';

const compared = (fact: FactId, outcome: Outcome = 'unknown'): ConditionTrace => ({
  kind: 'comparison',
  name: fact,
  fact,
  op: 'is',
  limit: { kind: 'choices', values: [] },
  parameter: null,
  unit: null,
  value: { known: false, reason: 'not-asked' },
  outcome,
  margin: null,
});
const group =
  (kind: 'all' | 'any' | 'eitherOf') =>
  (...members: ConditionTrace[]): ConditionTrace => ({ kind, outcome: 'unknown', members });
const [all, any, either] = [group('all'), group('any'), group('eitherOf')];
const not = (member: ConditionTrace): ConditionTrace => ({ kind: 'not', outcome: 'unknown', member });
const ofRule = (member: ConditionTrace): ConditionTrace => ({
  kind: 'rule',
  rule: 'other',
  outcome: 'unknown',
  member,
});
const settled = (condition: ConditionTrace): ConditionTrace => ({ ...condition, outcome: 'not-met' });

const rule = (condition: ConditionTrace): RuleTrace => ({
  rule: 'r',
  effect: 'hold',
  authority: 'practice',
  lifts: 'hours',
  outcome: condition.outcome,
  facts: [],
  parameters: [],
  margins: [],
  condition,
});

const [feel, trend, wind, gust] = [
  compared('soil.feel'),
  compared('soil.temperatureTrendCPerDay'),
  compared('wind.boomKmh'),
  compared('wind.gustKmh'),
];

describe('facts that wait, since another will be asked anyway that may spare them', () => {
  test.each<[string, ConditionTrace[], FactId[]]>([
    ['nothing where nothing is open', [], []],
    ['nothing for one comparison alone', [feel], []],
    ['nothing for two beside each other that no rule asks alone', [all(feel, wind)], []],
    ['what stands beside a fact that another rule asks anyway', [all(feel, wind), wind], ['soil.feel']],
    ['the same, whichever rule comes first and whichever member', [wind, all(wind, feel)], ['soil.feel']],
    ['nothing where either of two is enough', [any(feel, wind), wind], []],
    ['nothing where a list of either is enough', [either(feel, wind), wind], []],
    ['what stands beside a group that reads a fact asked anyway', [all(feel, any(wind, gust)), gust], ['soil.feel']],
    [
      'each member of a group beside a fact asked anyway',
      [all(wind, any(feel, trend)), wind],
      ['soil.feel', 'soil.temperatureTrendCPerDay'],
    ],
    ['the same under not', [not(all(feel, wind)), wind], ['soil.feel']],
    ['the same within a rule that is referred to', [all(ofRule(feel), wind), wind], ['soil.feel']],
    ['not a fact that one rule spares and another asks alone', [all(feel, wind), wind, feel], []],
    ['not a fact that only one of its two places spares', [all(feel, wind), wind, all(feel, gust)], []],
    ['nothing beside what is settled', [all(feel, compared('wind.boomKmh', 'met')), wind], []],
    ['nothing in a group that is settled', [settled(all(feel, wind)), wind], []],
    ['nothing beside a group that is settled', [all(feel, settled(any(wind, gust))), wind], []],
    [
      'what is beside it two levels further out',
      [all(wind, any(all(feel, gust), trend)), wind],
      ['soil.feel', 'wind.gustKmh', 'soil.temperatureTrendCPerDay'],
    ],
  ])('%s', (_, conditions, facts) => {
    expect([...deferredFacts(conditions.map(rule))].toSorted()).toEqual(facts.toSorted());
  });
});
