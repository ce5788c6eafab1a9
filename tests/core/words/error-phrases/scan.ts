import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseSync } from 'vite';

/** A node of the syntax tree (ESTree), read as plain data. */
interface Node {
  readonly type: string;
  readonly [key: string]: unknown;
}

interface Scope {
  readonly fn: {
    readonly name: string | null;
    readonly params: readonly (string | null)[];
    readonly node: Node;
  } | null;
  readonly up: Scope | null;
}

interface Call {
  readonly args: readonly Node[];
  readonly scope: Scope;
}

interface Place {
  readonly node: Node;
  readonly scope: Scope;
}

interface Source {
  /** True for the schemas of pack files, whose checks name what was expected. */
  readonly isPackSchema: boolean;
  readonly details: Place[];
  readonly variables: Map<string, Place[]>;
}

/** What all files say: functions and calls by name over all of them, the rest by file. */
interface World {
  readonly sources: Source[];
  readonly returns: Map<string, (Place & { readonly source: Source })[]>;
  readonly calls: Map<string, (Call & { readonly source: Source })[]>;
}

const root = join(import.meta.dirname, '../../../..');
const keys = ['expected', 'came'];
const makers = ['codedError', 'reportOf', 'LoamwardError', 'finding', 'refuse'];
const textSteps = ['trim', 'trimEnd', 'slice', 'join', 'filter'];
const functionTypes = ['FunctionDeclaration', 'FunctionExpression', 'ArrowFunctionExpression'];

/**
 * Phrases of `expected`, `came` and an error's own `next`, with `{}` where something was put in, sorted, each once. Single words of a
 * list are names, and left out.
 */
export function phrasesInSource(): string[] {
  const world: World = { sources: [], returns: new Map(), calls: new Map() };
  for (const folder of ['src', 'web']) {
    for (const file of readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })) {
      if (/\.tsx?$/.test(file) && !/words\/|tools\/|\.d\.ts$/.test(file)) read(join(root, folder, file), world);
    }
  }
  const found = world.sources.flatMap((source) =>
    source.details.flatMap((place) => phrasesOf(place, source, world, new Set())),
  );
  return [...new Set(found)].filter((phrase) => /[a-z]{2}/i.test(phrase.replaceAll('{}', ''))).sort();
}

function read(path: string, world: World): void {
  const source: Source = { isPackSchema: path.endsWith('rules/pack/schema.ts'), details: [], variables: new Map() };
  world.sources.push(source);
  const { program } = parseSync(path, readFileSync(path, 'utf8'));
  visit(program as unknown as Node, { fn: null, up: null }, null, source, world);
}

function visit(node: Node, scope: Scope, name: string | null, source: Source, world: World): void {
  const inner = functionTypes.includes(node.type) ? enter(node, scope, name, source, world) : scope;
  if (node.type === 'VariableDeclarator' && isNode(node['init']) && nameOf(node['id'])) {
    push(source.variables, String(nameOf(node['id'])), { node: node['init'], scope });
  }
  if (node.type === 'ReturnStatement' && isNode(node['argument']) && scope.fn?.name) {
    push(world.returns, scope.fn.name, { node: node['argument'], scope, source });
  }
  if (node.type === 'Property' && isNode(node['value']) && keys.includes(keyOf(node))) {
    source.details.push({ node: node['value'], scope });
  }
  if (node.type === 'CallExpression' || node.type === 'NewExpression') call(node, scope, source, world);
  for (const [key, child] of Object.entries(node)) {
    const called = key === 'init' && node.type === 'VariableDeclarator' ? nameOf(node['id']) : null;
    for (const one of Array.isArray(child) ? child : [child]) if (isNode(one)) visit(one, inner, called, source, world);
  }
}

function enter(node: Node, scope: Scope, given: string | null, source: Source, world: World): Scope {
  const name = nameOf(node['id']) ?? given;
  const params = (node['params'] as readonly Node[]).map((param) =>
    nameOf(param.type === 'AssignmentPattern' ? param['left'] : param),
  );
  const inner: Scope = { fn: { name, params, node }, up: scope };
  const body = node['body'];
  if (name && isNode(body) && body.type !== 'BlockStatement')
    push(world.returns, name, { node: body, scope: inner, source });
  return inner;
}

