import type { Pack } from '../rules/pack-types.ts';
import { openRules } from '../verdict/useful.ts';
import { seeded } from './seeded.ts';
import type { JudgedDay, PracticeDay } from './types.ts';

/** What may be named as the reason of a verdict. */
export interface Deciding {
  /** Rules by id, the leading one first. */
  readonly rules: readonly string[];
  /** True where nothing stands in the way: that is the reason then. */
  readonly nothing: boolean;
}

/**
 * The rules that decide a day: the stops that are met; without one the holds that are met; without one those that are not known
 * and could still change the verdict. On a day without any of them nothing does; advice that is met may be named too.
 */
export function decidingOf({ trace, verdict, met, advice }: JudgedDay): Deciding {
  const effectOf = new Map(trace.map(({ rule, effect }) => [rule, effect]));
  const leading = effectOf.get(met[0] ?? '');
  if (verdict === 'spray-today') return { rules: advice, nothing: true };
  const rules =
    met.length > 0 ? met.filter((one) => effectOf.get(one) === leading) : openRules(trace).map(({ rule }) => rule);
  return { rules, nothing: false };
}

/** Most rules that are offered as reasons. */
const mostOffered = 6;

/**
 * Rules to choose a reason from, in the order of the pack's files: one or two that decide where some do, the rule that the day is
 * about, and others beside them, those that read the same facts or are of the same topic first.
 */
export function reasonChoices(day: PracticeDay, judged: JudgedDay, pack: Pack, seed: string): string[] {
  const chance = seeded(`${seed} ${day.id}`);
  const factsOf = new Map(judged.trace.map(({ rule, facts }) => [rule, facts]));
  const { rules } = decidingOf(judged);
  const offered = [...new Set([...rules.slice(0, 2), day.rule].filter((id) => factsOf.has(id)))];
  const about = pack.rules.find(({ id }) => id === (offered[0] ?? day.rule));
  const near = (id: string) => {
    const same = (factsOf.get(id) ?? []).some((fact) => factsOf.get(about?.id ?? '')?.includes(fact));
    const topic = pack.rules.find((one) => one.id === id)?.topic;
    return (same ? 2 : 0) + (topic === about?.topic ? 1 : 0);
  };
  const others = chance.shuffled(
    pack.rules.map(({ id }) => id).filter((id) => !offered.includes(id) && !rules.includes(id)),
  );
  const decoys = others.toSorted((a, b) => near(b) - near(a));
  const close = decoys.slice(0, Math.ceil((mostOffered - offered.length) / 2));
  const far = others.filter((id) => !close.includes(id)).slice(0, mostOffered - offered.length - close.length);
  const chosen = new Set([...offered, ...close, ...far]);
  return pack.rules.map(({ id }) => id).filter((id) => chosen.has(id));
}
