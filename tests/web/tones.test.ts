import { describe, expect, test } from 'vitest';
import { textOf } from '../repo/files.ts';

const css = textOf('web/styles/tones.css');
const light = css.split('@media (prefers-color-scheme: dark)')[0] ?? '';
const declared = (part: string) => [...part.matchAll(/--([\w-]+): ([^;]+);/g)].map((match) => [match[1]!, match[2]!]);
const schemes = {
  light: new Map(declared(light) as [string, string][]),
  dark: new Map(declared(css) as [string, string][]),
};

/** A tone's hexadecimal colour, references followed. */
function toneOf(tones: ReadonlyMap<string, string>, name: string): string {
  const value = tones.get(name) ?? '';
  const reference = /^var\(--([\w-]+)\)$/.exec(value)?.[1];
  return reference ? toneOf(tones, reference) : value;
}

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

const words = [
  ['text', 'ground'],
  ['text', 'sheet'],
  ['soft', 'ground'],
  ['soft', 'sheet'],
  ['on-strong', 'strong'],
  ['on-earth', 'earth'],
  ['ink', 'kingfisher'],
] as const;

const edges = [
  ['edge', 'ground'],
  ['edge', 'sheet'],
  ['pattern', 'sheet'],
  ['text', 'ground'],
] as const;

describe.each(['light', 'dark'] as const)('tones in %s', (scheme) => {
  const tones = schemes[scheme];

  test.each(words)('%s on %s is at least 4.5 to 1 (WCAG 2.2, 1.4.3)', (over, under) => {
    expect(contrast(toneOf(tones, over), toneOf(tones, under))).toBeGreaterThanOrEqual(4.5);
  });

  test.each(edges)('%s beside %s is at least 3 to 1 (WCAG 2.2, 1.4.11)', (over, under) => {
    expect(contrast(toneOf(tones, over), toneOf(tones, under))).toBeGreaterThanOrEqual(3);
  });
});

test('the contrast of black on white is 21 to 1 and of a colour on itself 1 to 1, as WCAG 2.2 defines it', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 10);
  expect(contrast('#6b4530', '#6b4530')).toBe(1);
});
