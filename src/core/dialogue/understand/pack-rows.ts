import type { FactId } from '../../facts/registry/index.ts';
import type { FactDefinition } from '../../facts/types.ts';
import type { Language } from './language.ts';
import type { Subject } from './lexicon-types.ts';
import type { WordRow } from './rows.ts';

/** The subject of a pack's own fact. */
export function subjectOf(id: FactId): Subject {
  return `fact:${id}`;
}

/** True for a fact of yes and no. */
export function isYesNo({ type, choices = [] }: FactDefinition): boolean {
  return type === 'choice' && choices.length === 2 && choices.includes('yes') && choices.includes('no');
}

/**
 * How a pack's own choices and signs are said. A fact of yes and no is said by its words alone, and denied by "no" before them, "not"
 * within them ("crop not stressed") or their opposite ("leaves dry"); a sign and a choice by their labels.
 */
export function rowsOf(
  fact: FactId,
  definition: FactDefinition,
  code: string,
  plain: (text: string) => string,
  named: readonly string[],
  language: Language,
): WordRow[] {
  if (isYesNo(definition)) {
    const row = (choice: string, say: readonly string[]): WordRow[] =>
      say.length === 0
        ? []
        : [{ fact, means: { kind: 'choices', choices: [choice] }, of: ['none'], say, strong: true }];
    const alone = Object.entries(language.little.opposites).filter(([word]) =>
      named.some((name) => name.split(' ').includes(word)),
    );
    const asked = (choice: string, say: readonly string[]) => row(choice, say).map((one) => ({ ...one, of: [] }));
    return [
      ...asked(
        'yes',
        alone.map(([word]) => word),
      ),
      ...asked(
        'no',
        alone.map(([, opposite]) => opposite),
      ),
      ...row(
        'yes',
        named.flatMap((name) => toldOf(name, language.little.being)),
      ),
      ...row(
        'no',
        named.flatMap((name) => deniedOf(name, language)),
      ),
    ];
  }
  const labels = Object.entries(definition.choiceLabels ?? {});
  return labels.map(([choice, label]) => {
    const say = [...new Set([plain(label[code] ?? choice), plain(choice.replaceAll('-', ' '))])];
    if (definition.type === 'signs') {
      return { fact, means: { kind: 'sign', sign: choice }, of: ['none', subjectOf(fact)], say };
    }
    return { fact, means: { kind: 'choices', choices: [choice] }, of: [subjectOf(fact)], say };
  });
}

/** A name, and the same with "is" before its last word: "leaves are wet". */
function toldOf(name: string, being: string): readonly string[] {
  const [head, last] = parted(name);
  return head === '' ? [name] : [name, `${head} ${being} ${last}`];
}

function deniedOf(name: string, { little: { being, opposites }, flags }: Language): readonly string[] {
  const [head, last] = parted(name);
  const not = flags.not.filter((pattern) => /^\p{L}+$/u.test(pattern)).join('|');
  const denied = head === '' ? [] : [`${head} ${being}? ${not} ${last}`];
  const words = name.split(' ');
  if (!words.some((word) => opposites[word] !== undefined)) return denied;
  const opposite = words.map((word) => opposites[word] ?? word).join(' ');
  return [...denied, ...toldOf(opposite, being)];
}

/** A name without its last word, and that word; the first '' for a name of one word. */
function parted(name: string): readonly [head: string, last: string] {
  const at = name.lastIndexOf(' ');
  return [name.slice(0, Math.max(at, 0)), name.slice(at + 1)];
}