function call(node: Node, scope: Scope, source: Source, world: World): void {
  const args = node['arguments'] as readonly Node[];
  const called = nameOf(node['callee']);
  if (!called) {
    const last = args.at(-1);
    if (source.isPackSchema && last?.type === 'Literal' && /[a-z] [a-z]/i.test(String(last['value']))) {
      source.details.push({ node: last, scope });
    }
    return;
  }
  push(world.calls, called, { args, scope, source });
  if (!makers.includes(called)) return;
  for (const arg of args) {
    if (arg.type !== 'ObjectExpression') continue;
    for (const property of arg['properties'] as readonly Node[]) {
      if (keyOf(property) === 'next' && isNode(property['value']))
        source.details.push({ node: property['value'], scope });
    }
  }
}

function phrasesOf({ node, scope }: Place, source: Source, world: World, seen: Set<Node>): string[] {
  if (seen.has(node)) return [];
  seen.add(node);
  const again = (child: unknown, at: Place['scope'] = scope, of = source) =>
    isNode(child) ? phrasesOf({ node: child, scope: at }, of, world, seen) : [];
  switch (node.type) {
    case 'Literal':
      return typeof node['value'] === 'string' ? [node['value']] : [];
    case 'TemplateLiteral': {
      const quasis = node['quasis'] as readonly { readonly value: { readonly cooked: string } }[];
      const holes = (node['expressions'] as readonly Node[]).flatMap((hole) => again(hole));
      return [quasis.map(({ value }) => value.cooked).join('{}'), ...holes];
    }
    case 'ConditionalExpression':
      return [...again(node['consequent']), ...again(node['alternate'])];
    case 'LogicalExpression':
      return [...again(node['left']), ...again(node['right'])];
    case 'BinaryExpression':
      return node['operator'] === '+' ? [...again(node['left']), ...again(node['right'])] : [];
    case 'ParenthesizedExpression':
    case 'TSAsExpression':
    case 'TSNonNullExpression':
      return again(node['expression']);
    case 'ArrayExpression':
      return (node['elements'] as readonly (Node | null)[])
        .flatMap((one) => again(one))
        .filter((text) => text.includes(' '));
    case 'CallExpression':
      if (isNode(node['callee']) && textSteps.includes(keyNamed(node['callee']['property'])))
        return again(node['callee']['object']);
      return (world.returns.get(nameOf(node['callee']) ?? '') ?? []).flatMap((back) =>
        again(back.node, back.scope, back.source),
      );
    case 'Identifier': {
      const name = String(node['name']);
      const given = argumentsFor(name, scope, world);
      if (given) return given.flatMap((one) => again(one.node, one.scope, one.source));
      return (source.variables.get(name) ?? []).flatMap((one) => again(one.node, one.scope));
    }
    default:
      return [];
  }
}

/** What callers give for a parameter; null where the name is none of the functions around. */
function argumentsFor(name: string, scope: Scope, world: World): (Place & { readonly source: Source })[] | null {
  for (let at: Scope | null = scope; at; at = at.up) {
    const index = at.fn?.params.indexOf(name) ?? -1;
    if (index < 0) continue;
    return (world.calls.get(at.fn?.name ?? '') ?? []).flatMap(({ args, ...call }) =>
      args[index] ? [{ node: args[index], ...call }] : [],
    );
  }
  return null;
}

function keyOf(node: Node): string {
  return isNode(node['key']) ? String(node['key']['name'] ?? node['key']['value']) : '';
}

function keyNamed(node: unknown): string {
  return isNode(node) ? String(node['name']) : '';
}

function nameOf(node: unknown): string | null {
  return isNode(node) && node.type === 'Identifier' ? String(node['name']) : null;
}

function isNode(value: unknown): value is Node {
  return typeof value === 'object' && value !== null && 'type' in value;
}

function push<T>(map: Map<string, T[]>, key: string, value: T): void {
  map.set(key, [...(map.get(key) ?? []), value]);
}
