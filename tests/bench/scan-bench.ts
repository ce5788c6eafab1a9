import { localDate } from '../../src/core/facts/local-day.ts';
import { outlookOf } from '../../src/core/outlook/index.ts';
import { type HourWatcher, scanHours } from '../../src/core/outlook/scan.ts';
import { compileRules } from '../../src/core/rules/compile.ts';
import { evaluateWithEngine } from '../../src/core/rules/engine.ts';
import { measureTogether, timingLine } from './measure.ts';
import { scanInput } from './scan-input.ts';

/**
 * The scan of 16 days by hours over the whole pack, facts and all, against the same scan with json-rules-engine judging every rule
 * of every hour. Throws where an outcome differs.
 */
export async function benchScan(root: string): Promise<string[]> {
  const input = await scanInput(root);
  const hours: Parameters<HourWatcher>[] = [];
  scanHours(input, (...hour) => hours.push(hour));
  const compiled = compileRules(input.pack, localDate(input.at, input.pack.zone));
  const byEngine = async () => {
    const scanned: Parameters<HourWatcher>[] = [];
    scanHours(input, (...hour) => scanned.push(hour));
    for (const [at, judged, { strict }] of scanned) {
      const outcomes = await evaluateWithEngine(compiled, strict);
      const other = judged.find((one) => outcomes.get(one.compiled.rule.id) !== one.strict.outcome);
      if (other) throw new Error(`${other.compiled.rule.id} differs at ${at}`);
    }
  };
  const [engine, scan, outlook] = await measureTogether(
    {
      'scan by json-rules-engine': byEngine,
      'scan by the synchronous evaluator': () => scanHours(input),
      'whole outlook': () => outlookOf(input),
    },
    { rounds: 12, warmUp: 5 },
  );
  return [
    `${hours.length} hours, ${compiled.rules.length} rules each, equal outcomes`,
    ...[engine!, scan!, outlook!].map(timingLine),
    `  engine / scan    ${(engine!.median / scan!.median).toFixed(1)}   (goal at least 10)`,
    `  scan             ${scan!.median.toFixed(1)} ms   (goal below 25 ms)`,
  ];
}
