import { useState } from 'preact/hooks';
import type { ConversationView } from '../../src/core/dialogue/view-types.ts';
import { handOverOf, handOverText } from '../../src/core/words/hand-over.ts';
import { Fold } from '../parts/fold.tsx';
import { noTerms, Terms } from '../parts/term-text.tsx';
import { coreWords, handOverWords, pageWords } from '../words.ts';
import { LinkList } from './link-list.tsx';
import { canShare, copy, fileName, type Sent, save, share } from './send.ts';
import { Sheet } from './sheet.tsx';

export interface PanelProps {
  readonly view: ConversationView;
  readonly token: string | null;
  readonly isOnline: boolean;
}

/** Printing, sending, saving and showing the answer that stands. All but the link works without a connection. */
export function Panel({ view, token, isOnline }: PanelProps) {
  const [said, setSaid] = useState('');
  const words = pageWords.handOver;
  const handOver = handOverOf(view, { ...coreWords, handOver: handOverWords });
  if (!handOver) return null;
  const text = handOverText(handOver);
  const tell = (sent: Sent | null) => setSaid(sent === null ? '' : words.sent[sent]);
  return (
    <div class="hand-over">
      <div class="button-row">
        {canShare(text) && (
          <button type="button" class="button is-main" onClick={() => void share(handOver.title, text).then(tell)}>
            {words.share}
          </button>
        )}
        <button type="button" class="button" onClick={() => void copy(text).then(tell)}>
          {words.copy}
        </button>
        <button
          type="button"
          class="button"
          onClick={() => tell(save(fileName(view.field?.name ?? '', handOver.madeAt), text))}
        >
          {words.save}
        </button>
        <button type="button" class="button" onClick={() => print()}>
          {words.print}
        </button>
      </div>
      <p role="status">{said}</p>
      <h4>{words.linkHeading}</h4>
      <LinkList token={token} isOnline={isOnline} />
      <Fold title={words.look}>
        <Sheet handOver={handOver} />
      </Fold>
      <div class="print-only" aria-hidden="true">
        <Terms.Provider value={noTerms}>
          <Sheet handOver={handOver} />
        </Terms.Provider>
      </div>
    </div>
  );
}
