import type * as z from 'zod';
import { neededParameters, parametersFor } from '../../facts/needed-parameters.ts';
import type { FactRegistry } from '../../facts/registry/index.ts';
import type { Parameter } from '../../units/parameter.ts';
import { checkOrigin } from './check-texts.ts';
import { type Place, type Report, show } from './findings.ts';
import type { parametersSchema } from './schema.ts';

/** Every version of each parameter, by id. */
export type ParametersById = ReadonlyMap<string, readonly Parameter[]>;

const monthDay = /^(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/;
const longestMonths = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Parameters by id, each with all its versions; values, units and versions are checked. */
export function checkParameters(
  parameters: z.output<typeof parametersSchema>['parameters'],
  file: string,
  languages: readonly string[],
  report: Report,
): ParametersById {
  const byId = new Map<string, Parameter[]>();
  parameters.forEach((parameter, index) => {
    const place = { file, path: ['parameters', index] };
    checkOrigin(parameter, languages, place, report);
    if (!valueFits(parameter.value, parameter.unit, place, report)) return;
    const checked = parameter as Parameter;
    const versions = byId.get(parameter.id) ?? [];
    checkVersion(checked, versions, place, report);
    byId.set(parameter.id, [...versions, checked]);
  });
  checkUnits(byId, file, report);
  return byId;
}

function valueFits(value: unknown, unit: string, place: Place, report: Report): boolean {
  const at = { file: place.file, path: [...place.path, 'value'] };
  const wrong = (expected: string): false => {
    report('PARAMETER_VALUE_WRONG', at, { expected, came: `${show(value)} with unit ${unit}` });
    return false;
  };
  if (unit === 'month-day') return isMonthDay(value) || wrong('a day of the year, MM-DD');
  if (unit !== 'list') return (typeof value === 'number' && Number.isFinite(value)) || wrong('a finite number');
  const isList = Array.isArray(value) && value.length > 0 && value.every((item) => typeof item === 'string');
  return isList || wrong('a list of at least one text');
}

function isMonthDay(value: unknown): boolean {
  const parts = typeof value === 'string' ? monthDay.exec(value) : null;
  return parts !== null && Number(parts[2]) <= (longestMonths[Number(parts[1]) - 1] ?? 0);
}

function checkVersion(parameter: Parameter, earlier: readonly Parameter[], place: Place, report: Report): void {
  const { id, validFrom, validTo, unit } = parameter;
  const came = `${id} from ${validFrom}`;
  if (validTo !== undefined && validTo < validFrom) {
    report('PARAMETER_VALUE_WRONG', place, { expected: 'validTo not before validFrom', came: `${came} to ${validTo}` });
  }
  for (const other of earlier) {
    if (other.validFrom === validFrom) {
      report('PACK_ID_REPEATED', place, {
        expected: 'one version from each day',
        came: `${came} twice`,
        parameter: id,
      });
    }
    if (other.unit !== unit) {
      const expected = `the unit of the other version, ${other.unit}`;
      report('PARAMETER_UNIT_MISFIT', place, { expected, came: unit, parameter: id });
    }
  }
}

/** The parameters that the core reads have its units. */
function checkUnits(byId: ParametersById, file: string, report: Report): void {
  for (const [id, unit] of Object.entries(neededParameters)) {
    for (const { unit: came } of byId.get(id) ?? []) {
      if (came === unit) continue;
      const place = { file, path: ['parameters'] };
      report('PARAMETER_UNIT_MISFIT', place, { expected: `${id} in ${unit}`, came, parameter: id });
    }
  }
}

/** Reports each parameter that the core needs for the facts that the pack reaches, and for its dose, and that it lacks. */
export function checkNeeded(byId: ParametersById, reached: FactRegistry, file: string, report: Report): void {
  const units: Readonly<Record<string, string>> = neededParameters;
  for (const id of parametersFor(reached, byId.has('usualDoseGPerHa'))) {
    if (byId.has(id)) continue;
    const expected = units[id] === undefined ? id : `${id} in ${units[id]}`;
    const place = { file, path: ['parameters'] };
    report('PARAMETER_MISSING', place, { expected, came: 'nothing', parameter: id, among: [] });
  }
}
