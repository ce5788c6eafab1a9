import type { Memory } from '../chat/memory.ts';
import { chooseLanguage, languages, nameOfLanguage } from '../words/language.ts';
import { pageWords } from '../words.ts';

/** The languages that the page is there in, each by its own name; one that is chosen is kept on this device. */
export function LanguageChoice({ memory }: { readonly memory: Memory }) {
  const shown = document.documentElement.lang;
  return (
    <fieldset class="look-choice">
      <legend>{pageWords.comfort.language}</legend>
      {languages.map((language) => (
        <label key={language} class="sign">
          <input
            type="radio"
            name="language"
            value={language}
            checked={language === shown}
            onChange={() => chooseLanguage(language, memory)}
          />
          <b lang={language}>{nameOfLanguage(language)}</b>
        </label>
      ))}
    </fieldset>
  );
}
