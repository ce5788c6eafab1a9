import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { judge, type Utterance } from './score.ts';

const utterances = (name: string) =>
  JSON.parse(readFileSync(join(import.meta.dirname, 'written-apart', name), 'utf8')) as readonly Utterance[];

/** Precision and recall over all items of a corpus. */
function scoreOf(name: string): { precision: number; recall: number } {
  const scores = utterances(name).map((utterance) => judge(utterance, 'en'));
  const sum = (part: 'read' | 'right' | 'meant') => scores.reduce((total, score) => total + score[part], 0);
  return { precision: sum('right') / sum('read'), recall: sum('right') / sum('meant') };
}

describe('English utterances written by somebody else', () => {
  test.each([
    { name: 'dev.en.json', leastPrecision: 0.995, leastRecall: 0.99 },
    { name: 'set-aside.en.json', leastPrecision: 0.977, leastRecall: 0.888 },
  ])('of $name little is taken wrongly and little is missed', ({ name, leastPrecision, leastRecall }) => {
    const { precision, recall } = scoreOf(name);
    expect(precision).toBeGreaterThanOrEqual(leastPrecision);
    expect(recall).toBeGreaterThanOrEqual(leastRecall);
  });

  test('together with the tables of the grammar they are more than 400', () => {
    expect(utterances('dev.en.json').length + utterances('set-aside.en.json').length).toBeGreaterThan(400);
  });
});
