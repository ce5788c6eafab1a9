import type { ComponentChildren } from 'preact';
import type { FigureView } from '../../src/core/dialogue/outlook-view/types.ts';
import { Fold } from '../parts/fold.tsx';
import { outlookWords } from '../words.ts';
import { figureSize } from './geometry.ts';
import { Table } from './table.tsx';

interface FigureProps {
  /** Short name that its parts are known by. */
  readonly name: string;
  readonly view: FigureView;
  /** Height of the view box; that of the others where absent. */
  readonly height?: number;
  /** What its patterns mean; drawn beside nothing else. */
  readonly legend?: ComponentChildren;
  readonly children: ComponentChildren;
}

/** A drawing with its name, what it shows in words, and its numbers as a table. */
export function Figure({ name, view, height = figureSize.height, legend, children }: FigureProps) {
  return (
    <figure class={`figure is-${name}`}>
      <h3>{view.title}</h3>
      <svg viewBox={`0 0 ${figureSize.width} ${height}`} role="img" aria-describedby={`${name}-text`}>
        <title>{view.title}</title>
        {children}
      </svg>
      {legend}
      <figcaption id={`${name}-text`}>{view.description}</figcaption>
      <Fold title={outlookWords.figures.table}>
        <Table title={view.title} table={view.table} />
      </Fold>
    </figure>
  );
}
