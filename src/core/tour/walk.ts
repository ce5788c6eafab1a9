import type { RuleGraph } from './graph.ts';

/** Keys by which the picture is walked, as browsers name them. */
export const walkKeys = ['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown', 'Home', 'End'] as const;
/** One of the keys. */
export type WalkKey = (typeof walkKeys)[number];

/** Where the walk stands, and along which link it came there; null where it came by none. */
export interface Walk {
  readonly at: string;
  readonly from: string | null;
}

/**
 * One step through the picture. Right and left follow a link to the next and the last column; up and down go to the next thing that
 * the same link leads to, without a link to the neighbour in the column; Home and End go to the ends of the column. Where nothing
 * lies that way the walk stays.
 */
export function walkOn(graph: RuleGraph, walk: Walk, key: WalkKey): Walk {
  const here = graph.get(walk.at);
  if (!here) return walk;
  if (key === 'ArrowRight' || key === 'ArrowLeft') {
    const links = key === 'ArrowRight' ? here.on : here.back;
    const next = walk.from !== null && links.includes(walk.from) ? walk.from : links[0];
    return next === undefined ? walk : { at: next, from: here.id };
  }
  const column = [...graph.values()].filter((one) => one.column === here.column).map(({ id }) => id);
  if (key === 'Home' || key === 'End') return { at: column.at(key === 'Home' ? 0 : -1) ?? here.id, from: null };
  const by = key === 'ArrowDown' ? 1 : -1;
  const siblings = siblingsOf(graph, walk);
  const among = siblings.length > 1 ? siblings : column;
  const next = among[among.indexOf(here.id) + by];
  if (next !== undefined) return { at: next, from: among === siblings ? walk.from : null };
  const beyond = column[column.indexOf(here.id) + by];
  return beyond === undefined ? walk : { at: beyond, from: null };
}

function siblingsOf(graph: RuleGraph, { at, from }: Walk): readonly string[] {
  const origin = from === null ? undefined : graph.get(from);
  return [origin?.on, origin?.back].find((links) => links?.includes(at)) ?? [];
}
