import { describe, expect, test } from 'vitest';
import { workOutAt30cm } from '../../../src/core/facts/depth-reading.ts';
import { parseFacts } from '../../../src/core/facts/parse/index.ts';
import { coreFacts } from '../../../src/core/facts/registry/index.ts';
import { waveLag, waveShare } from '../../../src/core/science/soil/heat-wave.ts';
import { utc } from './moments.ts';

const at = utc('2026-11-06T09:00Z');
const parse = (given: unknown) => parseFacts({ 'soil.temperature30cmC': given }, at, 'Europe/London', coreFacts);
const wave = { diffusivityM2PerS: 5e-7, periodS: 86_400 };

describe('a reading at another depth', () => {
  test('moves by the daily wave of the heat equation: Hillel 1982, T = mean - A exp(-z/d) cos(w (t - t0) - z/d)', () => {
    const second = 15 * 3600 - 5.5 * 3600;
    const part = (depthM: number) =>
      -3 * waveShare(wave, depthM) * Math.cos((2 * Math.PI * (second - waveLag(wave, depthM))) / 86_400);
    const { value } = workOutAt30cm({ type: 'number', value: 7 }, 10, utc('2026-11-05T15:00Z'), 'Europe/London');
    expect(value).toBeCloseTo(7 + part(0.3) - part(0.1), 2);
  });

  test('has a band that widens with the distance from 30 cm and keeps the band that came', () => {
    const width = (depthCm: number, own = 0) => {
      const read = { type: 'number', value: 7, low: 7 - own, high: 7 + own } as const;
      const { low = 0, high = 0 } = workOutAt30cm(read, depthCm, at, 'Europe/London');
      return high - low;
    };
    expect(width(25)).toBeGreaterThan(0.2);
    expect(width(10)).toBeGreaterThan(width(20));
    expect(width(5)).toBeGreaterThan(width(10));
    expect(width(60)).toBeGreaterThan(width(40));
    expect(width(10, 1) - width(10)).toBeCloseTo(2, 1);
  });
});

describe('in a facts file', () => {
  test('depth and moment are read, the moment is kept', () => {
    const [one] = parse({ value: 7, depthCm: 10, readAt: '2026-11-05T15:00Z' });
    expect(one).toMatchObject({
      at: utc('2026-11-05T15:00Z'),
      reading: { from: { depthCm: 10, valueC: 7, hour: '15:00' } },
    });
  });

  test('readings in the wrong order come out oldest first', () => {
    const given = ['2026-11-06T08:00Z', '2026-11-03T08:00Z', '2026-11-05T08:00Z'].map((readAt) => ({
      value: 9,
      readAt,
    }));
    expect(parse(given).map((one) => one.at)).toEqual(
      ['2026-11-03T08:00Z', '2026-11-05T08:00Z', '2026-11-06T08:00Z'].map((iso) => utc(iso)),
    );
  });

  test('two readings a minute apart that disagree are one with a band over both', () => {
    const given = [
      { value: 9, readAt: '2026-11-06T08:00Z' },
      { value: 12, readAt: '2026-11-06T08:01Z' },
    ];
    expect(parse(given).map(({ reading }) => reading)).toEqual([{ type: 'number', value: 10.5, low: 9, high: 12 }]);
  });

  test.each([
    [{ value: 7, depthCm: 10 }, 'DEPTH_NEEDS_HOUR'],
    [{ value: 7, depthCm: 2, readAt: '2026-11-05T15:00Z' }, 'DEPTH_NOT_30CM'],
    [{ value: 7, depthCm: 'ten', readAt: '2026-11-05T15:00Z' }, 'FACT_WRONG_TYPE'],
    [{ value: 7, depthCm: 10, readAt: '2026-11-05 15:00' }, 'FACT_WRONG_TYPE'],
    [{ value: 7, depthCm: 10, readAt: '2026-11-07T15:00Z' }, 'READING_IN_FUTURE'],
    [{ value: 85, readAt: '2026-11-05T15:00Z' }, 'FACT_OUT_OF_RANGE'],
    [{ value: 85, depthCm: 10, readAt: '2026-11-05T15:00Z' }, 'FACT_OUT_OF_RANGE'],
    [[{ value: 7, readAt: '2026-11-05T15:00Z' }, 8], 'FACT_WRONG_TYPE'],
  ])('%j is refused with %s', (given, code) => {
    expect(() => parse(given)).toThrow(code);
  });
});
