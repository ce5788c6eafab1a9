import { expect, test } from 'vitest';
import { understandingReport } from '../../../../src/core/dialogue/understand/report.ts';
import { shipped } from '../../../cases/shipped-pack.ts';

const { pack } = shipped;

function reported(text: string, fact: string | null) {
  const asked = pack.questions.find(({ facts }) => facts.some((id) => id === fact)) ?? null;
  return understandingReport(text, { asked, pack, recent: [], language: 'en' });
}

const signs = (...value: readonly string[]) => expect.objectContaining({ value });

test('a doubtful sign beside a sure one is offered with it, and the sure one is taken alone', () => {
  const { facts, offered, needsConfirming } = reported('crumbly but might be cracked', 'soil.surface');
  expect(facts).toEqual({ 'soil.surface': signs('friable') });
  expect(offered).toEqual({ 'soil.surface': signs('friable', 'cracked') });
  expect(needsConfirming).toEqual(['soil.surface']);
});

test('"none of those" and then one sign is that sign and no other', () => {
  expect(reported("none of those, it's just crumbly", 'soil.surface').facts).toEqual({ 'soil.surface': ['friable'] });
});

test.each([
  ['mostly flat', 'field.slopePercent'],
  ['bit of a bank at one end, otherwise flat', 'field.slopePercent'],
  ["some's drained some isn't", 'field.drained'],
  ["boom's 36 metres", 'field.waterDistanceM'],
  ['three leaves on the blackgrass', 'crop.trueLeaves'],
  ['crumbles', 'soil.feel'],
  ['dried out nicely', 'soil.feel'],
  ['if it rains they will', 'soil.drainsExpected7d'],
  ['there is a pond at the bottom', 'field.waterDistanceM'],
])('"%s" settles nothing of %s: it is asked again', (text, fact) => {
  expect(reported(text, fact).facts).not.toHaveProperty([fact]);
});

test('what lies off the ditch is how far the field is, not where the wind blows', () => {
  expect(reported('the far end is 20 m off the ditch', 'field.waterDistanceM').facts).toEqual({
    'field.waterDistanceM': 20,
  });
});

test('a couple of hundred is two hundred, from half a hundred less to half a hundred more', () => {
  expect(reported('a couple of hundred metres to the brook', 'field.waterDistanceM').facts).toEqual({
    'field.waterDistanceM': { value: 200, low: 150, high: 250 },
  });
});
