import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { isLoamwardError } from '../../src/core/errors/coded-error.ts';
import { errorIn } from '../../src/core/words/errors.ts';
import type { Memory } from '../chat/memory.ts';
import { TreatmentSelect } from '../learn/treatment-select.tsx';
import { Fold } from '../parts/fold.tsx';
import '../styles/bench.css';
import '../styles/learn.css';
import { loadLaterWords } from '../words.ts';
import { Begin } from './begin.tsx';
import { Changes } from './changes.tsx';
import { type Draft, emptyDraft, keepDraft, readDraft } from './draft.ts';
import { FaultText } from './fault-text.tsx';
import { FileButton } from './file-button.tsx';
import { HandOut } from './hand-out.tsx';
import { HeadForm } from './head-form.tsx';
import { LimitBox } from './limit-box.tsx';
import { benchRules } from './limits.ts';
import { Outcome, summaryOf } from './outcome.tsx';
import { RuleCard } from './rule-card.tsx';
import { inventedSeason, parseWeatherFile, type SeasonWeather } from './season.ts';
import { type Bench, fetchBench } from './server.ts';
import { sharedAnswers } from './shared-answers.ts';
import { SpeechContext, speechOfPage, useSpeech } from './speech.ts';
import { besideDraft, tryDraft } from './try-draft.ts';
import { useSettled } from './use-settled.ts';

/** Quiet after typing before what it changes is worked out, ms. */
const settlesAfterMs = 250;

/** What the bench needs of the page. */
export interface BenchPageProps {
  readonly memory: Memory;
}

/** The adviser's bench: rules by topic, limits to be changed, what comes of it, and the overlay that is made of it. */
export function BenchPage({ memory }: BenchPageProps) {
  const speech = useMemo(speechOfPage, []);
  const [server, setServer] = useState<Bench | null | 'loading'>('loading');
  const asked = useRef<string | null>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  const load = () => {
    const { current } = asked;
    void Promise.all([fetchBench(current), loadLaterWords()]).then(([came]) => {
      if (current === asked.current) setServer(came);
    });
  };
  useEffect(load, []);
  const choose = (treatment: string) => {
    asked.current = treatment;
    load();
  };
  const { bench } = speech;
  return (
    <SpeechContext.Provider value={speech}>
      <section class="bench learn" aria-labelledby="bench-heading">
        <h1 id="bench-heading" tabIndex={-1} ref={heading}>
          {bench.heading}
        </h1>
        <p>{bench.lead}</p>
        {server === null && (
          <div role="alert">
            <p>{bench.unreached}</p>
            <button type="button" class="button" onClick={load}>
              {bench.again}
            </button>
          </div>
        )}
        {server !== null && server !== 'loading' && (
          <>
            <TreatmentSelect treatments={server.treatments} chosen={server.shipped.id} onChoose={choose} />
            <Work key={server.shipped.id} server={server} memory={memory} onReload={load} />
          </>
        )}
        <p>
          <a class="button" href="#start">
            {bench.leave}
          </a>
        </p>
      </section>
    </SpeechContext.Provider>
  );
}

interface WorkProps extends BenchPageProps {
  readonly server: Bench;
  readonly onReload: () => void;
}

function Work({ server, memory, onReload }: WorkProps) {
  const speech = useSpeech();
  const { words, bench } = speech;
  const { language } = words;
  const { today } = server;
  const [draft, setDraft] = useState<Draft>(() => readDraft(memory, server) ?? emptyDraft(today));
  const [weather, setWeather] = useState<SeasonWeather>(() => inventedSeason(today));
  const [refusedFile, setRefusedFile] = useState('');
  const change = (next: Draft) => {
    keepDraft(memory, server, next);
    setDraft(next);
  };
  const { opened, head } = draft;
  const settled = useSettled(draft, settlesAfterMs);
  const tried = useMemo(() => tryDraft(server, settled, language), [server, settled]);
  const beside = useMemo(() => besideDraft(server, draft), [server, opened, head.id, head.validFrom]);
  const sharedOut = useMemo(() => sharedAnswers(beside.pack, draft), [beside, draft]);
  const shared = draft.sharesOut ? sharedOut : [];
  const canShare = !draft.sharesOut && sharedOut.length > 0;
  const shown = useMemo(() => benchRules(beside.pack, beside.cases, today), [beside, today]);
  const openWeather = (text: string, file: string) => {
    try {
      setWeather(parseWeatherFile(text, file));
      setRefusedFile('');
    } catch (error) {
      if (!isLoamwardError(error)) throw error;
      const { says, expected, came } = errorIn(error.toJSON(), words);
      setRefusedFile(`${says} ${expected}; ${came}`);
    }
  };
  const parts = { draft, onChange: change, summary: summaryOf(tried, speech) };
  return (
    <>
      {server.refused && (
        <div class="bench-refused">
          <p>
            {bench.serverRefused} <code>{server.refused.error.file}</code>
          </p>
          <p>
            <FaultText fault={server.refused.error} />
          </p>
        </div>
      )}
      <Begin bench={server} isBegun={tried.kind !== 'unchanged'} onBegin={change} />
      <section aria-labelledby="bench-changes">
        <h2 id="bench-changes">{bench.changes.heading}</h2>
        <Changes draft={draft} onChange={change} pack={beside.pack} today={today} shared={shared} />
        <div aria-live="polite">
          <Outcome
            tried={tried}
            weather={weather}
            today={today}
            onShareOut={canShare ? () => change({ ...draft, sharesOut: true }) : null}
          />
        </div>
        <div class="choices">
          <FileButton label={bench.season.open} onText={openWeather} />
          {!weather.invented && (
            <button type="button" class="button" onClick={() => setWeather(inventedSeason(today))}>
              {bench.season.close}
            </button>
          )}
        </div>
        <p role="status">{refusedFile}</p>
      </section>
      <section aria-labelledby="bench-rules">
        <h2 id="bench-rules">{bench.rules.heading}</h2>
        {shown.topics.map(({ topic, rules }) => (
          <Fold key={topic} title={bench.topics[topic] ?? topic}>
            {rules.map((rule) => (
              <RuleCard key={rule.rule.id} rule={rule} pack={beside.pack} onlyTighter={shown.onlyTighter} {...parts} />
            ))}
          </Fold>
        ))}
        <Fold title={bench.rules.others}>
          <p>{bench.rules.othersLead}</p>
          {shown.others.map((limit) => (
            <LimitBox key={limit.id} limit={limit} onlyTighter={shown.onlyTighter.has(limit.id)} {...parts} />
          ))}
        </Fold>
      </section>
      <HeadForm draft={draft} onChange={change} />
      <HandOut
        bench={server}
        draft={draft}
        tried={tried}
        isSettled={settled === draft}
        onWritten={(hash) => {
          change({ ...draft, replaces: hash });
          onReload();
        }}
      />
      <p class="quiet">{bench.out.kept}</p>
    </>
  );
}
