import { useEffect, useState } from 'preact/hooks';
import type { ErrorReport } from '../../src/core/errors/coded-error.ts';
import { errorIn } from '../../src/core/words/errors.ts';
import { coreWords, pageWords } from '../words.ts';
import { type Asked, listLinks, makeLink, removeLink, type ShownLink } from './links.ts';
import { canShare, copy, type Sent, share } from './send.ts';

interface LinkListProps {
  /** Names the conversation to the server; null where none was begun there. */
  readonly token: string | null;
  readonly isOnline: boolean;
}

type State = { readonly kind: 'said'; readonly text: string } | { readonly kind: 'busy' } | { readonly kind: 'none' };

/** Links that show the answer read-only: making one, copying it, taking it back. */
export function LinkList({ token, isOnline }: LinkListProps) {
  const [links, setLinks] = useState<readonly ShownLink[]>([]);
  const [state, setState] = useState<State>({ kind: 'none' });
  const words = pageWords.handOver;
  useEffect(() => {
    if (token !== null && isOnline) void listLinks(token).then(setLinks);
  }, [token, isOnline]);
  if (token === null || !isOnline) return <p>{words.linkOffline}</p>;
  const run = async <T,>(work: Promise<Asked<T>>, done: (ok: T) => string) => {
    setState({ kind: 'busy' });
    const asked = await work;
    setState({ kind: 'said', text: 'ok' in asked ? done(asked.ok) : problemText(asked.error) });
  };
  const tell = (sent: Sent | null) => setState({ kind: 'said', text: sent === null ? '' : words.sent[sent] });
  const make = () =>
    run(makeLink(token), (made) => {
      setLinks((before) => [made, ...before]);
      return words.linkMade;
    });
  const remove = (id: string) =>
    run(removeLink(token, id), () => {
      setLinks((before) => before.filter((one) => one.id !== id));
      return words.linkRemoved;
    });
  return (
    <>
      <p class="quiet">{words.linkNote}</p>
      <button type="button" class="button" disabled={state.kind === 'busy'} onClick={() => void make()}>
        {words.makeLink}
      </button>
      <p role="status">{state.kind === 'said' ? state.text : state.kind === 'busy' ? words.linkBusy : ''}</p>
      <ul class="links">
        {links.map(({ id, address, until, headline }) => (
          <li key={id}>
            <p>
              {headline} <small>{words.shownUntil(dayOf(until))}</small>
            </p>
            <a class="address" href={address}>
              {location.origin + address}
            </a>
            <div class="button-row">
              {canShare(location.origin + address) && (
                <button
                  type="button"
                  class="button"
                  onClick={() => void share(headline, location.origin + address).then(tell)}
                >
                  {words.sendLink}
                </button>
              )}
              <button type="button" class="button" onClick={() => void copy(location.origin + address).then(tell)}>
                {words.copyLink}
              </button>
              <button type="button" class="button" onClick={() => void remove(id)}>
                {words.removeLink}
              </button>
            </div>
          </li>
        ))}
      </ul>
    </>
  );
}

function problemText(error: ErrorReport | null): string {
  const words = pageWords.handOver;
  return error === null
    ? words.linkFailed
    : `${errorIn(error, coreWords).says} ${words.linkSafe} ${errorIn(error, coreWords).next} (${error.code})`;
}

/** The day of an instant by this device's clock and language. `until` is epoch seconds. */
function dayOf(until: number): string {
  return new Date(until * 1000).toLocaleDateString(pageWords.tag, { dateStyle: 'long' });
}
