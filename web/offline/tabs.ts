/** What of a `BroadcastChannel` is used. */
export interface TabChannel {
  readonly post: (text: string) => void;
  readonly listen: (call: (text: string) => void) => void;
}

/** One page writes: the one that was opened, or taken up again, last. */
export interface Tabs {
  /** This page takes over from all others. */
  readonly claim: () => void;
}

/**
 * Claims at once. `onLost` is called when another page claims; where two claim at the same moment the higher name keeps it, which both
 * work out alike.
 */
export function createTabs(
  channel: TabChannel,
  means: { readonly now: () => number; readonly id: string; readonly onLost: () => void },
): Tabs {
  let mine = '';
  let holds = false;
  const claim = (): void => {
    mine = `${String(Math.round(means.now() * 1000)).padStart(16, '0')} ${means.id}`;
    holds = true;
    channel.post(mine);
  };
  channel.listen((theirs) => {
    if (!holds) return;
    if (theirs > mine) {
      holds = false;
      means.onLost();
    } else channel.post(mine);
  });
  claim();
  return { claim };
}

/** The browser's channel between pages of one origin; null where there is none. */
export function browserTabChannel(): TabChannel | null {
  if (typeof BroadcastChannel === 'undefined') return null;
  const channel = new BroadcastChannel('loamward.pages');
  return {
    post: (text) => channel.postMessage(text),
    listen: (call) => channel.addEventListener('message', ({ data }) => call(String(data))),
  };
}
