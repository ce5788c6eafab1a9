import { useState } from 'preact/hooks';
import type { ErrorReport } from '../../src/core/errors/coded-error.ts';
import { parseOverlay } from '../../src/core/rules/overlay/parse-overlay.ts';
import { errorIn } from '../../src/core/words/errors.ts';
import { showDay } from '../../src/core/words/times.ts';
import type { Draft } from './draft.ts';
import { headTexts } from './head-form.tsx';
import { type Bench, writeOverlay } from './server.ts';
import { useSpeech } from './speech.ts';
import { faultsOf, fileOf, type Tried } from './try-draft.ts';
import { readValue } from './values.ts';

interface HandOutProps {
  readonly bench: Bench;
  readonly draft: Draft;
  readonly tried: Tried;
  /** True where `tried` is of the draft as it stands. */
  readonly isSettled: boolean;
  /** The draft lies in the server's folder now, under this hash. */
  readonly onWritten: (hash: string) => void;
}

/** Exports the draft as a file, and writes it into the server's folder where that may be; says what is missing. */
export function HandOut({ bench: server, draft, tried, isSettled, onWritten }: HandOutProps) {
  const { words, bench } = useSpeech();
  const [said, setSaid] = useState('');
  const { language } = words;
  const missing = headTexts.filter((name) => draft.head[name].trim() === '');
  const faults = missing.length > 0 ? [] : faultsOf(server, tried.before, draft, language);
  const unread = Object.entries(draft.typed).flatMap(([id, text]) => {
    const limit = server.shipped.parameters.find((one) => one.id === id);
    return limit !== undefined && 'problem' in readValue(text, limit, bench) ? [id] : [];
  });
  const isReady = isSettled && tried.kind === 'sound' && missing.length + faults.length + unread.length === 0;
  const content = () => fileOf(server, tried.before, draft, language);
  const tell = (error: ErrorReport | null) => {
    if (error === null) return setSaid(bench.out.notReached);
    const { says, expected, came, next } = errorIn(error, words);
    setSaid(
      `${says} ${bench.refused.expected}: ${expected}. ${bench.refused.came}: ${came}. ${bench.refused.next}: ${next}`,
    );
  };
  const exportIt = () => {
    const file = `${draft.head.id}.json`;
    download(file, sealed(content()));
    setSaid(bench.out.exported(file));
  };
  const save = async () => {
    const written = await writeOverlay(content(), draft.replaces);
    if ('error' in written) return tell(written.error);
    const { file, hash, inForce } = written.ok;
    setSaid(inForce ? bench.out.saved(file) : bench.out.savedLater(file, showDay(draft.head.validFrom, words)));
    onWritten(hash);
  };
  const why = server.whyNoWrites;
  return (
    <section aria-labelledby="bench-out">
      <h2 id="bench-out">{bench.out.heading}</h2>
      {tried.kind === 'unchanged' && <p>{bench.out.nothing}</p>}
      {tried.kind !== 'unchanged' && missing.length > 0 && (
        <p>{bench.out.missing(missing.map((name) => bench.head[name]).join('; '))}</p>
      )}
      {unread.length > 0 && <p class="problem">{bench.out.unread(unread.join(', '))}</p>}
      {faults.map((fault) => (
        <p class="problem" key={`${fault.code} ${fault.pointer}`}>
          {errorIn(fault, words).says} {fault.pointer}: {errorIn(fault, words).expected}
        </p>
      ))}
      <div class="choices">
        <button type="button" class="button" disabled={!isReady} onClick={exportIt}>
          {bench.out.export}
        </button>
        {why === null && (
          <button type="button" class="button" disabled={!isReady} onClick={() => void save()}>
            {bench.out.save}
          </button>
        )}
      </div>
      {why !== null && <p class="quiet">{bench.out.whyNot[why] ?? why}</p>}
      <p role="status">{said}</p>
    </section>
  );
}

/** The file with its content hash, by which a change on the way is recognised. */
function sealed(content: object): string {
  const { overlay } = parseOverlay('overlay.json', JSON.stringify(content));
  return `${JSON.stringify({ ...content, ...(overlay ? { hash: overlay.hash } : {}) }, null, 2)}\n`;
}

function download(file: string, text: string): void {
  const url = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = url;
  link.download = file;
  link.click();
  URL.revokeObjectURL(url);
}
