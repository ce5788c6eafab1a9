import type { Catalogue } from '../../core/words/catalogue.ts';
import type { Screen } from './screen.ts';

/** One of several that a person may choose. */
export interface Choice<Id> {
  readonly id: Id;
  readonly label: string;
}

/** A field on offer, or the person's own: its id is null. */
export type FieldChoice = Choice<string | null>;

/** What a person is asked to choose from. */
export interface Choosing<Id> {
  readonly heading: string;
  readonly choices: readonly Choice<Id>[];
  /** Chosen by an empty line; without it an empty line is asked again. */
  readonly standard?: Choice<Id>;
}

/** Lets the person choose by number, id or a word of the label; undefined where the input ends first. */
export async function choose<Id extends string | null>(
  { heading, choices, standard }: Choosing<Id>,
  lines: AsyncIterator<string>,
  { say, prompt }: Pick<Screen, 'say' | 'prompt'>,
  { terminal }: Catalogue,
): Promise<Id | undefined> {
  say([heading, ...choices.map(({ label }, index) => `  ${index + 1}) ${label}`)]);
  prompt();
  for (let next = await lines.next(); !next.done; next = await lines.next()) {
    const text = next.value.trim().toLowerCase();
    const chosen = text === '' ? standard : pick(choices, text);
    if (chosen) return chosen.id;
    say([terminal.typeNumber(choices.length)]);
    prompt();
  }
  return undefined;
}

/** Fewer letters stand in too many words to be meant. */
const fewestLetters = 3;

/** By number, else by id or how the label begins, else by what one label alone holds. */
function pick<Id extends string | null>(choices: readonly Choice<Id>[], text: string): Choice<Id> | undefined {
  if (/^\d+$/.test(text)) return choices[Number(text) - 1];
  const begins = choices.find(({ id, label }) => (id ?? 'own') === text || label.toLowerCase().startsWith(text));
  const holding = text.length < fewestLetters ? [] : choices.filter(({ label }) => label.toLowerCase().includes(text));
  return begins ?? (holding.length === 1 ? holding[0] : undefined);
}
