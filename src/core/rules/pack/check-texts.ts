import type { Source, Texts } from '../../units/texts.ts';
import { type Reads, readsOf } from '../reads.ts';
import type { Rule, RuleText } from '../types.ts';
import { inside, type Place, type Report, show } from './findings.ts';

/** Checks that a text is given in every language of the pack and in no other. */
export function checkLanguages(
  text: Readonly<Record<string, unknown>>,
  languages: readonly string[],
  place: Place,
  report: Report,
): void {
  const expected = `a text for each of ${languages.join(', ')}`;
  for (const language of languages) {
    if (Object.hasOwn(text, language)) continue;
    report('PACK_LANGUAGE_MISSING', inside(place, language), { expected, came: 'nothing' });
  }
  for (const language of Object.keys(text)) {
    if (languages.includes(language)) continue;
    report('PACK_LANGUAGE_MISSING', inside(place, language), { expected, came: show(language), among: languages });
  }
}

/** Checks why something is so and where it comes from; a source that is a title reads the same in every language. */
export function checkOrigin(
  { why, source }: { readonly why?: Texts; readonly source: Source },
  languages: readonly string[],
  place: Place,
  report: Report,
): void {
  if (why) checkLanguages(why, languages, inside(place, 'why'), report);
  if (typeof source !== 'string') checkLanguages(source, languages, inside(place, 'source'), report);
}

/** Checks a rule's sentences: the lift sentence where there is one to give, and placeholders that the rule reads. */
export function checkRuleTexts(rule: Rule, rules: ReadonlyMap<string, Rule>, place: Place, report: Report): void {
  const reads = readsOf(rule.when, rules);
  for (const [language, text] of Object.entries(rule.text)) {
    const at = inside(place, 'text', language);
    if ((text.lift !== undefined) !== (rule.effect !== 'advise')) {
      report('RULE_LIFTS_WRONG', inside(at, 'lift'), {
        expected: rule.effect === 'advise' ? 'no lift sentence in advice' : `a lift sentence for a ${rule.effect}`,
        came: show(text.lift),
        rule: rule.id,
      });
    }
    checkPlaceholders(text, reads, rule, at, report);
  }
}

function checkPlaceholders(text: RuleText, reads: Reads, rule: Rule, place: Place, report: Report): void {
  const right: string[] = [...reads.facts, ...reads.parameters];
  for (const [key, sentence] of Object.entries(text) as [string, string][]) {
    for (const [whole, name = ''] of sentence.matchAll(/\{([^{}]*)\}/g)) {
      if (right.includes(name)) continue;
      report('RULE_PLACEHOLDER_UNKNOWN', inside(place, key), {
        expected: `one of ${right.map((id) => `{${id}}`).join(', ')}`,
        came: whole,
        rule: rule.id,
      });
    }
    const outside = sentence.replaceAll(/\{[^{}]*\}/g, '').replaceAll(/\[\[[^[\]]*\]\]/g, '');
    if (/[{}]|\[\[|\]\]/.test(outside)) {
      report('RULE_PLACEHOLDER_UNKNOWN', inside(place, key), {
        expected: 'braces in pairs, and double square brackets in pairs',
        came: show(sentence),
        rule: rule.id,
      });
    }
  }
}
