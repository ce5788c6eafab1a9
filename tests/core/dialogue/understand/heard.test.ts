import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { understand } from '../../../../src/core/dialogue/understand/index.ts';
import { supposedText } from '../../../../src/core/dialogue/understand/supposed.ts';
import type { UnderstoodReading } from '../../../../src/core/dialogue/understand/types.ts';
import type { FactId } from '../../../../src/core/facts/registry/index.ts';
import type { Pack } from '../../../../src/core/rules/pack-types.ts';
import { packTable, shipped } from '../../../cases/shipped-pack.ts';
import type { Utterance } from './score.ts';
import { inOneLine } from './told.ts';

const packs = new Map<string, Pack>(packTable.map(([id, one]) => [id, one.pack]));

/** What is said, to what open question, after what; of which treatment where it is not the first. */
type Said = Pick<Utterance, 'text' | 'asked' | 'previous'> & { readonly pack?: string };

/** The hour that was named with a reading, the depth at which it was read, and its words where they are not the whole text. */
function beside({ clock, depthCm, quote }: UnderstoodReading, text: string): readonly string[] {
  const hour = clock?.kind === 'time' ? `${clock.minute} min ${clock.half ?? ''}, ${clock.daysAgo} d ago` : 'now';
  return [
    ...(clock === undefined ? [] : [`read ${hour}`]),
    ...(depthCm === undefined ? [] : [`read at ${depthCm} cm`]),
    ...(quote === text.trim() ? [] : [`of "${quote}"`]),
  ];
}

/** One utterance with what it was said to, what it was taken to suppose, and all that came of it. */
function heard({ text, asked, previous, pack: id }: Said, language: string): string {
  const pack = packs.get(id ?? shipped.pack.id)!;
  const question = pack.questions.find(({ facts }) => facts.some((id) => id === asked)) ?? null;
  const recent = previous === undefined ? [] : [previous as FactId];
  const supposed = supposedText(text, language);
  const said = supposed ?? text;
  const understood = understand(said, { asked: question, pack, recent, language });
  const to = [
    ...(id === undefined ? [] : [id]),
    ...(asked === undefined ? [] : [`asked ${asked}`]),
    ...recent.map((id) => `after ${id}`),
  ];
  return [
    to.length === 0 ? text : `${text}  (${to.join(', ')})`,
    ...(supposed === null ? [] : [`    supposed: ${supposed}`]),
    `    ${[inOneLine(understood), ...understood.readings.flatMap((one) => beside(one, said))].join('; ')}`,
  ].join('\n');
}

const readAll = (names: readonly string[]) =>
  names.flatMap((name) => JSON.parse(readFileSync(join(import.meta.dirname, name), 'utf8')) as readonly Said[]);

/** The parts that may be read while the grammar is made better, what is set aside is not among them; and what was once misread or half read. */
const pages = ['en', 'de'].flatMap((code) => [
  { page: code, code, names: [`written-apart/dev.${code}.json`, `rounds/${code}.json`] },
  { page: `half-read.${code}`, code, names: [`half-read.${code}.json`] },
]);

/** After a change of the grammar that is meant, `npx vitest run FILE -u` writes the page anew: read what differs. */
test.each(pages)(
  'each utterance was heard as its page says, to the last word: $page',
  async ({ page, code, names }) => {
    const lines = readAll(names).map((said) => heard(said, code));
    await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(join(import.meta.dirname, 'heard', `${page}.txt`));
  },
);
