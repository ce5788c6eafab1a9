import { describe, expect, test } from 'vitest';
import { projectFiles, textOf } from '../repo/files.ts';
import { edgePairs, wordPairs } from './tone-pairs.ts';

const css = textOf('web/styles/tones.css');

/** Declarations of the first block after this text. */
function blockAfter(start: string): Map<string, string> {
  const at = css.indexOf(start);
  if (at < 0) throw new RangeError(`tones.css has no ${start}`);
  const block = css.slice(css.indexOf('{', at + start.length - 1) + 1).split('}')[0]!;
  return new Map([...block.matchAll(/--([\w-]+): ([^;]+);/g)].map((match) => [match[1]!, match[2]!]));
}

const day = blockAfter(':root {');
const night = blockAfter(':root[data-look="night"]');
const sun = blockAfter(':root[data-look="sun"]');
const rootUnder = (media: string) => {
  const within = css.slice(css.indexOf(media));
  return new Map(
    [
      ...within
        .slice(within.indexOf(':root'))
        .split('}')[0]!
        .matchAll(/--([\w-]+): ([^;]+);/g),
    ].map((match) => [match[1]!, match[2]!]),
  );
};
const looks = {
  day,
  night: new Map([...day, ...night]),
  sun: new Map([...day, ...sun]),
  'night with more contrast': new Map([
    ...day,
    ...night,
    ...rootUnder('@media (prefers-contrast: more) and (prefers-color-scheme: dark)'),
  ]),
  print: new Map([...day, ...rootUnder('@media print')]),
};
const least = { day: 4.5, night: 4.5, sun: 7, 'night with more contrast': 7, print: 7 } as const;

/** Contrast ratio of two colours, 1 to 21: WCAG 2.2, definitions of "contrast ratio" and "relative luminance". */
function contrast(a: string, b: string): number {
  const [lighter, darker] = [luminance(a), luminance(b)].sort((one, other) => other - one) as [number, number];
  return (lighter + 0.05) / (darker + 0.05);
}

function luminance(hex: string): number {
  const [red, green, blue] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

describe.each(['day', 'night', 'sun', 'night with more contrast', 'print'] as const)('tones by %s', (look) => {
  const tone = (name: string) => looks[look].get(name) ?? '';

  test.each(wordPairs)(
    `%s on %s is at least ${least[look]} to 1 (WCAG 2.2, 1.4.3; 1.4.6 in strong sun)`,
    (over, under) => {
      expect(contrast(tone(over), tone(under))).toBeGreaterThanOrEqual(least[look]);
    },
  );

  test.each(edgePairs)('%s beside %s is at least 3 to 1 (WCAG 2.2, 1.4.11)', (over, under) => {
    expect(contrast(tone(over), tone(under))).toBeGreaterThanOrEqual(3);
  });
});

test('a look that is not chosen is the same as the look of its name', () => {
  expect(rootUnder('@media (prefers-color-scheme: dark)')).toEqual(night);
  expect(rootUnder('@media (prefers-contrast: more) and (prefers-color-scheme: light)')).toEqual(sun);
});

test('colours stand in tones.css alone, and every tone of words is in the list of pairs', () => {
  const sheets = projectFiles(/^web\/styles\/.*\.css$/).filter((path) => path !== 'web/styles/tones.css');
  expect(sheets.filter((path) => /#[0-9a-f]{3,8}\b(?=[^{}]*;)|\brgba?\(|\bhsla?\(/i.test(textOf(path)))).toEqual([]);
  const carries = new Set<string>([...wordPairs, ...edgePairs].map(([over]) => over));
  const used = sheets.flatMap((path) =>
    [...textOf(path).matchAll(/(?<![\w-])color: var\(--([\w-]+)\)/g)].map((match) => match[1]!),
  );
  expect(used.length).toBeGreaterThan(5);
  expect(used.filter((name) => !carries.has(name))).toEqual([]);
});

test('the contrast of black on white is 21 to 1 and of a colour on itself 1 to 1, as WCAG 2.2 defines it', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 10);
  expect(contrast('#6b4530', '#6b4530')).toBe(1);
});
