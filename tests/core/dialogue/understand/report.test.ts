import { describe, expect, test } from 'vitest';
import { type UnderstandingReport, understandingReport } from '../../../../src/core/dialogue/understand/report.ts';
import type { FactId } from '../../../../src/core/facts/registry/index.ts';
import { against } from './told.ts';

const nothing: UnderstandingReport = {
  facts: {},
  intents: [],
  notUnderstood: [],
  needsConfirming: [],
  offered: {},
  hoursAgo: {},
  supposed: {},
  otherDepths: [],
  correction: false,
  refused: [],
};
const temperature: FactId = 'soil.temperature30cmC';
const about9 = { value: 9, low: 8.5, high: 9.5 };

/** Signs that are there, beside those that may be. */
const signs = (value: readonly string[], ...possible: readonly string[]) => ({ value, possible });

describe('what a text was understood as, in the form of a facts file', () => {
  test.each<[string, Partial<UnderstandingReport>]>([
    ['9 at 30 cm', { facts: { [temperature]: 9 } }],
    ['force 3', { facts: { 'wind.boomKmh': { value: 8, low: 6.51, high: 9.6 } } }],
    ['soil is moist', { facts: { 'soil.feel': 'moist' } }],
    ['loam or clay loam', { facts: { 'field.texture': ['loam', 'clay-loam'] } }],
    [
      'sticky and cracked',
      { facts: { 'soil.surface': signs(['sticky', 'cracked'], 'friable', 'ponded', 'frozen', 'snow') } },
    ],
    [
      'about 9 at 30 cm, moist',
      { facts: { 'soil.feel': 'moist' }, needsConfirming: [temperature], offered: { [temperature]: about9 } },
    ],
    [
      'cracked, maybe sticky, no puddles',
      {
        facts: { 'soil.surface': signs(['cracked'], 'friable', 'sticky', 'frozen', 'snow') },
        needsConfirming: ['soil.surface'],
        offered: { 'soil.surface': signs(['cracked', 'sticky'], 'friable', 'frozen', 'snow') },
      },
    ],
    [
      'maybe cracked, maybe sticky, moist',
      {
        facts: { 'soil.feel': 'moist' },
        needsConfirming: ['soil.surface'],
        offered: { 'soil.surface': signs(['cracked', 'sticky'], 'friable', 'ponded', 'frozen', 'snow') },
      },
    ],
    ['9 at 30 cm yesterday', { facts: { [temperature]: 9 }, hoursAgo: { [temperature]: 24 } }],
    ['11 at 30 cm yesterday, 9 at 30 cm now', { facts: { [temperature]: 9 } }],
    ['9 at 30 cm now, 11 at 30 cm yesterday', { facts: { [temperature]: 9 } }],
    [
      '9 at 30 cm yesterday, maybe 11 at 30 cm now',
      {
        needsConfirming: [temperature],
        offered: { [temperature]: { value: 11, low: 10.5, high: 11.5 } },
      },
    ],
    ['9 at 20 cm at 7 am', { otherDepths: [{ depthCm: 20, value: 9 }] }],
    ['about 9 at 20 cm at 7 am', { otherDepths: [{ depthCm: 20, value: about9 }] }],
    ['9 at 20 cm', { refused: ['DEPTH_NEEDS_HOUR'] }],
    ['xyzzy. help', { intents: ['help'], notUnderstood: ['xyzzy'] }],
    ['what if the soil were 9 at 30 cm?', { intents: ['what-if'], supposed: { [temperature]: 9 } }],
    ['what if the soil were about 9 at 30 cm?', { intents: ['what-if'], supposed: { [temperature]: about9 } }],
  ])('"%s"', (text, report) => {
    expect(understandingReport(text, against(null))).toEqual({ ...nothing, ...report });
  });

  test.each<[string, string | null, readonly FactId[], Partial<UnderstandingReport>]>([
    ['no, 11', null, [temperature], { facts: { [temperature]: 11 }, correction: true }],
    ['what if it were 9?', null, [temperature], { intents: ['what-if'], supposed: { [temperature]: 9 } }],
    ["don't know", 'soil-temperature', [], { intents: ['dont-know'] }],
    ['none', 'surface', [], { facts: { 'soil.surface': [] } }],
    ['none, just cracks', 'surface', [], { facts: { 'soil.surface': ['cracked'] } }],
    [
      'none, maybe cracked',
      'surface',
      [],
      { needsConfirming: ['soil.surface'], offered: { 'soil.surface': ['cracked'] } },
    ],
  ])('"%s" with %j open, after %j', (text, asked, recent, report) => {
    expect(understandingReport(text, against(asked, recent))).toEqual({ ...nothing, ...report });
  });
});
