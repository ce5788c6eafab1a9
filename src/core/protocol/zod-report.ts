import type * as z from 'zod';
import { type ErrorReport, reportOf } from '../errors/coded-error.ts';

/** Most letters of what came that a report repeats. */
const shownLetters = 80;

/** A value as JSON text, cut to 80 letters; `nothing` where there is none. */
export function shortText(value: unknown): string {
  const text = typeof value === 'string' ? value : (JSON.stringify(value) ?? 'nothing');
  return text.length > shownLetters ? `${text.slice(0, shownLetters)}…` : text;
}

/**
 * The first issue of a failed parse as a coded report: JSON Pointer (RFC 6901) of the field, what was expected in words, what
 * came. zod's own message never goes out: it is a program's text and holds a list as JSON.
 */
export function reportIssue(issues: readonly z.core.$ZodIssue[], input: unknown): ErrorReport {
  const issue = deepest(issues[0]);
  const path = issue?.path ?? [];
  return reportOf('MESSAGE_FIELD_WRONG', {
    expected: issue ? expectedOf(issue) : 'a message of the protocol',
    came: shortText(issue?.code === 'unrecognized_keys' ? issue.keys.join(', ') : valueAt(input, path)),
    pointer: path.map((step) => `/${String(step).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('') || '/',
  });
}

/** Of a union the branch that came furthest tells most. */
function deepest(issue: z.core.$ZodIssue | undefined): z.core.$ZodIssue | undefined {
  if (issue?.code !== 'invalid_union') return issue;
  const inner = issue.errors.flat().sort((a, b) => b.path.length - a.path.length)[0];
  return inner ? { ...inner, path: [...issue.path, ...inner.path] } : issue;
}

function valueAt(input: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, step) =>
      typeof value === 'object' && value !== null && Object.hasOwn(value, step)
        ? (value as Record<PropertyKey, unknown>)[step]
        : undefined,
    input,
  );
}

function expectedOf(issue: z.core.$ZodIssue): string {
  switch (issue.code) {
    case 'invalid_type':
      return `a value of type ${issue.expected}`;
    case 'invalid_value':
      return `one of ${issue.values.map(String).join(', ')}`;
    case 'too_big':
      return `at most ${issue.maximum}${countedIn(issue.origin)}`;
    case 'too_small':
      return `at least ${issue.minimum}${countedIn(issue.origin)}`;
    case 'unrecognized_keys':
      return 'no other fields';
    case 'invalid_key':
      return 'a name of 1 to 64 letters';
    default:
      return 'a value of the protocol';
  }
}

function countedIn(origin: string): string {
  return { string: ' letters', array: ' members' }[origin] ?? '';
}
