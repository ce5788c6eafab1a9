import type { Catalogue } from '../../core/words/catalogue.ts';

/** A field on offer, or the person's own. */
export interface FieldChoice {
  /** Null for an own field. */
  readonly id: string | null;
  readonly label: string;
}

/** Lets the person pick a field by number or name; undefined where the input ends first. */
export async function chooseField(
  offers: readonly FieldChoice[],
  lines: AsyncIterator<string>,
  say: (lines: readonly string[]) => void,
  prompt: () => void,
  { terminal }: Catalogue,
): Promise<string | null | undefined> {
  say([terminal.whichField, ...offers.map(({ label }, index) => `  ${index + 1}) ${label}`)]);
  prompt();
  for (let next = await lines.next(); !next.done; next = await lines.next()) {
    const chosen = pick(offers, next.value.trim().toLowerCase());
    if (chosen) return chosen.id;
    say([terminal.typeNumber(offers.length)]);
    prompt();
  }
  return undefined;
}

function pick(offers: readonly FieldChoice[], text: string): FieldChoice | undefined {
  const byNumber = /^\d+$/.test(text) ? offers[Number(text) - 1] : undefined;
  return (
    byNumber ??
    offers.find(({ id, label }) => text !== '' && ((id ?? 'own') === text || label.toLowerCase().startsWith(text)))
  );
}
