import { useState } from 'preact/hooks';
import type { QuestionView } from '../../src/core/dialogue/view-types.ts';
import { loadLaterWords, pageWords } from '../words.ts';
import { lazily } from './lazily.tsx';
import { TermText } from './term-text.tsx';

const LazyPicture = lazily<{ readonly id: string }>(() =>
  Promise.all([import('../pictures/index.tsx'), loadLaterWords()]).then(([{ Picture }]) => Picture),
);

/** How to find out, in words and with a drawing that is loaded when this is unfolded. */
export function How({ question: { how, picture } }: { readonly question: Pick<QuestionView, 'how' | 'picture'> }) {
  const [isOpen, setOpen] = useState(false);
  return (
    <details class="fold" onToggle={(event) => event.currentTarget.open && setOpen(true)}>
      <summary>
        <span>{pageWords.question.how}</span>
      </summary>
      <div class="fold-inside">
        <p>
          <TermText text={how} />
        </p>
        {isOpen && picture !== null && <LazyPicture id={picture} />}
      </div>
    </details>
  );
}
