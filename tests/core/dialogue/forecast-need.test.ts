import { describe, expect, test } from 'vitest';
import { forecastNeed, forecastStage, pointOf } from '../../../src/core/dialogue/forecast-need.ts';
import { emptyState, type ForecastAttempt, type State } from '../../../src/core/dialogue/state.ts';
import type { ResolvedFacts } from '../../../src/core/facts/resolved.ts';
import { numberParameter } from '../../../src/core/units/parameter.ts';
import { buildForecast } from '../../generators/forecast.ts';
import { testParameters } from '../../generators/parameters.ts';
import { choice, number } from '../../generators/small.ts';
import { hoursAfter } from '../facts/moments.ts';
import { morning } from './talk.ts';

const parameters = testParameters();
const home: ResolvedFacts = { 'field.latitude': number(54), 'field.longitude': number(-2) };
const point = { latitude: 54, longitude: -2 };
const tried = (more: Partial<ForecastAttempt> = {}): ForecastAttempt => ({ ...point, look: 0, failed: false, ...more });
const forecastOf = (hours: number) => buildForecast({ from: morning, fetchedAt: hoursAfter(morning, -hours) });
const freshHours = numberParameter(parameters, 'forecastFreshHours');

function at(more: Partial<State>): State {
  return { ...emptyState, at: morning, ...more };
}

describe('the point of the field', () => {
  test('is known where both degrees are, as numbers', () => {
    expect(pointOf(home)).toEqual(point);
  });

  test.each<[string, ResolvedFacts]>([
    ['nothing', {}],
    ['no latitude', { 'field.longitude': number(-2) }],
    ['no longitude', { 'field.latitude': number(54) }],
    ['a latitude that is no number', { ...home, 'field.latitude': choice('north') }],
    ['a longitude that is no number', { ...home, 'field.longitude': choice('west') }],
  ])('is not known with %s', (_, facts) => {
    expect(pointOf(facts)).toBeNull();
    expect(forecastNeed(at({}), facts, parameters)).toBeNull();
    expect(forecastStage(at({}), facts, parameters)).toBe('no-place');
  });
});

describe('a forecast', () => {
  test.each<[string, Partial<State>, boolean]>([
    ['was never tried for', {}, true],
    ['came', { attempt: tried() }, false],
    ['failed, and nobody looked again since', { attempt: tried({ failed: true }) }, false],
    ['failed, and the person looks again', { attempt: tried({ failed: true }), looks: 1 }, true],
    [
      'failed, and the person looks again, with a fresh one from before',
      { attempt: tried({ failed: true }), looks: 1, forecast: forecastOf(0) },
      true,
    ],
    [
      'came, and the person looks again while it is fresh',
      { attempt: tried(), looks: 1, forecast: forecastOf(freshHours) },
      false,
    ],
    [
      'came, and the person looks again when it is no longer fresh',
      { attempt: tried(), looks: 1, forecast: forecastOf(freshHours + 0.01) },
      true,
    ],
    ['came but is not there, and the person looks again', { attempt: tried(), looks: 1 }, true],
    ['came for a latitude 0.0009 degrees off', { attempt: tried({ latitude: 54.0009 }) }, false],
    ['came for a latitude 0.0011 degrees off', { attempt: tried({ latitude: 54.0011 }) }, true],
    ['came for a latitude 0.0011 degrees the other way', { attempt: tried({ latitude: 53.9989 }) }, true],
    ['came for a longitude 0.0009 degrees off', { attempt: tried({ longitude: -2.0009 }) }, false],
    ['came for a longitude 0.0011 degrees off', { attempt: tried({ longitude: -2.0011 }) }, true],
    ['came for another place altogether', { attempt: tried({ latitude: 1, longitude: 1 }) }, true],
  ])('that %s: is fetched, %s %s', (_, state, isWanted) => {
    expect(forecastNeed(at(state), home, parameters)).toEqual(isWanted ? point : null);
  });

  test('is not fetched before the start', () => {
    expect(forecastNeed({ ...emptyState, at: null }, home, parameters)).toBeNull();
  });

  test.each<[string, Partial<State>, ReturnType<typeof forecastStage>]>([
    ['coming while it is to be fetched', {}, 'coming'],
    ['coming anew, though there is one', { attempt: tried({ latitude: 1 }), forecast: forecastOf(0) }, 'coming'],
    ['there once it came', { attempt: tried(), forecast: forecastOf(0) }, 'there'],
    ['failed where none was to be had', { attempt: tried({ failed: true }) }, 'failed'],
    ['failed although an older one is kept', { attempt: tried({ failed: true }), forecast: forecastOf(9) }, 'failed'],
  ])('is %s', (_, state, stage) => {
    expect(forecastStage(at(state), home, parameters)).toBe(stage);
  });
});
