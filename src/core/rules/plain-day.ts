import type { PackCase } from './pack-types.ts';

/** A day on which nothing stands in the way, as its case gives it. */
export type PlainDay = Pick<PackCase, 'facts' | 'at'>;

/** The case with the most facts among those on which all is well; null where there is none. */
export function plainDayOf<Case extends Pick<PackCase, 'facts' | 'expect'>>(cases: readonly Case[]): Case | null {
  return fullest(cases.filter(({ expect }) => expect.verdict === 'spray-today'));
}

/** The case with the most facts, the first of those; null of none. */
export function fullest<Case extends Pick<PackCase, 'facts'>>(cases: readonly Case[]): Case | null {
  const size = ({ facts }: Case) => Object.keys(facts).length;
  return cases.reduce<Case | null>((best, one) => (best && size(best) >= size(one) ? best : one), null);
}

/** The plain day of a pack with these cases, as the pack carries it; nothing where there is none. */
export function plainDayIn(cases: readonly PackCase[]): { readonly plainDay?: PlainDay } {
  const plain = plainDayOf(cases);
  if (plain === null) return {};
  return { plainDay: { facts: plain.facts, ...(plain.at === undefined ? {} : { at: plain.at }) } };
}
