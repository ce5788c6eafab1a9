import type { Effect } from '../../../src/core/rules/types.ts';
import type { GraphNode, RuleGraph } from '../../../src/core/tour/graph.ts';
import { labelOf } from '../../../src/core/words/facts.ts';
import { capital, joinWords } from '../../../src/core/words/units.ts';
import { learnWords } from '../../words.ts';
import type { Lesson } from '../open-rules.ts';

/** What a question asks, in the language of the page. */
export function askOf(id: string, { pack, words }: Lesson): string {
  const text = pack.questions.find((one) => one.id === id)?.text;
  return (text?.[words.language] ?? text?.['en'])?.ask ?? id;
}

/** What a thing of the picture is called. */
export function nameOf({ column, name }: GraphNode, lesson: Lesson): string {
  if (column === 'question') return askOf(name, lesson);
  if (column === 'fact') return capital(labelOf(name, lesson.definitionOf, lesson.words));
  return column === 'rule' ? lesson.titleOf(name) : learnWords.logic.effects[name as Effect];
}

/** What a thing opens, in words: the things of the next column that it leads to. */
export function opensOf(node: GraphNode, graph: RuleGraph, lesson: Lesson): string {
  const own = learnWords.logic;
  if (node.column === 'effect') return own.effectHelp[node.name as Effect];
  const names = node.on.flatMap((id) => {
    const one = graph.get(id);
    return one ? [lesson.words.values.inSentence(nameOf(one, lesson))] : [];
  });
  return names.length === 0 ? own.opensNothing : own.opens(joinWords(names, lesson.words.values.and));
}

/** Several rules by their titles, in a row. */
export function ruleNames(rules: readonly string[], { titleOf, words }: Lesson): string {
  return joinWords(
    rules.map((rule) => words.values.inSentence(titleOf(rule))),
    words.values.and,
  );
}

/** Several facts by their labels, in a row. */
export function factNames(facts: readonly string[], { definitionOf, words }: Lesson): string {
  return joinWords(
    facts.map((fact) => labelOf(fact, definitionOf, words)),
    words.values.and,
  );
}

/** Id in the document of a thing in the picture. */
export function domId(id: string): string {
  return `node-${id.replaceAll(/[^a-zA-Z0-9-]/g, '_')}`;
}
