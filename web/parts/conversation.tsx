import { useRef } from 'preact/hooks';
import type { OutlookView } from '../../src/core/dialogue/outlook-view/types.ts';
import type { ConversationView } from '../../src/core/dialogue/view-types.ts';
import type { Chat } from '../chat/chat.ts';
import type { ChatMeans } from '../chat/means.ts';
import type { PageState } from '../chat/page-state.ts';
import { tokenKey } from '../chat/token-key.ts';
import { useBuzz } from '../comfort/use-buzz.ts';
import { loadLaterWords, pageWords } from '../words.ts';
import { AskBack } from './ask-back.tsx';
import { FieldList } from './field-list.tsx';
import { FreeText } from './free-text.tsx';
import { lazily } from './lazily.tsx';
import { Log } from './log.tsx';
import { QuestionCard } from './question-card.tsx';
import { SaidList } from './said-list.tsx';
import { Terms } from './term-text.tsx';
import { Unsent } from './unsent.tsx';
import { useHeadingFocus } from './use-heading-focus.ts';
import { useIsOver } from './use-is-over.ts';
import { VerdictCard } from './verdict-card.tsx';
import { Withdrawn } from './withdrawn.tsx';

const LazyOutlook = lazily<{ readonly outlook: OutlookView }>(() =>
  Promise.all([import('../figures/outlook.tsx'), loadLaterWords()]).then(([{ Outlook }]) => Outlook),
);

interface ConversationProps {
  readonly chat: Chat;
  readonly state: PageState;
  readonly view: ConversationView;
  readonly means: ChatMeans;
}

/** The log, the verdict that stands, the open question, the box for own words, and what was told. */
export function Conversation({ chat, state, view, means }: ConversationProps) {
  const { question, verdict } = view;
  const last = view.entries.findLast((entry) => entry.kind === 'verdict');
  const isIdle = verdict === null && question === null && view.busy === null && last !== undefined;
  const isOver = useIsOver(state, verdict?.validUntil ?? null, means);
  const isWithdrawn = (isOver || isIdle) && (verdict ?? last?.verdict)?.verdict === 'spray-today';
  const top = useRef<HTMLDivElement>(null);
  const shown = verdict === null && !isWithdrawn ? null : `${last?.id} ${isWithdrawn}`;
  useHeadingFocus(top, shown, view, state);
  useBuzz(isWithdrawn ? null : (verdict?.verdict ?? null), shown, state.hasActed);
  const lookAgain = () => chat.request('look-again');
  const isSending = (asked: string) =>
    chat.state.get().outbox.some((message) => message.type === 'answer' && message.question === asked);
  return (
    <Terms.Provider value={view.terms}>
      <div ref={top}>
        <Log view={view} onUndo={chat.undo} />
        {state.answers === 'server' && state.link !== 'ready' && <Unsent outbox={state.outbox} question={question} />}
        {isWithdrawn && <Withdrawn onLookAgain={lookAgain} />}
        {verdict && !isWithdrawn && (
          <VerdictCard
            verdict={verdict}
            isOld={isOver}
            isNew={state.hasActed}
            onRequest={chat.request}
            handOver={{
              view,
              token: means.memory.read(tokenKey),
              isOnline: state.link === 'ready' && state.answers === 'server',
            }}
          />
        )}
        {view.outlook && !isWithdrawn && !isOver && <LazyOutlook outlook={view.outlook} />}
        {isIdle && !isWithdrawn && (
          <button type="button" class="button is-main" onClick={lookAgain}>
            {pageWords.verdict.lookAgain}
          </button>
        )}
        {question && (
          <QuestionCard
            key={`${question.id} ${question.ask}`}
            question={question}
            isSending={isSending(question.id)}
            canHurry={shown === null}
            isNew={state.hasActed && shown === null}
            onAnswer={(answer) => {
              if (!isSending(question.id)) chat.answer(question.id, answer);
            }}
            onRequest={chat.request}
            onSay={chat.say}
          />
        )}
        <FreeText hasQuestion={question !== null} onSay={chat.say} />
        <SaidList said={view.said} onUndo={chat.undo} onChange={(fact) => chat.request('change', fact)} />
        <FieldList fields={view.fields} />
        {view.verdict && <AskBack verdict={view.verdict.verdict} onRequest={chat.request} />}
        <section class="menu" aria-label={pageWords.menu.heading}>
          <button type="button" class="button" onClick={() => chat.start(view.field?.id ?? null)}>
            {pageWords.menu.again}
          </button>
          {view.field && last && (
            <button type="button" class="button" onClick={() => chat.request('same-for')}>
              {pageWords.asking.same}
            </button>
          )}
          <button type="button" class="button" onClick={() => chat.choose(true)}>
            {pageWords.menu.another}
          </button>
        </section>
      </div>
    </Terms.Provider>
  );
}
