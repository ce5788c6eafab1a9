import { openEarly } from './early-socket.ts';
import { chosenLanguage, pageLanguage } from './words/language.ts';
import { loadWords } from './words.ts';

const language = pageLanguage(chosenLanguage(), navigator.languages);
document.documentElement.lang = language;
const early = openEarly(undefined, language);
void Promise.all([import('./start.tsx'), loadWords(language)]).then(([{ start }]) => start(early));
