import type { VerdictView } from '../../src/core/dialogue/view-types.ts';
import type { Chat } from '../chat/chat.ts';
import { pageWords } from '../words.ts';
import { TermText } from './term-text.tsx';

/** The dose, or what is needed to tell it. */
export function Dose({ verdict, onRequest }: { readonly verdict: VerdictView; readonly onRequest: Chat['request'] }) {
  const words = pageWords.verdict;
  return (
    <>
      <h3>{words.dose}</h3>
      <p>
        <TermText text={verdict.doseText} />
      </p>
      {verdict.doseNeeds && (
        <button type="button" class="button" onClick={() => onRequest('dose')}>
          {words.workOutDose}
        </button>
      )}
    </>
  );
}
