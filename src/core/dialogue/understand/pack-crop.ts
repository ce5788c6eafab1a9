import type { Language } from './language.ts';
import type { Patterns } from './language-words.ts';

/** The names of the crops that the title of a pack names, as the lists have them: "wheat" and "winter wheat" of "on winter wheat". */
export function cropsNamed(title: string, { crops = [] }: Language): Patterns {
  return crops.filter((names) => names.some((name) => ` ${title} `.includes(` ${name} `))).flat();
}

/** The words of a language that shut a clause out, without those of a pack's own crop. */
export function withoutCrops(block: Patterns, crops: Patterns): Patterns {
  return block.filter((pattern) => !crops.includes(pattern));
}
