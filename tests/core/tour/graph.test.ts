import { describe, expect, test } from 'vitest';
import { localDate } from '../../../src/core/facts/local-day.ts';
import { compileRules } from '../../../src/core/rules/compile.ts';
import { columns, ruleGraph } from '../../../src/core/tour/graph.ts';
import { makeTour, tourMoment } from '../../../src/core/tour/make-tour.ts';
import { type Walk, walkKeys, walkOn } from '../../../src/core/tour/walk.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { shipped } from '../../cases/shipped-pack.ts';

const { pack } = shipped;

/** Made anew in each test, so that each is seen to reach what it checks. */
function made() {
  const at = tourMoment(pack, epochSeconds(0));
  const compiled = compileRules(pack, localDate(at, pack.zone));
  const graph = ruleGraph(pack, compiled, makeTour({ pack, compiled, at }));
  return { compiled, graph, nodes: [...graph.values()] };
}

describe('the picture of the rule set', () => {
  test('has every question, every rule and every fact that one of them reads', () => {
    const { compiled, nodes } = made();
    const names = (column: string) => nodes.filter((node) => node.column === column).map(({ name }) => name);
    expect(names('question').sort()).toEqual(pack.questions.map(({ id }) => id).sort());
    expect(names('rule').sort()).toEqual(pack.rules.map(({ id }) => id).sort());
    const read = compiled.rules.flatMap(({ facts }) => facts);
    expect(names('fact')).toEqual(expect.arrayContaining(read));
    expect(names('effect')).toEqual(['stop', 'hold', 'advise']);
  });

  test('links only what is in it, to the next column, and both ways', () => {
    const { graph, nodes } = made();
    for (const node of nodes) {
      for (const id of node.on) {
        expect(columns.indexOf(graph.get(id)!.column)).toBe(columns.indexOf(node.column) + 1);
        expect(graph.get(id)!.back).toContain(node.id);
      }
      for (const id of node.back) expect(graph.get(id)!.on).toContain(node.id);
    }
  });
});

describe('a walk with the keys', () => {
  test('reaches everything from the first question, and never leaves the picture', () => {
    const { graph, nodes } = made();
    const start = nodes[0]!.id;
    const seen = new Set<string>();
    const reached = new Set<string>();
    const open: Walk[] = [{ at: start, from: null }];
    for (let walk = open.pop(); walk !== undefined; walk = open.pop()) {
      const key = `${walk.at} ${walk.from}`;
      if (seen.has(key)) continue;
      seen.add(key);
      reached.add(walk.at);
      for (const one of walkKeys) open.push(walkOn(graph, walk, one));
    }
    expect([...reached].sort()).toEqual([...graph.keys()].sort());
  });

  test('right and left follow a link, and left again leads back', () => {
    const { graph } = made();
    const wind = walkOn(graph, { at: 'question:wind', from: null }, 'ArrowRight');
    expect(wind).toEqual({ at: 'fact:wind.boomKmh', from: 'question:wind' });
    const rule = walkOn(graph, wind, 'ArrowRight');
    expect(rule.at).toMatch(/^rule:/);
    expect(walkOn(graph, rule, 'ArrowLeft').at).toBe('fact:wind.boomKmh');
  });

  test('up and down go to the next thing of the same link', () => {
    const { graph } = made();
    const first = walkOn(graph, { at: 'fact:wind.boomKmh', from: null }, 'ArrowRight');
    const second = walkOn(graph, first, 'ArrowDown');
    expect(graph.get('fact:wind.boomKmh')!.on.slice(0, 2)).toEqual([first.at, second.at]);
    expect(walkOn(graph, second, 'ArrowUp')).toEqual(first);
  });

  test('stays where nothing lies that way', () => {
    const { graph } = made();
    const walk = { at: 'effect:stop', from: null };
    expect(walkOn(graph, walk, 'ArrowRight')).toBe(walk);
    expect(walkOn(graph, walk, 'ArrowUp')).toBe(walk);
  });
});
