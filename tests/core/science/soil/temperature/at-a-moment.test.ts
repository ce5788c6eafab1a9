import { describe, expect, test } from 'vitest';
import { soilTemperatureAt, soilTemperaturePath } from '../../../../../src/core/science/soil/temperature/index.ts';
import { autumn, lines, seconds } from './seasons.ts';

describe('the temperature at a moment', () => {
  const at = (iso: string) => soilTemperatureAt(autumn(), seconds(iso), 8);

  test('is that of the day at its noon, and of the first day before its noon', () => {
    const path = soilTemperaturePath(autumn(), 8);
    expect(lines([at('2026-10-31T12:00Z')!])).toEqual(lines([path[2]!]));
    expect(lines([at('2026-10-29T09:00Z')!])).toEqual(lines([path[0]!]));
    expect(lines([at('2026-10-29T08:59Z')!])).toEqual(lines([path[0]!]));
  });

  test('lies a quarter of the way at six in the evening, with the wider of the two bands, and belongs to the nearer day', () => {
    const [, , first, second] = soilTemperaturePath(autumn(), 8);
    const evening = at('2026-10-31T18:00Z')!;
    expect(evening.valueC).toBeCloseTo(0.75 * first!.valueC + 0.25 * second!.valueC, 9);
    expect(evening.sdC).toBe(second!.sdC);
    expect(evening.high95C - evening.valueC).toBeCloseTo(second!.high95C - second!.valueC, 9);
    expect(evening.valueC - evening.low80C).toBeCloseTo(second!.valueC - second!.low80C, 9);
    expect(evening).toMatchObject({ at: seconds('2026-10-31T18:00Z'), iso: '2026-10-31', beyondForecast: false });
    expect(at('2026-10-31T23:59Z')?.iso).toBe('2026-10-31');
    expect(at('2026-11-01T00:00Z')?.iso).toBe('2026-11-01');
  });

  test('is beyond the forecast from the last noon that it reaches', () => {
    expect(at('2026-11-13T12:00Z')?.beyondForecast).toBe(false);
    expect(at('2026-11-13T12:01Z')?.beyondForecast).toBe(true);
    expect(at('2026-11-14T12:00Z')?.beyondForecast).toBe(true);
  });

  test('is that of the last day up to midnight, and not told after it or before the moment of asking', () => {
    const last = soilTemperaturePath(autumn(), 8).at(-1)!;
    expect(at('2026-11-21T00:00Z')).toEqual(last);
    expect(at('2026-11-21T00:01Z')).toBeNull();
    expect(at('2026-10-29T08:58Z')).toBeNull();
    expect(at('2026-10-01T12:00Z')).toBeNull();
  });
});
