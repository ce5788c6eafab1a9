import { factDefinition, factIds } from '../../fixtures/core-facts.ts';

/** A condition as read back from its English sentence: operators, limits, parameters' names, groups, rules named. */
export type ReadBack =
  | { readonly fact: string; readonly op: string; readonly limit: unknown; readonly parameter: string | null }
  | { readonly kind: 'all' | 'any' | 'eitherOf'; readonly members: readonly ReadBack[] }
  | { readonly kind: 'not'; readonly member: ReadBack }
  | { readonly kind: 'rule'; readonly rule: string; readonly member: ReadBack };

const months = 'January February March April May June July August September October November December'.split(' ');
const byLength = (a: readonly [string, string], b: readonly [string, string]) => b[1].length - a[1].length;
const labels = factIds.map((id) => [id, factDefinition(id).label] as const).toSorted(byLength);

/** Reads a condition back from its English sentence, knowing the grammar and none of the code that wrote it. */
export function readSaid(text: string, choices: ReadonlyMap<string, readonly (readonly [string, string])[]>): ReadBack {
  let rest = text;
  const fail = () => new SyntaxError(`cannot read "${rest}" of "${text}"`);
  const take = (start: string) => {
    if (!rest.startsWith(start)) return false;
    rest = rest.slice(start.length);
    return true;
  };
  const match = (pattern: RegExp) => {
    const found = pattern.exec(rest);
    if (found) rest = rest.slice(found[0].length);
    return found;
  };
  const closed = <T>(value: T): T => {
    if (!take(')')) throw fail();
    return value;
  };
  const several = (): ReadBack => {
    take('across the new year: ');
    const first = one();
    const joiner = [', and ', ', or '].find((each) => rest.startsWith(each));
    if (joiner === undefined) return first;
    const members = [first];
    while (take(joiner)) members.push(one());
    return { kind: joiner === ', and ' ? 'all' : 'any', members };
  };
  const one = (): ReadBack => {
    if (take('(')) return closed(several());
    if (take('all of (')) return closed({ kind: 'all', members: [several()] });
    if (take('any of (')) return closed({ kind: 'any', members: [several()] });
    if (take('it is not so that (')) return closed({ kind: 'not', member: several() });
    if (take('whichever is known of (')) return closed({ members: membersOf(several()), kind: 'eitherOf' });
    const named = match(/^“[^”]*” \(([\w-]+)\) applies, that is \(/);
    if (named) return closed({ kind: 'rule', rule: named[1]!, member: several() });
    return comparison();
  };
  const comparison = (): ReadBack => {
    const fact = labels.find(([, label]) => take(label))?.[0];
    if (fact === undefined) throw fail();
    const sign = match(/^ shows “([^”]*)”/);
    if (sign) return { fact, op: 'has', limit: [choiceOf(fact, sign[1]!)], parameter: null };
    const op = [': one of ', ': none of ', ': not ', ': '].find((start) => take(start));
    if (op !== undefined) {
      const names = { ': one of ': 'oneOf', ': none of ': 'noneOf', ': not ': 'isNot', ': ': 'is' };
      return { fact, op: names[op as keyof typeof names], ...listOf(fact) };
    }
    return match(/^ (is|are) /) ? onScale(fact) : abort();
  };
  const onScale = (fact: string): ReadBack => {
    const day = match(/^(before|after) (\d+) (\w+) \((\w+)\)/);
    if (day) return { fact, op: day[1] === 'before' ? 'below' : 'above', limit: monthDay(day), parameter: day[4]! };
    const until = match(/^()(\d+) ([A-Z]\w+) \((\w+)\) or (before|after)/);
    if (until)
      return {
        fact,
        op: until[5] === 'before' ? 'atMost' : 'atLeast',
        limit: monthDay(until),
        parameter: until[4]!,
      };
    const strict = match(/^(below|above) (-?[\d.]+)[^()]*? \((\w+)\)/);
    if (strict) return { fact, op: strict[1]!, limit: Number(strict[2]), parameter: strict[3]! };
    const loose = match(/^(-?[\d.]+)[^()]*? or (less|more) \((\w+)\)/);
    if (!loose) throw fail();
    return { fact, op: loose[2] === 'less' ? 'atMost' : 'atLeast', limit: Number(loose[1]), parameter: loose[3]! };
  };
  const listOf = (fact: string) => {
    const limit: string[] = [];
    do limit.push(nextChoice(fact));
    while (take(' or ') || (!/^, (and|or) /.test(rest) && take(', ')));
    return { limit, parameter: match(/^ \((\w+)\)/)?.[1] ?? null };
  };
  const nextChoice = (fact: string) =>
    choices
      .get(fact)!
      .toSorted(byLength)
      .find(([, shown]) => take(shown))?.[0] ?? abort();
  const choiceOf = (fact: string, shown: string) =>
    choices.get(fact)!.find((each) => each[1] === shown)?.[0] ?? abort();
  const abort = (): never => {
    throw fail();
  };
  const read = several();
  if (rest !== '') throw fail();
  return read;
}

function membersOf(read: ReadBack): readonly ReadBack[] {
  return 'members' in read ? read.members : [];
}

function monthDay([, , day, month]: RegExpExecArray): number {
  return (months.indexOf(month!) + 1) * 100 + Number(day);
}
