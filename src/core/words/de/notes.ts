import type { PhraseTable } from '../phrase-table.ts';

/** Notes of the invented farm, of forecasts, and by which a value was worked out, in German: by the English, `{}` for what is put in. */
export const notes: PhraseTable = {
  'Clay loam, gentle slope, far from water; a still, mild morning.':
    'Toniger Lehm, sanfter Hang, weit vom Wasser; ein windstiller, milder Morgen.',
  'Drained clay beside a ditch, inside a protected water area.':
    'Dränierter Ton an einem Graben, in einem Wasserschutzgebiet.',
  'Sandy loam, heavy black-grass; rain is on its way.': 'Sandiger Lehm, viel Ackerfuchsschwanz; Regen ist im Anzug.',
  'Winter wheat with cleavers, far from water; a still, mild morning in April.':
    'Winterweizen mit Kletten-Labkraut, weit vom Wasser; ein windstiller, milder Morgen im April.',
  'Invented weather of Hollin Bank Farm: not a forecast of any place.':
    'Erfundenes Wetter der Hollin Bank Farm: keine Vorhersage für einen wirklichen Ort.',
  'Weather data by {} ({})': 'Wetterdaten von {} ({})',
  'Nothing says when this forecast was fetched, so its first hour is taken: the oldest that it can be.':
    'Nirgends steht, wann diese Vorhersage abgerufen wurde; es gilt ihre erste Stunde: älter kann sie nicht sein.',
  'No ensemble ({}): rain ahead is judged by one run and a wider band.':
    'Kein Ensemble ({}): Der kommende Regen wird nach einem Lauf und mit breiterer Spanne beurteilt.',
  'No archive of past years ({}): beyond the forecast the usual air of the latitude stands in.':
    'Kein Archiv vergangener Jahre ({}): Jenseits der Vorhersage steht die übliche Luft der geografischen Breite dafür.',
  'forecast fetched {}, {} h before': 'Vorhersage abgerufen {}, {} h vorher',
  "the forecast's grid cell is {} km from the field, further than {} km":
    'der Gitterpunkt der Vorhersage liegt {} km vom Feld, weiter als {} km',
  'forecast {}': 'Vorhersage {}',
  '10 m forecast wind brought down to boom height':
    'vorhergesagter Wind in 10 m, auf die Höhe des Gestänges umgerechnet',
  '10 m forecast gust of the hour, brought down to boom height in the same ratio as the wind':
    'vorhergesagte Böe der Stunde in 10 m, im Verhältnis des Windes auf die Höhe des Gestänges umgerechnet',
  'cautious end of the band {} to {}': 'vorsichtiges Ende der Spanne {} bis {}',
  'worked out from {} C at {} cm at {}': 'berechnet aus {} °C in {} cm um {}',
  'carried forward from {} C read {}': 'fortgeschrieben von {} °C, gelesen {}',
  'carried forward from {} C read {}, worked out from {} C at {} cm at {}':
    'fortgeschrieben von {} °C, gelesen {}, berechnet aus {} °C in {} cm um {}',
  'slope through {} readings over {} days': 'Verlauf durch {} Messungen über {} Tage',
  'modelled over {} days from {} C read {}': 'über {} Tage gerechnet von {} °C, gelesen {}',
  'from air temperature and relative humidity': 'aus Lufttemperatur und relativer Luftfeuchte',
  'from the place and the time': 'aus Ort und Zeit',
  'from wind, cloud and the height of the sun': 'aus Wind, Wolken und Höhe der Sonne',
  'the air is above {} C': 'die Luft ist wärmer als {} °C',
  'the field is not drained': 'das Feld ist nicht dräniert',
  'rain and evapotranspiration are not known for 7 days': 'Regen und Verdunstung sind für 7 Tage nicht bekannt',
  'deficit {} to {} mm, surplus in 7 days {} to {} mm': 'Defizit {} bis {} mm, Überschuss in 7 Tagen {} bis {} mm',
};
