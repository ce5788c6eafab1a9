import type { SoilFigure } from '../../src/core/dialogue/outlook-view/types.ts';
import { Axes, LimitLine } from './axes.tsx';
import { Figure } from './figure.tsx';
import { bandPath, linePath, plot, roundSteps, scale } from './geometry.ts';

/** The 30 cm line with the bands that hold 80 and 95 %, and the limit. */
export function SoilChart({ view }: { readonly view: SoilFigure }) {
  const { points, limitC, limitText, beyondFrom, hours } = view;
  const steps = roundSteps(
    Math.min(limitC, ...points.map(({ low95 }) => low95)),
    Math.max(limitC, ...points.map(({ high95 }) => high95)),
  );
  const x = scale([0, hours], [plot.left, plot.right]);
  const y = scale([steps[0]!, steps.at(-1)!], [plot.bottom, plot.top]);
  const along = (key: 'value' | 'low80' | 'high80' | 'low95' | 'high95') =>
    points.map((point) => ({ x: x(point.hour), y: y(point[key]) }));
  return (
    <Figure name="soil" view={view}>
      {beyondFrom !== null && (
        <rect
          class="fig-beyond"
          x={x(beyondFrom)}
          y={plot.top}
          width={plot.right - x(beyondFrom)}
          height={plot.bottom - plot.top}
        />
      )}
      <path class="fig-band" d={bandPath(along('high95'), along('low95'))} />
      <path class="fig-band is-narrow" d={bandPath(along('high80'), along('low80'))} />
      <Axes steps={steps} unit="C" y={y} days={view.days.map(({ hour, label }) => ({ x: x(hour), label }))} />
      <path class="fig-line" d={linePath(along('value'))} />
      <LimitLine at={y(limitC)} text={limitText} />
    </Figure>
  );
}
