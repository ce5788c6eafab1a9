import type { PageState } from '../chat/page-state.ts';
import { pageWords } from '../words.ts';

/** What goes on just now, in words: the connection, what is kept unsent, what is fetched or weighed. Always there, often empty. */
export function StatusLine({ state, isOpening }: { readonly state: PageState; readonly isOpening: boolean }) {
  const text = statusText(state, isOpening);
  return (
    <div class={text === '' ? 'status' : 'status is-said'} role="status">
      {text}
      {state.link === 'other-version' && (
        <button type="button" class="button" onClick={() => location.reload()}>
          {pageWords.status.reload}
        </button>
      )}
    </div>
  );
}

function statusText({ link, outbox, view, cameBack }: PageState, isOpening: boolean): string {
  const words = pageWords.status;
  if (link === 'other-version') return words.otherVersion;
  if (link === 'lost') return outbox.length > 0 ? words.lostUnsent(outbox.length) : words.lost;
  if (link === 'connecting') return words.connecting;
  if (isOpening) return words.opening;
  if (outbox.length > 0) return words.sending;
  if (view?.busy) return words[view.busy];
  return cameBack ? words.cameBack : '';
}
