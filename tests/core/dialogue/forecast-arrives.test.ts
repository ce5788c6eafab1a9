import { describe, expect, test } from 'vitest';
import { applyForecastAttached } from '../../../src/core/dialogue/events/forecast-attached.ts';
import { reportOf } from '../../../src/core/errors/coded-error.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { inventedForecast } from '../../../src/demo/invented-weather.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { fieldLess, fitMorning } from './ready-field.ts';
import { morning, stamp, started, talk } from './talk.ts';

const { pack } = shipped;
const world = { pack, forecast: null };
const begin = () => talk([started(pack, fieldLess(fitMorning, 'soil.feel'))], world).state;
const warning = reportOf('FORECAST_UNREACHABLE', { expected: 'a forecast', came: 'nothing' });

function noted(fetchedMinutes: number, more: object = {}) {
  const begun = begin();
  const forecast = { ...inventedForecast(morning), fetchedAt: epochSeconds(morning + fetchedMinutes * 60) };
  const state = applyForecastAttached(begun, { kind: 'forecast-attached', forecast, ...stamp(5), ...more });
  const notes = state.notes.slice(begun.notes.length);
  return { state, said: notes.map((note) => (note.kind === 'error' ? note.error.code : note.kind)) };
}

describe('a forecast that arrives', () => {
  test('is kept and noted, and nothing more where nothing is wrong with it', () => {
    const { state, said } = noted(0);
    expect(said).toEqual(['forecast']);
    expect(state.attempt).toMatchObject({ failed: false, look: 0 });
    expect(state.forecast?.fetchedAt).toBe(morning);
  });

  test('brings what is said beside it before itself', () => {
    expect(noted(0, { warning }).said).toEqual(['FORECAST_UNREACHABLE', 'forecast']);
  });

  test('fetched after the moment that is judged is said to be so', () => {
    expect(noted(3 * 60).said).toEqual(['FORECAST_FETCHED_LATER', 'forecast']);
    expect(noted(3 * 60, { warning }).said).toEqual(['FORECAST_UNREACHABLE', 'FORECAST_FETCHED_LATER', 'forecast']);
  });
});
