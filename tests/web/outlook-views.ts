import { outlookView } from '../../src/core/dialogue/outlook-view/index.ts';
import type { OutlookView } from '../../src/core/dialogue/outlook-view/types.ts';
import type { HourOutlook, Outlook } from '../../src/core/outlook/types.ts';
import { compileRules } from '../../src/core/rules/compile.ts';
import type { Pack } from '../../src/core/rules/pack-types.ts';
import { epochSeconds } from '../../src/core/units/brands.ts';
import type { VerdictWord } from '../../src/core/verdict/types.ts';
import { catalogueOf } from '../../src/core/words/catalogue.ts';
import { buildForecast } from '../generators/forecast.ts';
import {
  block,
  coolingSoil,
  hourAt,
  hoursOn,
  lookedAt,
  outlookWith,
  soilTooWarm,
  wettingSoil,
  windowWith,
} from '../generators/outlook.ts';
import { signsSeen } from '../generators/small.ts';

const cracks = [block('soil-cracked', 'days')];

/** Invented hours of ten days and the end of the forecast: blocked, then clear if the cracks have gone, then rain, then clear. */
function inventedHours(): HourOutlook[] {
  return Array.from({ length: 264 }, (_, index) => {
    const at = hoursOn(index);
    if (index >= 240) return hourAt(at, { state: 'beyond-forecast' });
    if (index < 23) return hourAt(at, { state: 'blocked', dayBlocks: cracks });
    const isWindy = index % 24 > 6 && index % 24 < 16;
    if (isWindy || (index > 60 && index < 110)) {
      return hourAt(at, { state: 'blocked', hourBlocks: [block(isWindy ? 'too-windy' : 'heavy-rain-coming')] });
    }
    return index < 150 ? hourAt(at, { state: 'clear-if', ifLifted: cracks, lookAgain: ['soil.surface'] }) : hourAt(at);
  });
}

/** An invented outlook with all that there is to show. */
export const fullOutlook: Outlook = outlookWith({
  hours: inventedHours(),
  windows: [0, 24, 96, 120, 144].map((later) =>
    windowWith({
      from: hoursOn(23 + later),
      until: hoursOn(31 + later),
      hours: 8,
      state: later < 140 ? 'clear-if' : 'clear',
      ifLifted: later < 140 ? cracks : [],
      lookAgain: later < 140 ? ['soil.surface', 'soil.feel'] : [],
      firstSureness: 0.9 - later / 300,
      surest: { from: hoursOn(24 + later), until: hoursOn(29 + later), sureness: 0.93 - later / 300 },
      daylight: [{ from: hoursOn(23 + later), until: hoursOn(29 + later) }],
    }),
  ),
  reachesTo: hoursOn(240),
  soilTemperature: coolingSoil,
  fallThrough: {
    limitC: 10,
    day10: '2026-11-15',
    day50: '2026-11-18',
    day90: '2026-11-21',
    chanceOfWarmingBack: 0.34,
  },
  soilWater: wettingSoil,
  changes: [
    {
      rule: 'soil-cracked',
      fact: 'soil.surface',
      unit: null,
      now: signsSeen(['cracked']),
      how: 'without',
      to: 'cracked',
      by: null,
      lifts: 'days',
      forecastAt: null,
    },
    soilTooWarm({ forecastAt: hoursOn(120) }),
  ],
});

/** Invented weather of ten days: dry, then two wet days, then a shower. */
export const fullForecast = buildForecast({
  from: epochSeconds(lookedAt - 24 * 3600),
  fetchedAt: lookedAt,
  hours: 265,
  columns: {
    precipitationMm: (_, index) => (index > 100 && index < 128 && index % 3 === 0 ? 1.6 : index === 200 ? 2.4 : 0),
  },
});

/** What a page shows of it beside a verdict. */
export function fullView(
  pack: Pack,
  verdict: VerdictWord = 'wait',
  outlook: Outlook = fullOutlook,
  language = 'en',
): OutlookView {
  const compiled = compileRules(pack, '2026-11-12');
  return outlookView({ outlook, verdict, forecast: fullForecast, pack, compiled, words: catalogueOf(language) });
}
