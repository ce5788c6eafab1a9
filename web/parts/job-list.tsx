import type { VerdictView } from '../../src/core/dialogue/view-types.ts';
import { pageWords } from '../words.ts';
import { Fold } from './fold.tsx';

/** The jobs that only a person can do; folded where the answer is no for now whatever comes of it. What to find out stands in the reasons. */
export function JobList({ verdict: { verdict, jobs, reasons } }: { readonly verdict: VerdictView }) {
  if (jobs.length === 0 || reasons.every(({ outcome }) => outcome === 'unknown')) return null;
  const words = pageWords.verdict;
  const list = (
    <ul class="jobs">
      {jobs.map((job) => (
        <li key={job}>{job}</li>
      ))}
    </ul>
  );
  if (verdict === 'do-not-spray') return <Fold title={words.jobsLater(jobs.length)}>{list}</Fold>;
  return (
    <>
      <h3>{words.jobs}</h3>
      {list}
    </>
  );
}
