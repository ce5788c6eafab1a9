import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { launchBrowser } from '../../tests/browser/browser.ts';

/** Icons by file: edge in pixels, and whether systems may cut it to a shape of theirs. */
const icons = [
  { file: 'icon-192.png', edge: 192, isCut: false },
  { file: 'icon-512.png', edge: 512, isCut: false },
  { file: 'icon-maskable-512.png', edge: 512, isCut: true },
  { file: 'icon-touch-180.png', edge: 180, isCut: true },
] as const;

/**
 * Draws the icons of the installed page from web/public/icon.svg. One that may be cut fills its square and keeps the drawing within
 * the inner circle of four fifths (W3C Web Application Manifest, "Icon masks and safe zone").
 */
export async function main(): Promise<number> {
  const folder = join('web', 'public');
  const svg = await readFile(join(folder, 'icon.svg'), 'utf8');
  const browser = await launchBrowser();
  try {
    for (const { file, edge, isCut } of icons) {
      const page = await browser.newPage({ viewport: { width: edge, height: edge } });
      const ground = /<rect[^>]*fill="([^"]+)"/.exec(svg)?.[1] ?? '#000';
      const size = isCut ? Math.round(edge * 0.76) : edge;
      await page.setContent(
        `<body style="margin:0;display:grid;place-items:center;height:${edge}px;background:${isCut ? ground : 'transparent'}">
        ${svg.replace('<svg ', `<svg width="${size}" height="${size}" `)}</body>`,
      );
      await writeFile(join(folder, file), await page.screenshot({ omitBackground: !isCut }));
      await page.close();
    }
  } finally {
    await browser.close();
  }
  return 0;
}
