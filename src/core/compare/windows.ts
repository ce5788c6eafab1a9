/** A stretch of days in a row on which a rule set says spray today: places of its first and last day. */
export interface Run {
  readonly first: number;
  readonly last: number;
}

/** What becomes of a window from A to B. */
export type WindowChange = 'appears' | 'vanishes' | 'grows' | 'shrinks' | 'moves';

/** A window that differs; several that overlap one another across both rule sets count as one. */
export interface WindowDifference {
  readonly change: WindowChange;
  readonly a: readonly Run[];
  readonly b: readonly Run[];
}

/** Stretches of days in a row that fit. */
export function runsOf(fits: readonly boolean[]): Run[] {
  const runs: Run[] = [];
  fits.forEach((fit, at) => {
    if (!fit) return;
    const last = runs.at(-1);
    if (last?.last === at - 1) runs[runs.length - 1] = { first: last.first, last: at };
    else runs.push({ first: at, last: at });
  });
  return runs;
}

/** Windows that appear, vanish, grow, shrink, or move without changing their number of days; those that stay are left out. */
export function windowDifferences(a: readonly boolean[], b: readonly boolean[]): WindowDifference[] {
  const [before, after] = [runsOf(a), runsOf(b)];
  const either = runsOf(
    Array.from({ length: Math.max(a.length, b.length) }, (_, at) => a[at] === true || b[at] === true),
  );
  return either.flatMap((whole): WindowDifference[] => {
    const inside = ({ first, last }: Run) => first >= whole.first && last <= whole.last;
    const [was, is] = [before.filter(inside), after.filter(inside)];
    if (JSON.stringify(was) === JSON.stringify(is)) return [];
    return [{ change: changeOf(was, is), a: was, b: is }];
  });
}

function changeOf(was: readonly Run[], is: readonly Run[]): WindowChange {
  if (was.length === 0) return 'appears';
  if (is.length === 0) return 'vanishes';
  const daysOf = (runs: readonly Run[]) => runs.reduce((sum, { first, last }) => sum + last - first + 1, 0);
  const more = daysOf(is) - daysOf(was);
  if (more === 0) return 'moves';
  return more > 0 ? 'grows' : 'shrinks';
}
