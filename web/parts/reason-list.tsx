import type { WordedReason } from '../../src/core/dialogue/decision-types.ts';
import { liftBeside } from '../../src/core/words/jobs.ts';
import { coreWords, pageWords } from '../words.ts';
import { Fold } from './fold.tsx';
import { TermText, useTerms } from './term-text.tsx';

interface ReasonListProps {
  readonly title: string;
  readonly reasons: readonly WordedReason[];
  /** What stands above the list: a sentence that it says is not said again. */
  readonly why?: string;
}

/** The reasons that are met under a heading; those not known are folded up. Nothing where there are none. */
export function ReasonList({ title, reasons, why = '' }: ReasonListProps) {
  if (reasons.length === 0) return null;
  const met = reasons.filter(({ outcome }) => outcome === 'met');
  const others = reasons.filter(({ outcome }) => outcome !== 'met');
  const words = pageWords.verdict;
  return (
    <>
      {met.length > 0 && (
        <>
          <h3>{title}</h3>
          <Reasons reasons={met} all={reasons} why={why} />
        </>
      )}
      {others.length > 0 && (
        <Fold title={(met.length > 0 ? words.unknowns : words.unjudged)(others.length)}>
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
        <Reason key={reason.rule} reason={reason} all={all} why={why} />
      ))}
    </ul>
  );
}

function Reason({
  reason,
  all,
  why,
}: Pick<Required<ReasonListProps>, 'why'> & {
  readonly reason: WordedReason;
  readonly all: ReasonListProps['reasons'];
}) {
  const title = useTerms(reason.title);
  const lift = liftBeside(reason, all);
  return (
    <li class={`reason is-${reason.outcome}`}>
      <h4>
        {title.text} {reason.outcome === 'unknown' && <span class="tag">{pageWords.verdict.notKnown}</span>}
      </h4>
      {title.told}
      {!why.includes(reason.text) && (
        <p>
          <TermText text={reason.text} />
        </p>
      )}
      {reason.marginText && (
        <p class="reason-margin">
          <TermText text={reason.marginText} />
        </p>
      )}
      {lift && (
        <p>
          <TermText text={lift} />
        </p>
      )}
      <p class="quiet">{coreWords.verdict.authorities[reason.authority]}</p>
    </li>
  );
}
