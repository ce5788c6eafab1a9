import { type ErrorReport, reportOf } from '../errors/coded-error.ts';
import { servedDepthsCm, temperatureAt30cm } from '../science/soil/reading-at-depth.ts';
import type { EpochSeconds } from '../units/brands.ts';
import { localTime } from './local-day.ts';
import type { Reading } from './types.ts';

type NumberReading = Extract<Reading, { type: 'number' }>;

/** Why a depth in cm cannot be taken; null where a reading at 30 cm can be worked out from it. */
export function depthProblem(depthCm: number): ErrorReport | null {
  const [least, most] = servedDepthsCm;
  if (depthCm >= least && depthCm <= most) return null;
  return reportOf('DEPTH_NOT_30CM', {
    expected: `30 cm, or ${least} to ${most} cm with the hour`,
    came: `at ${Number(depthCm.toPrecision(4))} cm`,
    fact: 'soil.temperature30cmC',
  });
}

/** True where a depth in cm counts as 30 cm. */
export function is30cm(depthCm: number): boolean {
  return Math.abs(depthCm - 30) <= 0.5;
}

/** A reading in C at another depth (5 to 100 cm) at a moment, as one at 30 cm with its wider band that keeps what was read. */
export function workOutAt30cm(read: NumberReading, depthCm: number, at: EpochSeconds, zone: string): NumberReading {
  const hour = localTime(at, zone).slice(11);
  const [hours = 0, minutes = 0] = hour.split(':').map(Number);
  const { value, low = value, high = value } = read;
  const { valueC, halfBandC } = temperatureAt30cm(value, depthCm, hours * 3600 + minutes * 60);
  const shift = valueC - value;
  return {
    type: 'number',
    value: hundredths(valueC, Math.round),
    low: hundredths(low + shift - halfBandC, Math.floor),
    high: hundredths(high + shift + halfBandC, Math.ceil),
    from: { depthCm, valueC: value, hour },
  };
}

/** How a reading was worked out, in words; null for one at 30 cm itself. */
export function workedOutNote({ from }: NumberReading): string | null {
  return from === undefined ? null : `worked out from ${from.valueC} C at ${from.depthCm} cm at ${from.hour}`;
}

/** True for a reading that was worked out from another depth. */
export function isWorkedOut(reading: Reading): boolean {
  return reading.type === 'number' && reading.from !== undefined;
}

function hundredths(value: number, round: (value: number) => number): number {
  return round(value * 100) / 100 + 0;
}
