const letters: Readonly<Record<string, string>> = Object.fromEntries(
  ['áƀćđéƒǵĥíĵķłɱńóþɋŕśŧúṽŵẋýź', 'ÁɃĆĐÉƑǴĤÍĴĶŁṀŃÓÞɊŔŚŦÚṼŴẊÝŹ'].flatMap((accented, upper) =>
    [...accented].map((letter, index) => [String.fromCharCode((upper === 1 ? 65 : 97) + index), letter]),
  ),
);

/** Puts accents on every letter, for a language made up on the spot; what stands in braces, to be filled in, stays. */
export function accent(text: string): string {
  return text.replaceAll(/\{[^{}]*\}|[A-Za-z]/g, (found) => letters[found] ?? found);
}

/** A sentence of the made-up language: accented, in brackets. */
export function decorate(text: string): string {
  return /[A-Za-z]/.test(text) ? `⟦${accent(text)}⟧` : text;
}

/** Accents what a function says of its own, and leaves the texts that it was given. */
function decorateAround(text: string, given: readonly unknown[]): string {
  const texts = given.filter((one): one is string => typeof one === 'string' && one.length > 1);
  if (texts.length === 0) return decorate(text);
  const parts = new RegExp(
    `(${texts
      .sort((a, b) => b.length - a.length)
      .map(literally)
      .join('|')})`,
  );
  return `⟦${text
    .split(parts)
    .map((part, index) => (index % 2 === 1 ? part : accent(part)))
    .join('')}⟧`;
}

const literally = (text: string) => text.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&');

/** Keys of a catalogue whose texts are no sentences: a tag, and ids. */
const kept = new Set(['tag', 'plural']);

/** The same words in the made-up language: each sentence decorated, functions wrapped. */
export function decorateWords<T>(words: T, key = ''): T {
  if (kept.has(key)) return words;
  if (typeof words === 'string') return decorate(words) as T;
  if (typeof words === 'function') {
    const say = (...given: unknown[]) => {
      const said: unknown = words(...given);
      return typeof said === 'string' ? decorateAround(said, given) : said;
    };
    return Object.defineProperty(say, 'length', { value: words.length }) as T;
  }
  if (Array.isArray(words)) return words.map((one) => decorateWords(one)) as T;
  if (words === null || typeof words !== 'object') return words;
  return Object.fromEntries(Object.entries(words).map(([name, value]) => [name, decorateWords(value, name)])) as T;
}

/** A file of a pack with the made-up language beside English in each of its texts. */
export function decorateFile(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(decorateFile);
  if (value === null || typeof value !== 'object') return value;
  const { en } = value as { readonly en?: unknown };
  const own = en === undefined ? {} : { zz: decorateWords(en) };
  return Object.fromEntries(
    Object.entries({ ...value, ...own }).map(([key, one]) => [
      key,
      key === 'languages' ? [...(one as string[]), 'zz'] : key === 'zz' ? one : decorateFile(one),
    ]),
  );
}

/**
 * Words of two letters or more that are not of the made-up language. `exempt` are texts that stay as they are: names of fields, titles
 * of publications, ids.
 */
export function plainWords(text: string, exempt: readonly (string | RegExp)[] = []): string[] {
  const rest = longestFirst(exempt).reduce<string>((left, one) => left.replaceAll(one, ' '), text);
  return rest.match(/[A-Za-z]{2,}/g) ?? [];
}

const longestFirst = (exempt: readonly (string | RegExp)[]) =>
  [...exempt].sort((a, b) => String(b).length - String(a).length);
