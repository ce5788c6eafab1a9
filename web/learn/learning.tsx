import type { ComponentType } from 'preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { glossaryIn } from '../../src/core/dialogue/terms.ts';
import type { Pack } from '../../src/core/rules/pack-types.ts';
import type { Memory } from '../chat/memory.ts';
import { lazily } from '../parts/lazily.tsx';
import { Terms } from '../parts/term-text.tsx';
import type { Place } from '../parts/use-place.ts';
import { learnWords, loadLaterWords, pageWords } from '../words.ts';
import { fetchTreatments, type Lesson, lessonOf } from './open-rules.ts';
import { TreatmentSelect } from './treatment-select.tsx';
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
  const [treatments, setTreatments] = useState<readonly Pack[] | null | 'opening'>('opening');
  const [chosen, choose] = useState<string | null>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => void fetchTreatments().then(setTreatments), []);
  useEffect(() => heading.current?.focus(), [place]);
  const packs = treatments === 'opening' ? [] : (treatments ?? []);
  const pack = packs.find(({ id }) => id === chosen) ?? packs[0];
  const lesson = useMemo(() => pack && lessonOf(pack), [pack]);
  const terms = useMemo(() => (lesson ? glossaryIn(lesson.pack.glossary, lesson.words) : []), [lesson]);
  const Page = pages[place];
  return (
    <section class={`learn is-${place}`} aria-labelledby="learn-heading">
      <h1 id="learn-heading" tabIndex={-1} ref={heading}>
        {pageWords.learn[place]}
      </h1>
      {treatments === 'opening' && <p role="status">{pageWords.lazy.loading}</p>}
      {treatments === null && <p role="status">{learnWords.noRules}</p>}
      {lesson && place !== 'hand' && <TreatmentSelect treatments={packs} chosen={lesson.pack.id} onChoose={choose} />}
      {lesson && (
        <Terms.Provider value={terms}>
          <Page key={lesson.pack.id} lesson={lesson} memory={memory} />
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
