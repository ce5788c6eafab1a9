import { inventedDays } from '../../src/demo/invented-seasons.ts';

const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];

/** Invented years in the form of the daily tables of the Irish service (its KeyDaily.txt), wind and gusts in knots. */
export function irishTable(seed: number, firstYear: number, years: number): string {
  const rows = inventedDays(seed, firstYear, years).map(
    ({ iso, airMaxC, airMinC, rainMm, windKmh, gustKmh, referenceMm }) => {
      const [year, month, day] = iso.split('-');
      const knots = (kmh: number | null) => (kmh === null ? '' : kmh / 1.852);
      const date = `${day}-${months[Number(month) - 1]}-${year}`;
      return [date, airMaxC, airMinC, rainMm, knots(windKmh), knots(gustKmh), referenceMm].join();
    },
  );
  const head = 'Station Name: TOP BROW (INVENTED)\nStation Height: 90 M\nLatitude:53.2 ,Longitude: -7.1\n\n';
  return `${head}date,maxtp,mintp,rain,wdsp,hg,pe\n${rows.join('\n')}\n`;
}
