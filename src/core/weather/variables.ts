import type { WeatherVariable } from './forecast.ts';

/**
 * What a stamp stands for. `instant`: the value at the stamp. `preceding-hour`: the sum, mean or highest of the hour that
 * ends at the stamp.
 */
export type StampMeaning = 'instant' | 'preceding-hour';

/** How a variable is stamped, in which range a value can be, and whether a decision needs it. */
export interface VariableMeaning {
  readonly stamp: StampMeaning;
  /** Unit symbol of the column. */
  readonly unit: string;
  /** Lowest and highest value that can be, both included; wider than any record. */
  readonly range: readonly [number, number];
  /** Decimals kept; all that lies beyond is noise of the wire format. */
  readonly decimals: number;
  /** True where spray weather cannot be judged without it. */
  readonly required: boolean;
}

const temperature = { unit: 'C', range: [-95, 65], decimals: 2 } as const;
const percent = { unit: '%', range: [0, 100], decimals: 2 } as const;
const water = { unit: 'm3/m3', range: [0, 1], decimals: 3 } as const;

/**
 * Meaning of every variable of a forecast. Gusts count as the highest of the preceding hour: some models give it so, others
 * the gust at the stamp, and the hour is the cautious reading.
 */
export const variableMeanings: Readonly<Record<WeatherVariable, VariableMeaning>> = {
  temperature2mC: { ...temperature, stamp: 'instant', required: true },
  relativeHumidity2mPercent: { ...percent, stamp: 'instant', required: true },
  dewPoint2mC: { ...temperature, stamp: 'instant', required: false },
  precipitationMm: { unit: 'mm', range: [0, 500], decimals: 2, stamp: 'preceding-hour', required: true },
  windSpeed10mKmh: { unit: 'km/h', range: [0, 450], decimals: 2, stamp: 'instant', required: true },
  windGusts10mKmh: { unit: 'km/h', range: [0, 450], decimals: 2, stamp: 'preceding-hour', required: true },
  windDirection10mDeg: { unit: 'deg', range: [0, 360], decimals: 2, stamp: 'instant', required: false },
  cloudCoverPercent: { ...percent, stamp: 'instant', required: false },
  shortwaveRadiationWPerM2: { unit: 'W/m2', range: [0, 1500], decimals: 2, stamp: 'preceding-hour', required: false },
  et0Mm: { unit: 'mm', range: [-0.5, 5], decimals: 3, stamp: 'preceding-hour', required: false },
  soilTemperature6cmC: { ...temperature, stamp: 'instant', required: false },
  soilTemperature18cmC: { ...temperature, stamp: 'instant', required: false },
  soilTemperature54cmC: { ...temperature, stamp: 'instant', required: false },
  soilMoisture3to9cmM3PerM3: { ...water, stamp: 'instant', required: false },
  soilMoisture9to27cmM3PerM3: { ...water, stamp: 'instant', required: false },
};

/** Every variable, in a fixed order. */
export const weatherVariables = Object.keys(variableMeanings) as readonly WeatherVariable[];

/** The variables without which spray weather cannot be judged. */
export const requiredVariables = weatherVariables.filter((variable) => variableMeanings[variable].required);
