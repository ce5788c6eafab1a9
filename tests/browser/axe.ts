import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** What axe finds wrong, as rule and place. */
export async function findings(page: Page): Promise<string[]> {
  await page.evaluate(axe);
  return page.evaluate(async () => {
    const { violations } = await (globalThis as unknown as { axe: typeof import('axe-core') }).axe.run(document);
    return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`));
  });
}

/** Unfolds all that can be unfolded, parts that are loaded then included. */
export async function unfold(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const fold of document.querySelectorAll('details')) fold.open = true;
  });
  await page.waitForFunction(() => !document.body.textContent?.includes('Loading this part'));
}

/** Words whose contrast with what they stand on is less than `least` to 1: WCAG 2.2, "contrast ratio". */
export function thinWords(page: Page, least: number): Promise<string[]> {
  return page.evaluate((wanted) => {
    const numbers = (colour: string) => (colour.match(/[\d.]+/g) ?? []).map(Number);
    const luminance = (colour: string) => {
      const [red, green, blue] = numbers(colour)
        .slice(0, 3)
        .map((value) => (value / 255 <= 0.04045 ? value / 255 / 12.92 : ((value / 255 + 0.055) / 1.055) ** 2.4));
      return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
    };
    const groundOf = (element: Element | null): string => {
      if (!element) return 'rgb(255, 255, 255)';
      const { backgroundColor } = getComputedStyle(element);
      return numbers(backgroundColor)[3] === 0 ? groundOf(element.parentElement) : backgroundColor;
    };
    const words = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    const thin = new Set<string>();
    let seen = 0;
    for (let node = words.nextNode(); node; node = words.nextNode()) {
      const element = node.parentElement;
      if (!element || element.closest('svg, script, noscript') || !node.textContent?.trim()) continue;
      if (!element.checkVisibility({ visibilityProperty: true })) continue;
      const pair = [getComputedStyle(element).color, groundOf(element)];
      const [light, dark] = pair.map(luminance).sort((a, b) => b - a);
      seen += 1;
      if ((light! + 0.05) / (dark! + 0.05) < wanted) thin.add(`${pair.join(' on ')}: ${node.textContent.slice(0, 40)}`);
    }
    return seen === 0 ? ['no words were seen'] : [...thin];
  }, least);
}
