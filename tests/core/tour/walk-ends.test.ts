import { describe, expect, test } from 'vitest';
import type { Column, GraphNode } from '../../../src/core/tour/graph.ts';
import { type WalkKey, walkKeys, walkOn } from '../../../src/core/tour/walk.ts';

const node = (column: Column, name: string, back: readonly string[], on: readonly string[]): GraphNode => {
  return { id: `${column}:${name}`, column, name, back, on };
};

/** Three facts; the middle rule reads the outer two, the last rule only the middle one. */
const nodes = [
  node('fact', 'a', [], ['rule:1', 'rule:2']),
  node('fact', 'b', [], ['rule:3']),
  node('fact', 'c', [], ['rule:2']),
  node('rule', '1', ['fact:a'], []),
  node('rule', '2', ['fact:a', 'fact:c'], []),
  node('rule', '3', ['fact:b'], []),
];
const graph = new Map(nodes.map((one) => [one.id, one]));

describe('a walk at the edges of a picture', () => {
  test.each<[from: string | null, at: string, key: WalkKey, to: string, along: string | null]>([
    [null, 'fact:b', 'Home', 'fact:a', null],
    [null, 'fact:b', 'End', 'fact:c', null],
    ['fact:a', 'rule:2', 'Home', 'rule:1', null],
    ['fact:a', 'rule:2', 'End', 'rule:3', null],
    // Without a link: the neighbour of the column.
    [null, 'fact:a', 'ArrowDown', 'fact:b', null],
    [null, 'fact:c', 'ArrowUp', 'fact:b', null],
    // Along a link: the next thing that it leads to, over what lies between.
    ['rule:2', 'fact:a', 'ArrowDown', 'fact:c', 'rule:2'],
    ['rule:2', 'fact:c', 'ArrowUp', 'fact:a', 'rule:2'],
    ['fact:a', 'rule:1', 'ArrowDown', 'rule:2', 'fact:a'],
    // The link leads no further: on in the column, and the link is left.
    ['fact:a', 'rule:2', 'ArrowDown', 'rule:3', null],
    // A link that leads to one thing alone is no row to walk in.
    ['fact:b', 'rule:3', 'ArrowUp', 'rule:2', null],
    // Back by the link on which it came, not by the first one.
    ['fact:c', 'rule:2', 'ArrowLeft', 'fact:c', 'rule:2'],
    [null, 'rule:2', 'ArrowLeft', 'fact:a', 'rule:2'],
    // Came by what is no link of it: the first.
    ['fact:b', 'rule:2', 'ArrowLeft', 'fact:a', 'rule:2'],
  ])('from %s at %s, %s leads to %s', (from, at, key, to, along) => {
    expect(walkOn(graph, { at, from }, key)).toEqual({ at: to, from: along });
  });

  test.each(walkKeys)('stays, on %s, where it stands on what the picture does not have', (key) => {
    const lost = { at: 'rule:gone', from: null };
    expect(walkOn(graph, lost, key)).toBe(lost);
  });
});
