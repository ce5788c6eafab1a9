import { join } from 'node:path';
import { readPackFolder } from '../../src/adapters/pack-files/read-pack-folder.ts';
import { parseFacts } from '../../src/core/facts/parse/index.ts';
import type { OutlookInput } from '../../src/core/outlook/index.ts';
import { loadPack } from '../../src/core/rules/pack/load-pack.ts';
import { epochSeconds } from '../../src/core/units/brands.ts';
import { fitField } from '../generators/fit-field.ts';
import { buildForecast } from '../generators/forecast.ts';

/** 6 November 2026, 09:00 UTC. */
const morning = epochSeconds(1_793_955_600);

/** An invented drained field under 16 days of invented changeable weather, with nothing left unknown. */
export async function scanInput(root: string): Promise<OutlookInput> {
  const { pack } = loadPack(await readPackFolder(join(root, 'rules', 'propyzamide-winter-oilseed-rape')));
  const facts = { ...fitField, 'field.drained': 'yes' };
  const forecast = buildForecast({
    from: morning,
    hours: 16 * 24,
    columns: {
      windSpeed10mKmh: (_, hour) => 10 + 8 * Math.sin(hour / 7),
      windGusts10mKmh: (_, hour) => 16 + 9 * Math.sin(hour / 7),
      precipitationMm: (_, hour) => (hour % 30 === 0 ? 1.2 : 0),
      temperature2mC: (_, hour) => 6 + 5 * Math.sin((2 * Math.PI * hour) / 24),
      cloudCoverPercent: (_, hour) => 50 + 50 * Math.sin(hour / 9),
    },
  });
  return { pack, observations: parseFacts(facts, morning, pack.zone, pack.facts), forecast, at: morning };
}
