import { IANAZone } from 'luxon';
import { parametersFor } from '../../facts/needed-parameters.ts';
import { type FactRegistry, isFactOf } from '../../facts/registry/index.ts';
import type { Caution, GlossaryTerm, Pack, PackCase } from '../pack-types.ts';
import { givesDose, reachedFacts } from '../reach.ts';
import { readsOf } from '../reads.ts';
import { buildFacts } from './build-facts.ts';
import { buildRules } from './build-rules.ts';
import { checkCases } from './check-cases.ts';
import { checkNeeded, checkParameters } from './check-parameters.ts';
import { checkQuestions } from './check-questions.ts';
import { checkLanguages, checkOrigin } from './check-texts.ts';
import { factsSchema } from './facts-schema.ts';
import { type FileKinds, factsFile, glossaryFile } from './file-kinds.ts';
import { inside, type Report, show } from './findings.ts';
import {
  casesSchema,
  cautionsSchema,
  glossarySchema,
  packSchema,
  parametersSchema,
  questionsSchema,
} from './schema.ts';
import { collectLimits } from './straddle.ts';
import { parseBySchema } from './zod-findings.ts';

type Parsed = ReadonlyMap<string, unknown>;

/** Builds a pack (its hash still empty) and its cases from parsed files; null where a part is too broken to go on, so that one fault is not reported many times over. `given` is a registry that stands in place of facts.json. */
export function buildPack(
  kinds: FileKinds,
  parsed: Parsed,
  report: Report,
  given?: FactRegistry,
): { readonly pack: Pack; readonly cases: readonly PackCase[] } | null {
  const read = <Schema extends Parameters<typeof parseBySchema>[0]>(schema: Schema, file: string) =>
    parsed.has(file) ? parseBySchema(schema, parsed.get(file), { file, path: [] }, report) : null;
  const head = read(packSchema, 'pack.json');
  const rawParameters = read(parametersSchema, 'parameters.json');
  if (!head || !rawParameters) return null;
  const { languages } = head;
  const parameters = checkParameters(rawParameters.parameters, 'parameters.json', languages, report);
  const rawFacts = read(factsSchema, factsFile);
  if (parsed.has(factsFile) && !rawFacts) return null;
  const registry = given ?? buildFacts(rawFacts?.facts ?? [], { languages, parameters }, report);
  const { rules, sound } = buildRules(kinds.rules, parsed, { parameters, registry }, languages, report);
  const rawQuestions = read(questionsSchema, 'questions.json');
  const limitsOf = collectLimits(rules, parameters);
  const asked = rawQuestions?.questions ?? [];
  const questions = checkQuestions(asked, 'questions.json', languages, { registry, limitsOf }, report);
  checkIds(questions, 'questions', report);
  for (const [index, question] of questions.entries()) {
    checkIds(question.choices ?? [], 'questions', report, [index, 'choices']);
  }
  const cautions = (read(cautionsSchema, 'cautions.json')?.cautions ?? []) as Caution[];
  checkIds(cautions, 'cautions', report);
  cautions.forEach(({ text }, index) => {
    checkLanguages(text, languages, { file: 'cautions.json', path: ['cautions', index, 'text'] }, report);
  });
  const glossary = (read(glossarySchema, glossaryFile)?.terms ?? []) as GlossaryTerm[];
  checkIds(glossary, 'terms', report);
  glossary.forEach((term, index) => {
    for (const key of ['text', 'words'] as const) {
      checkLanguages(term[key], languages, { file: glossaryFile, path: ['terms', index, key] }, report);
    }
    checkOrigin(term, languages, { file: glossaryFile, path: ['terms', index] }, report);
  });
  const ruleIds = new Set(rules.keys());
  const cases = kinds.cases.flatMap((file) => {
    const content = read(casesSchema, file);
    return content && sound ? checkCases(content, file, ruleIds, registry, report) : [];
  });
  if (!sound) return null;
  checkHead(head, report);
  const pack = {
    ...head,
    facts: registry,
    parameters: [...parameters.values()].flat(),
    rules: [...rules.values()],
    questions,
    cautions,
    glossary,
  };
  const reached = reachedFacts(pack);
  checkNeeded(parameters, reached, 'parameters.json', report);
  const ids = rawParameters.parameters.map(({ id }) => id);
  checkUnused(rules, ids, parametersFor(reached, givesDose(pack.parameters)), report);
  for (const [index, id] of (rawFacts?.facts ?? []).map(({ id }) => id).entries()) {
    if (isFactOf(reached, id) || !isFactOf(registry, id)) continue;
    const place = { file: factsFile, path: ['facts', index, 'id'] };
    report('PACK_FACT_UNUSED', place, { expected: 'a rule or question that reads it', came: id, fact: id }, 'warning');
  }
  return { pack: { ...pack, hash: '' }, cases };
}

function checkHead(head: Pick<Pack, 'title' | 'scope' | 'zone' | 'languages'>, report: Report): void {
  const place = { file: 'pack.json', path: [] };
  checkLanguages(head.title, head.languages, inside(place, 'title'), report);
  checkLanguages(head.scope, head.languages, inside(place, 'scope'), report);
  if (IANAZone.isValidZone(head.zone)) return;
  report('PACK_VALUE_WRONG', inside(place, 'zone'), { expected: 'an IANA time zone', came: show(head.zone) });
}

function checkIds(
  listed: readonly { readonly id: string }[],
  name: 'questions' | 'cautions' | 'terms',
  report: Report,
  within: readonly (string | number)[] = [],
): void {
  const seen = new Set<string>();
  listed.forEach(({ id }, index) => {
    const file = name === 'terms' ? glossaryFile : `${name}.json`;
    const place = { file, path: [name, ...within, index, 'id'] };
    if (seen.has(id)) report('PACK_ID_REPEATED', place, { expected: 'each id once', came: `${id} twice` });
    seen.add(id);
  });
}

function checkUnused(
  rules: Parameters<typeof collectLimits>[0],
  parameterIds: readonly string[],
  needed: ReadonlySet<string>,
  report: Report,
): void {
  const read = new Set(needed);
  for (const rule of rules.values()) for (const id of readsOf(rule.when, rules).parameters) read.add(id);
  for (const [index, id] of parameterIds.entries()) {
    if (read.has(id) || parameterIds.indexOf(id) < index) continue;
    const place = { file: 'parameters.json', path: ['parameters', index, 'id'] };
    report('PARAMETER_UNUSED', place, { expected: 'a rule that reads it', came: id, parameter: id }, 'warning');
  }
}
