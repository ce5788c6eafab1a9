import type { ChatMeans } from '../chat/means.ts';
import type { PageState } from '../chat/page-state.ts';
import { pageWords } from '../words.ts';
import { useLasting } from './use-lasting.ts';

/** How long something has to go on before it is said, ms. */
const saidAfterMs = 500;

interface StatusLineProps {
  readonly state: PageState;
  readonly isOpening: boolean;
  readonly means: ChatMeans;
}

/** What goes on just now, in words: the connection, what is kept unsent, what is fetched or weighed. Always there, often empty. */
export function StatusLine({ state, isOpening, means }: StatusLineProps) {
  const passing = useLasting(passingText(state, isOpening), saidAfterMs, means);
  const standing = standingText(state);
  const text = standing ?? passing;
  const name = standing === null ? 'status is-said is-passing' : 'status is-said';
  return (
    <div class={text === '' ? 'status' : name} role="status">
      {text}
      {state.link === 'other-version' && (
        <button type="button" class="button" onClick={() => location.reload()}>
          {pageWords.status.reload}
        </button>
      )}
    </div>
  );
}

function standingText({
  link,
  outbox,
  cameBack,
  answers,
  staysHere,
  handingOver,
  handedOver,
}: PageState): string | null {
  const words = pageWords.status;
  const { offline } = pageWords;
  if (link === 'other-version') return words.otherVersion;
  if (answers === 'page') {
    if (staysHere) return offline.aloneHere;
    if (link === 'ready' && handingOver > 0) return offline.handingOver(handingOver);
    return `${link === 'ready' ? offline.aloneSlow : offline.alone} ${offline.aloneKept}`;
  }
  if (handedOver > 0) return offline.handedOver(handedOver);
  if (link === 'lost') return outbox.length > 0 ? words.lostUnsent(outbox.length) : words.lost;
  return cameBack ? words.cameBack : null;
}

function passingText({ link, outbox, view, answers }: PageState, isOpening: boolean): string {
  const words = pageWords.status;
  if (answers === 'page') return view?.busy ? words[view.busy] : '';
  if (link === 'connecting') return words.connecting;
  if (isOpening) return words.opening;
  if (outbox.length > 0) return words.sending;
  return view?.busy ? words[view.busy] : '';
}
