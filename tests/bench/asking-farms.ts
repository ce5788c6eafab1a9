import type { ConversationEvent, EventStamp, FieldProfile } from '../../src/core/dialogue/events.ts';
import type { FactId } from '../../src/core/facts/registry/index.ts';
import type { FactObservation } from '../../src/core/facts/resolved.ts';
import type { Reading } from '../../src/core/facts/types.ts';
import type { Question } from '../../src/core/rules/pack-types.ts';
import { type EpochSeconds, epochSeconds } from '../../src/core/units/brands.ts';
import type { Forecast } from '../../src/core/weather/forecast.ts';
import { inventedForecast } from '../../src/demo/invented-weather.ts';

/** Draws numbers from 0 to below 1. */
export type Draw = () => number;

/** The multiplicative generator of Park and Miller (1988), minimal standard: the same seed draws the same farms. */
export function drawsOf(seed: number): Draw {
  let state = (seed % 2_147_483_646) + 1;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

/** One of several. */
export function oneOf<T>(draw: Draw, among: readonly [T, ...T[]]): T {
  return among[Math.floor(draw() * among.length)] ?? among[0];
}

/** Every other farm is one on which little stands in the way, so that the questions go on to the end. */
export function isKind(seed: number): boolean {
  return seed % 2 === 0;
}

/** A morning of the season in which the treatment is put on: 20 October to 20 January. */
export function morningOf(draw: Draw): EpochSeconds {
  const first = Date.UTC(2026, 9, 20, 9) / 1000;
  return epochSeconds(first + Math.floor(draw() * 92) * 86_400 + Math.floor(draw() * 5) * 3600);
}

/** Weather of a made-up day: the invented farm's, warmer or colder, windier or calmer, wetter or drier. */
export function weatherOf(draw: Draw, at: EpochSeconds, kind: boolean): Forecast {
  const forecast = inventedForecast(at);
  const warmer = (draw() - 0.5) * (kind ? 3 : 10);
  const windier = oneOf(draw, kind ? [0.6, 0.8, 1] : [0.6, 1, 1, 1.4, 2]);
  const wetter = oneOf(draw, kind ? [0, 0.2, 0.5] : [0, 0, 0.5, 1, 4]);
  const changed = Object.entries(forecast.values).map(([variable, values]) => [
    variable,
    values?.map((value) => {
      if (value === null) return null;
      if (/temperature|dew/i.test(variable)) return value + warmer;
      if (/wind.*speed|gust/i.test(variable)) return value * windier;
      if (/^(precipitation|rain)$/i.test(variable)) return value * wetter;
      return value;
    }),
  ]);
  return { ...forecast, values: Object.fromEntries(changed) };
}

const yesOrNo = ['yes', 'no'] as const;

/** What a field's profile and a walk over it some days ago tell: all that is asked once a season, and crop and weed. */
export function fieldOfFarm(draw: Draw, at: EpochSeconds, kind: boolean): FieldProfile {
  const mostly = (usual: string, other: string) => (draw() < (kind ? 0.97 : 0.8) ? usual : other);
  const season: Partial<Record<FactId, number | string>> = {
    'field.country': oneOf(draw, ['GB-ENG', 'GB-SCT', 'GB-WLS']),
    'field.latitude': 54,
    'field.longitude': -2,
    'field.areaHa': 5,
    'field.texture': oneOf(draw, ['sandy-loam', 'clay-loam', 'clay']),
    'field.organicSoil': mostly('no', 'yes'),
    'field.slopePercent': oneOf(draw, kind ? [0, 1, 2] : [0, 1, 2, 4, 8]),
    'field.waterDistanceM': oneOf(draw, kind ? [60, 300] : [3, 8, 20, 60, 300]),
    'field.bufferMarked': mostly('yes', 'no'),
    'field.drained': oneOf(draw, yesOrNo),
    'field.loosenedThisSeason': mostly('no', 'yes'),
    'field.protectedWaterArea': mostly('outside', 'inside'),
    'field.waterPlanAgreed': mostly('yes', 'no'),
    'treatment.alreadyApplied': mostly('no', 'yes'),
  };
  const walked: Partial<Record<FactId, number | string>> = {
    'crop.trueLeaves': oneOf(draw, [3, 4, 5, 6, 8]),
    'weed.present': mostly('yes', 'no'),
    'weed.tillers': oneOf(draw, [0, 1, 2, 4]),
  };
  const observe = (values: typeof season, seen: number, source: 'profile' | 'said') =>
    (Object.entries(values) as [FactId, number | string][]).map(
      ([fact, value]): FactObservation => ({ fact, reading: readingOf(value), at: epochSeconds(seen), source }),
    );
  const profiled = Date.UTC(2026, 9, 5, 9) / 1000;
  const days = 1 + Math.floor(draw() * 6);
  const observations = [...observe(season, profiled, 'profile'), ...observe(walked, at - days * 86_400, 'said')];
  return { id: 'made-up', name: 'Made-up field', invented: true, observations };
}

function readingOf(value: number | string): Reading {
  return typeof value === 'number' ? { type: 'number', value } : { type: 'choice', possible: [value] };
}

/** What someone in the field answers: any choice, few signs, a number near what is usual there. */
export function answerFor(
  draw: Draw,
  { id, form, choices = [], facts }: Question,
  stamp: EventStamp,
): ConversationEvent {
  const answer = { kind: 'answered', ...stamp, question: id, doesNotKnow: false } as const;
  if (form === 'signs')
    return { ...answer, choices: choices.filter(() => draw() < 0.12).map((one) => one.id), numbers: {} };
  const one = choices[Math.floor(draw() * choices.length)];
  if (one) return { ...answer, choices: [one.id], numbers: {} };
  return { ...answer, choices: [], numbers: Object.fromEntries(facts.map((fact) => [fact, numberFor(draw, fact)])) };
}

const usual: Partial<Record<FactId, readonly [number, number]>> = {
  'field.latitude': [54, 54],
  'field.longitude': [-2, -2],
  'soil.temperature30cmC': [4, 12],
  'crop.trueLeaves': [2, 9],
  'wind.boomKmh': [1, 14],
  'wind.gustKmh': [3, 22],
  'air.temperatureC': [-1, 12],
  'field.waterDistanceM': [2, 400],
};

function numberFor(draw: Draw, fact: FactId): number {
  const [low, high] = usual[fact] ?? [0, 5];
  return Math.round((low + (high - low) * draw()) * 10) / 10;
}
