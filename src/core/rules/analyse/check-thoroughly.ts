import { parametersFor } from '../../facts/needed-parameters.ts';
import { definitionsOf } from '../../facts/registry/index.ts';
import { compileRules } from '../compile.ts';
import { collectFindings, type Finding } from '../pack/findings.ts';
import { checkPack, type LoadedPack, type PackFiles, type RefusedPack } from '../pack/load-pack.ts';
import { parseJsonFile } from '../pack/parse-json.ts';
import type { Pack, PackCase } from '../pack-types.ts';
import { givesDose, reachedFacts } from '../reach.ts';
import { readsOf } from '../reads.ts';
import { findNested } from './find-nested.ts';
import { findNeverAsked } from './find-never-asked.ts';
import { findOneSided } from './find-one-sided.ts';
import { findUnmeetable } from './find-unmeetable.ts';
import { asIfInForce, findValidity } from './find-validity.ts';
import { judgeCases } from './judged-cases.ts';
import { type PlaceOf, placesIn } from './places.ts';

/**
 * Checks a pack as the loader does and, where it loads, looks at what its rules say together as of a day (YYYY-MM-DD). Errors
 * among these further findings do not keep the pack from loading, but no adviser should hand it on with them.
 */
export function checkThoroughly(files: PackFiles, day: string): LoadedPack | RefusedPack {
  const checked = checkPack(files);
  if (!checked.ok) return checked;
  const places = placesIn(new Map([...files].filter(([file]) => file.endsWith('.json')).map(parsedFile)));
  const further = analysePack(checked.pack, checked.cases, places, day);
  return { ...checked, findings: [...checked.findings, ...further] };
}

/** What the rules, parameters, questions and cases of a sound pack say together, as of a day (YYYY-MM-DD). */
export function analysePack(pack: Pack, cases: readonly PackCase[], places: PlaceOf, day: string): readonly Finding[] {
  const { findings, report } = collectFindings();
  const definitionOf = definitionsOf(pack.facts);
  const needed = new Set(parametersFor(reachedFacts(pack), givesDose(pack.parameters)));
  const byId = new Map(pack.rules.map((rule) => [rule.id, rule]));
  for (const { when } of pack.rules) for (const id of readsOf(when, byId).parameters) needed.add(id);
  findValidity(pack.parameters, needed, day, places, report);
  const standing = { ...pack, parameters: asIfInForce(pack.parameters, day) };
  const { rules } = compileRules(standing, day);
  findUnmeetable(rules, definitionOf, places, report);
  findNested(rules, definitionOf, places, report);
  findNeverAsked(pack, definitionOf, places, report);
  findOneSided(rules, judgeCases(pack, cases, report), definitionOf, places, report);
  return findings;
}

function parsedFile([file, text]: readonly [string, string]): readonly [string, unknown] {
  return [file, parseJsonFile(file, text, () => {})];
}
