import type { RefObject } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { RuleGraph } from '../../../src/core/tour/graph.ts';
import { domId } from './names.ts';

interface Line {
  readonly key: string;
  readonly path: string;
  readonly isLit: boolean;
}

interface LinksProps {
  readonly graph: RuleGraph;
  /** The thing whose links stand out. */
  readonly lit: string;
  readonly inside: RefObject<HTMLElement>;
  /** Changes when things may have moved. */
  readonly shape: string;
}

/** Lines between the columns, where they stand side by side; where they do not, links are told in words alone. */
export function Links({ graph, lit, inside, shape }: LinksProps) {
  const [lines, setLines] = useState<readonly Line[]>([]);
  useEffect(() => {
    const box = inside.current;
    if (!box) return;
    const measure = () => setLines(linesIn(box, graph, lit));
    const watch = new ResizeObserver(measure);
    watch.observe(box);
    measure();
    return () => watch.disconnect();
  }, [graph, lit, shape]);
  return (
    <svg class="logic-links" aria-hidden="true" focusable="false">
      {lines.map(({ key, path, isLit }) => (
        <path key={key} d={path} class={isLit ? 'is-lit' : undefined} />
      ))}
    </svg>
  );
}

function linesIn(box: HTMLElement, graph: RuleGraph, lit: string): Line[] {
  const frame = box.getBoundingClientRect();
  const lines = [...graph.values()].flatMap((node) =>
    node.on.flatMap((to): Line[] => {
      const [left, right] = [node.id, to].map((id) => document.getElementById(domId(id))?.getBoundingClientRect());
      if (!left || !right || left.right >= right.left || left.height === 0 || right.height === 0) return [];
      const [x1, y1, x2, y2] = [
        left.right - frame.left,
        left.top + left.height / 2 - frame.top,
        right.left - frame.left,
        right.top + right.height / 2 - frame.top,
      ].map(Math.round) as [number, number, number, number];
      const middle = Math.round((x1 + x2) / 2);
      const path = `M${x1} ${y1}C${middle} ${y1} ${middle} ${y2} ${x2} ${y2}`;
      return [{ key: `${node.id} ${to}`, path, isLit: node.id === lit || to === lit }];
    }),
  );
  return lines.sort((a, b) => Number(a.isLit) - Number(b.isLit));
}
