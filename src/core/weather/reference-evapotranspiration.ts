import type { Forecast } from './forecast.ts';

/** Reference evapotranspiration of the hour before a stamp, mm, and how it was come by. */
export interface ReferenceHour {
  readonly mm: number;
  readonly from: 'service' | 'hourly' | 'daily';
}

/** Reference evapotranspiration of every stamp of a forecast; null where it cannot be told. */
export function referenceEvapotranspirationHours(forecast: Forecast): readonly (ReferenceHour | null)[] {
  return forecast.times.map((_, index) => {
    const mm = forecast.values.et0Mm?.[index] ?? null;
    return mm === null ? null : { mm, from: 'service' };
  });
}
