import type { Utterance } from '../utterance.ts';

/** Several facts in one breath. */
export const several: readonly Utterance[] = [
  [null, 'no cracks, puddles or frost', 'soil.surface=-cracked; soil.surface=-ponded; crop.frostOnLeaves=no'],
  ['surface', 'cracks: none', 'soil.surface=-cracked'],
  ['place', '52.1, -1.3', 'field.latitude=52.1; field.longitude=-1.3'],
  ['place', '52.1 N 1.3 W', 'field.latitude=52.1; field.longitude=-1.3'],
  [null, 'black-grass with 3 tillers', 'weed.present=yes; weed.tillers=3'],
  [null, 'wind 8 mph gusting 14 from the west', 'wind.boomKmh=12.875; wind.gustKmh=22.531'],
  [null, 'wind is 12 km/h, gusts of 20', 'wind.boomKmh=12; wind.gustKmh=20'],
  [
    null,
    'clay loam, 9.2 at 30 cm, drains not running',
    'field.texture=clay-loam; soil.temperature30cmC=9.2; soil.drainsRunning=no',
  ],
  [
    null,
    'soil 9 at 30 cm and moist, 4 true leaves, black-grass with 2 tillers',
    'soil.temperature30cmC=9; soil.feel=moist; crop.trueLeaves=4; weed.present=yes; weed.tillers=2',
  ],
  ['soil-temperature', '9.1, wind 6 km/h', 'soil.temperature30cmC=9.1; wind.boomKmh=6'],
  ['drains-running', 'yes, and the soil is sticky', 'soil.drainsRunning=yes; soil.surface=+sticky'],
  ['drains-running', 'no, 9.2 at 30 cm', 'soil.drainsRunning=no; soil.temperature30cmC=9.2'],
  [null, 'crop is at 6 leaves and clean of black-grass', 'crop.trueLeaves=6; weed.present=no'],
  [
    null,
    'soil temp 9.4 at 30 cm, air 6, wind 5 mph',
    'soil.temperature30cmC=9.4; air.temperatureC=6; wind.boomKmh=8.047',
  ],
  [null, 'heavy clay, tile drained', 'field.texture=clay; field.drained=yes'],
  [
    'soil-temperature',
    'yesterday it was 9.5 and the soil was moist',
    'soil.temperature30cmC=9.5@24; soil.feel=moist@24',
  ],
  [null, 'no frost, 5 degrees in the air', 'crop.frostOnLeaves=no; air.temperatureC=5'],
];
