import type { RainFigure } from '../../src/core/dialogue/outlook-view/types.ts';
import { Axes, LimitLine } from './axes.tsx';
import { Figure } from './figure.tsx';
import { linePath, plot, roundSteps, scale } from './geometry.ts';

/** Rain in bars, the 48 h sum to come as a line, and its limit. */
export function RainChart({ view }: { readonly view: RainFigure }) {
  const { bars, sums, limitMm, limitText, hours } = view;
  const steps = roundSteps(0, Math.max(limitMm, ...bars.map(({ mm }) => mm), ...sums.map(({ mm }) => mm)));
  const x = scale([0, hours], [plot.left, plot.right]);
  const y = scale([0, steps.at(-1)!], [plot.bottom, plot.top]);
  return (
    <Figure name="rain" view={view}>
      <Axes steps={steps} unit="mm" y={y} days={view.days.map(({ hour, label }) => ({ x: x(hour), label }))} />
      {bars.map((bar) => (
        <rect
          key={bar.hour}
          class="fig-bar"
          x={x(bar.hour) + 0.5}
          y={y(bar.mm)}
          width={Math.max(1, x(bar.hour + bar.hours) - x(bar.hour) - 1)}
          height={plot.bottom - y(bar.mm)}
        />
      ))}
      <path class="fig-line" d={linePath(sums.map(({ hour, mm }) => ({ x: x(hour), y: y(mm) })))} />
      <LimitLine at={y(limitMm)} text={limitText} />
    </Figure>
  );
}
