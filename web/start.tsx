import { render } from 'preact';
import { browserMeans, randomToken } from './browser-means.ts';
import { createChat } from './chat/chat.ts';
import { ComfortContext } from './comfort/comfort-context.ts';
import { comfortOf, showLook } from './comfort/settings.ts';
import type { EarlySocket } from './early-socket.ts';
import { indexedVault } from './offline/indexed-vault.ts';
import { createOffline } from './offline/offline.ts';
import { syncServer } from './offline/sync-server.ts';
import { browserTabChannel, createTabs } from './offline/tabs.ts';
import { keepPage } from './offline/worker.ts';
import { App } from './parts/app.tsx';
import { UnlessBroken } from './parts/broken.tsx';
import { loadLaterWords } from './words.ts';

/** Draws the page and lets it talk, over the connection that was opened early. */
export function start(early: EarlySocket): void {
  const means = browserMeans(early);
  const comfort = comfortOf(means.memory);
  const showChosenLook = () => showLook(document.documentElement, comfort.get().look);
  showChosenLook();
  comfort.listen(showChosenLook);
  const chat = createChat(means, (inside) =>
    createOffline(inside, {
      vault: indexedVault(),
      server: syncServer(),
      loadCore: () =>
        Promise.all([import('./offline/core.ts'), import('./figures/outlook.tsx'), loadLaterWords()]).then(
          ([core]) => core,
        ),
      newToken: randomToken,
      persist: () => void navigator.storage?.persist?.().catch(() => {}),
      keepPage,
    }),
  );
  const channel = browserTabChannel();
  if (channel) createTabs(channel, { now: means.now, id: means.newId(), onLost: chat.giveUp });

  addEventListener('online', chat.hurry);
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') chat.hurry();
  });

  const page = document.getElementById('page');
  if (page) {
    page.replaceChildren();
    render(
      <ComfortContext.Provider value={comfort}>
        <UnlessBroken>
          <App chat={chat} means={means} />
        </UnlessBroken>
      </ComfortContext.Provider>,
      page,
    );
  }
}
