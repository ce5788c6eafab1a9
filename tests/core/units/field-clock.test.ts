import fc from 'fast-check';
import { DateTime, IANAZone } from 'luxon';
import { describe, expect, test } from 'vitest';
import { atField, dayAtField } from '../../../src/core/units/field-clock.ts';

/** Every zone that the runtime's own copy of the IANA time zone database knows. */
const zones = Intl.supportedValuesOf('timeZone');
const aZone = fc.constantFrom(...zones);
/** From 1950, when some clocks differed from UTC by seconds, to 2100. */
const aMoment = fc.integer({ min: Date.UTC(1950, 0) / 1000, max: Date.UTC(2100, 0) / 1000 });

const shown = (moment: DateTime) => [moment.toISO(), moment.startOf('day').toISO(), moment.endOf('day').toISO()];

describe('calendar and clock of the field are those of the IANA time zone database, as luxon reads it', () => {
  test('at any moment in any zone, asked for the first time and again in the same minute', () => {
    fc.assert(
      fc.property(aZone, aMoment, fc.nat({ max: 59 }), (zone, at, later) => {
        for (const moment of [at, at + later, at]) {
          expect(shown(atField(moment, zone))).toEqual(shown(DateTime.fromSeconds(moment, { zone })));
        }
      }),
      { numRuns: 2000 },
    );
  });

  test('in the seconds on both sides of each change of the clock in these years', () => {
    const changes = zones.flatMap((zone) => changesOf(zone, 2018, 2023).map((at) => [zone, at] as const));
    expect(changes.length).toBeGreaterThan(1000);
    for (const [zone, change] of changes) {
      for (const at of [change - 1, change, change + 1, change + 59, change - 60]) {
        expect([zone, at, shown(atField(at, zone))]).toEqual([zone, at, shown(DateTime.fromSeconds(at, { zone }))]);
      }
    }
  });

  test('also where a clock was put right in the middle of a minute', () => {
    // IANA time zone database, Africa/Monrovia: 44 min 30 s behind until 7 January 1972, then UTC (from memory).
    const change = Date.UTC(1972, 0, 7, 0, 44, 30) / 1000;
    const clocks = [change - 1, change].map((at) => {
      expect(shown(atField(at, 'Africa/Monrovia'))).toEqual(
        shown(DateTime.fromSeconds(at, { zone: 'Africa/Monrovia' })),
      );
      return atField(at, 'Africa/Monrovia').toFormat('HH:mm:ss');
    });
    expect(clocks).toEqual(['23:59:59', '00:44:30']);
  });

  test('a day begins where it begins there, also where midnight does not come', () => {
    fc.assert(
      fc.property(aZone, aMoment, (zone, at) => {
        const iso = DateTime.fromSeconds(at, { zone }).toISODate() ?? '';
        expect(dayAtField(iso, zone).toISO()).toBe(DateTime.fromISO(iso, { zone }).toISO());
      }),
    );
    // Chile puts its clocks forward at midnight: IANA time zone database, America/Santiago, 6 September 2026 (from memory).
    expect(dayAtField('2026-09-06', 'America/Santiago').toFormat('HH:mm')).toBe('01:00');
  });

  test('a zone that there is not gives no valid moment', () => {
    expect(atField(1_800_000_000, 'Europe/Nowhere').isValid).toBe(false);
    expect(dayAtField('2026-11-06', 'Europe/Nowhere').isValid).toBe(false);
    expect(dayAtField('2026-02-30', 'Europe/London').isValid).toBe(false);
  });

  test('two moments of one zone are of the same zone, of two zones not', () => {
    const london = atField(1_800_000_000, 'Europe/London');
    expect(london.zone.equals(atField(0, 'Europe/London').zone)).toBe(true);
    expect(london.zone.equals(IANAZone.create('Europe/London'))).toBe(true);
    expect(london.zone.equals(atField(0, 'Europe/Berlin').zone)).toBe(false);
    expect([london.zoneName, london.toFormat('ZZZZ'), london.toFormat('ZZ')]).toEqual([
      'Europe/London',
      'GMT',
      '+00:00',
    ]);
  });
});

/** Moments at which the clock of a zone is put forward or back, found by halving the weeks over which its difference changes. */
function changesOf(name: string, fromYear: number, untilYear: number): number[] {
  const zone = IANAZone.create(name);
  const offset = (at: number) => zone.offset(at * 1000);
  const week = 7 * 86_400;
  const weeks = Array.from(
    { length: (untilYear - fromYear) * 52 },
    (_, index) => Date.UTC(fromYear, 0) / 1000 + index * week,
  );
  return weeks.flatMap((start) => {
    let [before, after] = [start, start + week];
    if (offset(before) === offset(after)) return [];
    while (after - before > 1) {
      const middle = Math.floor((before + after) / 2);
      if (offset(middle) === offset(before)) before = middle;
      else after = middle;
    }
    return [after];
  });
}
