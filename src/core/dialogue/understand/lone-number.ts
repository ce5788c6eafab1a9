import type { Scan } from './scan.ts';

const mostUnknown = 4;

/** True where one number stands in a clause with a few words that are not known, none of them next to it, and nothing that turns it. */
export function isLone(
  at: number,
  { clause, amounts, unknownAt, flags, hasTime, hasYear, wordAt, language }: Scan,
): boolean {
  const isTelling = (place: number) => language.little.telling?.has(wordAt(place)) === true;
  return (
    amounts.every((one) => one.at === at || one.quantity.unit === 'cm') &&
    unknownAt.length <= mostUnknown &&
    unknownAt.every(
      (place) =>
        clause.items[place]?.kind === 'word' &&
        (Math.abs(place - at) > 1 || isTelling(place) || (place > at && hasUnit(at, clause))),
    ) &&
    !flags.has('not') &&
    !hasTime &&
    !hasYear
  );
}

function hasUnit(at: number, { items }: Scan['clause']): boolean {
  const item = items[at];
  return item?.kind === 'quantity' && item.quantity.unit !== null && item.quantity.unit !== 'foreign';
}

/** True where words that are not known stand before a verb of telling or after the number: "the dash says 4". */
export function isTold(at: number, scan: Scan): boolean {
  const { wordAt, unknownAt } = scan;
  const { telling } = scan.language.little;
  const verb = Array.from({ length: at }, (_, place) => place).findLast((place) => telling?.has(wordAt(place)));
  const isDoing = (place: number) => wordAt(place).endsWith('ing') && telling?.has(wordAt(place + 1)) === true;
  return (
    isLone(at, scan) &&
    unknownAt.every((place) => place > at || (verb !== undefined && place <= verb) || isDoing(place))
  );
}
