import type { Catalogue } from '../../core/words/catalogue.ts';
import type { HandOver } from '../../core/words/hand-over.ts';
import { markTerms } from '../../core/words/mark-terms.ts';

/** What the page of a shown answer is made of. */
export interface ShownPage {
  readonly handOver: HandOver;
  /** Last day on which it is shown, in words. */
  readonly untilText: string;
  /** True once a spray-today among it has grown too old. */
  readonly isWithdrawn: boolean;
  /** Seconds after which it will have; null where it never does. The page withdraws it by itself then. */
  readonly secondsLeft: number | null;
}

/** The page of a shown answer: no script, nothing loaded but the style sheet, everything escaped. */
export function shownPage(page: ShownPage, styles: readonly string[], words: Catalogue): string {
  const { handOver, untilText, isWithdrawn, secondsLeft } = page;
  const { shown } = words.handOver;
  const verdict = `<h2 class="sheet-verdict until-old">${escapeHtml(handOver.headline)}</h2>`;
  const withdrawn = `<section class="withdrawn once-old"><h2>${escapeHtml(shown.withdrawn)}</h2><p><s>${escapeHtml(handOver.headline)}</s></p></section>`;
  const standing = secondsLeft === null ? verdict : `<div class="sheet-standing">${verdict}${withdrawn}</div>`;
  const parts = handOver.parts.map(
    ({ heading, lines }) =>
      `<h3>${escapeHtml(heading)}</h3><ul>${lines.map((line) => `<li>${withTerms(line, handOver)}</li>`).join('')}</ul>`,
  );
  return document(
    handOver.language,
    handOver.title,
    styles,
    `<h1>${escapeHtml(handOver.title)}</h1>${handOver.invented === null ? '' : `<p><b class="invented">${escapeHtml(handOver.invented)}</b></p>`}
${isWithdrawn ? withdrawn : standing}<div>${withTerms(handOver.why, handOver)}</div>${paragraphs([handOver.given, handOver.goodUntil, handOver.safety])}
${parts.join('\n')}
<footer>${paragraphs([handOver.copy, untilText])}<p><a class="button" href="/">${escapeHtml(shown.ask)}</a></p></footer>`,
    secondsLeft === null ? '' : `<style>${agingStyle(secondsLeft)}</style>`,
  );
}

const unseen = 'visibility:hidden;height:0;margin:0;padding:0;border-width:0;overflow:hidden';

/** The style by which an open page withdraws a spray-today after so many seconds, with no script and no connection. */
export function agingStyle(secondsLeft: number): string {
  const delay = `1ms ${Math.ceil(secondsLeft)}s both`;
  return `@keyframes leave{to{${unseen}}}@keyframes come{from{${unseen}}}.until-old{animation:leave ${delay}}.once-old{animation:come ${delay}}`;
}

/** The page where nothing is shown: what happened, what is safe, what to do next. */
export function gonePage(styles: readonly string[], words: Catalogue, code: string): string {
  const { shown } = words.handOver;
  return document(
    words.language,
    shown.goneHeading,
    styles,
    `<h1>${escapeHtml(shown.goneHeading)}</h1>${paragraphs([shown.gone, shown.goneSafe, shown.goneNext])}<p><code>${code}</code></p><p><a class="button" href="/">${escapeHtml(shown.ask)}</a></p>`,
    '',
  );
}

function document(language: string, title: string, styles: readonly string[], body: string, more: string): string {
  const links = styles.map((href) => `<link rel="stylesheet" href="${escapeHtml(href)}">`).join('');
  return `<!doctype html>
<html lang="${escapeHtml(language)}"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="robots" content="noindex, nofollow"><meta name="referrer" content="no-referrer">${more}
<title>${escapeHtml(title)}</title>${links}</head>
<body><main class="page sheet">${body}</main></body></html>
`;
}

function paragraphs(lines: readonly (string | null)[]): string {
  return lines
    .filter((line) => line !== null)
    .map((line) => `<p>${escapeHtml(line)}</p>`)
    .join('');
}

/** A line whose trade terms unfold their explanation where they stand. */
function withTerms(line: string, { terms }: HandOver): string {
  return markTerms(line, terms)
    .map((part) =>
      typeof part === 'string'
        ? escapeHtml(part)
        : `<details class="term-fold"><summary class="term"><span>${escapeHtml(part.said)}</span></summary><span class="term-told">${escapeHtml(part.term.text)}</span></details>`,
    )
    .join('');
}

/** Text as HTML, fit for an element and for an attribute in double quotes. */
export function escapeHtml(text: string): string {
  return text.replace(/[&<>"']/g, (letter) => `&#${letter.charCodeAt(0)};`);
}
