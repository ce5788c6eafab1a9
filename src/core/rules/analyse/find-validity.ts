import type { Parameter } from '../../units/parameter.ts';
import { inside, type Report } from '../pack/findings.ts';
import type { PlaceOf } from './places.ts';

/**
 * Reports parameters that are needed and have no value in force on a day (YYYY-MM-DD): ended, or not begun; and values that say
 * they hold on although a later one has begun.
 */
export function findValidity(
  parameters: readonly Parameter[],
  needed: ReadonlySet<string>,
  day: string,
  places: PlaceOf,
  report: Report,
): void {
  for (const [id, versions] of versionsOf(parameters)) {
    if (needed.has(id) && !versions.some((version) => isInForce(version, day)))
      notInForce(id, versions, day, places, report);
    versions.forEach((version, index) => {
      const next = versions[index + 1];
      if (next === undefined || version.validTo === undefined || version.validTo < next.validFrom) return;
      report(
        'PARAMETER_VALIDITY_OVERLAPS',
        inside(places.parameter(id, version.validFrom), 'validTo'),
        {
          expected: `validTo before ${next.validFrom}, on which the next value begins`,
          came: `validTo ${version.validTo}`,
          parameter: id,
        },
        'warning',
      );
    });
  }
}

/** The parameters as they would be on a day if those that are not in force on it were: for an analysis that must go on. */
export function asIfInForce(parameters: readonly Parameter[], day: string): Parameter[] {
  return [...versionsOf(parameters).values()].flatMap((versions) => {
    if (versions.some((version) => isInForce(version, day))) return versions;
    const begun = versions.filter(({ validFrom }) => validFrom <= day);
    const chosen = begun.at(-1) ?? versions[0];
    if (chosen === undefined) return [];
    const { validTo: _ended, ...open } = chosen;
    return [{ ...open, validFrom: day }];
  });
}

function notInForce(id: string, versions: readonly Parameter[], day: string, places: PlaceOf, report: Report): void {
  const latest = versions.findLast(({ validFrom }) => validFrom <= day);
  const shown = latest ?? versions[0];
  const came = latest?.validTo === undefined ? `validFrom ${shown?.validFrom}` : `validTo ${latest.validTo}`;
  const at = inside(places.parameter(id, shown?.validFrom), latest?.validTo === undefined ? 'validFrom' : 'validTo');
  report('PARAMETER_NOT_IN_FORCE', at, { expected: `a value in force on ${day}`, came, parameter: id });
}

function isInForce({ validFrom, validTo }: Parameter, day: string): boolean {
  return validFrom <= day && (validTo === undefined || day <= validTo);
}

function versionsOf(parameters: readonly Parameter[]): ReadonlyMap<string, Parameter[]> {
  const byId = new Map<string, Parameter[]>();
  for (const parameter of parameters) byId.set(parameter.id, [...(byId.get(parameter.id) ?? []), parameter]);
  for (const versions of byId.values()) versions.sort((a, b) => (a.validFrom < b.validFrom ? -1 : 1));
  return byId;
}
