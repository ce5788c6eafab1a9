import type * as z from 'zod';
import type { Rule } from '../types.ts';
import { checkReferences } from './check-references.ts';
import { checkLanguages, checkOrigin, checkRuleTexts } from './check-texts.ts';
import { inside, type Place, type Report, show } from './findings.ts';
import { type ConditionWorld, parseCondition } from './parse-condition.ts';
import { rulesSchema } from './schema.ts';
import { parseBySchema } from './zod-findings.ts';

type RawRule = z.output<typeof rulesSchema>['rules'][number];
type Raw = { readonly raw: RawRule; readonly topic: string; readonly place: Place };

/** Rules by id, and whether all of them are sound. */
export interface BuiltRules {
  readonly rules: ReadonlyMap<string, Rule>;
  readonly sound: boolean;
}

/** Parses all rule files: shape, conditions, references, effects and texts; every fault is reported. */
export function buildRules(
  files: readonly string[],
  parsed: ReadonlyMap<string, unknown>,
  { parameters, registry }: Pick<ConditionWorld, 'parameters' | 'registry'>,
  languages: readonly string[],
  report: Report,
): BuiltRules {
  const raws = files.flatMap((file) => rawRulesOf(file, parsed.get(file), report));
  const ruleIds = new Set(raws.map(({ raw }) => raw.id));
  const rules = new Map<string, Rule>();
  const places = new Map<string, Place>();
  let sound = raws.length > 0;
  for (const { raw, topic, place } of raws) {
    checkEffect(raw, place, report);
    checkLanguages(raw.text, languages, inside(place, 'text'), report);
    checkOrigin(raw, languages, place, report);
    const when = parseCondition(raw.when, inside(place, 'when'), { parameters, ruleIds, registry }, report);
    if (places.has(raw.id)) {
      const other = places.get(raw.id)?.file;
      report('PACK_ID_REPEATED', inside(place, 'id'), {
        expected: 'each rule id once',
        came: `${raw.id}, also in ${other}`,
      });
    }
    places.set(raw.id, place);
    if (when) rules.set(raw.id, ruleOf(raw, topic, when));
    else sound = false;
  }
  if (!sound || !checkReferences(rules, places, report)) return { rules, sound: false };
  for (const rule of rules.values()) checkRuleTexts(rule, rules, places.get(rule.id)!, report);
  return { rules, sound };
}

function rawRulesOf(file: string, json: unknown, report: Report): Raw[] {
  if (json === undefined) return [];
  const content = parseBySchema(rulesSchema, json, { file, path: [] }, report);
  if (!content) return [];
  return content.rules.map((raw, index) => ({ raw, topic: content.topic, place: { file, path: ['rules', index] } }));
}

function checkEffect(raw: RawRule, place: Place, report: Report): void {
  if ((raw.lifts !== undefined) === (raw.effect !== 'advise')) return;
  report('RULE_LIFTS_WRONG', inside(place, 'lifts'), {
    expected:
      raw.effect === 'advise' ? 'no lifts in advice' : `lifts for a ${raw.effect}: hours, days, person or season`,
    came: show(raw.lifts),
    rule: raw.id,
  });
}

function ruleOf(raw: RawRule, topic: string, when: Rule['when']): Rule {
  const { id, effect, authority, source, why, text } = raw;
  const lifts = raw.lifts ?? null;
  const protectedByPractice = raw.protected ?? false;
  return { id, topic, effect, authority, lifts, protectedByPractice, source, why, when, text: text as Rule['text'] };
}
