import type { VerdictView } from '../../src/core/dialogue/view-types.ts';
import { pageWords } from '../words.ts';
import { Fold } from './fold.tsx';

/** What a person can do or find out; folded where the answer is no for now whatever comes of it. */
export function JobList({ verdict: { verdict, jobs } }: { readonly verdict: VerdictView }) {
  if (jobs.length === 0) return null;
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
