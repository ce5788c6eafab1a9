import { Unit } from '@openmeteo/sdk/unit.js';
import { buildReply, type ReplyDescription } from './build-forecast.ts';
import { type Failure, failures, type Reply } from './failures.ts';
import { memberName } from './invented-members.ts';

/** Every way in which the ensemble of the stand-in can fail or fall short, by name. */
export const ensembleFailures = {
  'page-503': failures['page-503'],
  'page-404': failures['page-404'],
  'busy-429-long': failures['busy-429-long'],
  'json-200': failures['json-200'],
  truncated: failures.truncated,
  appended: failures.appended,
  empty: failures.empty,
  'wrong-place': failures['wrong-place'],
  'wrong-step': failures['wrong-step'],
  reset: 'reset',
  silence: 'silence',
  'too-few': (good) => rebuilt(keeping(good, (member) => member < 5)),
  'nan-members': (good) => rebuilt(changing(good, (mm, _, member) => (member % 2 === 1 ? null : mm))),
  'all-nan': (good) => rebuilt(changing(good, () => null)),
  'gap-in-all': (good) => rebuilt(changing(good, (mm, index) => (index === 30 ? null : mm))),
  'seven-days': (good) => rebuilt(changing(good, (mm, index) => (index < 7 * 24 ? mm : null))),
  'other-hours': (good) => rebuilt({ ...good, start: good.start + 40 * 86_400 }),
  'half-hour-off': (good) => rebuilt({ ...good, start: good.start + 1800 }),
  'member-twice': (good) => rebuilt({ ...good, order: [...Object.keys(good.variables), memberName(3)] }),
  'something-else': (good) =>
    rebuilt({ ...good, variables: { ...good.variables, cloud_cover: good.variables['precipitation'] ?? [] } }),
  'wrong-unit': (good) => rebuilt({ ...good, units: { [memberName(7)]: Unit.inch } }),
  'impossible-value': (good) => rebuilt(changing(good, (mm, _, member) => (member === 9 ? -4 : mm))),
} as const satisfies Record<string, Failure>;

/** Name of a way in which the ensemble can fail. */
export type EnsembleFailureName = keyof typeof ensembleFailures;

function rebuilt(description: ReplyDescription): Reply {
  return { status: 200, headers: { 'content-type': 'application/octet-stream' }, body: buildReply(description) };
}

function keeping(good: ReplyDescription, keep: (member: number) => boolean): ReplyDescription {
  const kept = Object.entries(good.variables).filter((_, member) => keep(member));
  return { ...good, variables: Object.fromEntries(kept) };
}

function changing(
  good: ReplyDescription,
  change: (mm: number | null, index: number, member: number) => number | null,
): ReplyDescription {
  const columns = Object.entries(good.variables).map(([name, column], member) => {
    return [name, column.map((mm, index) => change(mm, index, member))] as const;
  });
  return { ...good, variables: Object.fromEntries(columns) };
}
