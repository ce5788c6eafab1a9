import type { Forecast } from '../../core/weather/forecast.ts';

/** The forecast with one more sentence in its note, after what the note says already. */
export function withNote(forecast: Forecast, sentence: string): Forecast {
  return { ...forecast, note: forecast.note === undefined ? sentence : `${forecast.note} ${sentence}` };
}
