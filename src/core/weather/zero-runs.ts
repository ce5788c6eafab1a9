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
  const cleaned = [...rain];
  for (const { start, end } of zeroRuns(rain)) {
    const gapBefore = rain[start - 1] === null;
    const gapAfter = rain[end] === null;
    for (let index = start; index < end; index += 1) {
      const near = (gapBefore && index - start < doubtHours) || (gapAfter && end - index <= doubtHours);
      const alone = alongside.some((column) => (column[index] ?? null) === null);
      if (near || alone || (gapBefore && gapAfter)) cleaned[index] = null;
    }
  }
  return cleaned;
}

/** Runs of zeros: index of the first, and of the first value after. */
function zeroRuns(rain: readonly (number | null)[]): { readonly start: number; readonly end: number }[] {
  const starts = rain.flatMap((value, index) => (value === 0 && rain[index - 1] !== 0 ? [index] : []));
  return starts.map((start) => {
    const length = rain.slice(start).findIndex((value) => value !== 0);
    return { start, end: length < 0 ? rain.length : start + length };
  });
}
