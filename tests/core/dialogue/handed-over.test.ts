import { describe, expect, test } from 'vitest';
import type { VerdictGivenEvent } from '../../../src/core/dialogue/events.ts';
import { refuseVerdict } from '../../../src/core/dialogue/handed-over.ts';
import { tagOf, verdictIdOf } from '../../../src/core/dialogue/tag.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { choice } from '../../generators/small.ts';
import { fieldLess, fitMorning } from './ready-field.ts';
import { pressed, started, talk } from './talk.ts';

const { pack } = shipped;
const world = { pack, forecast: null };

/** A verdict as a device gave it by itself: wait, since the soil is too dry. */
function given(): VerdictGivenEvent {
  const told = [started(pack, fieldLess(fitMorning, 'soil.feel')), pressed('soil-feel', 'dry')];
  return talk(told, world).state.verdicts[0]!;
}

type Decision = VerdictGivenEvent['decision'];
const having = (more: (decision: Decision) => Partial<Decision>): VerdictGivenEvent => {
  const event = given();
  return { ...event, decision: { ...event.decision, ...more(event.decision) } };
};

describe('an answer that a device hands over', () => {
  test('is taken where the rules at hand come to the same on the facts that it kept', () => {
    expect(refuseVerdict(given(), pack)).toBeNull();
  });

  test.each<[string, () => VerdictGivenEvent, string | RegExp, string | RegExp]>([
    [
      'of other rules',
      () => having(({ pack: stamp }) => ({ pack: { ...stamp, hash: 'other' } })),
      `rules ${pack.hash}`,
      'rules other',
    ],
    [
      'whose facts are not those of its tag',
      () => having(({ facts }) => ({ facts: { ...facts, 'soil.feel': { known: false, reason: 'not-asked' } } })),
      /^tag [0-9a-f]{64} and its id$/,
      /^tag [0-9a-f]{64}, id [0-9a-f-]{36}$/,
    ],
    ['with another tag', () => ({ ...given(), tag: 'other' }), /^tag [0-9a-f]{64} and its id$/, /^tag other, id /],
    ['with another id', () => ({ ...given(), id: 'other' }), /^tag [0-9a-f]{64} and its id$/, /, id other$/],
    ['of another word', () => having(() => ({ verdict: 'spray-today' })), 'wait', 'spray-today'],
    [
      'in which a rule came out differently',
      () =>
        having(({ trace }) => ({
          trace: trace.map((one) => (one.rule === 'soil-too-dry' ? { ...one, outcome: 'not-met' } : one)),
        })),
      'soil-too-dry met',
      'soil-too-dry not-met',
    ],
    [
      'from which a rule was left out',
      () => having(({ trace }) => ({ trace: trace.filter(({ rule }) => rule !== 'too-windy') })),
      'too-windy not-met',
      'too-windy left out',
    ],
  ])('is refused %s, with what was expected and what came', (_, made, expected, came) => {
    const matching = (text: string | RegExp) => (typeof text === 'string' ? text : expect.stringMatching(text));
    expect(refuseVerdict(made(), pack)).toMatchObject({
      code: 'VERDICT_NOT_REPEATED',
      expected: matching(expected),
      came: matching(came),
    });
  });

  test('is refused where facts were changed together with their tag and id', () => {
    const forged = having(({ facts }) => ({ facts: { ...facts, 'soil.feel': choice('moist') } }));
    const tag = tagOf(pack.hash, forged.decision.facts);
    expect(refuseVerdict({ ...forged, tag, id: verdictIdOf(tag) }, pack)).toMatchObject({
      code: 'VERDICT_NOT_REPEATED',
      expected: 'spray-today',
      came: 'wait',
    });
  });

  test('is refused with the fact that the rules cannot read, and is thrown at nobody', () => {
    const forged = having(({ facts }) => ({ facts: { ...facts, 'soil.feel': facts['wind.boomKmh'] } as typeof facts }));
    const tag = tagOf(pack.hash, forged.decision.facts);
    expect(refuseVerdict({ ...forged, tag, id: verdictIdOf(tag) }, pack)).toMatchObject({
      code: 'FACT_MALFORMED',
      fact: 'soil.feel',
    });
  });
});
