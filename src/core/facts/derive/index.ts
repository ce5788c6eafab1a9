import type { FactSource } from '../context.ts';
import type { CoreFactId, FactId } from '../registry/index.ts';
import { deriveDate } from './date.ts';
import { deriveDaylight } from './daylight.ts';
import { deriveDeltaT } from './delta-t.ts';
import { deriveDrainsExpected } from './drains-expected.ts';
import { deriveDrainsRunning } from './drains-running.ts';
import { deriveFrostOnLeaves } from './frost-on-leaves.ts';
import { deriveInversionRisk } from './inversion-risk.ts';
import { deriveSoilTemperature } from './soil-temperature.ts';
import { deriveSoilTemperatureTrend } from './soil-temperature-trend.ts';

/** Facts that follow from others, from the forecast, or from place and time. */
export const derivations: Readonly<Partial<Record<FactId, FactSource>>> = {
  date: deriveDate,
  'crop.frostOnLeaves': deriveFrostOnLeaves,
  'soil.drainsRunning': deriveDrainsRunning,
  'soil.drainsExpected7d': deriveDrainsExpected,
  'soil.temperature30cmC': deriveSoilTemperature,
  'soil.temperatureTrendCPerDay': deriveSoilTemperatureTrend,
  'air.deltaTC': deriveDeltaT,
  'air.inversionRisk': deriveInversionRisk,
  'sun.daylight': deriveDaylight,
} satisfies Partial<Record<CoreFactId, FactSource>>;
