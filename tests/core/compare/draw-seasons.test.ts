import { describe, expect, test } from 'vitest';
import { drawSeasons, type PictureWords } from '../../../src/core/compare/draw-seasons.ts';
import type { SeasonCompared } from '../../../src/core/compare/index.ts';
import { wayOf } from '../../../src/core/compare/judge-pair.ts';
import type { VerdictPair } from '../../../src/core/compare/types.ts';

const words: PictureWords = {
  title: 'Seasons <A> & "B"',
  desc: '3 of 9 days',
  stricter: 'stricter',
  looser: 'looser & more',
  spray: 'spray',
  counts: 'days: < / >',
  months: ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec & on'],
};

const letters: Readonly<Record<string, VerdictPair>> = {
  s: { a: 'spray-today', b: 'spray-today' },
  w: { a: 'wait', b: 'wait' },
  '-': { a: 'spray-today', b: 'wait' },
  '+': { a: 'wait', b: 'spray-today' },
};

/** A season whose days are letters: s spray and w wait under both, - stricter, + looser. */
function seasonOf(station: string, first: string, days: string, season = Number(first.slice(0, 4))): SeasonCompared {
  const verdicts = [...days].map((letter) => letters[letter]!);
  const changed = verdicts.flatMap((pair) => {
    const way = wayOf(pair);
    return way === 'same' ? [] : [{ iso: first, ...pair, way, by: [] }];
  });
  return { station, season, first, verdicts, changed, transitions: [], windows: [], held: [] };
}

/** What is drawn after the head of the picture, a line a mark: class, left, top, width, height; or left, top and text. */
function drawn(svg: string): string[] {
  const marks = [...svg.matchAll(/<(rect|text)( class="\w+")? x="([\d.]+)" y="([\d.]+)"([^>]*)>(?:([^<]*)<\/text>)?/g)];
  return marks.map(([, , named = '', x, y, rest = '', text]) => {
    const sizes = [...rest.matchAll(/"([\d.]+)"/g)].map(([, size]) => size);
    return [named.replace(/ class="(\w+)"/, '$1'), x, y, ...(text === undefined ? sizes : [text])].join(' ').trim();
  });
}

describe('the picture of seasons', () => {
  test('has a legend, months, a row a season with bars of days in a row, and counts', () => {
    const svg = drawSeasons(
      [
        seasonOf('Top & brow', '2015-10-03', 'ss--w++s+'),
        seasonOf('Top & brow', '2016-10-01', 'w'),
        seasonOf('Low', '2015-10-01', 's-s'),
      ],
      '10-01',
      words,
    );
    expect(drawn(svg)).toMatchInlineSnapshot(`
      [
        "head 4 18 Seasons &lt;A&gt; &amp; &quot;B&quot;",
        "stricter 4 26 20 9",
        "30 35 stricter",
        "looser 96 26 20 9",
        "122 35 looser &amp; more",
        "spray 220.5 31 20 2.5",
        "246.5 35 spray",
        "60 70 Oct",
        "121 70 days: &lt; / &gt;",
        "head 4 84 Top &amp; brow",
        "4 101 2015",
        "row 60 92 55 11",
        "spray 70 99 10 2.5",
        "stricter 80 93 10 9",
        "looser 95 93 10 9",
        "spray 105 99 5 2.5",
        "looser 110 93 5 9",
        "121 101 2 / 3",
        "4 113 2016",
        "row 60 104 55 11",
        "121 113 0 / 0",
        "head 4 130 Low",
        "4 147 2015",
        "row 60 138 55 11",
        "spray 60 145 5 2.5",
        "stricter 65 139 5 9",
        "spray 70 145 5 2.5",
        "121 147 1 / 0",
      ]
    `);
  });

  test('tells its title and description to a screen reader, says its size, and lets no sign through that would end a tag', () => {
    const [opening, told, looks, ground, heading] = drawSeasons(
      [seasonOf('S', '2015-10-01', 'ws')],
      '10-01',
      words,
    ).split('\n');
    expect([opening, told, ground, heading]).toEqual([
      '<svg xmlns="http://www.w3.org/2000/svg" role="img" aria-labelledby="title desc" viewBox="0 0 160 114" width="160" height="114">',
      '<title id="title">Seasons &lt;A&gt; &amp; &quot;B&quot;</title><desc id="desc">3 of 9 days</desc>',
      '<rect width="160" height="114" fill="#fffdf7"/>',
      '<text class="head" x="4" y="18">Seasons &lt;A&gt; &amp; &quot;B&quot;</text>',
    ]);
    for (const name of ['stricter', 'looser']) {
      expect(looks).toContain(`.${name}{fill:url(#${name})`);
      expect(looks).toContain(`<pattern id="${name}"`);
    }
    expect(looks).toMatch(/^<defs><style>.*<\/style>.*<\/defs>$/);
  });

  test('counts days from the opening of the season, over the turn of the year where the record begins late', () => {
    const svg = drawSeasons([seasonOf('S', '2016-01-02', '+', 2015)], '12-30', words);
    expect(drawn(svg)).toContain('looser 75 93 5 9');
  });

  test('is drawn empty, a day wide, where there is no season', () => {
    const svg = drawSeasons([], '10-01', words);
    expect(svg).toContain('viewBox="0 0 155 80"');
    expect(svg.endsWith('</text>\n</svg>\n')).toBe(true);
  });

  test('names each month that has room, from the month of the opening over the turn of the year', () => {
    const monthsOver = (opens: string, days: number) =>
      drawn(drawSeasons([seasonOf('S', `2015-${opens}`, 'w'.repeat(days))], opens, words)).filter((line) =>
        / 70 (?!days)/.test(line),
      );
    expect(monthsOver('10-15', 200)).toEqual([
      '145 70 Nov',
      '295 70 Dec &amp; on',
      '450 70 Jan',
      '605 70 Feb',
      '745 70 Mar',
      '900 70 Apr',
    ]);
    expect(monthsOver('10-01', 34)).toEqual(['60 70 Oct']);
    expect(monthsOver('10-01', 35)).toEqual(['60 70 Oct', '215 70 Nov']);
  });
});
