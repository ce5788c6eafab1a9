import { errorTable } from '../errors/table.ts';
import { isStuckAtEnd } from '../science/soil/temperature/readings.ts';
import { numberParameter } from '../units/parameter.ts';
import type { FactContext } from './context.ts';
import type { FactId } from './registry/index.ts';
import type { Known, Resolved } from './types.ts';

const code = 'READING_STUCK';

/**
 * A soil temperature at 30 cm as read, or with a wider band where it ends a row of equal readings over days, as of a sensor that
 * stands still: then over what is carried forward from the first of the row too (`carried`), and its note says so with the code.
 */
export function doubtStuck(id: FactId, given: Known, context: FactContext, carried: () => Resolved | null): Known {
  if (id !== 'soil.temperature30cmC' || given.type !== 'number') return given;
  if (!endsStuck(context)) return given;
  const band = numberParameter(context.parameters, 'soilTemperatureReadingBandC');
  const model = carried();
  const around = model?.known && model.type === 'number' ? model : given;
  const low = Math.min(given.low - band, around.low);
  const high = Math.max(given.high + band, around.high);
  return { ...given, low, high, note: `${errorTable[code].says} (${code})` };
}

/** True where the readings at 30 cm end in a row of equal ones over days: then they tell neither value nor trend well. */
export function endsStuck({ observations }: Pick<FactContext, 'observations'>): boolean {
  const readings = observations('soil.temperature30cmC').flatMap(({ at, reading }) => {
    return reading.type === 'number' ? [{ at, valueC: reading.value }] : [];
  });
  return isStuckAtEnd(readings);
}
