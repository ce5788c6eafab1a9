import { describe, expect, test } from 'vitest';
import { readBritish } from '../../src/tools/soil-records/british.ts';
import { dayNumber, tidyDays } from '../../src/tools/soil-records/days.ts';
import { readIrish } from '../../src/tools/soil-records/irish.ts';
import { readReynoldsRaw, readReynoldsTable } from '../../src/tools/soil-records/reynolds.ts';
import { readUsNetwork } from '../../src/tools/soil-records/us-network.ts';

const file = (...lines: string[]) => ({ path: 'anything', text: `${lines.join('\n')}\n` });
const first = dayNumber(2020, 10, 1);

/** Numbers in these files are invented; the forms are those of the publishers. */
describe('a record is found by the form of its file', () => {
  test('30 cm lies a third of the way from 20 to 50 cm, and -9999 is missing', () => {
    const heading = 'WBANNO,LST_DATE,LATITUDE,T_DAILY_AVG,SOIL_TEMP_20_DAILY,SOIL_TEMP_50_DAILY';
    const [record] = readUsNetwork(file(heading, '1,20201001,39,12,10,13', '1,20201002,39,-9999,10,-9999'));
    expect(record).toMatchObject({ station: 'WBAN 1', latitudeDeg: 39, depthM: 0.3 });
    expect(record?.days).toEqual([
      { day: first, airC: 12, soilC: 11 },
      { day: first + 1, airC: null, soilC: null },
    ]);
  });

  test('the fourth column of the 17:00 table is 30 cm', () => {
    const heading = 'DATE;LOC;y_1;y_2;y_3;y_4;y_5;y_6;y_7;y_8;C1;C2';
    const [record] = readReynoldsTable(file(heading, '2020-10-01;9x9;1;2;3;4.5;5;6;7;8;2;6'));
    expect(record?.days).toEqual([{ day: first, airC: 4, soilC: 4.5 }]);
  });

  test('raw hourly soil is joined to the climate of its own station, and left out without one', () => {
    const soil = file(
      '# Contents:     Hourly interval soil temperature, station 009,',
      '10 01 2020 17 00  14.1    .   12.3  12.7  14.5',
    );
    const climate = (station: string) =>
      file(`# Contents:     Daily interval climate, station ${station},`, '10 01 2020   2.0   6.0  .');
    expect(readReynoldsRaw([soil, climate('009x01')])[0]?.days.at(-1)).toEqual({ day: first, airC: 4, soilC: 12.7 });
    expect(readReynoldsRaw([soil, climate('123x01')])).toEqual([]);
  });

  test('British rows of other periods than 24 h are left out, NA is missing', () => {
    const head = ['Conventions,G,BADC-CSV,1', 'observation_station,G,somewhere', 'location,G,51.5,-0.8'];
    const soil = file(
      ...head,
      'long_name,q30cm_soil_temp,x',
      'data',
      'ob_time,q30cm_soil_temp',
      '2020-10-01 09:00:00,11.5',
      '2020-10-02 09:00:00,NA',
      'end data',
    );
    const air = file(
      ...head,
      'long_name,max_air_temp,x',
      'data',
      'ob_end_time,ob_hour_count,max_air_temp,min_air_temp',
      '2020-10-01 09:00:00,24,14,6',
      '2020-10-02 09:00:00,12,20,18',
      'end data',
    );
    expect(readBritish([soil, air])[0]).toMatchObject({
      latitudeDeg: 51.5,
      days: [
        { day: first, airC: 10, soilC: 11.5 },
        { day: first + 1, airC: null, soilC: null },
      ],
    });
  });

  test('Irish columns are taken by their place in the heading', () => {
    const [record] = readIrish(
      file(
        'Station Name: SOMEWHERE',
        'Latitude:53.5  ,Longitude: -6.6',
        'date,ind,maxtp,ind,mintp,soil',
        '01-oct-2020,0,14,0,6,11.2',
        '02-oct-2020,0,,0,6,',
        '',
      ),
    );
    expect(record).toMatchObject({ station: 'SOMEWHERE', latitudeDeg: 53.5, depthM: 0.1 });
    expect(record?.days).toEqual([
      { day: first, airC: 10, soilC: 11.2 },
      { day: first + 1, airC: null, soilC: null },
    ]);
  });

  test('no reader takes a file of another form', () => {
    const other = file('a,b', '1,2');
    expect(
      [
        readUsNetwork(other),
        readReynoldsTable(other),
        readIrish(other),
        readBritish([other]),
        readReynoldsRaw([other]),
      ].flat(),
    ).toEqual([]);
  });
});

test('four readings alike are a sensor that stands still; a missing day is kept as a gap', () => {
  const days = [5, 7, 7, 7, 7, 6, 6].map((soilC, index) => ({
    day: first + index + (index > 5 ? 1 : 0),
    airC: 9,
    soilC,
  }));
  expect(tidyDays(days).map(({ soilC }) => soilC)).toEqual([5, null, null, null, null, 6, null, 6]);
});
