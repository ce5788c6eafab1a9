import type { ComponentChildren } from 'preact';

interface DrawingProps {
  /** What it shows, for whoever does not see it. */
  readonly says: string;
  /** Words below it; where they are the same, the drawing is not said again. */
  readonly caption?: string;
  /** Width and height of the drawing's own space. */
  readonly size: readonly [number, number];
  readonly children: ComponentChildren;
}

/** One line drawing with its words. Lines take the colour of the text, earth is filled with the clay tone. */
export function Drawing({ says, caption, size: [width, height], children }: DrawingProps) {
  const isSaidBelow = caption === says;
  return (
    <figure class="picture">
      <svg
        viewBox={`0 0 ${width} ${height}`}
        role="img"
        aria-label={isSaidBelow ? undefined : says}
        aria-hidden={isSaidBelow}
        focusable="false"
      >
        {children}
      </svg>
      {caption && <figcaption>{caption}</figcaption>}
    </figure>
  );
}

/** A length with a bar at either end and its words beside it. */
export function Measure({
  from: [x1, y1],
  to: [x2, y2],
  words,
  at: [x, y],
}: {
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  readonly words: string;
  readonly at: readonly [number, number];
}) {
  const bar = x1 === x2 ? [6, 0] : [0, 6];
  const [dx, dy] = bar as [number, number];
  return (
    <>
      <path
        class="pic-thin"
        d={`M${x1} ${y1}L${x2} ${y2}M${x1 - dx} ${y1 - dy}L${x1 + dx} ${y1 + dy}M${x2 - dx} ${y2 - dy}L${x2 + dx} ${y2 + dy}`}
      />
      <text x={x} y={y} text-anchor="middle">
        {words}
      </text>
    </>
  );
}
