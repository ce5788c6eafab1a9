import type { WordedReason } from '../../src/core/dialogue/decision-types.ts';
import { liftBeside } from '../../src/core/words/jobs.ts';
import { coreWords, pageWords } from '../words.ts';
import { Fold } from './fold.tsx';

interface ReasonListProps {
  readonly title: string;
  readonly reasons: readonly WordedReason[];
  /** What stands above the list: a sentence that it says is not said again. */
  readonly why?: string;
}

/** Reasons under a heading. Where some are met, those not known are folded up behind them. Nothing where there are none. */
export function ReasonList({ title, reasons, why = '' }: ReasonListProps) {
  if (reasons.length === 0) return null;
  const met = reasons.filter(({ outcome }) => outcome === 'met');
  const others = reasons.filter(({ outcome }) => outcome !== 'met');
  return (
    <>
      <h3>{title}</h3>
      <Reasons reasons={met.length > 0 ? met : others} all={reasons} why={why} />
      {met.length > 0 && others.length > 0 && (
        <Fold title={pageWords.verdict.unknowns(others.length)}>
          <Reasons reasons={others} all={reasons} why={why} />
        </Fold>
      )}
    </>
  );
}

/** Each with what is, how far from the limit, what lifts it, and who says so. */
function Reasons({
  reasons,
  all,
  why,
}: Required<Omit<ReasonListProps, 'title'>> & { readonly all: ReasonListProps['reasons'] }) {
  return (
    <ul class="reasons">
      {reasons.map((reason) => (
        <li class={`reason is-${reason.outcome}`} key={reason.rule}>
          <h4>
            {reason.title} {reason.outcome === 'unknown' && <span class="tag">{pageWords.verdict.notKnown}</span>}
          </h4>
          {!why.includes(reason.text) && <p>{reason.text}</p>}
          {reason.marginText && <p class="reason-margin">{reason.marginText}</p>}
          {liftBeside(reason, all) && <p>{liftBeside(reason, all)}</p>}
          <p class="quiet">{coreWords.verdict.authorities[reason.authority]}</p>
        </li>
      ))}
    </ul>
  );
}
