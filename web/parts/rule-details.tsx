import type { ComponentChildren } from 'preact';
import type { RuleView } from '../../src/core/dialogue/view-types.ts';
import { capital } from '../../src/core/words/units.ts';
import { coreWords, pageWords } from '../words.ts';
import { TermText } from './term-text.tsx';

/** One rule of the trace with all that it read and rests on. */
export function RuleDetails({ rule }: { readonly rule: RuleView }) {
  const words = pageWords.verdict;
  return (
    <dl class="rule-details">
      <Row term={words.read}>
        {rule.facts.map(({ fact, label, value, from }) => (
          <p key={fact}>
            <TermText text={`${capital(label)}:`} /> <b>{value}</b> <small>({from})</small>
          </p>
        ))}
      </Row>
      {rule.limits.length > 0 && (
        <Row term={words.limits}>
          {rule.limits.map(({ parameter, value, source }) => (
            <p key={parameter}>
              <code>{parameter}</code> <b>{value}</b> <small>({source})</small>
            </p>
          ))}
        </Row>
      )}
      {rule.margins.length > 0 && (
        <Row term={words.room}>
          {rule.margins.map((margin) => (
            <p key={margin}>
              <TermText text={margin} />
            </p>
          ))}
        </Row>
      )}
      <Row term={words.because}>
        <TermText text={rule.why} />
      </Row>
      <Row term={words.authority}>{coreWords.verdict.authorities[rule.authority]}</Row>
      <Row term={words.source}>
        {rule.source} <code>{rule.rule}</code>
      </Row>
    </dl>
  );
}

function Row({ term, children }: { readonly term: string; readonly children: ComponentChildren }) {
  return (
    <div>
      <dt>{term}</dt>
      <dd>{children}</dd>
    </div>
  );
}
