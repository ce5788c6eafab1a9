import type { RuleView } from '../../src/core/dialogue/view-types.ts';
import { pageWords } from '../words.ts';
import { Fold } from './fold.tsx';
import { RuleDetails } from './rule-details.tsx';

const rank = { met: 0, unknown: 1, 'not-met': 2 } as const;

/** Every rule: those that are met first, then those not known, then the rest. */
export function Trace({ rules }: { readonly rules: readonly RuleView[] }) {
  const words = pageWords.verdict;
  const sorted = [...rules].sort((a, b) => rank[a.outcome] - rank[b.outcome]);
  return (
    <Fold title={words.trace(rules.length)} class="fold trace">
      <p>{words.traceLead}</p>
      {sorted.map((rule) => (
        <Fold
          key={rule.rule}
          class={`fold rule is-${rule.outcome}`}
          title={
            <>
              <b>{rule.title}</b> <small>{rule.outcomeText}</small>
            </>
          }
        >
          <RuleDetails rule={rule} />
        </Fold>
      ))}
    </Fold>
  );
}
