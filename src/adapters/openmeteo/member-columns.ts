import { Aggregation } from '@openmeteo/sdk/aggregation.js';
import { Unit } from '@openmeteo/sdk/unit.js';
import { Variable } from '@openmeteo/sdk/variable.js';
import type { VariablesWithTime } from '@openmeteo/sdk/variables-with-time.js';
import { codedError } from '../../core/errors/coded-error.ts';
import { withoutFalseZeros } from '../../core/weather/zero-runs.ts';
import { cleanColumn } from './clean.ts';

/** No ensemble has more runs than this. */
const mostMembers = 200;

/**
 * Rain of every run by its member number (0 is the control run), never by position, mm of the hour before the stamp; a run
 * without any value is left out. Throws FORECAST_GARBLED for another variable or a member that comes twice,
 * FORECAST_WRONG_UNIT for values that are not mm.
 */
export function memberColumnsOf(hourly: VariablesWithTime, hours: number): (number | null)[][] {
  const count = hourly.variablesLength();
  if (count < 0 || count > mostMembers) throw garbled(`${count} columns`);
  const members = new Map<number, (number | null)[] | null>();
  for (let index = 0; index < count; index += 1) {
    const sent = hourly.variables(index);
    if (sent?.variable() !== Variable.precipitation || sent.aggregation() !== Aggregation.none) {
      throw garbled('a column of something else');
    }
    const member = sent.ensembleMember();
    if (members.has(member)) throw garbled(`member ${member} twice`);
    const raw = sent.valuesArray();
    if (raw?.length !== hours) throw garbled(`${raw?.length ?? 0} values of member ${member} for ${hours} hours`);
    members.set(member, raw.every(Number.isNaN) ? null : readMember(raw, sent.unit(), member));
  }
  const inOrder = [...members].sort(([one], [other]) => one - other);
  return inOrder.flatMap(([, column]) => (column === null ? [] : [column]));
}

function readMember(raw: Float32Array, unit: Unit, member: number): (number | null)[] {
  if (unit === Unit.millimetre) return withoutFalseZeros(cleanColumn(raw, 'precipitationMm', `member ${member}`));
  throw codedError('FORECAST_WRONG_UNIT', {
    expected: `rain of member ${member} in ${Unit[Unit.millimetre]}`,
    came: Unit[unit] ?? `unit number ${unit}`,
  });
}

function garbled(came: string) {
  return codedError('FORECAST_GARBLED', { expected: 'hourly rain of the members of an ensemble', came });
}
