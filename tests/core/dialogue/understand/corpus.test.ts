import { describe, expect, test } from 'vitest';
import { cropAndTreatment } from './corpus/crop-and-treatment.ts';
import { depthsAndTimes } from './corpus/depths-and-times.ts';
import { field } from './corpus/field.ts';
import { measured } from './corpus/measured.ts';
import { negation } from './corpus/negation.ts';
import { never } from './corpus/never.ts';
import { reach } from './corpus/reach.ts';
import { refused } from './corpus/refused.ts';
import { saidOn } from './corpus/said-on.ts';
import { sentences } from './corpus/sentences.ts';
import { several } from './corpus/several.ts';
import { shortAnswers } from './corpus/short-answers.ts';
import { soil } from './corpus/soil.ts';
import { soilTemperature } from './corpus/soil-temperature.ts';
import { together } from './corpus/together.ts';
import { weather } from './corpus/weather.ts';
import { wishesAndCorrections } from './corpus/wishes-and-corrections.ts';
import { told } from './told.ts';

const tables = {
  soilTemperature,
  soil,
  field,
  cropAndTreatment,
  weather,
  several,
  saidOn,
  sentences,
  together,
  measured,
  reach,
  shortAnswers,
  depthsAndTimes,
  negation,
  wishesAndCorrections,
  refused,
  never,
};

describe('each utterance comes to exactly what the table says', () => {
  for (const [name, rows] of Object.entries(tables)) {
    const named = rows.map(([asked, say, meant, recent = []]) => ({ asked, say, meant, recent }));
    test.each(named)(`${name}: with $asked open, "$say"`, ({ asked, say, meant, recent }) => {
      expect(told(asked, say, recent)).toBe(meant);
    });
  }
});

describe('the tables', () => {
  test('hold at least 200 utterances, of which at least 60 are never read', () => {
    expect(Object.values(tables).flat().length).toBeGreaterThanOrEqual(200);
    expect(never.length).toBeGreaterThanOrEqual(60);
  });

  test('what is never read comes to no reading, no wish and no correction', () => {
    expect(
      never.filter(([, , meant]) => /[a-zA-Z0-9]+\.[a-zA-Z0-9]+=|^!|; !|~|#/.test(meant.replaceAll(/"[^"]*"/g, ''))),
    ).toEqual([]);
  });
});
