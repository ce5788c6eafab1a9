import { useState } from 'preact/hooks';
import { parseOverlay } from '../../src/core/rules/overlay/parse-overlay.ts';
import { inLanguage } from '../../src/core/units/texts.ts';
import { errorIn } from '../../src/core/words/errors.ts';
import { type Draft, emptyDraft, openDraft } from './draft.ts';
import { FileButton } from './file-button.tsx';
import type { Bench } from './server.ts';
import { useSpeech } from './speech.ts';

interface BeginProps {
  readonly bench: Bench;
  readonly isBegun: boolean;
  readonly onBegin: (draft: Draft) => void;
}

/** Goes on with an overlay of a file or of the server's folder, or begins anew; what is thrown away is asked twice. */
export function Begin({ bench: server, isBegun, onBegin }: BeginProps) {
  const { words, bench } = useSpeech();
  const [said, setSaid] = useState('');
  const [isSure, setSure] = useState(false);
  const { language } = words;
  const open = (text: string, file: string) => {
    const { overlay, findings } = parseOverlay(file, text);
    const [first] = findings.filter(({ severity }) => severity === 'error');
    if (overlay === null) {
      const told = first && errorIn(first, words);
      return setSaid(
        `${bench.out.notOpened} ${told ? `${told.says} ${told.pointer}: ${told.expected}; ${told.came}` : ''}`,
      );
    }
    const { pack } = overlay.content.overlay;
    if (pack.id !== server.shipped.id) {
      const other = server.treatments.find(({ id }) => id === pack.id);
      return setSaid(bench.out.otherTreatment(other ? inLanguage(other.title, language) : pack.id));
    }
    const there = server.overlays.find(({ content }) => content.overlay.id === overlay.content.overlay.id);
    setSaid('');
    onBegin(openDraft(overlay, server.shipped, language, there?.hash === overlay.hash ? overlay.hash : null));
  };
  return (
    <>
      <div class="choices">
        <FileButton label={bench.out.open} onText={open} />
        {server.overlays.map((overlay) => (
          <button
            key={overlay.hash}
            type="button"
            class="button"
            onClick={() => onBegin(openDraft(overlay, server.shipped, language, overlay.hash))}
          >
            {bench.out.fromServer(inLanguage(overlay.content.overlay.title, language))}
          </button>
        ))}
        {isBegun && (
          <button
            type="button"
            class="button"
            onBlur={() => setSure(false)}
            onClick={() => {
              if (isSure) onBegin(emptyDraft(server.today));
              setSure(!isSure);
            }}
          >
            {isSure ? bench.out.sure : bench.out.discard}
          </button>
        )}
      </div>
      <p role="status">{said}</p>
    </>
  );
}
