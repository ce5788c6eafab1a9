/** Hours beside a gap within which zeros are not believed. */
const doubtHours = 24;

/**
 * Rain with the zeros taken out that cannot be believed, because services have filled hours past a model's end with zeros.
 * A zero is missing where (a) the same hour is missing in another column that comes from the same model (`alongside`), or
 * (b) it belongs to a run of zeros touching a gap in the rain itself and lies within 24 h of that gap, or (c) its run lies
 * between two gaps, however long. A longer dry spell keeps the part that is far from the gap. Amounts above zero stay.
 */
export function withoutFalseZeros(
  rain: readonly (number | null)[],
  alongside: readonly (readonly (number | null)[])[] = [],
): (number | null)[] {
  const known = rain.map((value, index) =>
    value === 0 && alongside.some((column) => (column[index] ?? null) === null) ? null : value,
  );
  const cleaned = [...known];
  let start = 0;
  while (start < known.length) {
    if (known[start] !== 0) {
      start += 1;
      continue;
    }
    let end = start;
    while (end < known.length && known[end] === 0) end += 1;
    const gapBefore = start > 0 && known[start - 1] === null;
    const gapAfter = end < known.length && known[end] === null;
    for (let index = start; index < end; index += 1) {
      const near = (gapBefore && index - start < doubtHours) || (gapAfter && end - index <= doubtHours);
      if (near || (gapBefore && gapAfter)) cleaned[index] = null;
    }
    start = end;
  }
  return cleaned;
}
