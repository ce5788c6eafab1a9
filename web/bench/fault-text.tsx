import type { ErrorReport } from '../../src/core/errors/coded-error.ts';
import { errorIn } from '../../src/core/words/errors.ts';
import { useSpeech } from './speech.ts';

/** A fault with its code, what was expected, what came and what to do next. */
export function FaultText({ fault }: { readonly fault: ErrorReport }) {
  const { words, bench } = useSpeech();
  const { code, says, expected, came, next, parameter, rule } = errorIn(fault, words);
  return (
    <>
      <b>{says}</b> <code>{[code, rule, parameter].filter(Boolean).join(' · ')}</code>
      <br />
      {bench.refused.expected}: {expected}
      <br />
      {bench.refused.came}: {came}
      <br />
      {bench.refused.next}: {next}
    </>
  );
}
