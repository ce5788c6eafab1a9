import { expect, test } from 'vitest';
import { momentOfFacts, parseFacts } from '../../../../src/core/facts/parse/index.ts';
import { resolveFacts } from '../../../../src/core/facts/resolve.ts';
import { compileRules } from '../../../../src/core/rules/compile.ts';
import { reachedFacts } from '../../../../src/core/rules/reach.ts';
import { evaluateReference } from '../../../../src/core/rules/reference.ts';
import { epochSeconds } from '../../../../src/core/units/brands.ts';
import { parametersOn } from '../../../../src/core/units/parameter.ts';
import { verdictWord } from '../../../../src/core/verdict/verdict-of.ts';
import { shipped as cases } from '../../../cases/shipped-pack.ts';
import { apply, parameter, shipped } from './overlay-of.ts';

const day = '2026-11-06';
const words = ['spray-today', 'wait', 'do-not-spray'];

test('where an overlay lets what was seen count for a shorter time, no case that was held back is let through as it ages; a stop may become a wait until somebody looks again', () => {
  const ageing = shipped.parameters.filter(({ id, tighter }) => id.startsWith('goodFor') && tighter === 'lower');
  const shorter = apply({ parameters: ageing.map(({ id, value }) => parameter(id, Number(value) / 2)) });
  if (!shorter.ok) throw new TypeError(JSON.stringify(shorter.findings));
  const judge = (pack: typeof shipped, facts: Readonly<Record<string, unknown>>, hours: number) => {
    const seen = momentOfFacts(facts, pack.zone, pack.facts) ?? epochSeconds(0);
    const trace = evaluateReference(
      compileRules(pack, day),
      resolveFacts({
        observations: parseFacts(facts, seen, pack.zone, pack.facts),
        forecast: null,
        at: epochSeconds(seen + hours * 3600),
        zone: pack.zone,
        parameters: parametersOn(pack.parameters, day),
        registry: reachedFacts(pack),
      }),
    );
    return words.indexOf(verdictWord(trace));
  };
  let aged = 0;
  for (const { facts, name } of cases.cases.filter((one) => one.facts['date'] === day)) {
    for (const hours of [0, 1, 7, 25, 80, 200]) {
      const [was, is] = [judge(shipped, facts, hours), judge(shorter.pack, facts, hours)];
      if (was !== is) aged += 1;
      expect(is, `${name}, ${hours} h later`).toBeGreaterThanOrEqual(Math.min(was, words.indexOf('wait')));
    }
  }
  expect(aged).toBeGreaterThan(0);
});
