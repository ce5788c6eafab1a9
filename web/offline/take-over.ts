import type { RunningConversation } from '../../src/adapters/conversation/types.ts';
import { latestStart } from '../../src/core/dialogue/latest-start.ts';
import { readDevice } from '../chat/device.ts';
import { without } from '../chat/outbox.ts';
import { tokenKey } from '../chat/token-key.ts';
import type { OfflineContext } from './context.ts';
import { pageForecasts } from './forecast-source.ts';
import { createHere } from './here.ts';
import type { Shelf } from './shelf.ts';
import { offersAtHand } from './supplies.ts';

/** For so long at most the last view of the server stays while what it had confirmed is said again, ms: nothing open folds up meanwhile. */
const heldForMs = 2000;

/**
 * The page answers from now on, from what it keeps and what waits to be sent. Resolves to false where it cannot: something is missing,
 * or it does not know the conversation that is shown.
 */
export async function takeOver(context: OfflineContext): Promise<boolean> {
  const { inside, ready, said, now, token } = context;
  if (now.here) return true;
  if (!ready.isReady()) return false;
  context.enterAlone();
  const { turn } = now;
  const [core, atHand, opened] = await Promise.all([ready.core(), ready.atHand(), now.opening]);
  if (turn !== now.turn || !now.isAlone || now.here) return now.here !== null;
  const waits = said.of(token());
  const isUnknown = opened === null || (opened.events().length === 0 && waits.length === 0);
  if (!core || !atHand || (isUnknown && inside.state.get().view !== null)) {
    context.leaveAlone();
    if (now.isResumed) inside.resend();
    return false;
  }
  const shelf = opened ?? (await beginHere(context));
  if (shelf === null || shelf !== now.shelf) return false;
  const running = core.runHere({ ...runMeans(context, shelf), ...atHand });
  const show = (): void => inside.state.set({ view: running.view(), ...cameNow(context, running) });
  let isHeld = waits.length > 0 && inside.state.get().view !== null;
  const here = createHere(
    running,
    hereListener(context, running, () => !isHeld),
  );
  now.here = here;
  inside.state.set(offersAtHand(atHand, inside.means.language));
  if (!isHeld && (running.view() !== null || waits.length === 0)) show();
  for (const message of [...waits, ...without(inside.state.get().outbox, new Set(waits.map(({ id }) => id)))]) {
    if (shelf.has(message.id)) inside.drop([message.id]);
    else here.take(message);
  }
  if (isHeld) {
    const release = (): void => {
      if (isHeld && now.here === here) show();
      isHeld = false;
    };
    void here.settled().then(release);
    inside.means.after(heldForMs, release);
  }
  return true;
}

async function beginHere(context: OfflineContext): Promise<Shelf | null> {
  const fresh = context.parts.newToken();
  context.inside.means.memory.write(tokenKey, fresh);
  return context.openFor(fresh);
}

function runMeans({ inside, parts, vault, clock }: OfflineContext, shelf: Shelf) {
  const { memory, newId } = inside.means;
  return {
    restored: shelf.events(),
    now: clock.now,
    newId,
    device: `${readDevice(memory, newId)}-page`,
    forecastService: pageForecasts({ server: parts.server, vault, now: clock.now }),
    keep: (events: Parameters<Shelf['add']>[0]) => shelf.add(events, false),
  };
}

function hereListener(
  context: OfflineContext,
  running: RunningConversation,
  isShown: () => boolean,
): Parameters<typeof createHere>[1] {
  const { inside } = context;
  const { state } = inside;
  return {
    onView: (view) => {
      if (isShown()) state.set({ view, ...cameNow(context, running) });
    },
    onNotice: inside.onNotice,
    onTaken: ({ id }, refusal) => {
      inside.drop([id]);
      if (refusal) state.set({ refusal });
    },
    onError: (refusal) => state.set({ refusal }),
  };
}

function cameNow({ inside }: OfflineContext, running: RunningConversation) {
  return { treatment: latestStart(running.events())?.packId ?? null, viewCameAt: inside.means.now() };
}
