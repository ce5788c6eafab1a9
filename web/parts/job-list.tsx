import type { VerdictView } from '../../src/core/dialogue/view-types.ts';
import { pageWords } from '../words.ts';
import { Fold } from './fold.tsx';
import { TermText } from './term-text.tsx';

/** The jobs that only a person can do, or what to find out; folded where the answer is no for now whatever comes of it. */
export function JobList({ verdict: { verdict, jobs, reasons } }: { readonly verdict: VerdictView }) {
  if (jobs.length === 0) return null;
  const words = pageWords.verdict;
  const list = (
    <ul class="jobs">
      {jobs.map((job) => (
        <li key=<TermText text={job} />>
          <TermText text={job} />
        </li>
      ))}
    </ul>
  );
  if (verdict === 'do-not-spray') return <Fold title={words.jobsLater(jobs.length)}>{list}</Fold>;
  return (
    <>
      <h3>{reasons.some(({ outcome }) => outcome === 'met') ? words.jobs : words.findOut}</h3>
      {list}
    </>
  );
}
