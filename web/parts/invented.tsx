import { pageWords } from '../words.ts';

/** The label of everything that is invented. */
export function Invented() {
  return <span class="invented">{pageWords.invented}</span>;
}
