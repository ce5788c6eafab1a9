import type { OfflineContext } from './context.ts';
import { handOverAll } from './hand-over.ts';

/** How long it says that something was handed over, ms; how long until handing over is tried again, ms. */
const handedOverForMs = 8000;
const againAfterMs = 5000;

/** Hands over what the server does not have, then goes on with the server. `onBarred` is called where its rules forbid that. */
export async function comeBack(context: OfflineContext, onBarred: () => void): Promise<void> {
  const { inside, parts, now } = context;
  const { state, link, means } = inside;
  const shelf = await now.opening;
  if (now.isReturning || now.isBarred || !shelf) return;
  now.isReturning = true;
  const end = await handOverAll({
    server: parts.server,
    shelf,
    settled: async () => now.here?.settled(),
    onProgress: (handingOver) => state.set({ handingOver }),
  });
  now.isReturning = false;
  state.set({ handingOver: 0 });
  const again = (): void => void comeBack(context, onBarred);
  if (shelf !== now.shelf) {
    if (now.isResumed) again();
  } else if (end.kind === 'done') {
    now.needed = Math.max(now.needed, end.kept ?? 0);
    now.handed += end.said;
    if (end.refused) state.set({ refusal: end.refused });
    if (now.isResumed) goOnWithServer(context);
    else link().restart();
  } else if (end.kind === 'other-rules') {
    now.isBarred = true;
    state.set({ staysHere: true });
    onBarred();
  } else if (end.kind === 'refused') state.set({ refusal: end.error });
  else {
    means.after(againAfterMs, () => {
      if (link().isReady()) again();
    });
  }
}

/** The server answers again, once it has all that was said and its view shows it. */
export function goOnWithServer(context: OfflineContext): void {
  const { inside, now } = context;
  const { state, means } = inside;
  const { serverView, shelf, here } = now;
  if (!now.isAlone || !now.isResumed || !serverView || serverView.kept < now.needed) return;
  if (shelf === null || shelf.unsent().length > 0 || here?.isIdle() === false) return;
  context.leaveAlone();
  state.set({
    view: serverView.view,
    treatment: serverView.pack ?? null,
    viewCameAt: means.now(),
    handedOver: now.handed,
    refusal: null,
  });
  if (now.handed > 0) means.after(handedOverForMs, () => state.set({ handedOver: 0 }));
  now.handed = 0;
  inside.resend();
  void context.mirrorOnce();
}
