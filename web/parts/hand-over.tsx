import { useState } from 'preact/hooks';
import type { PanelProps } from '../hand-over/panel.tsx';
import { loadLaterWords, pageWords } from '../words.ts';
import { lazily } from './lazily.tsx';

const LazyPanel = lazily<PanelProps>(() =>
  Promise.all([import('../hand-over/panel.tsx'), loadLaterWords()]).then(([{ Panel }]) => Panel),
);

/** Hands the answer on; what it needs is loaded when it is asked for. */
export function HandOver(props: PanelProps) {
  const [isOpen, setOpen] = useState(false);
  const words = pageWords.handOver;
  return (
    <details class="fold" onToggle={(event) => event.currentTarget.open && setOpen(true)}>
      <summary>
        <span>{words.heading}</span>
      </summary>
      <div class="fold-inside">{isOpen && <LazyPanel {...props} />}</div>
    </details>
  );
}
