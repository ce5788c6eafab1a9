import { render } from 'preact';
import { browserMeans } from './browser-means.ts';
import { createChat } from './chat/chat.ts';
import { ComfortContext } from './comfort/comfort-context.ts';
import { comfortOf, showLook } from './comfort/settings.ts';
import { App } from './parts/app.tsx';
import { UnlessBroken } from './parts/broken.tsx';

const means = browserMeans();
const comfort = comfortOf(means.memory);
const showChosenLook = () => showLook(document.documentElement, comfort.get().look);
showChosenLook();
comfort.listen(showChosenLook);
const chat = createChat(means);

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
