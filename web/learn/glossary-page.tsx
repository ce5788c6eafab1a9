import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { headWord } from '../../src/core/dialogue/terms.ts';
import { inLanguage, sourceIn } from '../../src/core/units/texts.ts';
import { capital } from '../../src/core/words/units.ts';
import { Picture } from '../pictures/index.tsx';
import { learnWords } from '../words.ts';
import type { PageProps } from './learning.tsx';

const termInAddress = () => location.hash.split('/')[1] ?? null;

/** Every trade term with its explanation, source and sketch, by letter; a search narrows it. */
export function GlossaryPage({ lesson: { pack, words } }: PageProps) {
  const own = learnWords.glossary;
  const { language } = words;
  const [wanted, setWanted] = useState('');
  const list = useRef<HTMLDivElement>(null);
  const terms = useMemo(
    () =>
      pack.glossary
        .map((term) => {
          const said = term.words[language] ?? term.words['en'] ?? [];
          const forms = term.forms?.[language] ?? [];
          return { term, name: capital(headWord(term, language)), also: said.slice(1), sought: [...said, ...forms] };
        })
        .sort((a, b) => a.name.localeCompare(b.name, language)),
    [pack],
  );
  useEffect(() => {
    const show = () => {
      const id = termInAddress();
      if (id === null) return;
      setWanted('');
      requestAnimationFrame(() => {
        const heading = list.current?.querySelector<HTMLElement>(`#term-${CSS.escape(id)}`);
        heading?.focus({ preventScroll: true });
        heading?.scrollIntoView({ block: 'start' });
      });
    };
    show();
    addEventListener('hashchange', show);
    return () => removeEventListener('hashchange', show);
  }, []);
  const letters = wanted.trim().toLocaleLowerCase(language);
  const found = terms.filter(({ sought }) => sought.some((one) => one.toLocaleLowerCase(language).includes(letters)));
  const initials = [...new Set(found.map(({ name }) => initialOf(name)))];
  return (
    <>
      <p>{own.lead}</p>
      <p class="learn-search for-screen">
        <label for="term-search">{own.search}</label>
        <input
          id="term-search"
          type="text"
          autocomplete="off"
          value={wanted}
          onInput={(event) => setWanted(event.currentTarget.value)}
        />
      </p>
      <p role="status" class="quiet">
        {found.length === 0 ? own.none : own.found(found.length)}
      </p>
      <div ref={list}>
        {initials.map((initial) => (
          <section key={initial}>
            <h2>{initial}</h2>
            {found
              .filter(({ name }) => initialOf(name) === initial)
              .map(({ term, name, also }) => (
                <article key={term.id} class="glossary-term">
                  <h3 id={`term-${term.id}`} tabIndex={-1}>
                    {name}
                  </h3>
                  <p>{inLanguage(term.text, language)}</p>
                  {term.picture && <Picture id={term.picture} />}
                  {also.length > 0 && <p class="quiet">{own.also(also.join(', '))}</p>}
                  <p class="quiet">{own.source(sourceIn(term.source, language))}</p>
                </article>
              ))}
          </section>
        ))}
      </div>
    </>
  );
}

/** The letter under which a word stands: without its dots and accents. */
function initialOf(name: string): string {
  return name.normalize('NFD').charAt(0).toUpperCase();
}
