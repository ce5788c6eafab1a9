import type { PhraseTable } from '../phrase-table.ts';

/** Notes of the invented farm, of forecasts, and by which a value was worked out: by their text, `{}` for what is put in. */
export const notes: PhraseTable = {
  'Clay loam, gentle slope, far from water; a still, mild morning.':
    'Clay loam, gentle slope, far from water; a still, mild morning.',
  'Drained clay beside a ditch, inside a protected water area.':
    'Drained clay beside a ditch, inside a protected water area.',
  'Sandy loam, heavy black-grass; rain is on its way.': 'Sandy loam, heavy black-grass; rain is on its way.',
  'Invented weather of Hollin Bank Farm: not a forecast of any place.':
    'Invented weather of Hollin Bank Farm: not a forecast of any place.',
  'Weather data by {} ({})': 'Weather data by {} ({})',
  'Nothing says when this forecast was fetched, so its first hour is taken: the oldest that it can be.':
    'Nothing says when this forecast was fetched, so its first hour is taken: the oldest that it can be.',
  'No ensemble ({}): rain ahead is judged by one run and a wider band.':
    'No ensemble ({}): rain ahead is judged by one run and a wider band.',
  'No archive of past years ({}): beyond the forecast the usual air of the latitude stands in.':
    'No archive of past years ({}): beyond the forecast the usual air of the latitude stands in.',
  'forecast fetched {}, {} h before': 'forecast fetched {}, {} h before',
  "the forecast's grid cell is {} km from the field, further than {} km":
    "the forecast's grid cell is {} km from the field, further than {} km",
  'forecast {}': 'forecast {}',
  '10 m forecast wind brought down to boom height': '10 m forecast wind brought down to boom height',
  '10 m forecast gust of the hour, brought down to boom height in the same ratio as the wind':
    '10 m forecast gust of the hour, brought down to boom height in the same ratio as the wind',
  'cautious end of the band {} to {}': 'cautious end of the band {} to {}',
  'worked out from {} C at {} cm at {}': 'worked out from {} C at {} cm at {}',
  'carried forward from {} C read {}': 'carried forward from {} C read {}',
  'carried forward from {} C read {}, worked out from {} C at {} cm at {}':
    'carried forward from {} C read {}, worked out from {} C at {} cm at {}',
  'slope through {} readings over {} days': 'slope through {} readings over {} days',
  'modelled over {} days from {} C read {}': 'modelled over {} days from {} C read {}',
  'from air temperature and relative humidity': 'from air temperature and relative humidity',
  'from the place and the time': 'from the place and the time',
  'from wind, cloud and the height of the sun': 'from wind, cloud and the height of the sun',
  'the air is above {} C': 'the air is above {} C',
  'the field is not drained': 'the field is not drained',
  'rain and evapotranspiration are not known for 7 days': 'rain and evapotranspiration are not known for 7 days',
  'deficit {} to {} mm, surplus in 7 days {} to {} mm': 'deficit {} to {} mm, surplus in 7 days {} to {} mm',
};
