import type { FactDefinition, ForecastTaking, ForecastVariable } from '../../facts/types.ts';
import { inside, type Place, type Report, show } from './findings.ts';

/** Unit of a value taken of each variable; rain taken as a sum is in mm. */
const units: Readonly<Record<ForecastVariable, string>> = {
  'air-temperature': 'C',
  'relative-humidity': '%',
  rain: 'mm/h',
  'wind-at-boom': 'km/h',
  'gusts-at-boom': 'km/h',
  'delta-t': 'C',
};

/** True where a fact can be taken from the forecast so: a number in the variable's unit, and a way of taking that fits the hours; else reported. */
export function takingFits(
  { variable, over, take }: Omit<ForecastTaking, 'end'> & { readonly end?: unknown },
  {
    id: fact,
    type,
    unit,
  }: { readonly id: string; readonly type: FactDefinition['type']; readonly unit?: string | undefined },
  place: Place,
  report: Report,
): boolean {
  const unsuited = (step: string, expected: string, came: unknown): false => {
    report('PACK_FACT_MISFIT', inside(place, step), { expected, came: show(came), fact });
    return false;
  };
  if (type !== 'number') return unsuited('variable', 'a fact of type number', type);
  if ((take === 'value') !== (over === 'now')) {
    return unsuited('take', over === 'now' ? 'value of the hour' : 'min, max, sum or mean of the hours', take);
  }
  if (take === 'sum' && variable !== 'rain') return unsuited('take', 'a sum of rain alone', `${take} of ${variable}`);
  const wanted = take === 'sum' ? 'mm' : units[variable];
  return unit === wanted || unsuited('variable', `a fact in ${wanted}`, unit);
}
