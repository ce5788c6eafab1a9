import { Unit } from '@openmeteo/sdk/unit.js';
import { Variable } from '@openmeteo/sdk/variable.js';
import type { WeatherVariable } from '../../core/weather/forecast.ts';

/** One variable as the service names it, asks for it and sends it. Its meaning is in core/weather/variables.ts. */
export interface AskedVariable {
  /** Name in the question and in JSON replies. */
  readonly service: string;
  /** Names that older recordings use. */
  readonly formerly: readonly string[];
  readonly column: WeatherVariable;
  readonly sdk: Variable;
  /** Height above ground, m; 0 where the service sends none. */
  readonly altitude: number;
  /** Depth of the layer's top, cm; 0 where the service sends none. */
  readonly depth: number;
  /** Depth of the layer's foot, cm; 0 for a single depth. */
  readonly depthTo: number;
  readonly unit: Unit;
}

type Place = Partial<Pick<AskedVariable, 'altitude' | 'depth' | 'depthTo' | 'formerly'>>;

function asked(service: string, column: WeatherVariable, sdk: Variable, unit: Unit, place: Place = {}): AskedVariable {
  return { service, formerly: [], column, sdk, unit, altitude: 0, depth: 0, depthTo: 0, ...place };
}

/** The one ordered table from which the question is asked and the reply is read: never by position, always by its keys. */
export const askedVariables: readonly AskedVariable[] = [
  asked('temperature_2m', 'temperature2mC', Variable.temperature, Unit.celsius, { altitude: 2 }),
  asked('relative_humidity_2m', 'relativeHumidity2mPercent', Variable.relative_humidity, Unit.percentage, {
    altitude: 2,
    formerly: ['relativehumidity_2m'],
  }),
  asked('dew_point_2m', 'dewPoint2mC', Variable.dew_point, Unit.celsius, { altitude: 2, formerly: ['dewpoint_2m'] }),
  asked('precipitation', 'precipitationMm', Variable.precipitation, Unit.millimetre),
  asked('wind_speed_10m', 'windSpeed10mKmh', Variable.wind_speed, Unit.kilometres_per_hour, {
    altitude: 10,
    formerly: ['windspeed_10m'],
  }),
  asked('wind_gusts_10m', 'windGusts10mKmh', Variable.wind_gusts, Unit.kilometres_per_hour, {
    altitude: 10,
    formerly: ['windgusts_10m'],
  }),
  asked('wind_direction_10m', 'windDirection10mDeg', Variable.wind_direction, Unit.degree_direction, {
    altitude: 10,
    formerly: ['winddirection_10m'],
  }),
  asked('cloud_cover', 'cloudCoverPercent', Variable.cloud_cover, Unit.percentage, { formerly: ['cloudcover'] }),
  asked('shortwave_radiation', 'shortwaveRadiationWPerM2', Variable.shortwave_radiation, Unit.watt_per_square_metre),
  asked('et0_fao_evapotranspiration', 'et0Mm', Variable.et0_fao_evapotranspiration, Unit.millimetre),
  asked('soil_temperature_6cm', 'soilTemperature6cmC', Variable.soil_temperature, Unit.celsius, { depth: 6 }),
  asked('soil_temperature_18cm', 'soilTemperature18cmC', Variable.soil_temperature, Unit.celsius, { depth: 18 }),
  asked('soil_temperature_54cm', 'soilTemperature54cmC', Variable.soil_temperature, Unit.celsius, { depth: 54 }),
  asked(
    'soil_moisture_3_to_9cm',
    'soilMoisture3to9cmM3PerM3',
    Variable.soil_moisture,
    Unit.cubic_metre_per_cubic_metre,
    { depth: 3, depthTo: 9, formerly: ['soil_moisture_3_9cm'] },
  ),
  asked(
    'soil_moisture_9_to_27cm',
    'soilMoisture9to27cmM3PerM3',
    Variable.soil_moisture,
    Unit.cubic_metre_per_cubic_metre,
    { depth: 9, depthTo: 27, formerly: ['soil_moisture_9_27cm'] },
  ),
];
