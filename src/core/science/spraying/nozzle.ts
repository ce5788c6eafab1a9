import { aboveZero, inRange } from '../../units/in-range.ts';

/** A nozzle size of ISO 10625: its name, and how many tenths of a US gallon a minute it nominally gives. */
export type NozzleSize = '01' | '015' | '02' | '025' | '03' | '04' | '05' | '06' | '08';

/** Flow of one tenth at 3 bar, L/min, as nozzles are named and sold (ISO 10625 sizes; the strict US gallon gives 0.395). */
const perTenthAt3Bar = 0.4;

const tenths: Readonly<Record<NozzleSize, number>> = {
  '01': 1,
  '015': 1.5,
  '02': 2,
  '025': 2.5,
  '03': 3,
  '04': 4,
  '05': 5,
  '06': 6,
  '08': 8,
};

/** Nominal flow in L/min of a flat-fan nozzle at a pressure of 0.5 to 20 bar: as its square root from 0.4 L/min per tenth at 3 bar. */
export function nozzleFlow(size: NozzleSize, bar: number): number {
  return perTenthAt3Bar * tenths[size] * Math.sqrt(inRange('a pressure', bar, 0.5, 20, 'bar') / 3);
}

/** Pressure in bar that gives a wanted flow, from one flow (above 0) at one pressure: flow goes as the square root of pressure. */
export function pressureForFlow(wantedLPerMin: number, flowLPerMin: number, bar: number): number {
  inRange('a flow', wantedLPerMin, 0, 1000, 'L/min');
  const ratio = wantedLPerMin / aboveZero('a flow', flowLPerMin, 'L/min');
  return inRange('a pressure', bar, 0.5, 20, 'bar') * ratio ** 2;
}
