import type { Report } from './findings.ts';

/** Parses one file; a fault is reported with line and column where the parser tells them, and the result is undefined. */
export function parseJsonFile(file: string, text: string, report: Report): unknown {
  const place = { file, path: [] };
  try {
    const value: unknown = JSON.parse(text.replace(/^\uFEFF/, ''));
    for (const path of repeatedKeys(text)) {
      report('RULES_KEY_REPEATED', { file, path }, { expected: 'each key once', came: `"${path.at(-1)}" twice` });
    }
    return value;
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    const position = Number(/position (\d+)/.exec(message)?.[1] ?? Number.NaN);
    const before = text.slice(0, position).split('\n');
    const where = Number.isNaN(position) ? '' : ` (line ${before.length}, column ${(before.at(-1)?.length ?? 0) + 1})`;
    report('RULES_NOT_JSON', place, { expected: 'JSON', came: `${message}${where}` });
    return undefined;
  }
}

/** Paths of keys that stand twice in one object of a text that is JSON (RFC 8259 section 4 leaves their meaning open). */
export function repeatedKeys(text: string): (string | number)[][] {
  const repeated: (string | number)[][] = [];
  const stack: { keys: Set<string> | null; step: string | number }[] = [];
  const token = /"(?:[^"\\]|\\.)*"|[{}[\],:]/g;
  let awaitsKey = false;
  for (const [part] of text.matchAll(token)) {
    const top = stack.at(-1);
    if (part === '{') {
      stack.push({ keys: new Set(), step: '' });
      awaitsKey = true;
    } else if (part === '[') {
      stack.push({ keys: null, step: 0 });
      awaitsKey = false;
    } else if (part === '}' || part === ']') {
      stack.pop();
      awaitsKey = false;
    } else if (part === ',') {
      if (top && typeof top.step === 'number') top.step += 1;
      awaitsKey = top?.keys != null;
    } else if (part.startsWith('"') && awaitsKey && top?.keys) {
      const key = JSON.parse(part) as string;
      top.step = key;
      if (top.keys.has(key)) repeated.push(stack.map(({ step }) => step));
      top.keys.add(key);
      awaitsKey = false;
    }
  }
  return repeated;
}
