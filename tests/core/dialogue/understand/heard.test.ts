import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { understand } from '../../../../src/core/dialogue/understand/index.ts';
import { supposedText } from '../../../../src/core/dialogue/understand/supposed.ts';
import type { UnderstoodReading } from '../../../../src/core/dialogue/understand/types.ts';
import type { FactId } from '../../../../src/core/facts/registry/index.ts';
import { shipped } from '../../../cases/shipped-pack.ts';
import type { Utterance } from './score.ts';
import { inOneLine } from './told.ts';

const { pack } = shipped;

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
function heard({ text, asked, previous }: Utterance, language: string): string {
  const question = pack.questions.find(({ facts }) => facts.some((id) => id === asked)) ?? null;
  const recent = previous === undefined ? [] : [previous as FactId];
  const supposed = supposedText(text, language);
  const said = supposed ?? text;
  const understood = understand(said, { asked: question, pack, recent, language });
  const to = [...(asked === undefined ? [] : [`asked ${asked}`]), ...recent.map((id) => `after ${id}`)];
  return [
    to.length === 0 ? text : `${text}  (${to.join(', ')})`,
    ...(supposed === null ? [] : [`    supposed: ${supposed}`]),
    `    ${[inOneLine(understood), ...understood.readings.flatMap((one) => beside(one, said))].join('; ')}`,
  ].join('\n');
}

/** The parts that may be read while the grammar is made better; what is set aside is not among them. */
const utterances = (language: string) =>
  [`written-apart/dev.${language}.json`, `rounds/${language}.json`].flatMap(
    (name) => JSON.parse(readFileSync(join(import.meta.dirname, name), 'utf8')) as readonly Utterance[],
  );

/** After a change of the grammar that is meant, `npx vitest run FILE -u` writes the page anew: read what differs. */
test.each(['en', 'de'])(
  'what each utterance in %s was heard as is what its page says, to the last word',
  async (code) => {
    const page = utterances(code).map((utterance) => heard(utterance, code));
    await expect(`${page.join('\n')}\n`).toMatchFileSnapshot(join(import.meta.dirname, 'heard', `${code}.txt`));
  },
);
