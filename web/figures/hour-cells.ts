import type { HourRun, HoursFigure } from '../../src/core/dialogue/outlook-view/types.ts';
import { figureSize, scale } from './geometry.ts';

/** Where the rows of the hours stand, units of the view box: `row` is the height of a day. */
export const hoursPlot = { left: 60, right: figureSize.width - 4, top: 20, row: 18 } as const;

/** Gap between two days, units of the view box. */
const gap = 2;

/** One stretch of hours in one state as a rectangle. */
export interface HourCell {
  readonly key: string;
  readonly state: HourRun['state'];
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The stretches of all days as rectangles; days of 23 to 25 hours keep the width of an hour. */
export function hourCells({ rows }: Pick<HoursFigure, 'rows'>): HourCell[] {
  const longest = Math.max(24, ...rows.map(({ hours }) => hours));
  const x = scale([0, longest], [hoursPlot.left, hoursPlot.right]);
  return rows.flatMap(({ runs }, row) =>
    runs.map(({ from, until, state }) => ({
      key: `${row} ${from}`,
      state,
      x: x(from),
      y: hoursPlot.top + row * hoursPlot.row + gap / 2,
      width: Math.round((x(until) - x(from)) * 100) / 100,
      height: hoursPlot.row - gap,
    })),
  );
}
