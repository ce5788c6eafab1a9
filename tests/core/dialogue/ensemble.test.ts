import { describe, expect, test } from 'vitest';
import { withEnsemble } from '../../../src/adapters/openmeteo/with-ensemble.ts';
import { standingOf } from '../../../src/core/dialogue/standing.ts';
import { reportOf } from '../../../src/core/errors/coded-error.ts';
import type { Forecast } from '../../../src/core/weather/forecast.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { buildForecast } from '../../generators/forecast.ts';
import { hoursAfter } from '../facts/moments.ts';
import { fieldLess, fitMorning } from './ready-field.ts';
import { look, morning, said, started, talk } from './talk.ts';

const { pack } = shipped;
const plain = buildForecast({
  from: hoursAfter(morning, -9),
  fetchedAt: morning,
  columns: {
    windSpeed10mKmh: 10,
    windGusts10mKmh: 14,
    precipitationMm: (_, hour) => (hour >= 30 && hour < 39 ? 1 : 0),
  },
});
const mill = fieldLess(
  { ...fitMorning, 'field.latitude': 53, 'field.longitude': -1 },
  'soil.temperature30cmC',
  'rain.next48hMm',
  'rain.next48hMaxMmPerH',
);

/** Twenty courses of which so many bring twice the rain: 18 mm, and the others half. */
function withWet(wet: number): Forecast {
  const rain = plain.values.precipitationMm ?? [];
  const members = Array.from({ length: 20 }, (_, index) => rain.map((mm) => (mm ?? 0) * (index < wet ? 2 : 0.5)));
  return { ...plain, precipitationMembersMm: members };
}

function told(forecast: Forecast) {
  const conversation = talk([started(pack, mill), said('7.6', 'soil-temperature')], { pack, forecast });
  const { verdict, outlook } = look(conversation, pack);
  return {
    verdict,
    outlook,
    text: verdict?.forecastText ?? '',
    rain: standingOf(conversation.state, pack)?.facts['rain.next48hMm'],
  };
}

describe('a conversation under a forecast of 9 mm in 48 hours, limit 10 mm', () => {
  test.each([
    [0, 'spray-today', 9],
    [4, 'spray-today', 9],
    [5, 'wait', 18],
    [20, 'wait', 18],
  ])('with %i of 20 courses of 18 mm comes to %s', (wet, verdict, high) => {
    const { verdict: given, rain } = told(withWet(wet));
    expect(given?.verdict).toBe(verdict);
    expect(rain).toMatchObject({ known: true, source: 'forecast', high });
  });

  test('tells the chance in words', () => {
    expect(told(withWet(4)).text).toContain(
      'Chance that at most 9.0 mm of rain falls in the next 48 hours: about 8 in 10 (20 courses of the weather).',
    );
    expect(told(withWet(20)).text).toContain('at most 18.0 mm of rain falls in the next 48 hours: more than 9 in 10');
  });

  test('without the ensemble has a wider band, does not approve, and says why with a code though the weather is invented', () => {
    const error = reportOf('FORECAST_DOWN', { expected: 'an ensemble', came: '503' });
    const { verdict, rain, text } = told(withEnsemble(plain, { error } as never));
    expect(verdict?.verdict).toBe('wait');
    expect(rain).toMatchObject({ high: 10.8 });
    expect(text).toContain('No ensemble (FORECAST_DOWN): rain ahead is judged by one run and a wider band.');
    expect(text).not.toContain('Chance that');
  });

  test('a forecast fetched after the conversation’s moment is answered with its code', () => {
    const later = { ...withWet(0), fetchedAt: hoursAfter(morning, 12) };
    const conversation = talk([started(pack, mill), said('7.6', 'soil-temperature')], { pack, forecast: later });
    const codes = conversation.state.notes.flatMap((note) => (note.kind === 'error' ? [note.error.code] : []));
    expect(codes).toEqual(['FORECAST_FETCHED_LATER']);
    const { verdict, entries } = look(conversation, pack);
    expect(verdict?.verdict).toBe('spray-today');
    expect(verdict?.forecastText).toContain('FORECAST_FETCHED_LATER');
    expect(entries.some(({ kind }) => kind === 'error')).toBe(true);
  });
});
