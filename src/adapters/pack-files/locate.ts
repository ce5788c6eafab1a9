import { findNodeAtLocation, type JSONPath, type Node, type ParseError, parseTree } from 'jsonc-parser';
import type { Finding } from '../../core/rules/pack/findings.ts';
import type { PackFiles } from '../../core/rules/pack/load-pack.ts';

/** A finding with the place in its file where an editor puts the cursor: line and column, counted from 1. */
export type LocatedFinding = Finding & { readonly line: number; readonly column: number };

/**
 * Findings with line and column, in the order of files and lines. A member of an object is found at its key, of two equal keys at
 * the latter, a member of a list at its value; what is missing at what should hold it; a file that is no JSON where it breaks.
 */
export function locateFindings(findings: readonly Finding[], files: PackFiles): LocatedFinding[] {
  const trees = new Map<string, Tree>();
  const located = findings.map((finding) => {
    const tree = trees.get(finding.file) ?? treeOf(files.get(finding.file) ?? '');
    trees.set(finding.file, tree);
    return { ...finding, ...positionOf(tree, finding) };
  });
  const order = (a: LocatedFinding, b: LocatedFinding) => a.line - b.line || a.column - b.column;
  return located.sort((a, b) => (a.file === b.file ? order(a, b) : a.file < b.file ? -1 : 1));
}

interface Tree {
  readonly text: string;
  readonly root: Node | undefined;
  readonly errors: readonly ParseError[];
}

function treeOf(text: string): Tree {
  const errors: ParseError[] = [];
  const root = parseTree(text.replace(/^\uFEFF/, ' '), errors, { disallowComments: true, allowTrailingComma: false });
  return { text, root, errors };
}

function positionOf({ text, root, errors }: Tree, { code, pointer }: Finding) {
  const offset = code === 'RULES_NOT_JSON' ? (errors[0]?.offset ?? text.length) : offsetOf(root, stepsOf(pointer));
  const before = text.slice(0, offset).split(/\r\n|\n|\r/);
  return { line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
}

function offsetOf(root: Node | undefined, steps: readonly string[]): number {
  let node = root;
  let place = root?.offset ?? 0;
  for (const step of steps) {
    const next = node && stepInto(node, step);
    if (!next) break;
    node = next;
    place = next.parent?.type === 'property' ? next.parent.offset : next.offset;
  }
  return place;
}

/** The member of a node; of two of one name the latter, which is the one that counts. */
function stepInto(node: Node, step: string): Node | undefined {
  if (node.type === 'object')
    return node.children?.findLast(({ children }) => children?.[0]?.value === step)?.children?.[1];
  const path: JSONPath = [Number(step)];
  return node.type === 'array' ? findNodeAtLocation(node, path) : undefined;
}

/** The steps of a JSON Pointer, RFC 6901 section 4. */
function stepsOf(pointer: string): string[] {
  const steps = pointer.split('/').slice(1);
  return steps.map((step) => step.replaceAll('~1', '/').replaceAll('~0', '~'));
}
