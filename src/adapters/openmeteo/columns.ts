import { Aggregation } from '@openmeteo/sdk/aggregation.js';
import { Unit } from '@openmeteo/sdk/unit.js';
import type { VariableWithValues } from '@openmeteo/sdk/variable-with-values.js';
import type { VariablesWithTime } from '@openmeteo/sdk/variables-with-time.js';
import { codedError } from '../../core/errors/coded-error.ts';
import type { Forecast } from '../../core/weather/forecast.ts';
import { variableMeanings } from '../../core/weather/variables.ts';
import { cleanColumn, cleanRain } from './clean.ts';
import type { AskedVariable } from './variables.ts';

/**
 * Columns by variable, height, depth and aggregation, never by position. What was sent must be what was asked: a variable
 * that nobody asked for or that comes twice is FORECAST_GARBLED; a needed one that is absent, or has no value at all, is
 * FORECAST_INCOMPLETE; one that the model may lack is then left out.
 */
export function columnsOf(
  hourly: VariablesWithTime,
  hours: number,
  asked: readonly AskedVariable[],
): Forecast['values'] {
  const sent = sentByKey(hourly, asked);
  const values: Record<string, (number | null)[]> = {};
  for (const variable of asked) {
    const column = readColumn(sent.get(keyOf(variable)), variable, hours);
    if (column) values[variable.column] = column;
    else if (variableMeanings[variable.column].required) throw missing(variable);
  }
  return cleanRain(values);
}

function sentByKey(hourly: VariablesWithTime, asked: readonly AskedVariable[]): Map<string, VariableWithValues> {
  const count = hourly.variablesLength();
  const names = new Map(asked.map((variable) => [keyOf(variable), variable.service]));
  if (count < 0 || count > asked.length) throw unasked(`${count} variables`, asked);
  const sent = new Map<string, VariableWithValues>();
  for (let index = 0; index < count; index += 1) {
    const variable = hourly.variables(index);
    if (!variable) throw unasked('a variable without content', asked);
    const key = sentKey(variable);
    if (!names.has(key)) throw unasked(`a variable of kind ${key}`, asked);
    if (sent.has(key)) throw unasked(`${names.get(key)} twice`, asked);
    sent.set(key, variable);
  }
  return sent;
}

/** A column in our unit, or null where the model does not have it. */
function readColumn(sent: VariableWithValues | undefined, asked: AskedVariable, hours: number) {
  const raw = sent?.valuesArray();
  if (!sent || !raw) return null;
  if (raw.length !== hours) {
    throw codedError('FORECAST_GARBLED', {
      expected: `${hours} values of ${asked.service}`,
      came: String(raw.length),
    });
  }
  const nothing = raw.every(Number.isNaN);
  if (nothing && sent.unit() === Unit.undefined) return null;
  if (sent.unit() !== asked.unit) {
    throw codedError('FORECAST_WRONG_UNIT', {
      expected: `${asked.service} in ${Unit[asked.unit]}`,
      came: Unit[sent.unit()] ?? `unit number ${sent.unit()}`,
    });
  }
  return nothing ? null : cleanColumn(raw, asked.column, asked.service);
}

function keyOf(asked: AskedVariable): string {
  return [asked.sdk, asked.altitude, asked.depth, asked.depthTo, Aggregation.none, 0, 0, 0, 0].join('/');
}

function sentKey(sent: VariableWithValues): string {
  const { altitude, depth, depthTo } = { altitude: sent.altitude(), depth: sent.depth(), depthTo: sent.depthTo() };
  const others = [sent.aggregation(), sent.pressureLevel(), sent.ensembleMember(), sent.previousDay()];
  return [sent.variable(), altitude, depth, depthTo, ...others, sent.probability()].join('/');
}

function missing(variable: AskedVariable) {
  return codedError('FORECAST_INCOMPLETE', {
    expected: `values of ${variable.service}`,
    came: 'none',
    pointer: `/hourly/${variable.service}`,
  });
}

function unasked(came: string, asked: readonly AskedVariable[]) {
  return codedError('FORECAST_GARBLED', { expected: `the ${asked.length} variables asked for and no other`, came });
}
