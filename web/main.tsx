import { render } from 'preact';
import { browserMeans } from './browser-means.ts';
import { createChat } from './chat/chat.ts';
import { App } from './parts/app.tsx';

const means = browserMeans();
const chat = createChat(means);

addEventListener('online', chat.hurry);
document.addEventListener('visibilitychange', () => {
  if (document.visibilityState === 'visible') chat.hurry();
});

const page = document.getElementById('page');
if (page) render(<App chat={chat} means={means} />, page);
