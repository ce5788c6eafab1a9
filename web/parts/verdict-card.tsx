import type { VerdictView } from '../../src/core/dialogue/view-types.ts';
import type { Chat } from '../chat/chat.ts';
import type { PanelProps } from '../hand-over/panel.tsx';
import { ReadAloud } from '../speech/read-aloud.tsx';
import { coreWords, pageWords } from '../words.ts';
import { Basis } from './basis.tsx';
import { Cautions } from './cautions.tsx';
import { Dose } from './dose.tsx';
import { HandOver } from './hand-over.tsx';
import { Headline } from './headline.tsx';
import { Invented } from './invented.tsx';
import { JobList } from './job-list.tsx';
import { ReasonList } from './reason-list.tsx';
import { TermText } from './term-text.tsx';
import { Trace } from './trace.tsx';
import { VerdictMark } from './verdict-mark.tsx';

interface VerdictCardProps {
  readonly verdict: VerdictView;
  /** True once it has grown too old to stand. */
  readonly isOld: boolean;
  /** True where it came of something that the person did: only then it is read aloud by itself. */
  readonly isNew: boolean;
  readonly onRequest: Chat['request'];
  readonly handOver: PanelProps;
}

/** The whole answer: sentence, mark, why, reasons, jobs, dose, cautions, what it rests on, every rule. */
export function VerdictCard({ verdict, isOld, isNew, onRequest, handOver }: VerdictCardProps) {
  const words = pageWords.verdict;
  const hasMet = verdict.reasons.some(({ outcome }) => outcome === 'met');
  const isSpray = verdict.verdict === 'spray-today';
  return (
    <section class={`verdict is-${verdict.verdict}`} aria-labelledby="verdict-heading">
      <div class="verdict-head">
        <h2 id="verdict-heading" data-heading="verdict" tabIndex={-1}>
          <Headline text={verdict.headline} />
        </h2>
        <VerdictMark verdict={verdict.verdict} />
      </div>
      {handOver.view.field?.invented && (
        <p>
          <Invented />
        </p>
      )}
      <p class="verdict-why">
        <TermText text={verdict.why} />
      </p>
      {verdict.change && (
        <p>
          <TermText text={verdict.change} />
        </p>
      )}
      {verdict.validUntilText && <p class="quiet">{verdict.validUntilText}</p>}
      <ReadAloud
        sentences={[verdict.headline, verdict.why, verdict.validUntilText ?? '', coreWords.verdict.safety]}
        startsByItself={isNew}
      />
      {isOld && (
        <p>
          <b>{words.old}</b>
        </p>
      )}
      {isOld && (
        <button type="button" class="button is-main" onClick={() => onRequest('look-again')}>
          {words.lookAgain}
        </button>
      )}
      {!hasMet && <JobList verdict={verdict} />}
      <ReasonList title={words.reasons[verdict.verdict]} reasons={verdict.reasons} why={verdict.why} />
      {hasMet && <JobList verdict={verdict} />}
      <ReasonList title={words.advice} reasons={verdict.advice} />
      {verdict.verdict !== 'do-not-spray' && verdict.doseText !== '' && (
        <Dose verdict={verdict} onRequest={onRequest} />
      )}
      {verdict.canCheckRest && (
        <button type="button" class="button" onClick={() => onRequest('check-the-rest')}>
          {words.checkRest}
        </button>
      )}
      <Cautions cautions={verdict.cautions} isOpen={isSpray} />
      <Basis verdict={verdict} />
      {!isOld && <HandOver {...handOver} />}
      <Trace rules={verdict.rules} />
      {!isOld && (
        <button type="button" class="button is-quiet" onClick={() => onRequest('look-again')}>
          {words.lookAgain}
        </button>
      )}
    </section>
  );
}
