import type { BenchPageProps } from '../bench/bench-page.tsx';
import type { Chat } from '../chat/chat.ts';
import type { ChatMeans } from '../chat/means.ts';
import { SettingsPanel } from '../comfort/settings-panel.tsx';
import type { LearningProps } from '../learn/learning.tsx';
import { useStore } from '../use-store.ts';
import { pageWords } from '../words.ts';
import { Conversation } from './conversation.tsx';
import { ConversationList } from './conversation-list.tsx';
import { Elsewhere } from './elsewhere.tsx';
import { closeFoldOnEscape } from './fold.tsx';
import { Foot } from './foot.tsx';
import { lazily } from './lazily.tsx';
import { Masthead } from './masthead.tsx';
import { Notices } from './notices.tsx';
import { Refusal } from './refusal.tsx';
import { StartScreen } from './start-screen.tsx';
import { StatusLine } from './status-line.tsx';
import { usePlace } from './use-place.ts';

const LazyPractice = lazily<object>(() =>
  import('../practice/practice-page.tsx').then(({ PracticePage }) => PracticePage),
);

const LazyLearning = lazily<LearningProps>(() =>
  import('../learn/learning.tsx').then(({ openLearning }) => openLearning()),
);

const LazyBench = lazily<BenchPageProps>(() => import('../bench/bench-page.tsx').then(({ BenchPage }) => BenchPage));

/** The whole page. */
export function App({ chat, means }: { readonly chat: Chat; readonly means: ChatMeans }) {
  const state = useStore(chat.state);
  const place = usePlace();
  const { view, isChoosing, outbox, refusal, treatments } = state;
  const isOpening = outbox.some(({ type }) => type === 'start');
  if (state.isElsewhere) return <Elsewhere />;
  const isTalking = view !== null && !isChoosing && !isOpening;
  /** Another treatment than that of the conversation may be spoken of. */
  const isOpenChoice = treatments.length > 1 && (!isTalking || place !== null);
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: Escape folds up whatever is unfolded inside
    <div class={place === 'logic' ? 'page is-wide' : 'page'} onKeyDown={closeFoldOnEscape}>
      <a class="skip" href="#main">
        {pageWords.skip}
      </a>
      <Masthead
        packTitle={isOpenChoice ? '' : (view?.packTitle ?? state.packTitle)}
        talksAbout={isTalking ? view : null}
      />
      <main id="main" tabIndex={-1}>
        {place === 'practice' && <LazyPractice />}
        {place === 'bench' && <LazyBench memory={means.memory} />}
        {place !== null && place !== 'practice' && place !== 'bench' && (
          <LazyLearning place={place} memory={means.memory} />
        )}
        {place === null && (
          <>
            <StatusLine state={state} isOpening={isOpening} means={means} />
            <Notices state={state} isTalking={isTalking} />
            {refusal && <Refusal error={refusal} onPutAway={chat.putRefusalAway} />}
            {isTalking && <Conversation chat={chat} state={state} view={view} means={means} />}
            {!isTalking && !isOpening && state.fields && (
              <StartScreen
                fields={state.fields}
                treatments={state.isNext ? treatments.filter(({ id }) => id === state.treatment) : treatments}
                treatment={state.treatment}
                onStart={chat.start}
                onBack={view === null ? null : () => chat.choose(false)}
                takesFocus={state.hasActed}
              />
            )}
            {!isTalking && !isOpening && (
              <ConversationList state={state} onGoTo={chat.goTo} saidEvents={chat.saidEvents} />
            )}
          </>
        )}
      </main>
      <SettingsPanel memory={means.memory} />
      <Foot canBeAlone={state.canBeAlone} />
    </div>
  );
}
