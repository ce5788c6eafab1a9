import { localDate } from '../../src/core/facts/local-day.ts';
import { openCard } from '../../src/core/tour/open-tour.ts';
import { sayCard } from '../../src/core/words/say-card.ts';
import { cardWords } from '../words.ts';
import type { PageProps } from './learning.tsx';
import '../styles/card.css';

/** The card for the cab, and all that is printed of it: one A4 page. */
export function CardPage({ lesson }: PageProps) {
  const { pack, now, words, definitionOf } = lesson;
  const today = localDate(now, pack.zone);
  const card = sayCard(
    openCard(lesson),
    pack,
    { limits: today, printed: today },
    { catalogue: words, card: cardWords, definitionOf },
  );
  return (
    <>
      <p class="for-screen">
        <button type="button" class="button is-main" onClick={() => print()}>
          {cardWords.print}
        </button>
      </p>
      <article class="cab-card" aria-labelledby="card-title">
        <h2 id="card-title">{card.title}</h2>
        <p>{card.scope}</p>
        <p class="cab-label">{card.label}</p>
        <p>
          {card.lead} {card.effectsTold}
        </p>
        <div class="cab-parts">
          {card.parts.map(({ heading, rows }) => (
            <section key={heading}>
              <h3>{heading}</h3>
              <ul>
                {rows.map(({ rule, effect, mark, title, when }) => (
                  <li key={rule}>
                    <span class={`cab-mark is-${effect}`}>{mark}</span> <b>{title}:</b> {when}
                  </li>
                ))}
              </ul>
            </section>
          ))}
        </div>
        {card.lines.map(({ heading, text }) => (
          <section key={heading}>
            <h3>{heading}</h3>
            <p>{text}</p>
          </section>
        ))}
        <section>
          <h3>{card.cautions.heading}</h3>
          <ul class="cab-cautions">
            {card.cautions.lines.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </section>
        <p>{card.safety}</p>
        <p>{card.made}</p>
      </article>
    </>
  );
}
