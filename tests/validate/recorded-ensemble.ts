import { membersIn } from '../../src/adapters/openmeteo/json-members.ts';
import type { RecordedJson } from './recorded-replies.ts';
import { hold } from './validator.ts';

/** Least members of a real ensemble beside its control run. */
const fewest = 10;
/** Air temperatures that occur on Earth, C, as the records of the World Meteorological Organization round them (from memory). */
const onEarthC = [-90, 57] as const;

/** Checks of the runs in a recorded reply, whatever the variable; none where it holds no member, as its columns tell. */
export function ensembleChecks(name: string, recorded: RecordedJson): (readonly [name: string, check: () => void])[] {
  const hourly = recorded.hourly ?? {};
  const numbered = Object.keys(hourly).filter((column) => /_member\d+$/.test(column));
  const bases = [...new Set(numbered.map((column) => column.replace(/_member\d+$/, '')))];
  return bases.map((base) => [
    `${name}: control run and members of ${base}`,
    () => {
      const own = numbered.filter((column) => column.startsWith(`${base}_member`));
      const hours = hourly['time']?.length ?? 0;
      const runs = membersIn(hourly, base, (column) => (hourly[column] ?? []).map(numberOrNull));
      hold(own.length >= fewest, () => `${own.length} members`);
      hold(runs.length === own.length + 1, () => `${runs.length} runs of a control run and ${own.length} members`);
      checkStamps(hourly['time'] ?? []);
      for (const run of runs) {
        hold(run.length === hours, () => `${run.length} values of ${hours}`);
        hold(
          run.some((value) => value !== null),
          () => 'a run without a value',
        );
        const known = run.filter((value) => value !== null);
        hold(known.every(Number.isFinite), () => 'a value that is not finite');
        if (recorded.hourly_units?.[base] === '°C') {
          hold(
            known.every((value) => value >= onEarthC[0] && value <= onEarthC[1]),
            () => 'a temperature not of Earth',
          );
        }
      }
      hold(
        runs.some((run) => run.join() !== runs[0]?.join()),
        () => 'every run is the same',
      );
      hold(runs[0]?.join() === hourly[base]?.join(), () => 'the control run is not the first');
    },
  ]);
}

function numberOrNull(value: string | number | null): number | null {
  return typeof value === 'number' ? value : null;
}

function checkStamps(stamps: readonly (string | number | null)[]): void {
  const seconds = stamps.map((stamp) => Date.parse(`${stamp}:00Z`) / 1000);
  const step = (seconds[1] ?? 0) - (seconds[0] ?? 0);
  hold(step === 3600, () => `stamps ${step} s apart`);
  const even = seconds.every((second, index) => index === 0 || second - seconds[index - 1]! === step);
  hold(even, () => 'stamps that are not evenly spaced');
}
