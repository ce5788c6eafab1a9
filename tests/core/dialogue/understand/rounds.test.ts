import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { judge, type Utterance } from './score.ts';

const utterances = (language: string) =>
  JSON.parse(readFileSync(join(import.meta.dirname, 'rounds', `${language}.json`), 'utf8')) as readonly Utterance[];

describe('Utterances written in rounds', () => {
  test.each([
    { language: 'en', leastPrecision: 0.995, leastRecall: 0.95 },
    { language: 'de', leastPrecision: 0.99, leastRecall: 0.94 },
  ])('in $language hardly one is taken wrongly and few are missed', ({ language, leastPrecision, leastRecall }) => {
    const scores = utterances(language).map((utterance) => judge(utterance, language));
    const sum = (part: 'read' | 'right' | 'meant') => scores.reduce((total, score) => total + score[part], 0);
    expect(sum('right') / sum('read')).toBeGreaterThanOrEqual(leastPrecision);
    expect(sum('right') / sum('meant')).toBeGreaterThanOrEqual(leastRecall);
  });
});
