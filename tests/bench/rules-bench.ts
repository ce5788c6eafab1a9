import { join } from 'node:path';
import { readPackFolder } from '../../src/adapters/pack-files/read-pack-folder.ts';
import type { ResolvedFacts } from '../../src/core/facts/resolved.ts';
import type { Resolved } from '../../src/core/facts/types.ts';
import { compileRules } from '../../src/core/rules/compile.ts';
import { engineFactsFor, engineRulesFor, newEngine } from '../../src/core/rules/engine.ts';
import { evaluateChecked } from '../../src/core/rules/evaluate-checked.ts';
import { loadPack } from '../../src/core/rules/pack/load-pack.ts';
import { evaluateReference } from '../../src/core/rules/reference.ts';
import { epochSeconds } from '../../src/core/units/brands.ts';
import { verdictOf } from '../../src/core/verdict/verdict-of.ts';
import { factDefinition, factIds } from '../fixtures/core-facts.ts';
import { measureTogether, timingLine } from './measure.ts';

/** The verdict and the synchronous evaluator, each against the engine alone on the same compiled rules. */
export async function benchRules(root: string): Promise<string[]> {
  const { pack } = loadPack(await readPackFolder(join(root, 'rules', 'propyzamide-winter-oilseed-rape')));
  const compiled = compileRules(pack, '2026-11-06');
  const facts = middlingFacts();
  const [raw, verdict, plain] = await measureTogether(
    {
      'json-rules-engine alone, same rules': () =>
        newEngine(engineRulesFor(compiled, facts)).run(engineFactsFor(compiled, facts)),
      'verdict with trace (engine and evaluator)': async () =>
        verdictOf(await evaluateChecked(compiled, facts), facts, factIds),
      'synchronous evaluator with trace': () => evaluateReference(compiled, facts),
    },
    { rounds: 300, warmUp: 50, batch: 3 },
  );
  return [
    `${compiled.rules.length} rules`,
    ...[raw!, verdict!, plain!].map(timingLine),
    `  verdict with trace / engine alone      ${(verdict!.median / raw!.median).toFixed(2)}   (goal at most 1.2)`,
    `  engine alone / synchronous evaluator   ${(raw!.median / plain!.median).toFixed(1)}   (goal at least 10)`,
  ];
}

/** A value in the middle of each fact's range, every fact known: the work is the same for any values. */
function middlingFacts(): ResolvedFacts {
  const origin = { known: true, source: 'said', at: epochSeconds(1_794_000_000), goodUntil: null } as const;
  const entries = factIds.map((id): [string, Resolved] => {
    const { type, choices, range } = factDefinition(id);
    if (type === 'date') return [id, { ...origin, type, iso: '2026-11-06' }];
    if (type === 'country') return [id, { ...origin, type: 'choice', possible: ['GB-ENG'] }];
    if (type === 'choice') return [id, { ...origin, type, possible: [choices?.[0] ?? ''] }];
    if (type === 'signs') return [id, { ...origin, type, present: ['friable'], possible: ['friable'] }];
    const value = ((range?.[0] ?? 0) + (range?.[1] ?? 1)) / 2;
    return [id, { ...origin, type, value, low: value, high: value }];
  });
  return Object.fromEntries(entries);
}
