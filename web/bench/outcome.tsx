import type { CaseDifference } from '../../src/core/compare/index.ts';
import type { Finding } from '../../src/core/rules/pack/findings.ts';
import { errorIn } from '../../src/core/words/errors.ts';
import { Fold } from '../parts/fold.tsx';
import { FaultText } from './fault-text.tsx';
import type { SeasonWeather } from './season.ts';
import { SeasonOutcome } from './season-outcome.tsx';
import { type BenchSpeech, useSpeech, worldOf } from './speech.ts';
import type { Tried } from './try-draft.ts';

/** Cases that are told without unfolding. */
const shownAtOnce = 3;

interface OutcomeProps {
  readonly tried: Tried;
  readonly weather: SeasonWeather;
  readonly today: string;
  /** Shares out the answers that lie on both sides of a new limit; null where the draft does so already, or none can be. */
  readonly onShareOut: (() => void) | null;
}

/** What comes of the draft: why it is refused, or what changes on the cases and on last season. */
export function Outcome({ tried, weather, today, onShareOut }: OutcomeProps) {
  if (tried.kind === 'refused') return <Refused findings={tried.findings} onShareOut={onShareOut} />;
  if (tried.kind === 'unchanged') return null;
  return (
    <>
      <CasesOutcome tried={tried} />
      <SeasonOutcome before={tried.before} after={tried.after} weather={weather} today={today} />
    </>
  );
}

interface RefusedProps extends Pick<OutcomeProps, 'onShareOut'> {
  readonly findings: readonly Finding[];
}

function Refused({ findings, onShareOut }: RefusedProps) {
  const { bench } = useSpeech();
  const keyOf = ({ code, pointer, rule, parameter }: Finding) => [code, pointer, rule, parameter].join(' ');
  const byKey = new Map(findings.filter(({ severity }) => severity === 'error').map((one) => [keyOf(one), one]));
  const errors = [...byKey.values()];
  const isAstride = errors.some(({ code }) => code === 'CHOICE_STRADDLES_LIMIT');
  return (
    <div class="bench-refused" data-refused="yes">
      <h3>{bench.refused.heading}</h3>
      <p>{bench.refused.lead}</p>
      <ul>
        {errors.map((finding) => (
          <li key={keyOf(finding)}>
            <FaultText fault={finding} />
          </li>
        ))}
      </ul>
      {isAstride && onShareOut && (
        <button type="button" class="button" onClick={onShareOut}>
          {bench.shared.offer}
        </button>
      )}
    </div>
  );
}

function CasesOutcome({ tried }: { readonly tried: Extract<Tried, { kind: 'sound' }> }) {
  const { words, bench } = useSpeech();
  const { differing, notJudged } = tried.cases;
  const { titleOf } = worldOf(tried.after.pack, words);
  const { names } = words.verdict;
  const changed = differing.filter(({ way }) => way !== 'same');
  const all = tried.before.cases.length;
  const others = differing.length - changed.length;
  const line = ({ name, file, a, b, by }: CaseDifference) => (
    <li key={`${file} ${name}`}>
      {bench.cases.one(name, names[a.verdict], names[b.verdict], by.map(titleOf).join(', '))}
    </li>
  );
  return (
    <div class="bench-outcome">
      <h3>{bench.cases.heading}</h3>
      <p>{changed.length === 0 ? bench.cases.none(all) : bench.cases.some(changed.length, all)}</p>
      {changed.length > 0 && <ul>{changed.slice(0, shownAtOnce).map(line)}</ul>}
      {changed.length > shownAtOnce && (
        <Fold title={bench.cases.more(changed.length - shownAtOnce)}>
          <ul>{changed.slice(shownAtOnce).map(line)}</ul>
        </Fold>
      )}
      {others > 0 && (
        <Fold title={bench.cases.others(others)}>
          <ul>
            {differing
              .filter(({ way }) => way === 'same')
              .map(({ name, file }) => (
                <li key={`${file} ${name}`}>{name}</li>
              ))}
          </ul>
        </Fold>
      )}
      {notJudged.length > 0 && <p>{bench.cases.notJudged(notJudged.length)}</p>}
    </div>
  );
}

/** What a draft comes to in a sentence or two: why it is refused, or how many cases change. */
export function summaryOf(tried: Tried, { words, bench }: BenchSpeech): string {
  if (tried.kind === 'unchanged') return '';
  if (tried.kind === 'refused') {
    const [first] = tried.findings.filter(({ severity }) => severity === 'error');
    const told = first && errorIn(first, words);
    return told ? `${bench.refused.heading}: ${told.says} ${bench.refused.came}: ${told.came}` : bench.refused.heading;
  }
  const changed = tried.cases.differing.filter(({ way }) => way !== 'same').length;
  const all = tried.before.cases.length;
  return `${bench.cases.heading}: ${changed === 0 ? bench.cases.none(all) : bench.cases.some(changed, all)}`;
}
