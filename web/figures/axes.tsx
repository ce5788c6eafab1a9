import type { DayTick } from '../../src/core/dialogue/outlook-view/types.ts';
import { keptApart, plot } from './geometry.ts';

/** Room that the name of a day needs, units of the view box. */
const labelRoom = 50;

interface AxesProps {
  /** Values with a line across. */
  readonly steps: readonly number[];
  readonly unit: string;
  readonly y: (value: number) => number;
  readonly days: readonly (Pick<DayTick, 'label'> & { readonly x: number })[];
}

/** Lines across with their value, and the days along the foot, as many as have room. */
export function Axes({ steps, unit, y, days }: AxesProps) {
  const named = days.map(({ x, label }) => ({ x: Math.max(x, plot.left + labelRoom / 2 - 6), label }));
  const shown = keptApart(
    named.filter(({ x }) => x <= plot.right - labelRoom / 2),
    labelRoom,
  );
  return (
    <>
      <g class="fig-grid">
        {steps.map((step) => (
          <path key={step} d={`M${plot.left} ${y(step)}H${plot.right}`} />
        ))}
        {days.map(({ x, label }) => (
          <path key={label} d={`M${x} ${plot.bottom}v5`} />
        ))}
      </g>
      <g class="fig-words">
        {steps.map((step, index) => (
          <text key={step} x={plot.left - 5} y={y(step) + 4} text-anchor="end">
            {index === steps.length - 1 ? unit : step}
          </text>
        ))}
        {shown.map(({ x, label }) => (
          <text key={label} x={x} y={plot.bottom + 18} text-anchor="middle">
            {label}
          </text>
        ))}
      </g>
    </>
  );
}

/** The limit as a heavy broken line with its name above or, near the upper edge, below it. */
export function LimitLine({ at, text }: { readonly at: number; readonly text: string }) {
  const isHigh = at < plot.top + 14;
  return (
    <>
      <path class="fig-limit" d={`M${plot.left} ${at}H${plot.right}`} />
      <text class="fig-limit-name" x={plot.right - 3} y={isHigh ? at + 14 : at - 5} text-anchor="end">
        {text}
      </text>
    </>
  );
}
