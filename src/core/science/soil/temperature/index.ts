export { fallThroughOf } from './fall-through.ts';
export { isPossibleAir } from './filter.ts';
export { soilTemperatureAt, soilTemperaturePath } from './path.ts';
export { type ArchiveDay, climatologyFrom } from './site-climatology.ts';
export { soilTodayAndAhead, soilTrendAhead, type TrendAhead } from './trend-ahead.ts';
export type {
  SiteClimatology,
  SoilAirDay,
  SoilFallThrough,
  SoilReading,
  SoilTemperatureDay,
  SoilTemperatureInput,
} from './types.ts';
