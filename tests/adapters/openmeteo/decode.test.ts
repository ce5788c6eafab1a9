import { Unit } from '@openmeteo/sdk/unit.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decodePlace } from '../../../src/adapters/openmeteo/decode.ts';
import { splitFrames } from '../../../src/adapters/openmeteo/frames.ts';
import { readReply } from '../../../src/adapters/openmeteo/transport.ts';
import { askedVariables } from '../../../src/adapters/openmeteo/variables.ts';
import { isLoamwardError } from '../../../src/core/errors/coded-error.ts';
import { variableMeanings, weatherVariables } from '../../../src/core/weather/variables.ts';
import { buildReply, type ReplyDescription } from '../../../src/tools/stand-in/build-forecast.ts';
import { inventWeather } from '../../../src/tools/stand-in/invented-weather.ts';
import { hollinBank } from './means.ts';

const start = Date.parse('2026-11-06T00:00Z') / 1000;
const now = start + 9 * 3600;
const question = { ...hollinBank, pastDays: 0, forecastDays: 4 };
const good = inventWeather('wet', { ...hollinBank, start, hours: 96 }, now);

const only = (name: string) => askedVariables.filter((variable) => variable.service === name);

function decodeOne(name: string, column: readonly (number | null)[], more: Partial<ReplyDescription> = {}) {
  const required = {
    temperature_2m: [5],
    relative_humidity_2m: [80],
    precipitation: [1],
    wind_speed_10m: [8],
    wind_gusts_10m: [9],
  };
  const variables: Record<string, readonly (number | null)[]> = Object.fromEntries(
    Object.entries(required).map(([key, [value]]) => [key, column.map(() => value!)]),
  );
  variables[name] = column;
  const bytes = buildReply({ ...hollinBank, start, hours: column.length, ...more, variables });
  const asked = askedVariables.filter((variable) => Object.hasOwn(variables, variable.service));
  return decodePlace(splitFrames(bytes)[0]!, asked).values[only(name)[0]!.column];
}

describe('decoding', () => {
  test('the table asks for every variable of a forecast once', () => {
    expect(askedVariables.map((variable) => variable.column).sort()).toEqual([...weatherVariables].sort());
  });

  test('noise of 32-bit floats is rounded away: 0.1 comes back as 0.1', () => {
    expect(decodeOne('precipitation', [0.1, 0.2, 0.30000001, 4])).toEqual([0.1, 0.2, 0.3, 4]);
    expect(decodeOne('soil_moisture_3_to_9cm', [0.307])).toEqual([0.307]);
    expect(decodeOne('temperature_2m', [-0.001, 9.6])).toEqual([0, 9.6]);
  });

  test('NaN is missing, never zero', () => {
    expect(decodeOne('wind_speed_10m', [3, null, 0, null])).toEqual([3, null, 0, null]);
  });

  test.each([
    ['temperature_2m', 99],
    ['relative_humidity_2m', 101],
    ['precipitation', -1],
    ['wind_gusts_10m', Number.POSITIVE_INFINITY],
    ['wind_direction_10m', 361],
    ['precipitation', 1.4e-19],
  ])('%s of %d cannot be and spoils the whole reply', (name, value) => {
    expect(() => decodeOne(name, [1, value])).toThrow(/FORECAST_GARBLED/);
  });

  test('values of an undefined unit are refused, an empty optional column of it is left out', () => {
    const units = { cloud_cover: Unit.undefined };
    expect(() => decodeOne('cloud_cover', [4], { units })).toThrow(/FORECAST_WRONG_UNIT/);
    expect(decodeOne('cloud_cover', [null], { units })).toBeUndefined();
    expect(decodeOne('cloud_cover', [null])).toBeUndefined();
  });

  test('whatever the order of the variables, each lands in its own column', () => {
    const names = Object.keys(good.variables);
    fc.assert(
      fc.property(fc.shuffledSubarray(names, { minLength: names.length }), (order) => {
        const read = readReply(buildReply({ ...good, order }), false, question, now);
        if (!('forecast' in read)) throw read.error;
        for (const { service, column } of askedVariables) {
          const { decimals } = variableMeanings[column];
          const written = good.variables[service]!.map((value) => Number(Math.fround(value!).toFixed(decimals)) + 0);
          expect(read.forecast.values[column]).toEqual(written);
        }
      }),
      { numRuns: 20 },
    );
  });
});

describe('frames', () => {
  const frame = (length: number, body: number) => {
    const bytes = new Uint8Array(4 + body);
    new DataView(bytes.buffer).setInt32(0, length, true);
    return bytes;
  };
  const joined = (...parts: Uint8Array[]) => Uint8Array.from(parts.flatMap((part) => [...part]));

  test('whole messages are told apart', () => {
    expect(splitFrames(joined(frame(8, 8), frame(4, 4))).map((bytes) => bytes.length)).toEqual([12, 8]);
  });

  test.each([
    ['empty', new Uint8Array()],
    ['three bytes', Uint8Array.of(1, 0, 0)],
    ['a negative length', frame(-8, 4)],
    ['a length of nothing', frame(0, 8)],
    ['a length past the end', frame(9, 8)],
    ['the greatest length', frame(0x7fffffff, 8)],
    ['bytes left over', joined(frame(8, 8), Uint8Array.of(60))],
    ['a bad second message', joined(frame(8, 8), frame(-12, 0))],
  ])('%s is garbled', (_, bytes) => {
    expect(() => splitFrames(bytes)).toThrow(/FORECAST_GARBLED/);
  });
});

describe('whatever the bytes', () => {
  const settle = (bytes: Uint8Array) => {
    const read = readReply(bytes, false, question, now);
    if ('error' in read) {
      expect(isLoamwardError(read.error)).toBe(true);
      return;
    }
    for (const column of Object.values(read.forecast.values)) {
      expect(column).toHaveLength(read.forecast.times.length);
      expect(column.every((value) => value === null || Number.isFinite(value))).toBe(true);
    }
  };

  test('random ones end in a code', () => {
    fc.assert(fc.property(fc.uint8Array({ maxLength: 400 }), settle), { numRuns: 2000 });
  });

  test('random ones behind a right length end in a code', () => {
    const framed = fc.uint8Array({ minLength: 1, maxLength: 400 }).map((body) => {
      const bytes = new Uint8Array(body.length + 4);
      new DataView(bytes.buffer).setInt32(0, body.length, true);
      bytes.set(body, 4);
      return bytes;
    });
    fc.assert(fc.property(framed, settle), { numRuns: 2000 });
  });

  test('a real reply with any few bytes changed ends in a code or a forecast of finite values', () => {
    const whole = buildReply(good);
    const change = fc.tuple(fc.nat(whole.length - 1), fc.integer({ min: 0, max: 255 }));
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 8 }), (changes) => {
        const bytes = whole.slice();
        for (const [index, value] of changes) bytes[index] = value;
        settle(bytes);
      }),
      { numRuns: 1000 },
    );
  });

  test('a real reply with bytes of its tables changed ends so too', () => {
    const whole = buildReply(good);
    const nearHead = fc.tuple(fc.nat(200), fc.integer({ min: 0, max: 255 }));
    const nearTail = fc.tuple(
      fc.integer({ min: whole.length - 1200, max: whole.length - 1 }),
      fc.integer({ min: 0, max: 255 }),
    );
    fc.assert(
      fc.property(fc.array(fc.oneof(nearHead, nearTail), { minLength: 1, maxLength: 4 }), (changes) => {
        const bytes = whole.slice();
        for (const [index, value] of changes) bytes[index] = value;
        settle(bytes);
      }),
      { numRuns: 1000 },
    );
  });
});
