import type { WeatherDay } from '../core/outlook/replay/index.ts';

/** A stream of numbers from 0 to 1 that a seed fixes (a linear congruential generator, Numerical Recipes' constants). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

/** Invented days from 1 August of a year over so many seasons: a yearly wave of air and soil, wet spells, windy days. */
export function inventedDays(seed: number, firstYear: number, seasons: number): WeatherDay[] {
  const random = seeded(seed);
  const from = Date.UTC(firstYear, 7, 1) / 86_400_000;
  const until = Date.UTC(firstYear + seasons, 2, 1) / 86_400_000;
  let departure = 0;
  let soil = 17;
  let isWet = false;
  return Array.from({ length: until - from }, (_, index) => {
    const date = new Date((from + index) * 86_400_000);
    const ofYear = (date.getTime() - Date.UTC(date.getUTCFullYear(), 0, 1)) / 86_400_000;
    departure = 0.75 * departure + 5 * (random() - 0.5);
    isWet = random() < (isWet ? 0.65 : 0.3);
    const airMeanC = 10 - 6.5 * Math.cos((2 * Math.PI * (ofYear - 20)) / 365.25) + departure;
    soil += 0.12 * (airMeanC + 1 - soil);
    const windKmh = 6 + 24 * random() ** 2;
    return {
      iso: date.toISOString().slice(0, 10),
      airMeanC,
      airMinC: airMeanC - 1 - 4 * random(),
      airMaxC: airMeanC + 1 + 4 * random(),
      rainMm: isWet ? Math.round(-60 * Math.log(1 - 0.98 * random())) / 10 / 2 : 0,
      windKmh,
      gustKmh: windKmh * (1.4 + 0.4 * random()),
      referenceMm: Math.max(0.1, 1.9 - 1.7 * Math.cos((2 * Math.PI * (ofYear - 10)) / 365.25)),
      soil30cmC: Math.round(10 * soil) / 10,
    };
  });
}

/** Eight stations of twenty seasons of invented weather, the same in every run. */
export function inventedStations() {
  return Array.from({ length: 8 }, (_, index) => ({
    name: `invented ${index + 1}`,
    place: { latitude: 50 + index, longitude: -1, elevationM: 40 * index },
    days: inventedDays(index + 1, 2005, 20),
  }));
}
