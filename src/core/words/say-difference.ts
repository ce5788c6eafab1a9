import type { Difference, ParameterDifference, RuleDifference } from '../compare/differences.ts';
import type { CompiledRules } from '../rules/types.ts';
import type { Parameter } from '../units/parameter.ts';
import { inLanguage } from '../units/texts.ts';
import type { Catalogue } from './catalogue.ts';
import { type CompareWords, compareWordsOf } from './compare-words.ts';
import { describeParameter } from './fill.ts';
import type { SayWorld } from './say-condition.ts';
import { sayRule, titlesOf } from './say-rule.ts';
import { showDay } from './times.ts';

/** A difference in words: a line, and what it was and is where that can be said. */
export interface SaidDifference {
  readonly kind: Difference['kind'];
  readonly id: string;
  readonly change: 'added' | 'removed' | 'changed';
  /** Of a parameter: by the direction that is declared tighter. */
  readonly way: ParameterDifference['way'];
  /** "soilTemperatureMaxC: 10 C → 8 C, from 1 January 2026; tighter; read by soil-too-warm". */
  readonly line: string;
  /** What A says, and what B says; null where there is nothing to say beyond the line. */
  readonly before: string | null;
  readonly after: string | null;
}

/** Two rule sets as they are told: compiled on one day, with names of facts. */
export interface DifferenceWorld extends Pick<SayWorld, 'definitionOf'> {
  readonly a: CompiledRules;
  readonly b: CompiledRules;
}

/** A difference of two rule sets in the language of the words. */
export function sayDifference(difference: Difference, world: DifferenceWorld, words: Catalogue): SaidDifference {
  const { kind, id, before, after } = difference;
  const told = compareWordsOf(words.language);
  const change = before === null ? 'added' : after === null ? 'removed' : 'changed';
  const texts = textsOf(difference, world, words);
  const both = { before: null, after: null, ...(texts.before === texts.after ? {} : texts) };
  if (difference.kind === 'parameter') {
    return { kind, id, change, way: difference.way, line: sayMoved(difference, told, words), ...both };
  }
  const name = `${told.kinds[kind]} ${id}`;
  const parts = difference.parts.map((part) => told.parts[part] ?? part).join(', ');
  const line = change === 'changed' ? told.changed(name, parts) : told[change](name);
  return { kind, id, change, way: null, line, ...both };
}

function sayMoved(
  { id, before, after, from, way, readBy }: ParameterDifference,
  told: CompareWords,
  words: Catalogue,
): string {
  const show = (one: Parameter | null) => (one === null ? told.nothing : describeParameter(one, words));
  const spanOf = ({ validFrom, validTo }: Parameter) =>
    words.say.span(showDay(validFrom, words), validTo === undefined ? null : showDay(validTo, words));
  const spanDiffers = before && after && spanOf(before) !== spanOf(after);
  return [
    told.value(id, show(before), show(after), showDay(from, words)),
    ...(way === null ? [] : [told.ways[way]]),
    ...(spanDiffers ? [told.span(spanOf(after))] : []),
    ...(readBy.length === 0 ? [] : [told.readBy(readBy.join(', '))]),
  ].join('; ');
}

interface Both {
  readonly before: string | null;
  readonly after: string | null;
}

/** What each side says of it: a rule from its structure and its own words, anything else by its text. */
function textsOf(difference: Difference, world: DifferenceWorld, words: Catalogue): Both {
  const { language } = words;
  if (difference.kind === 'parameter') {
    const why = (one: Parameter | null) => (one === null ? null : inLanguage(one.why, language));
    return { before: why(difference.before), after: why(difference.after) };
  }
  if (difference.kind === 'rule') return ruleTexts(difference, world, words);
  if (difference.kind === 'fact') {
    const labelled = (one: typeof difference.before) => one && (one.labels?.[language] ?? one.label);
    return { before: labelled(difference.before), after: labelled(difference.after) };
  }
  const said = (one: typeof difference.before) => {
    if (one === null) return null;
    const text = one.text[language] ?? Object.values(one.text)[0];
    return typeof text === 'object' ? [text.ask, text.why, text.how].join(' ') : (text ?? null);
  };
  return { before: said(difference.before), after: said(difference.after) };
}

function ruleTexts({ id, before, after }: RuleDifference, world: DifferenceWorld, words: Catalogue): Both {
  const say = (set: CompiledRules) => {
    const compiled = set.rules.find(({ rule }) => rule.id === id);
    if (!compiled) return null;
    const titleOf = titlesOf(
      set.rules.map(({ rule }) => rule),
      words,
    );
    const { title, met, unknown, lift } = compiled.rule.text[words.language] ?? Object.values(compiled.rule.text)[0]!;
    const own = [title, met, unknown, ...(lift === undefined ? [] : [lift])];
    return { structure: sayRule(compiled, { ...world, titleOf }, words).sentence, own: own.join(' / ') };
  };
  const [was, is] = [before && say(world.a), after && say(world.b)];
  const sameStructure = was && is && was.structure === is.structure;
  const shown = (one: typeof was) => (one ? (sameStructure ? one.own : one.structure) : null);
  return { before: shown(was), after: shown(is) };
}
