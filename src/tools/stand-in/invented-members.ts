import type { ReplyDescription } from './build-forecast.ts';

/** Runs of the invented ensemble, the control run among them. */
export const inventedMembers = 51;

/**
 * An invented ensemble about an invented forecast: the control run has its rain, the other runs have it from nothing up to
 * twice as much in even steps, so that chances can be worked out by hand.
 */
export function inventMembers(forecast: ReplyDescription): ReplyDescription {
  const rain = forecast.variables['precipitation'] ?? [];
  const members = Array.from({ length: inventedMembers }, (_, member) => {
    const share = member === 0 ? 1 : (2 * (member - 1)) / (inventedMembers - 2);
    return [memberName(member), rain.map((mm) => (mm === null ? null : Math.round(mm * share * 10) / 10))] as const;
  });
  return { ...forecast, variables: Object.fromEntries(members) };
}

/** Name of a run's rain as the service writes it: the bare name for the control run. */
export function memberName(member: number): string {
  return member === 0 ? 'precipitation' : `precipitation_member${String(member).padStart(2, '0')}`;
}
