import { wayOf } from './judge-pair.ts';
import type { SeasonCompared } from './on-seasons.ts';
import type { VerdictPair, Way } from './types.ts';

/** What a picture says, in the reader's language. */
export interface PictureWords {
  readonly title: string;
  readonly desc: string;
  readonly stricter: string;
  readonly looser: string;
  readonly spray: string;
  readonly counts: string;
  /** Months by their number from 0. */
  readonly months: readonly string[];
}

const dayWidth = 5;
const rowHeight = 12;
const left = 60;
const top = 70;
const right = 90;
const stationGap = 22;
const dayMs = 86_400_000;

/** Ink, chalk, clay and kingfisher, as on the page. */
const style = [
  'text{font:11px system-ui,sans-serif;fill:#12202e}',
  '.head{font-size:14px;font-weight:600}',
  '.row{fill:#f6f2e8;stroke:#b9b09c;stroke-width:.5}',
  '.spray{fill:#12202e}',
  '.stricter{fill:url(#stricter);stroke:#6b4530}',
  '.looser{fill:url(#looser);stroke:#12202e}',
].join('');

const patterns =
  '<pattern id="stricter" width="4" height="4" patternUnits="userSpaceOnUse"><rect width="4" height="4" fill="#6b4530"/><path d="M0 4L4 0" stroke="#f6f2e8"/></pattern>' +
  '<pattern id="looser" width="4" height="4" patternUnits="userSpaceOnUse"><rect width="4" height="4" fill="#fffdf7"/><circle cx="2" cy="2" r="1.2" fill="#12202e"/></pattern>';

/**
 * Seasons as rows, by station, and days as columns, as an SVG with title and description: what became stricter hatched, what became
 * looser dotted, spray today under both as a bar. `opens` (MM-DD) is the first column.
 */
export function drawSeasons(seasons: readonly SeasonCompared[], opens: string, words: PictureWords): string {
  const stations = [...new Set(seasons.map(({ station }) => station))];
  const offset = (season: SeasonCompared) => daysBetween(`${season.season}-${opens}`, season.first);
  const columns = Math.max(1, ...seasons.map((season) => offset(season) + season.verdicts.length));
  const width = left + columns * dayWidth + right;
  let y = top;
  const parts = stations.map((station) => {
    const rows = seasons.filter((one) => one.station === station);
    const from = y;
    y += stationGap + rows.length * rowHeight;
    const heading = `<text class="head" x="4" y="${from + 14}">${escaped(station)}</text>`;
    return (
      heading + rows.map((row, at) => drawRow(row, offset(row), from + stationGap + at * rowHeight, columns)).join('')
    );
  });
  const height = y + 10;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" role="img" aria-labelledby="title desc" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}">`,
    `<title id="title">${escaped(words.title)}</title><desc id="desc">${escaped(words.desc)}</desc>`,
    `<defs><style>${style}</style>${patterns}</defs>`,
    `<rect width="${width}" height="${height}" fill="#fffdf7"/>`,
    `<text class="head" x="4" y="18">${escaped(words.title)}</text>`,
    legend(words),
    months(opens, columns, words),
    `<text x="${left + columns * dayWidth + 6}" y="${top}">${escaped(words.counts)}</text>`,
    ...parts,
    '</svg>\n',
  ].join('\n');
}

function drawRow({ season, verdicts, changed }: SeasonCompared, offset: number, y: number, columns: number): string {
  const marks = verdicts.map(markOf);
  const bars = stretches(marks).map(({ mark, first, length }) => {
    const [x, wide] = [left + (offset + first) * dayWidth, length * dayWidth];
    const [at, tall] = mark === 'spray' ? [y + rowHeight - 5, 2.5] : [y + 1, rowHeight - 3];
    return `<rect class="${mark}" x="${x}" y="${at}" width="${wide}" height="${tall}"/>`;
  });
  const count = (wanted: string) => changed.filter(({ way }) => way === wanted).length;
  return [
    `<text x="4" y="${y + 9}">${season}</text>`,
    `<rect class="row" x="${left}" y="${y}" width="${columns * dayWidth}" height="${rowHeight - 1}"/>`,
    ...bars,
    `<text x="${left + columns * dayWidth + 6}" y="${y + 9}">${count('stricter')} / ${count('looser')}</text>`,
  ].join('');
}

/** What a day is drawn as. */
function markOf(verdicts: VerdictPair): Exclude<Way, 'same'> | 'spray' | null {
  const way = wayOf(verdicts);
  if (way !== 'same') return way;
  return verdicts.a === 'spray-today' ? 'spray' : null;
}

/** Days in a row with the same mark. */
function stretches<Mark extends string>(marks: readonly (Mark | null)[]) {
  const found: { mark: Mark; first: number; length: number }[] = [];
  marks.forEach((mark, at) => {
    const last = found.at(-1);
    if (mark === null) return;
    if (last?.mark === mark && last.first + last.length === at) last.length += 1;
    else found.push({ mark, first: at, length: 1 });
  });
  return found;
}

function legend({ stricter, looser, spray }: PictureWords): string {
  const entries = [
    ['stricter', stricter, 26],
    ['looser', looser, 26],
    ['spray', spray, 31],
  ] as const;
  let x = 4;
  return entries
    .map(([mark, text, y]) => {
      const at = x;
      x += 40 + text.length * 6.5;
      const tall = mark === 'spray' ? 2.5 : rowHeight - 3;
      return `<rect class="${mark}" x="${at}" y="${y}" width="20" height="${tall}"/><text x="${at + 26}" y="35">${escaped(text)}</text>`;
    })
    .join('');
}

function months(opens: string, columns: number, { months: names }: PictureWords): string {
  const start = Date.parse(`2001-${opens}T00:00Z`);
  return Array.from({ length: 24 }, (_, at) => Date.UTC(2001, at, 1))
    .map((first, at) => ({ day: Math.round((first - start) / dayMs), name: names[at % 12] ?? '' }))
    .filter(({ day }) => day >= 0 && day < columns - 3)
    .map(({ day, name }) => `<text x="${left + day * dayWidth}" y="${top}">${escaped(name)}</text>`)
    .join('');
}

function daysBetween(from: string, to: string): number {
  return Math.round((Date.parse(`${to}T00:00Z`) - Date.parse(`${from}T00:00Z`)) / dayMs);
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
}
