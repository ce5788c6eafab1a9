import type { SaidCard } from '../core/words/say-card.ts';
import { escapeHtml } from '../server/hand-over/shown-page.ts';

/** Styles of a card on paper: one A4 page, black on white, marks told by words and edges. */
const styles = `@page{size:A4;margin:10mm}
body{max-width:190mm;margin:0 auto;font:7.2pt/1.2 system-ui,sans-serif;color:#000;background:#fff}
h1{margin:0;font-size:13pt}h2{margin:0 0 .7mm;font-size:8.5pt;break-after:avoid;border-bottom:.3mm solid}p{margin:0 0 1mm}
.parts{columns:2;column-gap:6mm}section{margin:0 0 1.5mm}.parts li{break-inside:avoid}
ul{margin:0;padding:0;list-style:none}li{margin:0 0 .7mm}
.mark{display:inline-block;padding:0 .8mm;border:.3mm solid;font-weight:700;font-size:7pt}
.stop .mark{border-width:.8mm;border-style:double}.advise .mark{border-style:dotted}
.cautions{columns:2;column-gap:6mm}.label{font-weight:700}footer{border-top:.3mm solid;padding-top:1mm}`;

/** The card as a page of its own: no script, nothing loaded, everything escaped. */
export function cardHtml(card: SaidCard, language: string): string {
  const list = (lines: readonly string[]) => `<ul>${lines.map((line) => `<li>${escapeHtml(line)}</li>`).join('')}</ul>`;
  const parts = card.parts.map(
    ({ heading, rows }) =>
      `<section><h2>${escapeHtml(heading)}</h2><ul>${rows
        .map(
          ({ effect, mark, title, when }) =>
            `<li class="${effect}"><span class="mark">${escapeHtml(mark)}</span> <b>${escapeHtml(title)}:</b> ${escapeHtml(when)}</li>`,
        )
        .join('')}</ul></section>`,
  );
  const lines = card.lines.map(
    ({ heading, text }) => `<section><h2>${escapeHtml(heading)}</h2><p>${escapeHtml(text)}</p></section>`,
  );
  return `<!doctype html>
<html lang="${escapeHtml(language)}"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escapeHtml(card.title)}</title><style>${styles}</style></head><body><main>
<h1>${escapeHtml(card.title)}</h1><p>${escapeHtml(card.scope)}</p><p class="label">${escapeHtml(card.label)}</p>
<p>${escapeHtml(card.lead)} ${escapeHtml(card.effectsTold)}</p>
<div class="parts">${parts.join('')}</div>${lines.join('')}
<section><h2>${escapeHtml(card.cautions.heading)}</h2><div class="cautions">${list(card.cautions.lines)}</div></section>
<footer><p>${escapeHtml(card.safety)}</p><p>${escapeHtml(card.made)}</p></footer></main></body></html>
`;
}
