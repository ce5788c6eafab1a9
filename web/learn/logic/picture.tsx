import type { TargetedKeyboardEvent } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { columns, type GraphNode, type RuleGraph } from '../../../src/core/tour/graph.ts';
import { type Walk, type WalkKey, walkKeys, walkOn } from '../../../src/core/tour/walk.ts';
import { capital } from '../../../src/core/words/units.ts';
import { learnWords } from '../../words.ts';
import type { Lesson } from '../open-rules.ts';
import { Links } from './links.tsx';
import { domId, nameOf, opensOf } from './names.ts';
import { NodeDetails } from './node-details.tsx';

interface PictureProps {
  readonly graph: RuleGraph;
  readonly lesson: Lesson;
  /** A thing to go to, and a count that changes with each wish. */
  readonly goTo: { readonly id: string; readonly count: number } | null;
}

/** The rule set as linked columns: one thing takes Tab, arrow keys walk on from it. */
export function LogicPicture({ graph, lesson, goTo }: PictureProps) {
  const [walk, setWalk] = useState<Walk>(() => ({ at: [...graph.keys()][0] ?? '', from: null }));
  const [open, setOpen] = useState<string | null>(null);
  const [closed, setClosed] = useState<ReadonlySet<string>>(() => new Set(foldedAtFirst()));
  const inside = useRef<HTMLDivElement>(null);
  const isAsked = useRef(false);
  useEffect(() => {
    if (!goTo) return;
    isAsked.current = true;
    setWalk({ at: goTo.id, from: null });
    setOpen(goTo.id);
  }, [goTo]);
  useEffect(() => {
    if (!isAsked.current) return;
    isAsked.current = false;
    const column = graph.get(walk.at)?.column;
    if (column && closed.has(column)) setClosed(new Set([...closed].filter((one) => one !== column)));
    requestAnimationFrame(() => document.getElementById(domId(walk.at))?.focus());
  }, [walk]);
  const onKeyDown = (event: TargetedKeyboardEvent<HTMLElement>) => {
    if (event.key === 'Escape' && open !== null) {
      event.stopPropagation();
      setOpen(null);
    }
    const key = walkKeys.find((one) => one === event.key);
    if (!key || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    isAsked.current = true;
    setWalk(walkOn(graph, walk, key satisfies WalkKey));
  };
  const lit = graph.get(walk.at);
  const linked = new Set([...(lit?.back ?? []), ...(lit?.on ?? [])]);
  return (
    <div class="logic-picture" ref={inside}>
      <Links graph={graph} lit={walk.at} inside={inside} shape={`${open} ${[...closed].join(' ')}`} />
      {columns.map((column) => (
        <details
          key={column}
          class="logic-column"
          open={!closed.has(column)}
          onToggle={({ currentTarget }) => {
            const now = new Set(closed);
            if (currentTarget.open) now.delete(column);
            else now.add(column);
            if (now.size !== closed.size) setClosed(now);
          }}
        >
          <summary>
            <h3>{learnWords.logic.columns[column]}</h3>
          </summary>
          <ul onKeyDown={onKeyDown}>
            {[...graph.values()]
              .filter((node) => node.column === column)
              .map((node) => (
                <Node
                  key={node.id}
                  node={node}
                  graph={graph}
                  lesson={lesson}
                  isHere={node.id === walk.at}
                  isLinked={linked.has(node.id)}
                  isOpen={node.id === open}
                  onPress={() => {
                    setWalk({ at: node.id, from: null });
                    setOpen(open === node.id ? null : node.id);
                  }}
                  onFollow={(id) => {
                    isAsked.current = true;
                    setOpen(id);
                    setWalk({ at: id, from: node.id });
                  }}
                />
              ))}
          </ul>
        </details>
      ))}
    </div>
  );
}

interface NodeProps {
  readonly node: GraphNode;
  readonly graph: RuleGraph;
  readonly lesson: Lesson;
  readonly isHere: boolean;
  readonly isLinked: boolean;
  readonly isOpen: boolean;
  readonly onPress: () => void;
  readonly onFollow: (id: string) => void;
}

function Node({ node, graph, lesson, isHere, isLinked, isOpen, onPress, onFollow }: NodeProps) {
  const effect = node.column === 'effect' ? node.name : node.column === 'rule' ? node.on[0]?.split(':')[1] : null;
  const id = domId(node.id);
  const marks = [isHere && 'is-here', isLinked && 'is-linked', effect && `is-${effect}`].filter(Boolean).join(' ');
  return (
    <li>
      <button
        type="button"
        id={id}
        class={`logic-node ${marks}`}
        tabIndex={isHere ? 0 : -1}
        aria-expanded={isOpen}
        aria-controls={isOpen ? `${id}-told` : undefined}
        onClick={onPress}
      >
        {nameOf(node, lesson)}
        <span class="for-ear">: {opensOf(node, graph, lesson)}</span>
      </button>
      {isOpen && (
        <div class="logic-told" id={`${id}-told`}>
          <p>{capital(opensOf(node, graph, lesson))}.</p>
          <NodeDetails node={node} lesson={lesson} />
          <LinkList node={node} graph={graph} lesson={lesson} onFollow={onFollow} />
        </div>
      )}
    </li>
  );
}

/** The links of an open thing as buttons, for a finger: on a phone the columns stand one below the other. */
function LinkList({ node, graph, lesson, onFollow }: Pick<NodeProps, 'node' | 'graph' | 'lesson' | 'onFollow'>) {
  const links = [...node.back, ...node.on].flatMap((id) => graph.get(id) ?? []);
  if (links.length === 0) return null;
  return (
    <>
      <p class="quiet">{learnWords.logic.follow}</p>
      <ul class="logic-follow">
        {links.map((one) => (
          <li key={one.id}>
            <button type="button" class="button" onClick={() => onFollow(one.id)}>
              {learnWords.logic.columns[one.column]}: {nameOf(one, lesson)}
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}

/** Where the columns stand one below the other, only the first is unfolded. */
function foldedAtFirst(): readonly string[] {
  return matchMedia('(min-width: 60rem)').matches ? [] : columns.slice(1);
}
