import type { Path } from '../pack/findings.ts';
import type { OverlayChanges, Pack } from '../pack-types.ts';
import type { Overlay } from './parse-overlay.ts';
import { entriesOf, headOf, type PackEntries } from './unbuild.ts';

type Entry = Readonly<Record<string, unknown>>;
type ListName = keyof PackEntries;

/** The lists in which an overlay has entries, by their names in its file. */
export const overlayLists = ['parameters', 'rules', 'questions', 'cautions', 'glossary'] as const satisfies ListName[];

/** The files that a pack would have with an overlay laid over it, and where each entry of the overlay came from. */
export interface Merged {
  readonly files: ReadonlyMap<string, unknown>;
  /** Steps within the overlay's file, by file and the first two steps of a path in a merged file: "parameters.json parameters 3". */
  readonly origins: ReadonlyMap<string, Path>;
  readonly changed: OverlayChanges;
}

/** Lays an overlay's entries over a pack's: one of an id that the pack has takes its place, others come last. Nothing is judged. */
export function mergeOverlay(pack: Pack, { content }: Overlay): Merged {
  const origins = new Map<string, Path>();
  const removed = (list: ListName): readonly string[] =>
    (content.removes as Readonly<Record<string, readonly string[] | undefined>> | undefined)?.[list] ?? [];
  const shipped = entriesOf(pack);
  const own: Readonly<Record<ListName, readonly Entry[]>> = {
    parameters: (content.parameters ?? []).map((one) => completeParameter(one, pack)),
    rules: (content.rules ?? []).map((one) => withTopic(one, pack)),
    questions: content.questions ?? [],
    cautions: content.cautions ?? [],
    glossary: content.glossary ?? [],
  };
  const lay = (list: ListName) => layOver(shipped[list], own[list], list, removed(list));
  const files = new Map<string, unknown>([['pack.json', headOf(pack)]]);
  const put = (file: string, key: string, laid: readonly Laid[], extra: object = {}) => {
    files.set(file, { ...extra, [key]: laid.map(({ entry }) => entry) });
    laid.forEach(({ from }, index) => {
      if (from) origins.set(`${file} ${key} ${index}`, from);
    });
  };
  put('parameters.json', 'parameters', lay('parameters'));
  put('questions.json', 'questions', lay('questions'));
  put('cautions.json', 'cautions', lay('cautions'));
  put('glossary.json', 'terms', lay('glossary'));
  for (const [topic, laid] of byTopic(lay('rules'))) put(`${topic}.rules.json`, 'rules', laid, { topic });
  const changed = (list: ListName) => [...new Set([...own[list].map(({ id }) => String(id)), ...removed(list)])];
  return {
    files,
    origins,
    changed: {
      parameters: changed('parameters'),
      rules: changed('rules'),
      questions: changed('questions'),
      cautions: changed('cautions'),
      glossary: changed('glossary'),
    },
  };
}

interface Laid {
  readonly entry: Entry;
  /** Steps within the overlay's file; null for an entry of the pack. */
  readonly from: Path | null;
}

function layOver(shipped: readonly Entry[], own: readonly Entry[], list: ListName, removed: readonly string[]): Laid[] {
  const rest = own.map((entry, index): Laid => ({ entry, from: [list, index] }));
  const taken = new Set<Laid>();
  const laid = shipped.flatMap((entry): Laid[] => {
    if (removed.includes(String(entry['id']))) return [];
    const next = rest.filter(({ entry: each }) => each['id'] === entry['id']);
    if (next.length === 0 || (list === 'parameters' && isBefore(entry, next))) return [{ entry, from: null }];
    const fresh = next.filter((each) => !taken.has(each));
    for (const each of fresh) taken.add(each);
    return fresh;
  });
  return [...laid, ...rest.filter((each) => !taken.has(each))];
}

/** A version of the pack's that begins before those of the overlay stands until they begin. */
function isBefore(entry: Entry, next: readonly Laid[]): boolean {
  return next.every(({ entry: each }) => String(entry['validFrom']) < String(each['validFrom']));
}

type ShortParameter = NonNullable<Overlay['content']['parameters']>[number];

/** A parameter with unit and `tighter` of the pack's, in force since the pack is; for a new one these stay open. */
function completeParameter({ ...entry }: ShortParameter, pack: Pack): Entry {
  const shipped = pack.parameters.find(({ id }) => id === entry.id);
  const validFrom = pack.parameters.map((one) => one.validFrom).sort()[0];
  const taken = shipped ? { unit: shipped.unit, tighter: shipped.tighter } : {};
  return { validFrom, ...taken, ...entry };
}

type ShortRule = NonNullable<Overlay['content']['rules']>[number];

/** A rule with the topic of the one that it takes the place of; a new one without a topic is local. */
function withTopic(entry: ShortRule, pack: Pack): Entry {
  return { ...entry, topic: entry.topic ?? pack.rules.find(({ id }) => id === entry.id)?.topic ?? 'local' };
}

function byTopic(rules: readonly Laid[]): ReadonlyMap<string, Laid[]> {
  const topics = new Map<string, Laid[]>();
  for (const { entry, from } of rules) {
    const { topic, ...rule } = entry;
    topics.set(String(topic), [...(topics.get(String(topic)) ?? []), { entry: rule, from }]);
  }
  return topics;
}
