/** A soil whose texture and water held were measured. */
export interface Retention {
  readonly sandPercent: number;
  readonly clayPercent: number;
  readonly organicMatterPercent: number | null;
  /** Water held at 33 and 1500 kPa, m3/m3; null where the curve does not reach. */
  readonly at33kPa: number | null;
  readonly at1500kPa: number | null;
}

type Curve = readonly [x: readonly number[], y: readonly number[]];
interface Tables {
  readonly particle_size: Readonly<Record<string, Curve>>;
  readonly soil_properties?: Readonly<Record<string, Readonly<Record<string, string>>>>;
  readonly 'lab_drying_h-t': Readonly<Record<string, Curve>>;
}

/** Suction of 33 and 1500 kPa in cm of water. */
const head33Cm = 337;
const head1500Cm = 15_296;

/** Every sample of tables of the UNSODA form with particle sizes and a drying curve in the laboratory; none in other files. */
export function retentionSamples(text: string): Retention[] {
  if (!text.includes('"particle_size"') || !text.includes('"lab_drying_h-t"')) return [];
  const tables = JSON.parse(text) as Tables;
  return Object.entries(tables['lab_drying_h-t']).flatMap(([code, curve]): Retention[] => {
    const sizes = tables.particle_size[code];
    if (!sizes) return [];
    const clay = interpolate(sizes, 2);
    const fine = interpolate(sizes, 50);
    const at33kPa = interpolate(curve, head33Cm);
    const at1500kPa = interpolate(curve, head1500Cm, 0.98);
    if (clay === null || fine === null || fine > 1.02 || clay > fine || (at33kPa ?? at1500kPa) === null) return [];
    const percent = Number(tables.soil_properties?.[code]?.['OM_content'] || Number.NaN);
    const clayPercent = Math.min(100, 100 * clay);
    return [
      {
        clayPercent,
        sandPercent: Math.max(0, 100 - Math.max(clayPercent, Math.min(100, 100 * fine))),
        organicMatterPercent: Number.isFinite(percent) ? percent : null,
        at33kPa,
        at1500kPa,
      },
    ];
  });
}

/** Value of a curve at x on the logarithm of x; null beyond its ends, of which the last may fall short by a share. */
function interpolate([xs, ys]: Curve, x: number, reach = 1): number | null {
  const points = xs
    .map((one, index) => [one, ys[index] ?? Number.NaN] as const)
    .filter(([one, y]) => one > 0 && Number.isFinite(y))
    .sort(([one], [other]) => one - other);
  const after = points.findIndex(([one]) => one >= x);
  const [last] = points.slice(-1);
  if (after < 0) return last !== undefined && last[0] >= reach * x ? last[1] : null;
  const [x1, y1] = points[after] ?? [x, Number.NaN];
  if (x1 === x) return y1;
  const before = points[after - 1];
  if (before === undefined) return null;
  const share = Math.log(x / before[0]) / Math.log(x1 / before[0]);
  return before[1] + share * (y1 - before[1]);
}
