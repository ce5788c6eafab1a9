import { writeText } from '../../adapters/practice/progress-file.ts';
import { changedOf, drawSeasons } from '../../core/compare/index.ts';
import type { Catalogue } from '../../core/words/catalogue.ts';
import { compareWordsOf } from '../../core/words/compare-words.ts';
import type { Compared } from './report.ts';
import { seasonLines } from './text-picture.ts';

/** Writes the picture as SVG, and the same as a table beside it, in a file of that name with `.txt`. Returns a line that says so. */
export async function writePicture(file: string, { report, run }: Compared, words: Catalogue): Promise<string> {
  const { picture, signs } = compareWordsOf(words.language);
  const { changed, all } = changedOf(report.seasons.transitions);
  const svg = drawSeasons(run.seasons, run.opens, {
    ...picture,
    desc: picture.desc(changed, all),
    months: words.values.months,
  });
  const table = `${file.replace(/\.svg$/i, '')}.txt`;
  await writeText(file, svg);
  await writeText(table, `${[picture.title, signs, ...seasonLines(report.seasons, words, true)].join('\n')}\n`);
  return picture.written(file, table);
}
