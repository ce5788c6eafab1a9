import type { WaterFigure } from '../../src/core/dialogue/outlook-view/types.ts';
import { Axes, LimitLine } from './axes.tsx';
import { Figure } from './figure.tsx';
import { bandPath, linePath, plot, roundSteps, scale } from './geometry.ts';

/** Water held day by day against field capacity, with its band. */
export function WaterChart({ view }: { readonly view: WaterFigure }) {
  const { days, capacityText } = view;
  const steps = roundSteps(Math.min(0, ...days.map(({ low }) => low)), Math.max(0, ...days.map(({ high }) => high)));
  const x = scale([0, days.length - 1], [plot.left, plot.right]);
  const y = scale([steps[0]!, steps.at(-1)!], [plot.bottom, plot.top]);
  const along = (key: 'level' | 'low' | 'high') => days.map((day, index) => ({ x: x(index), y: y(day[key]) }));
  const foot = days.map((_, index) => ({ x: x(index), y: plot.bottom }));
  return (
    <Figure name="water" view={view}>
      <path class="fig-water" d={bandPath(along('level'), foot)} />
      <Axes steps={steps} unit="mm" y={y} days={days.map(({ label }, index) => ({ x: x(index), label }))} />
      <path class="fig-edge" d={linePath(along('low'))} />
      <path class="fig-edge" d={linePath(along('high'))} />
      <path class="fig-line" d={linePath(along('level'))} />
      <LimitLine at={y(0)} text={capacityText} />
    </Figure>
  );
}
