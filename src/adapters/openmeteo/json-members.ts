type Column = (number | null)[];

/**
 * Runs of an ensemble in a JSON reply, by name and in the order of their numbers: the bare name is the control run, then
 * NAME_member01 and so on. Empty where no member is named; a run for which `read` gives null is left out.
 */
export function membersIn(
  hourly: Readonly<Record<string, unknown>>,
  base: string,
  read: (name: string) => Column | null,
): Column[] {
  const form = new RegExp(`^${base}_member(\\d{1,3})$`);
  const numbered = Object.keys(hourly).flatMap((name) => {
    const number = form.exec(name)?.[1];
    return number === undefined ? [] : [{ name, number: Number(number) }];
  });
  if (numbered.length === 0) return [];
  const names = numbered.sort((one, other) => one.number - other.number).map(({ name }) => name);
  const control = Object.hasOwn(hourly, base) ? [base] : [];
  return [...control, ...names].map(read).filter((column) => column !== null);
}
