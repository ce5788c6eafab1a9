import { type ErrorReport, reportOf } from '../errors/coded-error.ts';
import { workOutAt30cm } from '../facts/depth-reading.ts';
import { localDate, localTime, momentOfDay } from '../facts/local-day.ts';
import { type EpochSeconds, epochSeconds } from '../units/brands.ts';
import type { OfferedReading } from './take-readings.ts';
import type { Clock } from './understand/clock.ts';
import type { UnderstoodReading } from './understand/types.ts';

const daySeconds = 86_400;
/** Hours between which a person reads a thermometer, where either half of the day can be meant: 05:00 to 22:59. */
const workingHours: readonly [number, number] = [5, 23];

/** What was understood as readings with their moments, worked out at 30 cm where read elsewhere; times to come are refused. */
export function offeredReadings(
  understood: readonly UnderstoodReading[],
  at: EpochSeconds,
  zone: string,
): { readonly offered: readonly OfferedReading[]; readonly refused: readonly ErrorReport[] } {
  const offered: OfferedReading[] = [];
  const refused: ErrorReport[] = [];
  for (const { clock, depthCm, ...one } of understood) {
    const seenAt = clock === undefined ? epochSeconds(at - (one.agoHours ?? 0) * 3600) : momentOfClock(clock, at, zone);
    if (seenAt === null) {
      const expected = `a time up to ${localTime(at, zone)}`;
      refused.push(reportOf('READING_IN_FUTURE', { expected, came: one.quote, fact: one.fact }));
      continue;
    }
    const reading =
      depthCm !== undefined && one.reading.type === 'number'
        ? workOutAt30cm(one.reading, depthCm, seenAt, zone)
        : one.reading;
    offered.push({ ...one, reading, agoHours: (at - seenAt) / 3600 });
  }
  return { offered, refused };
}

/** The moment of a named hour, the latest not to come where either half of the day can be meant; null where all are to come. */
function momentOfClock(clock: Clock, at: EpochSeconds, zone: string): EpochSeconds | null {
  if (clock.kind === 'now') return at;
  const day = localDate(epochSeconds(at - clock.daysAgo * daySeconds), zone);
  const minutes = clock.half === null ? [clock.minute + 720, clock.minute].filter(isWorking) : [clock.minute];
  const moments = minutes.map((minute) => momentOfDay(day, minute, zone));
  return moments.find((moment) => moment <= at) ?? null;
}

function isWorking(minute: number): boolean {
  return minute >= workingHours[0] * 60 && minute < workingHours[1] * 60;
}
