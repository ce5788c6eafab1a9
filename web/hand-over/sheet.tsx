import type { HandOver } from '../../src/core/words/hand-over.ts';
import { TermText } from '../parts/term-text.tsx';

/** The whole answer on a sheet: for looking over, and all that is printed. */
export function Sheet({ handOver }: { readonly handOver: HandOver }) {
  const { title, invented, headline, why, given, goodUntil, safety, copy, parts } = handOver;
  return (
    <div class="sheet">
      <h3 class="sheet-title">{title}</h3>
      {invented && (
        <p>
          <b class="invented">{invented}</b>
        </p>
      )}
      <p class="sheet-verdict">{headline}</p>
      {[why, given, goodUntil, safety].map(
        (line) =>
          line && (
            <p key={line}>
              <TermText text={line} />
            </p>
          ),
      )}
      {parts.map(({ id, heading, lines }) => (
        <section key={id}>
          <h4>{heading}</h4>
          <ul>
            {lines.map((line) => (
              <li key={line}>
                <TermText text={line} />
              </li>
            ))}
          </ul>
        </section>
      ))}
      <p class="quiet">{copy}</p>
    </div>
  );
}
