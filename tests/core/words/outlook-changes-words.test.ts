import { describe, expect, test } from 'vitest';
import type { FallThrough, NeededChange } from '../../../src/core/outlook/types.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { catalogueOf } from '../../../src/core/words/catalogue.ts';
import { describeNeed } from '../../../src/core/words/outlook-changes.ts';
import { describeFallThrough } from '../../../src/core/words/outlook-soil.ts';
import { factDefinition } from '../../fixtures/core-facts.ts';
import { lookedAt, soilTooWarm } from '../../generators/outlook.ts';
import { signsSeen } from '../../generators/small.ts';

const words = catalogueOf('en');
const wording = { words, zone: 'Europe/London', definitionOf: factDefinition, titleOf: (rule: string) => rule };

describe('falling through the limit', () => {
  const fall = (day10: string | null, day50: string | null, day90: string | null, back = 0): FallThrough => ({
    limitC: 10,
    day10,
    day50,
    day90,
    chanceOfWarmingBack: back,
  });

  test('is a range of days with its chance, and says that it may warm back', () => {
    const said = [
      fall('2026-11-04', '2026-11-06', '2026-11-09', 0.3),
      fall('2026-11-03', '2026-11-04', '2026-11-09'),
      fall('2026-11-04', '2026-11-09', null, 0.2),
      fall('2026-11-09', null, null),
      fall(null, null, null, 0.9),
      fall('2026-11-03', '2026-11-03', '2026-11-03'),
      fall('2026-11-03', '2026-11-03', null, 0.2),
      fall('2026-11-05', '2026-11-05', null),
      fall('2026-10-28', '2026-10-29', '2026-11-02'),
    ].map((one) => describeFallThrough(one, '2026-11-03', words));
    expect(said).toMatchInlineSnapshot(`
      [
        "The soil at 30 cm is likely to fall below 10 C for good between 4 and 9 November (about 8 in 10). Once below, it may warm back above for a while (about 3 in 10).",
        "The soil at 30 cm may be below 10 C for good already; by 9 November that is likely (about 9 in 10).",
        "The soil at 30 cm may fall below 10 C for good from 4 November on; by 9 November it is about as likely as not, and it may take longer than can be told. Once below, it may warm back above for a while (about 2 in 10).",
        "The soil at 30 cm may fall below 10 C for good from 9 November on, but within the days that can be told it more likely does not.",
        "Within the days that can be told the soil at 30 cm is unlikely to fall below 10 C for good.",
        "The soil at 30 cm is likely to stay below 10 C.",
        "The soil at 30 cm is more likely than not to stay below 10 C from now on, but that is not sure. Once below, it may warm back above for a while (about 2 in 10).",
        "The soil at 30 cm may fall below 10 C for good on 5 November; that is about as likely as not, and it may take longer than can be told.",
        "The soil at 30 cm is likely to stay below 10 C.",
      ]
    `);
  });
});

describe('what would have to change', () => {
  test('of a soil too warm beyond the forecast is told by the range of days with its chance', () => {
    const fallThrough = {
      limitC: 10,
      day10: '2026-11-29',
      day50: '2026-12-02',
      day90: '2026-12-06',
      chanceOfWarmingBack: 0,
    };
    const later = (more: Partial<NeededChange>) =>
      describeNeed(soilTooWarm(more), wording, { at: lookedAt, fallThrough });
    expect(later({})).toBe(
      'Soil temperature at 30 cm: 10.8 C; it has to fall by 0.8 C, to 10.0 C. That takes days. ' +
        'Not for sure within the forecast. The soil at 30 cm is likely to fall below 10 C for good between 29 November and ' +
        '6 December (about 8 in 10).',
    );
    expect(later({ to: 9 })).toContain('Not within the forecast.');
    expect(later({ forecastAt: lookedAt })).not.toContain('for good');
  });

  test('is told in the fact’s unit, with what brings it and when', () => {
    const said = [
      soilTooWarm({}),
      soilTooWarm({ forecastAt: epochSeconds(lookedAt + 5 * 86_400) }),
      soilTooWarm({ now: { known: false, reason: 'not-asked' }, by: null }),
      soilTooWarm({
        fact: 'soil.surface',
        unit: null,
        now: signsSeen(['cracked']),
        how: 'without',
        to: 'cracked',
        by: null,
      }),
      soilTooWarm({
        fact: 'field.bufferMarked',
        unit: null,
        now: { known: false, reason: 'not-asked' },
        to: 'yes',
        by: null,
        lifts: 'person',
      }),
      soilTooWarm({ fact: 'date', unit: null, to: '2027-10-01', by: 320, lifts: 'season' }),
    ].map((one) => describeNeed(one, wording, { at: lookedAt, fallThrough: null }));
    expect(said).toMatchInlineSnapshot(`
      [
        "Soil temperature at 30 cm: 10.8 C; it has to fall by 0.8 C, to 10.0 C. That takes days. Not within the forecast.",
        "Soil temperature at 30 cm: 10.8 C; it has to fall by 0.8 C, to 10.0 C. That takes days. In the forecast from Tuesday 17 November, 10:00.",
        "Soil temperature at 30 cm: not known; find it out. The limit is 10.0 C. That takes days. Not within the forecast.",
        "Soil surface: no longer cracked. That takes days.",
        "No-spray distance known and marked: not known; it has to be yes. You can see to that.",
        "Date: not before 1 October 2027. That does not come this season.",
      ]
    `);
  });
});
