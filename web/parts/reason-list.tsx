import type { WordedReason } from '../../src/core/dialogue/decision-types.ts';
import { coreWords, pageWords } from '../words.ts';

interface ReasonListProps {
  readonly title: string;
  readonly reasons: readonly WordedReason[];
}

/** Reasons with what is, how far from the limit, what lifts it, and who says so. Nothing where there are none. */
export function ReasonList({ title, reasons }: ReasonListProps) {
  if (reasons.length === 0) return null;
  return (
    <>
      <h3>{title}</h3>
      <ul class="reasons">
        {reasons.map((reason) => (
          <li class={`reason is-${reason.outcome}`} key={reason.rule}>
            <h4>
              {reason.title} {reason.outcome === 'unknown' && <span class="tag">{pageWords.verdict.notKnown}</span>}
            </h4>
            <p>{reason.text}</p>
            {reason.marginText && <p class="reason-margin">{reason.marginText}</p>}
            {reason.lift && <p>{reason.lift}</p>}
            <p class="quiet">{coreWords.verdict.authorities[reason.authority]}</p>
          </li>
        ))}
      </ul>
    </>
  );
}
