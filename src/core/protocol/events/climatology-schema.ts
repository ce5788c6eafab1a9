import * as z from 'zod';

/** What the air at a place usually is, as events and saved forecasts keep it: C, 366 days of a year, the source in a few words. */
export const climatologySchema = z.strictObject({
  meanAirCByDayOfYear: z.array(z.number().min(-60).max(60)).length(366),
  spreadC: z.number().gt(0).max(20),
  years: z.int().min(1),
  source: z.string().min(1).max(200),
});
