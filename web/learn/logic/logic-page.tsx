import { useMemo, useState } from 'preact/hooks';
import { ruleGraph } from '../../../src/core/tour/graph.ts';
import { learnWords } from '../../words.ts';
import type { PageProps } from '../learning.tsx';
import { LogicPicture } from './picture.tsx';
import { Steps } from './steps.tsx';
import '../../styles/logic.css';

/** How the rules think: the picture of the rule set, and the tour beside it. */
export function LogicPage({ lesson }: PageProps) {
  const { pack, compiled, tour } = lesson;
  const own = learnWords.logic;
  const graph = useMemo(() => ruleGraph(pack, compiled, tour), [tour]);
  const [goTo, setGoTo] = useState<{ readonly id: string; readonly count: number } | null>(null);
  return (
    <>
      <p>{own.lead}</p>
      <div class="logic">
        <section aria-labelledby="picture-heading">
          <h2 id="picture-heading">{own.picture}</h2>
          <p class="for-screen">{own.help}</p>
          <LogicPicture graph={graph} lesson={lesson} goTo={goTo} />
        </section>
        <Steps lesson={lesson} onShow={(id) => setGoTo((last) => ({ id, count: (last?.count ?? 0) + 1 }))} />
      </div>
    </>
  );
}
