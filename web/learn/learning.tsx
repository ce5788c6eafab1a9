import type { ComponentType } from 'preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { glossaryIn } from '../../src/core/dialogue/terms.ts';
import type { Memory } from '../chat/memory.ts';
import { lazily } from '../parts/lazily.tsx';
import { Terms } from '../parts/term-text.tsx';
import type { Place } from '../parts/use-place.ts';
import { learnWords, loadLaterWords, pageWords } from '../words.ts';
import { type Lesson, openLesson } from './open-rules.ts';
import '../styles/learn.css';

/** What a page for learning is drawn from. */
export interface PageProps {
  readonly lesson: Lesson;
  readonly memory: Memory;
}

type Page = Exclude<Place, null | 'practice' | 'bench'>;

/** The page that is asked for, and where this device keeps how far one is. */
export interface LearningProps {
  readonly place: Page;
  readonly memory: Memory;
}

const pages: Readonly<Record<Page, ComponentType<PageProps>>> = {
  logic: lazily(() => import('./logic/logic-page.tsx').then(({ LogicPage }) => LogicPage)),
  glossary: lazily(() => import('./glossary-page.tsx').then(({ GlossaryPage }) => GlossaryPage)),
  hand: lazily(() => Promise.all([import('./hand-page.tsx'), loadLaterWords()]).then(([{ HandPage }]) => HandPage)),
  card: lazily(() => import('./card-page.tsx').then(({ CardPage }) => CardPage)),
};

/** Loads the words that the pages for learning need. */
export async function openLearning(): Promise<ComponentType<LearningProps>> {
  await loadLaterWords();
  return Learning;
}

function Learning({ place, memory }: LearningProps) {
  const [lesson, setLesson] = useState<Lesson | null | 'opening'>('opening');
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => void openLesson().then(setLesson), []);
  useEffect(() => heading.current?.focus(), [place]);
  const terms = useMemo(
    () => (lesson === null || lesson === 'opening' ? [] : glossaryIn(lesson.pack.glossary, lesson.words)),
    [lesson],
  );
  const Page = pages[place];
  return (
    <section class={`learn is-${place}`} aria-labelledby="learn-heading">
      <h1 id="learn-heading" tabIndex={-1} ref={heading}>
        {pageWords.learn[place]}
      </h1>
      {lesson === 'opening' && <p role="status">{pageWords.lazy.loading}</p>}
      {lesson === null && <p role="status">{learnWords.noRules}</p>}
      {lesson !== null && lesson !== 'opening' && (
        <Terms.Provider value={terms}>
          <Page lesson={lesson} memory={memory} />
        </Terms.Provider>
      )}
      <p class="learn-back">
        <a class="button" href="#start">
          {learnWords.back}
        </a>
      </p>
    </section>
  );
}
