import { describe, expect, test } from 'vitest';
import type { ForecastSummary, PackStamp } from '../../../src/core/dialogue/decision-types.ts';
import { catalogueOf } from '../../../src/core/words/catalogue.ts';
import {
  describeForecast,
  describeGiven,
  describeGoodUntil,
  describePack,
  describeValidUntil,
} from '../../../src/core/words/forecast.ts';
import { secondsOf } from '../../../src/core/words/times.ts';

const en = catalogueOf('en');
const de = catalogueOf('de');
const moment = { now: secondsOf('2026-11-06T12:00:00Z'), zone: 'Europe/London' };

/** Invented weather, two hours old, of the field itself. */
const summary: ForecastSummary = {
  attribution: 'Invented weather of Hollin Bank Farm: not a forecast of any place.',
  invented: true,
  fetchedAt: '2026-11-06T10:00:00Z',
  ageHours: 2,
  reachesTo: '2026-11-08T09:00:00Z',
  unused: null,
  note: null,
  rainChance: null,
  latitude: 52,
  longitude: -1,
  distanceKm: 0,
};

describe('the line of the forecast', () => {
  const fetched = 'Forecast fetched 10:00 (2 h ago)';
  const { attribution } = summary;
  test.each<[string, Partial<ForecastSummary>, string]>([
    ['used', {}, `${fetched}; it reaches to 09:00 on 8 November 2026. ${attribution}`],
    [
      'with a gap now',
      { reachesTo: null },
      `${fetched}; it lacks some of the weather of this hour, and what it lacks counts as not known. ${attribution}`,
    ],
    [
      'too old',
      { unused: 'too-old', reachesTo: null },
      `${fetched}; it is too old, and nothing of it was used. ${attribution}`,
    ],
    [
      'too far',
      { unused: 'too-far' },
      `${fetched}; its point lies too far from the field, and nothing of it was used. ${attribution}`,
    ],
    [
      'with all that there is to say, in its order',
      { note: 'A note.', rainChance: { courses: 30, share: 0.75, atMostMm: 2.31 }, distanceKm: 3.26 },
      `${fetched}; it reaches to 09:00 on 8 November 2026. A note. Chance that at most 2.4 mm of rain falls in the next ` +
        `48 hours: about 7 in 10 (30 courses of the weather). Its point lies 3.3 km from the field. ${attribution}`,
    ],
    [
      'of a point a little off',
      { distanceKm: 0.1 },
      `${fetched}; it reaches to 09:00 on 8 November 2026. Its point lies 0.1 km from the field. ${attribution}`,
    ],
    ['of the very point', { distanceKm: 0.09 }, `${fetched}; it reaches to 09:00 on 8 November 2026. ${attribution}`],
  ])('%s', (_, more, text) => {
    expect(describeForecast({ ...summary, ...more }, moment, en)).toBe(text);
  });

  test('in German has its numbers, notes and attribution in German', () => {
    const rainChance = { courses: 30, share: 0.75, atMostMm: 2.31 };
    const said = describeForecast(
      { ...summary, note: 'the field is not drained', rainChance, distanceKm: 3.26 },
      moment,
      de,
    );
    expect(said).toMatch(/das Feld ist nicht dräniert.*2,4 mm.*3,3 km.*Erfundenes Wetter der Hollin Bank Farm/);
  });

  test('says where there is none', () => {
    expect(describeForecast(null, moment, en)).toBe('No forecast was used: the weather is as you told it.');
  });
});

test('how long an answer stands is told by the clock of the field, with the day where it is another', () => {
  expect(describeValidUntil(null, moment, en)).toBe('Nothing in this answer grows old today.');
  expect(describeValidUntil('2026-11-06T15:00:00Z', { ...moment, zone: 'Europe/Berlin' }, en)).toBe(
    'This answer stands until 16:00 at the latest. After that, look again.',
  );
  expect(describeValidUntil('2026-11-07T15:00:00Z', moment, en)).toContain('until 15:00 on 7 November 2026 at');
  expect(describeGoodUntil('2026-11-06T15:00:00Z', 'Europe/Berlin', en)).toMatch(
    /^Good until 16:00 on 6 November 2026 at/,
  );
  expect(describeGoodUntil(null, 'Europe/Berlin', en)).toBeNull();
});

test('when it was given is told with the day, and when it was handed over where that is another minute', () => {
  const given = 'Given at 12:00 on 6 November 2026.';
  expect(describeGiven('2026-11-06T12:00:00Z', moment, en)).toBe(given);
  expect(describeGiven('2026-11-06T12:00:59Z', moment, en)).toBe(given);
  expect(describeGiven('2026-11-06T11:59:00Z', moment, en)).toBe(
    'Given at 11:59 on 6 November 2026. Handed over at 12:00 on 6 November 2026: what is said below of how old things are holds then.',
  );
});

test('the rules are named with version and the first letters of their hash, and whose local rules are in force', () => {
  const stamp: PackStamp = { id: 'p', version: '1.2.0', hash: '0123456789abcdef', title: 'A pack' };
  const overlay = { id: 'o', title: 'Own rules', author: 'A. Adviser', place: 'the vale', hash: 'h', changedRules: [] };
  const pack = 'Rules: A pack, version 1.2.0, content 0123456789ab.';
  expect(describePack(stamp, en)).toBe(pack);
  expect(describePack({ ...stamp, overlays: [] }, en)).toBe(pack);
  const overlays = [overlay, { ...overlay, title: 'More', changedRules: ['Too windy', 'Gusty'] }];
  expect(describePack({ ...stamp, overlays }, en)).toBe(
    `${pack} Local rules: Own rules by A. Adviser, for the vale: no rule changed. ` +
      'Local rules: More by A. Adviser, for the vale: rules changed or added: Too windy, Gusty.',
  );
});
