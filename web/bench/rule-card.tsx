import type { Pack } from '../../src/core/rules/pack-types.ts';
import { isProtected } from '../../src/core/rules/types.ts';
import { inLanguage, sourceIn } from '../../src/core/units/texts.ts';
import { sayRule } from '../../src/core/words/say-rule.ts';
import { Fold } from '../parts/fold.tsx';
import type { Draft } from './draft.ts';
import { LimitBox } from './limit-box.tsx';
import type { BenchRule } from './limits.ts';
import type { Bench } from './server.ts';
import { useSpeech, worldOf } from './speech.ts';

interface RuleCardProps {
  readonly rule: BenchRule;
  readonly pack: Pack;
  readonly onlyTighter: ReadonlySet<string>;
  readonly summary: string;
  readonly draft: Draft;
  readonly onChange: (draft: Draft) => void;
}

/** One rule: what it says by its structure, who stands behind it, its limits and its cases. */
export function RuleCard({ rule: one, pack, onlyTighter, summary, draft, onChange }: RuleCardProps) {
  const { words, bench } = useSpeech();
  const { rule, limits, cases } = one;
  const text = rule.text[words.language] ?? rule.text['en'];
  return (
    <Fold title={text?.title ?? rule.id}>
      <p>{sayRule(one, worldOf(pack, words), words).sentence}</p>
      <p>
        <b>{bench.rule.authority[rule.authority]}</b>: {isProtected(rule) ? bench.rule.protected : bench.rule.free}.{' '}
        <code>{rule.id}</code>
      </p>
      <p>
        {bench.rule.why}: {inLanguage(rule.why, words.language)}
      </p>
      <p class="quiet">
        {bench.rule.source}: {sourceIn(rule.source, words.language)}
      </p>
      {limits.length === 0 && <p class="quiet">{bench.rule.noLimits}</p>}
      {limits.map((limit) => (
        <LimitBox
          key={limit.id}
          limit={limit}
          onlyTighter={onlyTighter.has(limit.id)}
          summary={summary}
          draft={draft}
          onChange={onChange}
        />
      ))}
      <RuleCases cases={cases} />
    </Fold>
  );
}

function RuleCases({ cases }: { readonly cases: Bench['cases'] }) {
  const { words, bench } = useSpeech();
  if (cases.length === 0) return <p class="quiet">{bench.rule.noCases}</p>;
  return (
    <Fold title={bench.rule.cases(cases.length)}>
      <ul>
        {cases.map(({ name, file, expect }) => (
          <li key={`${file} ${name}`}>
            {name}: <b>{words.verdict.names[expect.verdict]}</b>
          </li>
        ))}
      </ul>
    </Fold>
  );
}
