import * as z from 'zod';
import { coreFacts } from '../../../core/facts/registry/index.ts';
import { operators } from '../../../core/rules/operators.ts';

const facts = Object.entries(coreFacts);

/** Id of a fact: those that are built in are offered; a pack may have its own beside them. */
const factId = z
  .union([z.enum(facts.map(([id]) => id) as [string, ...string[]]), z.string()])
  .meta({ id: 'factId', description: 'The fact that is compared, by its id: see docs/facts.md.' });

const limit = (words: string) =>
  z.string().meta({ description: `Id of the parameter that is the limit, never a number. ${words}` });
const choice = (words: string) => z.string().meta({ description: words });
const choices = (words: string) =>
  z
    .union([z.array(z.string()).min(1), z.strictObject({ parameter: z.string() })])
    .meta({ description: `${words} A list of choices, or { "parameter": id } for a list in parameters.json.` });

const comparison = z
  .strictObject({
    fact: factId,
    below: limit('Met where the whole value is below it.').optional(),
    atMost: limit('Met at the limit and below it.').optional(),
    above: limit('Met where the whole value is above it.').optional(),
    atLeast: limit('Met at the limit and above it.').optional(),
    is: choice('The one choice with which it is met.').optional(),
    isNot: choice('The one choice with which it is not met.').optional(),
    oneOf: choices('Met with one of these.').optional(),
    noneOf: choices('Met with none of these.').optional(),
    has: choice('The sign that must be among those seen.').optional(),
  })
  .meta({
    id: 'comparison',
    title: 'Comparison',
    description: `A fact and exactly one operator: ${operators.join(', ')}.`,
    minProperties: 2,
    maxProperties: 2,
  });

const reference = z
  .strictObject({ rule: z.string().meta({ description: 'Id of another rule of the pack; met where that one is.' }) })
  .meta({ id: 'reference', title: 'Reference to a rule', description: 'The condition of another rule, by its id.' });

function groupsOf(member: z.ZodType, levels: number) {
  const list = (words: string, fewest = 1) => z.array(member).min(fewest).meta({ description: words });
  const eitherWords =
    'Two or more ways to know the same thing, each a comparison of another fact: met where at least one is known and says so.';
  return z
    .union([
      z.strictObject({ all: list('Met where each of these is met.') }).meta({ title: 'All of these' }),
      z.strictObject({ any: list('Met where at least one of these is met.') }).meta({ title: 'Any of these' }),
      z.strictObject({ not: member }).meta({ title: 'Not this', description: 'Met where this is not met.' }),
      z
        .strictObject({ eitherOf: z.array(comparison).min(2).meta({ description: eitherWords }) })
        .meta({ title: 'Either way of knowing' }),
    ])
    .meta({ id: `groupOf${levels}`, description: 'A group of conditions; groups stand at most two deep.' });
}

const leaf = z.union([comparison, reference]);
const inner = groupsOf(leaf, 1);
const outer = groupsOf(z.union([comparison, reference, inner]), 2);

/**
 * The closed condition language as a schema: comparisons, references and groups at most two deep. What a schema cannot say
 * (that a parameter or rule exists, that its unit fits) `parse-condition.ts` checks.
 */
export const conditionSchema = z.union([comparison, reference, outer]);
