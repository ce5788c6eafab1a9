import type {
  HourBlock,
  HourOutlook,
  NeededChange,
  Outlook,
  SoilTemperaturePoint,
  SoilWaterDay,
  Window,
} from '../../src/core/outlook/types.ts';
import { type EpochSeconds, epochSeconds } from '../../src/core/units/brands.ts';
import { number } from './small.ts';

/** 12 November 2026, 10:00 at the field: the moment that invented outlooks look ahead from. */
export const lookedAt = epochSeconds(Date.UTC(2026, 10, 12, 10) / 1000);

/** So many hours after the moment looked ahead from. */
export function hoursOn(hours: number): EpochSeconds {
  return epochSeconds(lookedAt + hours * 3600);
}

/** A block of practice. */
export function block(rule: string, lifts: HourBlock['lifts'] = 'hours'): HourBlock {
  return { rule, effect: 'hold', authority: 'practice', lifts };
}

/** An invented window of five hours on the morning after, clear, without a chance, ended by wind. */
export function windowWith(more: Partial<Window> = {}): Window {
  return {
    from: hoursOn(23),
    until: hoursOn(28),
    hours: 5,
    state: 'clear',
    lookAgain: [],
    ifLifted: [],
    unknown: [],
    endedBy: [block('too-windy')],
    firstSureness: null,
    surest: null,
    soilBelow: null,
    daylight: null,
    ...more,
  };
}

/** An invented hour, clear unless said otherwise. */
export function hourAt(at: EpochSeconds, more: Partial<HourOutlook> = {}): HourOutlook {
  return {
    at,
    state: 'clear',
    hourBlocks: [],
    dayBlocks: [],
    lookAgain: [],
    ifLifted: [],
    unknown: [],
    advice: [],
    sureness: null,
    ...more,
  };
}

/** Invented soil at 30 cm, every six hours over ten days, falling from 10.8 C by 0.15 C a day with a band that widens. */
export const coolingSoil: readonly SoilTemperaturePoint[] = Array.from({ length: 41 }, (_, index) => {
  const valueC = 10.8 - index * 0.0375;
  const half = 0.2 + index * 0.03;
  return {
    at: hoursOn(index * 6),
    valueC,
    low80C: valueC - half,
    high80C: valueC + half,
    low95C: valueC - 1.6 * half,
    high95C: valueC + 1.6 * half,
    chanceBelow: index / 60,
    beyondForecast: index > 32,
  };
});

/** Invented water over four days: drying, then rain that fills it past field capacity. */
export const wettingSoil: readonly SoilWaterDay[] = [8, 6, 0, 0].map((deficitMm, index) => ({
  day: `2026-11-${12 + index}`,
  rainMm: index * 4,
  etMm: 0.6,
  deficitMm,
  deficitLowMm: Math.max(0, deficitMm - 2),
  deficitHighMm: deficitMm + 3,
  surplusMm: index === 3 ? 4 : 0,
  fieldCapacityPercent: 92 + index * 3,
  availableWaterPercent: 80 + index * 6,
}));

/** An invented outlook of four days in which every hour is blocked by wind. */
export function outlookWith(more: Partial<Outlook> = {}): Outlook {
  const hours = Array.from({ length: 96 }, (_, index) =>
    hourAt(hoursOn(index), { state: 'blocked', hourBlocks: [block('too-windy')] }),
  );
  return {
    at: lookedAt,
    zone: 'Europe/London',
    hours,
    untold: null,
    windows: [],
    reachesTo: hoursOn(96),
    soilTemperature: [],
    usualAirYears: null,
    fallThrough: null,
    soilWater: [],
    changes: [],
    smallestSet: [],
    spoiled: null,
    ...more,
  };
}

/** What a soil that is 0.8 C too warm for its limit of 10 C needs, some of it replaced. */
export function soilTooWarm(more: Partial<NeededChange> = {}): NeededChange {
  return {
    rule: 'soil-too-warm',
    fact: 'soil.temperature30cmC',
    unit: 'C',
    now: number(10.8),
    how: 'reach',
    to: 10,
    by: -0.8,
    lifts: 'days',
    forecastAt: null,
    ...more,
  };
}
